// Writes dist/index.js, the door by which everybody imports the package. In a kernel started from a frozen start the
// package is in memory already, and a second copy of it would make quantities that the first does not know as its own.
import { renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export function writeFace(root, names) {
  const out = join(root, 'dist/index.js');
  writeFileSync(
    `${out}.new`,
    `const face = globalThis[Symbol.for('joiners-reckoner.frozen')]?.package ?? (await import('./face.js'));\n` +
      `export const {\n${[...names]
        .sort()
        .map((name) => `  ${name},\n`)
        .join('')}} = face;\n`,
  );
  renameSync(`${out}.new`, out);
}

// Builds dist/kernel/build-snapshot.cjs: what `node --build-snapshot` runs to make the startup snapshot, in one file without
// blanks and in ASCII alone, since V8 stores a text with any other letter at double the size.
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A snapshot holds the package as it was: it is deleted before anything is built. */
export function removeSnapshot(root) {
  for (const name of ['snapshot.key', 'snapshot.blob', 'build-snapshot.cjs'])
    rmSync(join(root, 'dist/kernel', name), { force: true });
}

export async function buildSnapshotBuilder(root, options) {
  const esbuild = await import('esbuild');
  const out = join(root, 'dist/kernel/build-snapshot.cjs');
  const { outputFiles } = await esbuild.build({
    ...options,
    absWorkingDir: root,
    entryPoints: ['src/kernel/snapshot/build-snapshot.ts'],
    outfile: out,
    write: false,
    bundle: true,
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    charset: 'ascii',
    legalComments: 'none',
    minifyWhitespace: true,
    define: { 'import.meta.url': '__here' },
    banner: {
      js: "const __here = require('node:url').pathToFileURL(__filename).href;",
    },
    logLevel: 'warning',
  });
  const text = outputFiles[0].text
    // What is left outside ASCII stands in regular expressions.
    .replace(/[^\x00-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
  writeFileSync(`${out}.new`, text);
  renameSync(`${out}.new`, out);
}

// Writes src/server/shipped-notebooks.json: hashes of the code of the notebooks that come with the package. Only these run unasked on
// a fresh machine. Run it after a change to the code of a notebook; tests/server/known-notebooks.test.ts tells when it is due.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (source) => (Array.isArray(source) ? source.join('') : source);
const hashes = readdirSync(join(root, 'notebooks'))
  .filter((name) => name.endsWith('.ipynb'))
  .sort()
  .map((name) => {
    const { cells } = JSON.parse(readFileSync(join(root, 'notebooks', name), 'utf8'));
    const sources = cells.filter((cell) => cell.cell_type === 'code').map((cell) => textOf(cell.source));
    return createHash('sha256').update(JSON.stringify(sources)).digest('hex');
  });
writeFileSync(join(root, 'src', 'server', 'shipped-notebooks.json'), `${JSON.stringify(hashes, null, 2)}\n`);

// npm run bench: builds, then runs the benches of tests/bench that end in .bench.mjs, one after the other.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { buildIfNeeded, install, root } from './prepare.mjs';

install();
await buildIfNeeded();
const wanted = process.argv[2];
let worst = 0;
for (const file of readdirSync(join(root, 'tests/bench'))
  .filter((f) => f.endsWith('.bench.mjs') && (!wanted || f.startsWith(wanted)))
  .sort()) {
  const run = spawnSync(process.execPath, [join(root, 'tests/bench', file)], { cwd: root, stdio: 'inherit' });
  worst = Math.max(worst, run.status ?? 1);
}
process.exit(worst);

// npm run bench:kernel: this kernel beside Python's and plain tslab, interleaved, so that all meet the same machine.
// Takes the number of rounds (default 20). Needs Debian's python3-ipykernel and python3-jupyter-client.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const prefix = mkdtempSync(join(tmpdir(), 'reckoner-bench-'));
const share = join(prefix, 'share/jupyter');
try {
  const install = spawnSync(
    process.execPath,
    [join(root, 'src/launch/reckoner.mjs'), 'kernel', 'install', '--prefix', prefix],
    { stdio: 'inherit' },
  );
  if (install.status !== 0) process.exit(1);
  const tslab = createRequire(import.meta.url)
    .resolve('tslab/package.json')
    .replace('package.json', 'bin/tslab');
  mkdirSync(join(share, 'kernels/plain-tslab'), { recursive: true });
  writeFileSync(
    join(share, 'kernels/plain-tslab/kernel.json'),
    JSON.stringify({
      argv: [process.execPath, tslab, 'kernel', '--config-path={connection_file}'],
      display_name: 'tslab',
      language: 'typescript',
    }),
  );
  const run = spawnSync(
    '/usr/bin/python3',
    ['-W', 'ignore', join(root, 'tests/bench/kernel_bench.py'), ...process.argv.slice(2)],
    {
      stdio: 'inherit',
      cwd: root,
      env: { ...process.env, JUPYTER_PATH: share },
    },
  );
  process.exitCode = run.status ?? 1;
} finally {
  rmSync(prefix, { recursive: true, force: true });
}

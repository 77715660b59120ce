// npm start: installs, builds, opens the notebooks.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { buildIfNeeded, install, root } from './prepare.mjs';

install();
await buildIfNeeded();
const child = spawn(process.execPath, [join(root, 'dist', 'server', 'serve.js'), ...process.argv.slice(2)], {
  cwd: process.cwd(),
  stdio: 'inherit',
});
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(signal ? 130 : (code ?? 1)));

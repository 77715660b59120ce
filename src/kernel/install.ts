/** Registers the kernel with Jupyter: a folder with kernel.json in one of Jupyter's data folders. */
import { existsSync } from 'node:fs';
import { copyFile, mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { distPath, packageRoot } from './dist-path.js';
import { displayName, kernelName } from './kernel-identity.js';
import { requirePackages, sessionPackages } from './optional-packages.js';
import { buildSnapshot } from './snapshot/snapshot-builder.js';
import { kernelEnvironment, nodeFlags } from './snapshot/snapshot-paths.js';

/** Where a kernelspec goes: `prefix` (its share/jupyter/kernels), else the user's own Jupyter data folder. */
export interface InstallTarget {
  prefix?: string;
}

/** The user's own Jupyter data folder, as Jupyter itself finds it. */
function userData(): string {
  const { JUPYTER_DATA_DIR, XDG_DATA_HOME, APPDATA } = process.env;
  if (JUPYTER_DATA_DIR) return JUPYTER_DATA_DIR;
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Jupyter');
  if (process.platform === 'win32' && APPDATA) return join(APPDATA, 'jupyter');
  return join(XDG_DATA_HOME || join(homedir(), '.local', 'share'), 'jupyter');
}

export function kernelFolder({ prefix }: InstallTarget = {}): string {
  return prefix
    ? join(resolve(prefix), 'share', 'jupyter', 'kernels', kernelName)
    : join(userData(), 'kernels', kernelName);
}

/** The command by which Jupyter starts the kernel: where there is a shell, by kernel.sh, which uses the snapshot if it can. */
function argv(program: string): string[] {
  const script = join(packageRoot, 'src/launch/kernel.sh');
  return existsSync('/bin/sh') && existsSync(script)
    ? ['/bin/sh', script, process.execPath, dirname(program), '{connection_file}', ...nodeFlags]
    : [process.execPath, ...nodeFlags, program, '--connection', '{connection_file}'];
}

/** Writes the kernelspec `reckoner`; returns the folder it wrote. */
export async function installKernel(target: InstallTarget = {}): Promise<string> {
  const program = distPath('kernel/main.js');
  if (!existsSync(program))
    throw new Error(`the kernel is not built: ${program} is missing; run \`npm run build\` first`);
  requirePackages('the kernel', [...sessionPackages, 'zeromq']);
  await buildSnapshot();
  const folder = kernelFolder(target);
  const spec = {
    argv: argv(program),
    display_name: displayName,
    language: 'typescript',
    interrupt_mode: 'message',
    env: kernelEnvironment,
    metadata: { debugger: false },
  };
  await mkdir(folder, { recursive: true });
  const logos = join(packageRoot, 'src/kernel/logos');
  for (const name of await readdir(logos)) await copyFile(join(logos, name), join(folder, name));
  const draft = join(folder, `kernel.json.${process.pid}`);
  await writeFile(draft, `${JSON.stringify(spec, null, 2)}\n`);
  await rename(draft, join(folder, 'kernel.json'));
  return folder;
}

/** Removes the kernelspec `reckoner`; returns the folder it removed, or undefined if there was none. */
export async function uninstallKernel(target: InstallTarget = {}): Promise<string | undefined> {
  const folder = kernelFolder(target);
  if (!existsSync(folder)) return undefined;
  await rm(folder, { recursive: true });
  return folder;
}

/** Makes the kernel known to Jupyter: a folder with kernel.json in one of the places Jupyter looks. */
import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { built } from './place.ts';

export const kernelName = 'reckoner';
export const displayName = "Joiner's Reckoner (TypeScript)";

export const nodeFlags = [
  // To survive the tearing down of a looping cell.
  '--no-force-async-hooks-checks',
  // To stay silent about what a cell cannot change.
  '--disable-warning=ExperimentalWarning',
  // To let code run a while before it is optimised: the compiler's thousands of functions are not worth it at once, and
  // a start and a fresh cell take half the work. A hot loop of a cell is still optimised, a few milliseconds later.
  '--interrupt-budget=1000000',
];

/** Where a kernelspec goes: `prefix` (its share/jupyter/kernels), else the user's own Jupyter data folder. */
export interface InstallPlace {
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

export function kernelFolder({ prefix }: InstallPlace = {}): string {
  return prefix ? join(resolve(prefix), 'share', 'jupyter', 'kernels', kernelName) : join(userData(), 'kernels', kernelName);
}

/** Writes the kernelspec `reckoner`; returns the folder it wrote. */
export async function installKernel(place: InstallPlace = {}): Promise<string> {
  const program = built('kernel/main.js');
  if (!existsSync(program)) throw new Error(`the kernel is not built: ${program} is missing; run \`npm run build\` first`);
  const folder = kernelFolder(place);
  const spec = {
    argv: [process.execPath, ...nodeFlags, program, '--connection', '{connection_file}'],
    display_name: displayName,
    language: 'typescript',
    interrupt_mode: 'message',
    metadata: { debugger: false },
  };
  await mkdir(folder, { recursive: true });
  const draft = join(folder, `kernel.json.${process.pid}`);
  await writeFile(draft, `${JSON.stringify(spec, null, 2)}\n`);
  await rename(draft, join(folder, 'kernel.json'));
  return folder;
}

/** Removes the kernelspec `reckoner`; returns the folder it removed, or undefined if there was none. */
export async function uninstallKernel(place: InstallPlace = {}): Promise<string | undefined> {
  const folder = kernelFolder(place);
  if (!existsSync(folder)) return undefined;
  await rm(folder, { recursive: true });
  return folder;
}

/**
 * Makes the startup snapshot, in processes of its own. It only saves time: where it cannot be made (a read-only folder, a
 * Node that refuses), kernels start without it.
 */
import { spawn } from 'node:child_process';
import { access, constants, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { distPath } from '../dist-path.js';
import { blob, blobKey, canUseSnapshot, buildFlags, key, nodeFlags } from './snapshot-paths.js';

const builderScript = distPath('kernel/build-snapshot.cjs');
const ageOf = async (file: string): Promise<number> => (await stat(file)).mtimeMs;

/** Runs Node; resolves to its exit code, or null if it had to be stopped. A snapshot made under the user's NODE_OPTIONS would be refused elsewhere. */
function node(flags: string[], args: string[]): Promise<number | null> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [...flags, ...args], {
      env: { ...process.env, NODE_OPTIONS: '' },
      stdio: 'ignore',
      timeout: 60_000,
    });
    child.once('error', () => resolve(null));
    child.once('exit', (code) => resolve(code));
  });
}

/** Makes the snapshot unless a valid one is there. Resolves to whether there is one now; never rejects. */
export async function buildSnapshot(): Promise<boolean> {
  if (canUseSnapshot({})) return true;
  try {
    await access(dirname(blob), constants.W_OK);
    const age = await ageOf(builderScript);
    // In the folder of the final file: a rename does not cross file systems.
    const draft = `${blob}.${process.pid}`;
    try {
      if ((await node(buildFlags, ['--snapshot-blob', draft, '--build-snapshot', builderScript])) !== 0)
        return false;
      if ((await node(nodeFlags, ['--snapshot-blob', draft, distPath('kernel/main.js'), '--check'])) !== 0)
        return false;
      // Built again meanwhile: the snapshot no longer matches the package.
      if ((await ageOf(builderScript)) !== age) return false;
      await writeFile(`${blobKey}.${process.pid}`, `${key()}\n`);
      await rename(`${blobKey}.${process.pid}`, blobKey);
      await rename(draft, blob);
      return true;
    } finally {
      await rm(draft, { force: true });
    }
  } catch {
    return false;
  }
}

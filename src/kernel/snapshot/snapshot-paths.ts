/** Where the startup snapshot is, and whether this Node can start from it. */
import { readFileSync, statSync } from 'node:fs';
import { distPath } from '../dist-path.js';

/** The snapshot file. */
export const blob = distPath('kernel/snapshot.blob');
/** Which Node made it, and under which flags: see {@link key}. */
export const blobKey = distPath('kernel/snapshot.key');

/** Needed to survive the termination of a looping cell. Node applies it to a counter that the snapshot holds: given while building too, it would cancel itself. */
const skipAsyncHooksChecks = '--no-force-async-hooks-checks';

const v8Flags = [
  // No warning about what a cell cannot change.
  '--disable-warning=ExperimentalWarning',
  // Optimise later: for the compiler's thousands of functions it does not pay at once, and a start and a fresh cell take
  // half the work. A hot loop of a cell is still optimised, a few milliseconds later.
  '--interrupt-budget=500000',
  // Collect the young generation more often: some 20 MB less after fifty cells, no slower.
  '--max-semi-space-size=4',
];

export const nodeFlags = [skipAsyncHooksChecks, ...v8Flags];
export const buildFlags = v8Flags;

/**
 * What a start must share with the making of the snapshot, or Node refuses it: the inode and size of Node's program, as
 * `ls -Lin` prints them, and the flags. kernel.sh computes the same.
 */
export function key(): string {
  const { ino, size } = statSync(process.execPath);
  return [ino, size, ...nodeFlags].join(' ');
}

/** Set to start without the snapshot: somewhat slower, in a quarter less memory. kernel.sh reads it too. */
export const smallMemoryVariable = 'RECKONER_SMALL_MEMORY';

/** V8's own choice of less memory over speed, for such a start. kernel.sh gives the same. */
const smallMemoryFlag = '--optimize-for-size';

/**
 * What the environment of a kernel's process adds: one arena of the C allocator is enough for its few threads, and large
 * blocks go back to the system when they are freed (5 MB less, no slower).
 */
export const kernelEnvironment = {
  MALLOC_ARENA_MAX: '1',
  MALLOC_MMAP_THRESHOLD_: '131072',
  MALLOC_TRIM_THRESHOLD_: '131072',
};

/** Whether a process started now may use the snapshot. Node refuses one made under other options. */
export function canUseSnapshot(env: NodeJS.ProcessEnv): boolean {
  try {
    if (env['NODE_OPTIONS'] || env[smallMemoryVariable]) return false;
    return statSync(blob).isFile() && readFileSync(blobKey, 'utf8').trim() === key();
  } catch {
    return false;
  }
}

/** Options for Node to start the kernel's program with. */
export function startOptions(env: NodeJS.ProcessEnv): string[] {
  if (env[smallMemoryVariable]) return [...nodeFlags, smallMemoryFlag];
  return canUseSnapshot(env) ? [...nodeFlags, '--snapshot-blob', blob] : nodeFlags;
}

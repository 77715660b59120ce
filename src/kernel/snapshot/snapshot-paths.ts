/** Where the frozen start lies, and whether this Node can begin from it. */
import { readFileSync, statSync } from 'node:fs';
import { distPath } from '../dist-path.js';

/** The frozen memory. */
export const blob = distPath('kernel/snapshot.blob');
/** By which Node it was made, and under which flags: see {@link key}. */
export const blobKey = distPath('kernel/snapshot.key');

/** Where freeze.ts finds the compiler's text without its blanks and remarks: half the memory to freeze and thaw. */
export const compilerTextVariable = 'RECKONER_COMPILER_TEXT';

/** To survive the tearing down of a looping cell. Node takes it off a counter that is frozen too: given while freezing as well, it undoes itself. */
const skipAsyncHooksChecks = '--no-force-async-hooks-checks';

const engineFlags = [
  // To stay silent about what a cell cannot change.
  '--disable-warning=ExperimentalWarning',
  // To let code run a while before it is optimised: the compiler's thousands of functions are not worth it at once, and
  // a start and a fresh cell take half the work. A hot loop of a cell is still optimised, a few milliseconds later.
  '--interrupt-budget=500000',
];

export const nodeFlags = [skipAsyncHooksChecks, ...engineFlags];
export const buildFlags = engineFlags;

/**
 * What a start must share with the making of the frozen memory, or Node refuses it: the inode and size of Node's program,
 * as `ls -Lin` prints them, and the flags. kernel.sh puts the same together.
 */
export function key(): string {
  const { ino, size } = statSync(process.execPath);
  return [ino, size, ...nodeFlags].join(' ');
}

/** Whether a process started now may begin from the frozen start. Node refuses one made under other options. */
export function canUseSnapshot(env: NodeJS.ProcessEnv): boolean {
  try {
    return !env['NODE_OPTIONS'] && statSync(blob).isFile() && readFileSync(blobKey, 'utf8').trim() === key();
  } catch {
    return false;
  }
}

/** Options for Node to start the kernel's program with. */
export function startOptions(env: NodeJS.ProcessEnv): string[] {
  return canUseSnapshot(env) ? [...nodeFlags, '--snapshot-blob', blob] : nodeFlags;
}

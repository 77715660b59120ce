/** Whether a process started from the snapshot works: types are checked, a recipe answers. Exit code 0 if so. */
import { KernelSession } from '../session.js';
import { snapshotState } from './snapshot-state.js';

export async function check(): Promise<number> {
  if (!snapshotState()) return 1;
  const session = new KernelSession({ cwd: process.cwd() });
  const right = await session.run(
    "if (!(beam.name === 'beam' && [1, 2].includes(2))) throw new Error('wrong')",
    () => undefined,
  );
  const wrong = await session.run("const x: number = 'text'", () => undefined);
  return right.status === 'ok' && wrong.status === 'error' ? 0 : 1;
}

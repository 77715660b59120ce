/** Stops the main thread from the I/O thread, also when it loops or waits for a child process and reads no messages. */
import { readFileSync, readdirSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import inspector from 'node:inspector';

// The typings of Node 20 lack it, though it exists since 20.11: a session connected to the main thread from a worker.
type WorkerSession = inspector.Session & { connectToMainThread(): void };

let session: WorkerSession | undefined;

/** Terminates the JavaScript that the main thread runs now; if none runs, the next. */
export function terminateExecution(): void {
  if (!session) {
    session = new inspector.Session();
    session.connectToMainThread();
  }
  session.post('Runtime.terminateExecution');
}

/** Disconnects from the main thread, which could not exit while connected. */
export function detachInspector(): void {
  session?.disconnect();
  session = undefined;
}

/** Sends SIGINT to the child processes: `execSync` returns only when its child does. */
export function signalChildren(signal: 'SIGINT' | 'SIGKILL' = 'SIGINT'): void {
  for (const pid of childrenOf(process.pid)) {
    try {
      process.kill(pid, signal);
    } catch {
      // It has ended meanwhile.
    }
  }
}

function childrenOf(pid: number): number[] {
  const found = directChildren(pid);
  return [...found, ...found.flatMap(childrenOf)];
}

function directChildren(pid: number): number[] {
  const numbers = (text: string): number[] => text.split(/\s+/).filter(Boolean).map(Number);
  try {
    return readdirSync(`/proc/${pid}/task`).flatMap((task) =>
      numbers(readFileSync(`/proc/${pid}/task/${task}/children`, 'utf8')),
    );
  } catch {
    // No /proc here, or the process is gone.
    if (process.platform === 'linux') return [];
    const listed = spawnSync('pgrep', ['-P', String(pid)], { encoding: 'utf8' });
    return listed.status === 0 ? numbers(listed.stdout) : [];
  }
}

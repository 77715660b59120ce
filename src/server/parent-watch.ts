// A thread beside code that may loop without end: when the parent of this process is gone, the process ends, and what it started with
// it. Started by the page maker as a worker with `--parent PID`.
const everyMs = 500;
const parent = Number(process.argv[process.argv.indexOf('--parent') + 1]);

setInterval(() => {
  if (process.ppid === parent && isAlive(parent)) return;
  try {
    // The page maker leads a process group; what its cells started is in it.
    process.kill(-process.pid, 'SIGKILL');
  } catch {
    process.kill(process.pid, 'SIGKILL');
  }
}, everyMs);

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

export {};

import { readFileSync } from 'node:fs';

export interface ExitDetails {
  readonly code: number | null;
  readonly signal: string | null;
  /** Why, in words; undefined where it is not known. */
  readonly reason?: string;
}

/** Says why a process ended. `killsBefore` is what {@link memoryKills} gave while it ran. */
export function exitReason(code: number | null, signal: string | null, killsBefore: number): string {
  // V8 aborts when its heap is full; nothing else in a kernel does.
  if (signal === 'SIGABRT' || code === 134) return 'it ran out of memory';
  if (signal === 'SIGKILL' && memoryKills() > killsBefore)
    return 'the system ended it because memory ran out';
  if (signal !== null) return `it was ended by the signal ${signal}`;
  return `it ended by itself with code ${code ?? 'unknown'}`;
}

/** How many processes Linux has ended for lack of memory so far; 0 where that cannot be read. */
export function memoryKills(): number {
  const read = (file: string): number => {
    try {
      return Number(/^oom_kill (\d+)$/m.exec(readFileSync(file, 'utf8'))?.[1] ?? 0);
    } catch {
      return 0;
    }
  };
  return read('/proc/vmstat') + read('/sys/fs/cgroup/memory.events');
}

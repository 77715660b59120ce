/** JSON that never fails on what a cell made: a big integer, a cycle, a function, bytes. */
export function json(value: unknown): string {
  try {
    return JSON.stringify(value, (_, part: unknown) => (typeof part === 'bigint' ? String(part) : part));
  } catch {
    const seen = new WeakSet();
    return JSON.stringify(value, (_, part: unknown) => {
      if (typeof part === 'bigint') return String(part);
      if (typeof part !== 'object' || part === null) return part;
      if (seen.has(part)) return '[seen above]';
      seen.add(part);
      return part;
    });
  }
}

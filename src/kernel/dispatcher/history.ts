/** The cells that were run and their results, for clients that send history_request. */

interface Entry {
  line: number;
  input: string;
  output: string | null;
}

const maxEntries = 20_000;

export class History {
  /** This session's number; the kernel stores no earlier ones. */
  readonly session = 1;
  private readonly entries: Entry[] = [];

  add(line: number, input: string): void {
    this.entries.push({ line, input, output: null });
    if (this.entries.length > maxEntries) this.entries.splice(0, this.entries.length - maxEntries);
  }

  setOutput(line: number, output: string): void {
    const last = this.entries.at(-1);
    if (last?.line === line) last.output = output;
  }

  /** Answers the content of a history_request with `[session, line, input]` or `[session, line, [input, output]]`. */
  select(content: Record<string, unknown>): unknown[] {
    const withOutput = content['output'] === true;
    return this.find(content).map((e) => [this.session, e.line, withOutput ? [e.input, e.output] : e.input]);
  }

  private find(content: Record<string, unknown>): Entry[] {
    const whole = (key: string): number | undefined =>
      typeof content[key] === 'number' ? Math.trunc(content[key]) : undefined;
    const n = whole('n');
    const latest = (found: Entry[]): Entry[] => (n === undefined ? found : n <= 0 ? [] : found.slice(-n));
    switch (content['hist_access_type']) {
      case 'tail':
        return latest(this.entries);
      case 'range': {
        const session = whole('session') ?? 0;
        // 0 is this session and negative numbers count back from it; there are no earlier ones.
        if (session !== 0 && session !== this.session) return [];
        const start = whole('start') ?? 1;
        const stop = whole('stop') ?? Infinity;
        return this.entries.filter((e) => e.line >= start && e.line < stop);
      }
      case 'search': {
        const pattern = globPattern(typeof content['pattern'] === 'string' ? content['pattern'] : '*');
        const found = this.entries.filter((e) => pattern.test(e.input));
        if (content['unique'] !== true) return latest(found);
        return latest([...new Map(found.map((e) => [e.input, e])).values()].sort((a, b) => a.line - b.line));
      }
      default:
        return [];
    }
  }
}

/** A shell pattern with *, ? and [...] over the whole text, as the protocol has it. */
function globPattern(glob: string): RegExp {
  const source = glob.replace(
    /\[(!?)([^\]]+)\]|[.+^${}()|[\]\\]|\*|\?/g,
    (part, not: string | undefined, inside: string | undefined) => {
      if (inside !== undefined) return `[${not ? '^' : ''}${inside.replace(/[\\\]^]/g, '\\$&')}]`;
      return part === '*' ? '[\\s\\S]*' : part === '?' ? '[\\s\\S]' : `\\${part}`;
    },
  );
  return new RegExp(`^${source}$`);
}

import { parseArgs } from 'node:util';
import { nearest } from '../units/input-error.js';

/** The words of a command do not fit it: said in one line, exit 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

/** An option of a command. */
export interface OptionInfo {
  /** What follows it, such as FILE; left out for one that takes no value. */
  readonly value?: string;
  readonly short?: string;
  /** May be given several times. */
  readonly multiple?: true;
  readonly help: string;
}

/** What may stand after a command, for its help and for completion. */
export interface CommandInfo {
  readonly name: string;
  /** The words it takes, such as `RECIPE field=value ...`. */
  readonly words: string;
  readonly help: string;
  readonly options: Readonly<Record<string, OptionInfo>>;
  /** What its first word completes to. */
  readonly completes?: 'recipe' | 'notebook' | readonly string[];
  /** Exit codes beyond those of every command. */
  readonly exits?: string;
}

/** The words of a command, its options apart. */
export interface Words {
  readonly plain: readonly string[];
  readonly flags: ReadonlySet<string>;
  readonly values: ReadonlyMap<string, string>;
  readonly lists: ReadonlyMap<string, readonly string[]>;
}

/** Reads the words of a command. @throws UsageError on an option that is not taken or lacks its value */
export function readWords(command: CommandInfo, words: readonly string[]): Words {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, o]) => [
      name,
      {
        type: o.value === undefined ? ('boolean' as const) : ('string' as const),
        ...(o.short ? { short: o.short } : {}),
        multiple: o.multiple === true,
      },
    ]),
  );
  const { values, positionals } = parsed(command, () =>
    parseArgs({ args: [...words], options, allowPositionals: true, strict: true }),
  );
  const given = Object.entries(values);
  return {
    plain: positionals,
    flags: new Set(given.flatMap(([name, v]) => (v === true ? [name] : []))),
    values: new Map(given.flatMap(([name, v]) => (typeof v === 'string' ? [[name, v] as const] : []))),
    lists: new Map(given.flatMap(([name, v]) => (Array.isArray(v) ? [[name, v.map(String)] as const] : []))),
  };
}

/** Says in the command's own words what Node's parser finds wrong. */
function parsed<T>(command: CommandInfo, parse: () => T): T {
  try {
    return parse();
  } catch (error) {
    const { code, message } = error as { code?: string; message: string };
    const name = /'(?:-\w, )?(--?[\w-]+)/.exec(message)?.[1] ?? '';
    if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
      const names = Object.entries(command.options).map(([n, o]) => (o.short ? `-${o.short}` : `--${n}`));
      const near = nearest(name, names);
      const hint = near ? `; did you mean ${near}?` : '';
      throw new UsageError(`${name}: no such option; takes ${names.join(', ') || 'no options'}${hint}`);
    }
    if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE')
      throw new UsageError(
        message.includes('does not take') ? `${name}: takes no value` : `${name}: missing; takes a value`,
      );
    throw error;
  }
}

/** A whole number given to an option. @throws UsageError */
export function wholeNumber(words: Words, name: string): number | undefined {
  const text = words.values.get(name);
  if (text === undefined) return undefined;
  if (!/^\d{1,9}$/.test(text))
    throw new UsageError(`--${name}: got ${JSON.stringify(text.slice(0, 40))}, takes a whole number`);
  return Number(text);
}

/** The one form of output asked for. @throws UsageError where two are */
export function formOf<const F extends string>(words: Words, forms: readonly F[]): F | undefined {
  const asked = forms.filter((f) => words.flags.has(f));
  if (asked.length > 1)
    throw new UsageError(`${asked.map((f) => `--${f}`).join(' and ')}: takes one of them`);
  return asked[0];
}

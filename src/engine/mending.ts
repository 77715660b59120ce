// A failing answer names the smallest change that mends it, found by running the recipe again.
import { capitalised } from '../units/capitalised.js';
import { tryParse } from '../units/try-parse.js';
import { InputError } from '../units/input-error.js';
import type { Fields, Parsed } from './field.js';
import type { Outputs, RawOutput } from './output.js';
import { saidFigure, filledIn } from './spoken.js';
import type { Kind } from '../units/kind.js';

type Inputs = Readonly<Record<string, unknown>>;
type Raw = Readonly<Record<string, unknown>>;

/** An input that may be changed to mend a failing answer. */
export interface Remedy {
  /** A field's name, or a path into it: 'section.depth', 'supports.last'. */
  readonly input: string;
  readonly direction: 'up' | 'down';
  /** The new value is a whole multiple of this, in base units. */
  readonly step: number;
  readonly kind: Kind;
  /** What to do, with `{value}` for the new value: 'make it {value} thick'. Or made of the answer after the change. */
  readonly say: string | ((out: Raw) => string);
  /** How far it may go, as a multiple of what was given; threefold up and a fifth down where nothing is said. */
  readonly reach?: number;
}
/** A change that is no single number, such as one more rail: inputs with the change made, or undefined where it cannot be. */
export interface OtherWay<F extends Fields> {
  readonly say: string | ((given: Parsed<F>) => string);
  readonly change: (given: Parsed<F>) => Parsed<F> | undefined;
}
/** A number that is no input itself, such as how far the feet move: from nothing up to `most`, in steps. */
export interface Adjustment<F extends Fields> {
  readonly step: number;
  readonly most: number;
  readonly kind: Kind;
  readonly say: string;
  /** The inputs changed by that much. */
  readonly adjust: (given: Parsed<F>, by: number) => Parsed<F>;
}
/** How a recipe's answer fails, and what may be changed then. */
export type Mending<F extends Fields, O extends Outputs> = {
  readonly fails: (given: Parsed<F>, out: RawOutput<O>) => boolean;
} & (
  | {
      /** The easiest first. */
      readonly remedies: readonly (Remedy | OtherWay<F> | Adjustment<F>)[];
      /** What is so after the change, with `{name}` for the outputs: 'it sags {sag}'. */
      readonly then?: string;
    }
  /** The sentence of the answer itself names what is missing; the reason why nothing is searched for. */
  | { readonly saidBySentence: string }
);

/** A change that mends, the inputs with it made, and the answer they give. */
export interface Mended {
  readonly say: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly out: Readonly<Record<string, unknown>>;
}

interface Search<F extends Fields> {
  readonly inputs: F;
  readonly given: Parsed<F>;
  /** The answer where it passes; undefined where it fails or the recipe refuses the inputs. */
  readonly passing: (inputs: Inputs) => Raw | undefined;
}

/**
 * Two changes that mend a failing answer, the easiest first; none where it does not fail. Each is tried by itself and is
 * the least of its kind: the step is doubled until the answer passes and then closed in on, some twenty runs of the recipe.
 */
export function mendedWays<F extends Fields, O extends Outputs>(
  def: { readonly inputs: F; readonly mending?: Mending<F, O> | undefined },
  given: Parsed<F>,
  out: RawOutput<O>,
  run: (given: Parsed<F>) => RawOutput<O>,
): readonly Mended[] {
  const { mending } = def;
  if (!mending || !('remedies' in mending) || !mending.fails(given, out)) return [];
  const passing = (inputs: Inputs): Raw | undefined => {
    const got = tryParse(() => run(inputs as Parsed<F>));
    return got instanceof InputError || mending.fails(inputs as Parsed<F>, got) ? undefined : got;
  };
  const search: Search<F> = { inputs: def.inputs, given, passing };
  const found: Mended[] = [];
  for (const way of mending.remedies) {
    if (found.length === waysNamed) break;
    found.push(...tried(way, search));
  }
  return found;
}

/** One change and one other: who cannot make the first may make the second. */
const waysNamed = 2;

function tried<F extends Fields>(
  way: Remedy | OtherWay<F> | Adjustment<F>,
  search: Search<F>,
): readonly Mended[] {
  if ('change' in way) return otherWay(way, search);
  if ('input' in way) return oneInput(way, search);
  return stepped(way, search, Math.round(way.most / way.step), (k) => {
    const by = whole(k, way.step);
    return { value: by, inputs: way.adjust(search.given, by) };
  });
}

function otherWay<F extends Fields>(way: OtherWay<F>, { given, passing }: Search<F>): Mended[] {
  const inputs = way.change(given);
  const out = inputs && passing(inputs);
  return out ? [{ say: typeof way.say === 'string' ? way.say : way.say(given), inputs, out }] : [];
}

function oneInput<F extends Fields>(remedy: Remedy, search: Search<F>): Mended[] {
  const path = pathOf(remedy.input, search.given) ?? [];
  const from = valueAt(search.given, path);
  if (typeof from !== 'number' || !Number.isFinite(from)) return [];
  const up = remedy.direction === 'up';
  const start = up ? Math.floor(from / remedy.step + 1e-9) : Math.ceil(from / remedy.step - 1e-9);
  const most = Math.floor(Math.abs(furthest(remedy, from, search.inputs) / remedy.step - start) + 1e-9);
  return stepped(remedy, search, most, (k) => {
    const value = whole(start + (up ? k : -k), remedy.step);
    return { value, inputs: withValue(search.given, path, value) as Inputs };
  });
}

/** So many steps, without the dust of the last binary digits. */
const whole = (steps: number, step: number): number => Number((steps * step).toPrecision(12));

/** The least of the changes 1 to `most` that passes. */
function stepped<F extends Fields>(
  way: { readonly say: Remedy['say']; readonly kind: Kind },
  { passing }: Search<F>,
  most: number,
  changed: (k: number) => { readonly value: number; readonly inputs: Inputs },
): Mended[] {
  const found = new Map<number, Raw>();
  const k = fewest(most, (k) => {
    const out = passing(changed(k).inputs);
    if (out) found.set(k, out);
    return out !== undefined;
  });
  if (k === undefined) return [];
  const { value, inputs } = changed(k);
  const out = found.get(k) as Raw;
  const say = typeof way.say === 'string' ? way.say : way.say(out);
  return [{ say: say.replace('{value}', saidFigure(way.kind, value)), inputs, out }];
}

/** The fewest steps from 1 to `most` that pass, taken that more steps pass as well; undefined where none do. */
function fewest(most: number, passes: (k: number) => boolean): number | undefined {
  let [fails, k] = [0, 1];
  if (most < 1) return undefined;
  while (!passes(k)) {
    if (k === most) return undefined;
    fails = k;
    k = Math.min(2 * k, most);
  }
  while (k - fails > 1) {
    const middle = Math.floor((fails + k) / 2);
    if (passes(middle)) k = middle;
    else fails = middle;
  }
  return k;
}

/** The end of the search: what the remedy says, within the field's own limits. */
function furthest(remedy: Remedy, from: number, inputs: Fields): number {
  const field = remedy.input.includes('.') ? undefined : inputs[remedy.input];
  const [low, high] = [field?.min ?? -Infinity, field?.max ?? Infinity];
  const end =
    from === 0
      ? (remedy.direction === 'up' ? 1000 : -1000) * remedy.step
      : from * (remedy.reach ?? (remedy.direction === 'up' ? 3 : 0.2));
  return Math.min(Math.max(end, low), high);
}

type Path = readonly (string | number)[];

/** The path written out; undefined where these inputs have no such place. */
function pathOf(written: string, given: Inputs): Path | undefined {
  let here: unknown = given;
  const path: (string | number)[] = [];
  for (const word of written.split('.')) {
    if (typeof here !== 'object' || here === null) return undefined;
    const key = Array.isArray(here) ? (word === 'last' ? here.length - 1 : Number(word)) : word;
    path.push(key);
    here = (here as Record<string | number, unknown>)[key];
  }
  return path;
}

const valueAt = (given: unknown, path: Path): unknown =>
  path.reduce<unknown>((here, key) => (here as Record<string | number, unknown>)[key], given);

function withValue(given: unknown, [key, ...rest]: Path, value: number): unknown {
  if (key === undefined) return value;
  const inner = withValue((given as Record<string | number, unknown>)[key], rest, value);
  return Array.isArray(given)
    ? given.map((x: unknown, i) => (i === key ? inner : x))
    : { ...(given as object), [key]: inner };
}

/** The ways as sentences: the first and what is so then, and one other. */
export function mendedWords<F extends Fields, O extends Outputs>(
  ways: readonly Mended[],
  mending: Mending<F, O> | undefined,
  outputs: Outputs,
  currency?: string,
): string {
  const [best, other] = ways;
  if (!best) return '';
  const then = mending && 'remedies' in mending ? mending.then : undefined;
  const result = then === undefined ? '' : `: then ${filledIn(then, outputs, best.out, currency)}`;
  return `${capitalised(best.say)}${result}.${other ? ` Or ${other.say}.` : ''}`;
}

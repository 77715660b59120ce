import { attempt } from '../quantities/attempt.js';
import { formatQuantity } from '../quantities/format.js';
import { kinds, type Kind } from '../quantities/kind.js';
import { Refusal, shown } from '../quantities/refusal.js';
import { together, type Field, type Fields, type Read } from './field.js';
import { finiteAnswer } from './finite-answer.js';
import type { Formula } from './formula.js';
import { madeCode } from './made-code.js';
import type { Outputs, Raw } from './output.js';

/** The error of a number that is left out or outside the limits of its field, one of a kind of quantity. */
export function refuseNumber(recipe: string, name: string, f: Field, value: unknown): never {
  if (value === undefined) throw new Refusal({ field: name, says: `missing; takes ${f.takes}` }, recipe);
  const got =
    typeof value === 'number' && Number.isFinite(value)
      ? formatQuantity({ kind: f.kind as Kind, value })
      : shown(value);
  throw new Refusal({ field: name, says: `got ${got}, takes ${f.takes}` }, recipe);
}

const isNumeric = (f: Field): boolean => Object.hasOwn(kinds, f.kind);

/** Fills in defaults and checks numbers against the limits; anything else is read as a person would write it. */
export function guardOf<F extends Fields>(recipe: string, fields: F): (numbers: Partial<Read<F>>) => Read<F> {
  const plan = Object.entries(fields).map(([name, field]) => {
    const f = field as Field;
    return {
      name,
      f,
      numeric: isNumeric(f),
      fallback: f.default !== undefined ? f.read(undefined) : undefined,
      min: f.min ?? -Number.MAX_VALUE,
      max: f.max ?? Number.MAX_VALUE,
    };
  });
  return (numbers) => {
    const whole: Record<string, unknown> = {};
    for (const p of plan) {
      const v = (numbers as Record<string, unknown>)[p.name];
      if (v === undefined) {
        if (!p.f.optional) refuseNumber(recipe, p.name, p.f, v);
        whole[p.name] = p.fallback;
      } else if (p.numeric) {
        if (!(typeof v === 'number' && v >= p.min && v <= p.max)) refuseNumber(recipe, p.name, p.f, v);
        whole[p.name] = v;
      } else if (typeof v === 'string') {
        const read = attempt(() => together([[p.name, () => p.f.read(v)]])[0]);
        if (read instanceof Refusal) throw new Refusal(read.troubles, recipe);
        whole[p.name] = read;
      } else whole[p.name] = v;
    }
    return whole as Read<F>;
  };
}

/**
 * Compiles a row of formulas into one function on numbers: limits checked, defaults filled in, no allocation but the
 * answer. This is what makes a sweep run at the speed of a hand-written loop.
 */
export function compileSteps<F extends Fields, O extends Outputs>(
  recipe: string,
  fields: F,
  steps: readonly Formula[],
  outputs: O,
): (numbers: Partial<Read<F>>) => Raw<O> {
  const refuse = (name: string, value: unknown): never =>
    refuseNumber(recipe, name, fields[name] as Field, value);
  const lines: string[] = [];
  const known = new Set<string>();
  for (const [name, field] of Object.entries(fields)) {
    const f = field as Field;
    if (!f.symbol || !isNumeric(f)) continue;
    const v = variable(f.symbol);
    known.add(f.symbol);
    lines.push(`let ${v} = g.${name};`);
    if (f.default !== undefined) lines.push(`if (${v} === undefined) ${v} = ${f.read(undefined) as number};`);
    // Written so that NaN and text fail it too.
    lines.push(
      `if (!(${v} >= ${f.min ?? -Number.MAX_VALUE} && ${v} <= ${f.max ?? Number.MAX_VALUE})) refuse(${JSON.stringify(name)}, ${v});`,
    );
  }
  for (const f of steps) {
    for (const s of Object.keys(f.where))
      if (!known.has(s)) throw new Error(`${recipe}: the letter ${s} has no value yet`);
    lines.push(`const ${variable(f.symbol)} = ${f.source_(variable)};`);
    known.add(f.symbol);
  }
  const answer = Object.entries(outputs).map(([name, o]) => `${name}: ${variable(o.symbol as string)}`);
  const names = Object.entries(outputs).map(([, o]) => variable(o.symbol as string));
  // One sum tells whether anything is not finite, cheaper than a test apiece.
  lines.push(`if (!isFinite(${names.join(' + ')})) check({ ${answer.join(', ')} });`);
  lines.push(`return { ${answer.join(', ')} };`);
  type Make = (r: typeof refuse, c: (out: unknown) => void) => (n: Partial<Read<F>>) => Raw<O>;
  const make = madeCode<Make>(['refuse', 'check'], `return (g) => {\n${lines.join('\n')}\n};`);
  return make?.(refuse, (out) => finiteAnswer(recipe, out)) ?? interpreted(recipe, fields, steps, outputs);
}

/** The same without generated code, for pages whose policy forbids it. */
function interpreted<F extends Fields, O extends Outputs>(
  recipe: string,
  fields: F,
  steps: readonly Formula[],
  outputs: O,
): (numbers: Partial<Read<F>>) => Raw<O> {
  const guard = guardOf(recipe, fields);
  return (numbers) => {
    const given = guard(numbers) as Record<string, unknown>;
    const values: Record<string, number> = {};
    for (const [name, f] of Object.entries(fields))
      if (f.symbol && typeof given[name] === 'number') values[f.symbol] = given[name];
    for (const f of steps) values[f.symbol] = f.of(values);
    return Object.fromEntries(
      Object.entries(outputs).map(([n, o]) => [n, values[o.symbol as string]]),
    ) as Raw<O>;
  };
}

const variable = (symbol: string): string => `v_${symbol}`;

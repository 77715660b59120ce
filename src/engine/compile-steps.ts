import { tryParse } from '../units/try-parse.js';
import { formatQuantity } from '../units/format-quantity.js';
import { kinds, type Kind } from '../units/kind.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { collectIssues, type Field, type Fields, type Parsed } from './field.js';
import { assertFinite } from './assert-finite.js';
import type { Formula } from './formula.js';
import { compileFunction } from './compile-function.js';
import type { Outputs, RawOutput } from './output.js';

/** The error of a number that is left out or outside the limits of its field, one of a kind of quantity. */
export function refuseNumber(recipe: string, name: string, f: Field, value: unknown): never {
  if (value === undefined)
    throw new InputError({ field: name, message: `missing; takes ${f.expects}` }, recipe);
  const got =
    typeof value === 'number' && Number.isFinite(value)
      ? formatQuantity({ kind: f.kind as Kind, value })
      : inspectValue(value);
  throw new InputError({ field: name, message: `got ${got}, takes ${f.expects}` }, recipe);
}

const isNumeric = (f: Field): boolean => Object.hasOwn(kinds, f.kind);

/** Fills in defaults and checks numbers against the limits; anything else is read as a person would write it. */
export function makeBoundsCheck<F extends Fields>(
  recipe: string,
  fields: F,
): (numbers: Partial<Parsed<F>>) => Parsed<F> {
  const plan = Object.entries(fields).map(([name, field]) => {
    const f = field;
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
        const read = tryParse(() => collectIssues([[p.name, () => p.f.read(v)]])[0]);
        if (read instanceof InputError) throw new InputError(read.issues, recipe);
        whole[p.name] = read;
      } else whole[p.name] = v;
    }
    return whole as Parsed<F>;
  };
}

/**
 * Compiles a chain of formulas into one function on numbers: limits checked, defaults filled in, no allocation but the
 * answer. This is what makes a sweep run at the speed of a hand-written loop.
 */
export function compileSteps<F extends Fields, O extends Outputs>(
  recipe: string,
  fields: F,
  steps: readonly Formula[],
  outputs: O,
): (numbers: Partial<Parsed<F>>) => RawOutput<O> {
  const refuse = (name: string, value: unknown): never =>
    refuseNumber(recipe, name, fields[name] as Field, value);
  const lines: string[] = [];
  const known = new Set<string>();
  for (const [name, field] of Object.entries(fields)) {
    const f = field;
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
    for (const s of Object.keys(f.variables))
      if (!known.has(s)) throw new Error(`${recipe}: the letter ${s} has no value yet`);
    lines.push(`const ${variable(f.symbol)} = ${f.toJavaScript(variable)};`);
    known.add(f.symbol);
  }
  const answer = Object.entries(outputs).map(([name, o]) => `${name}: ${variable(o.symbol as string)}`);
  const names = Object.entries(outputs).map(([, o]) => variable(o.symbol as string));
  // One sum tells whether anything is not finite, cheaper than a test apiece.
  lines.push(`if (!isFinite(${names.join(' + ')})) check({ ${answer.join(', ')} });`);
  lines.push(`return { ${answer.join(', ')} };`);
  type Make = (r: typeof refuse, c: (out: unknown) => void) => (n: Partial<Parsed<F>>) => RawOutput<O>;
  const make = compileFunction(['refuse', 'check'], `return (g) => {\n${lines.join('\n')}\n};`) as
    Make | undefined;
  return make?.(refuse, (out) => assertFinite(recipe, out)) ?? interpreted(recipe, fields, steps, outputs);
}

/** The same without generated code, for pages whose policy forbids it. */
function interpreted<F extends Fields, O extends Outputs>(
  recipe: string,
  fields: F,
  steps: readonly Formula[],
  outputs: O,
): (numbers: Partial<Parsed<F>>) => RawOutput<O> {
  const guard = makeBoundsCheck(recipe, fields);
  return (numbers) => {
    const given = guard(numbers) as Record<string, unknown>;
    const values: Record<string, number> = {};
    for (const [name, f] of Object.entries(fields))
      if (f.symbol && typeof given[name] === 'number') values[f.symbol] = given[name];
    for (const f of steps) values[f.symbol] = f.evaluate(values);
    return Object.fromEntries(
      Object.entries(outputs).map(([n, o]) => [n, values[o.symbol as string]]),
    ) as RawOutput<O>;
  };
}

const variable = (symbol: string): string => `v_${symbol}`;

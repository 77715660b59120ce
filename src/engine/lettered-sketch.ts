import type { ChartSpec } from '../charts/chart-spec.js';
import type { ValueLine } from './result-types.js';

/** One letter of a sketch: the input or output that it stands for. */
export interface SketchLetter {
  readonly letter: string;
  readonly name: string;
  readonly label: string;
}
export interface LetteredSketch {
  readonly spec: ChartSpec;
  readonly letters: readonly SketchLetter[];
}

const measured = /(?<![\w.])(\d[\d  ]*(?:\.\d+)?)\s?(mm|m|kg|g|N|kN|L|mL|°)(?![\w/·²³])/;

/** The number and unit in a text, with the step that its last decimal stands for. */
function measureIn(text: string): { number: number; unit: string; step: number; text: string } | undefined {
  const found = measured.exec(text);
  if (!found) return undefined;
  const digits = (found[1] as string).replace(/\s/g, '');
  const step = 10 ** -(digits.split('.')[1]?.length ?? 0);
  return { number: Number(digits), unit: found[2] as string, step, text: found[0] };
}

/** The one value that a text of a drawing shows; undefined where none fits, or more than one. */
function shownBy(text: string, values: readonly ValueLine[]): ValueLine | undefined {
  const shown = measureIn(text);
  if (!shown) return undefined;
  const fitting = values.filter((v) => {
    const own = measureIn(v.metric);
    // The coarser of the two roundings decides.
    return (
      own?.text === v.metric.trim() &&
      own.unit === shown.unit &&
      Math.abs(own.number - shown.number) <= 0.5000001 * Math.max(own.step, shown.step)
    );
  });
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** A drawing is true to scale and has no axes; anything else is a chart. */
const isDrawing = (spec: ChartSpec): boolean =>
  (spec['view'] as { readonly stroke?: unknown } | undefined)?.stroke === null &&
  Array.isArray(spec['layer']);

/** The letters that the drawing has no words of its own for. */
function lettersBeside(spec: ChartSpec): string[] {
  const taken = new Set(JSON.stringify(spec['layer']).match(/(?<![A-Za-z])[A-Z](?![A-Za-z])/g));
  return 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.split('').filter((letter) => !taken.has(letter));
}

/**
 * A drawing of an example with letters in the place of its measures: `values` are the inputs and outputs that the example
 * gives. Undefined where it is no drawing, or shows none of them.
 */
export function letteredSketch(
  spec: ChartSpec | undefined,
  values: readonly ValueLine[],
): LetteredSketch | undefined {
  if (spec === undefined || !isDrawing(spec)) return undefined;
  const letters = new Map<string, SketchLetter>();
  const free = lettersBeside(spec);
  const lettered = (text: string): string => {
    const value = shownBy(text, values);
    const had = value && letters.get(value.name);
    const letter = had?.letter ?? free[letters.size];
    if (value === undefined || letter === undefined) return text;
    if (!had) letters.set(value.name, { letter, name: value.name, label: value.label });
    return text.replace(measured, letter);
  };
  const copied = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(copied);
    if (typeof part !== 'object' || part === null) return part;
    return Object.fromEntries(
      Object.entries(part).map(([key, value]) => [
        key,
        key === 'label' && typeof value === 'string' ? lettered(value) : copied(value),
      ]),
    );
  };
  // The titles tell the example's values.
  const { title: _title, description: _description, ...drawn } = spec;
  const sketch = copied(drawn) as ChartSpec;
  return letters.size === 0 ? undefined : { spec: sketch, letters: [...letters.values()] };
}

// The answer as somebody would say it at the bench: one sentence, with figures as a workshop says them.
import { roundedTo } from '../units/clean-number.js';
import { formatTime } from '../units/format-time.js';
import { formatQuantity } from '../units/format-quantity.js';
import type { Output, Outputs } from './output.js';
import type { Kind } from '../units/kind.js';
import type { ResultInternals } from './result-types.js';
import { capitalised } from '../units/capitalised.js';

const grouped = (n: number): string =>
  n >= 10_000 ? Math.round(n).toLocaleString('en-GB').replaceAll(',', ' ') : String(n);

/** Whole millimetres; half ones below 100 mm, fits in steps of 0.05 mm. */
function length(metres: number): string {
  const mm = metres * 1000;
  if (mm >= 20_000) return `${roundedTo(metres, 0.1)} m`;
  if (mm >= 100) return `${grouped(roundedTo(mm, 1))} mm`;
  return `${roundedTo(mm, mm >= 1 ? 0.5 : 0.05)} mm`;
}

function mass(kg: number): string {
  if (kg >= 10) return `${grouped(roundedTo(kg, 1))} kg`;
  return kg >= 1 ? `${roundedTo(kg, 0.1)} kg` : `${roundedTo(kg * 1000, kg >= 0.01 ? 1 : 0.1)} g`;
}

const percent = (share: number): string => `${roundedTo(share * 100, share >= 0.1 ? 1 : 0.1)} %`;

const sayings: Readonly<Record<string, (value: number) => string>> = {
  length,
  mass,
  time: formatTime,
  share: percent,
  humidity: percent,
  moisture: (m) => `${roundedTo(m * 100, 0.1)} %`,
  angle: (radians) => `${roundedTo((radians * 180) / Math.PI, 0.1)}°`,
};

/** One output as it is said, without its sign; the display's own form where it is shown in a unit of its own. */
export function saidValue(output: Output, raw: unknown, currency?: string): string {
  if (typeof raw === 'number' && output.kind !== 'count') {
    const say = output.unit === undefined ? sayings[output.kind] : undefined;
    if (say) return say(Math.abs(raw));
    if (output.kind !== 'money' && output.kind !== 'quantity')
      return unsigned(
        formatQuantity(
          { kind: output.kind as never, value: raw, ...(currency === undefined ? {} : { currency }) },
          { ...(output.unit === undefined ? {} : { unit: output.unit }), digits: 3 },
        ),
      );
  }
  return unsigned(output.format(raw, currency).metric);
}

const unsigned = (text: string): string =>
  text
    .replace(/^[−-]/, '')
    .replace(/ bf$/, ' board feet')
    .replace(/ m²\/L$/, ' m² a litre');
/** A figure of a kind as it is said, such as the new value of an input. */
export function saidFigure(kind: Kind, value: number): string {
  const say = sayings[kind];
  return say ? (value < 0 ? '−' : '') + say(Math.abs(value)) : formatQuantity({ kind, value }, { digits: 3 });
}

/** A pattern with `{name}` filled in by the output of that name. */
export function filledIn(
  pattern: string,
  outputs: Outputs,
  raw: Readonly<Record<string, unknown>>,
  currency?: string,
): string {
  return pattern.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const output = outputs[name];
    const value = raw[name];
    return output === undefined || value === undefined ? whole : saidValue(output, value, currency);
  });
}

/**
 * The answer in a sentence: the recipe's own text of that name, else its pattern with the outputs filled in; '' where it
 * has neither. Where the answer fails, the smallest change that mends it stands in a second one.
 */
export function spokenAnswer(a: ResultInternals): string {
  const own = a.raw['sentence'];
  const pattern = typeof own === 'string' ? own : a.pattern();
  if (pattern === undefined) return '';
  const said = typeof own === 'string' ? own : capitalised(filledIn(pattern, a.outputs, a.raw, a.currency));
  return [said, a.mend()].filter(Boolean).join(' ');
}

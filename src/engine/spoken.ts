// The answer as somebody would say it at the bench: one sentence, with figures as a workshop says them.
import { roundedTo } from '../units/clean-number.js';
import { formatTime } from '../units/format-time.js';
import { formatQuantity } from '../units/format-quantity.js';
import type { Output } from './output.js';
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
/**
 * The answer in one sentence: the recipe's own text of that name, else its pattern with `{name}` filled in by the output of
 * that name; '' where it has neither.
 */
export function spokenAnswer(a: ResultInternals): string {
  const own = a.raw['sentence'];
  if (typeof own === 'string') return own;
  const pattern = a.pattern();
  if (pattern === undefined) return '';
  return capitalised(
    pattern.replace(/\{(\w+)\}/g, (whole, name: string) => {
      const output = a.outputs[name];
      const raw = a.raw[name];
      return output === undefined || raw === undefined ? whole : saidValue(output, raw, a.currency);
    }),
  );
}

// Which units a person reads: one setting for results, charts, workings and errors.
import { InputError, inspectValue } from './input-error.js';
import { inches, number, pretty } from './format-quantity.js';
import { kinds, type Kind } from './kind.js';
import { unitOf, unitsOf } from './unit.js';

/** `both` shows metric first and inches after it; the other two show one system alone. */
export const unitSystems = ['metric', 'inches', 'both'] as const;
export type UnitSystem = (typeof unitSystems)[number];

let system: UnitSystem | undefined;
let saved: () => UnitSystem | undefined = () => undefined;

/** The setting: what was set, else what is saved under My shop, else `both`. */
export const unitSystem = (): UnitSystem => (system ??= saved() ?? 'both');

/** Where the setting comes from that nobody has set: asked once, when something is first shown. */
export function savedUnitsFrom(read: () => UnitSystem | undefined): void {
  saved = read;
}

/**
 * Sets the units of everything that is shown from now on: `setUnits('inches')`. What is calculated stays as it is.
 * @throws InputError for anything but metric, inches and both
 */
export function setUnits(to: UnitSystem): void {
  if (!unitSystems.includes(to))
    throw new InputError({
      field: 'units',
      message: `got ${inspectValue(to)}, takes one of ${unitSystems.join(', ')}`,
    });
  system = to;
}

/** Runs `show` in a system of units, and sets the former one again. */
export function withUnits<T>(to: UnitSystem, show: () => T): T {
  const before = unitSystem();
  setUnits(to);
  try {
    return show();
  } finally {
    system = before;
  }
}

/** Metric units as they stand in print, with the kind that tells their customary unit. */
const printed: readonly (readonly [string, Kind, string])[] = [
  ['mm⁴', 'secondMoment', 'mm4'],
  ['mm³', 'sectionModulus', 'mm3'],
  ['N/mm²', 'stress', 'N/mm2'],
  ['mm²', 'area', 'mm2'],
  ['cm²', 'area', 'cm2'],
  ['m²', 'area', 'm2'],
  ['m³', 'volume', 'm3'],
  ['kg/m³', 'density', 'kg/m3'],
  ['g/m²', 'applicationRate', 'g/m2'],
  ['m²/L', 'coverage', 'm2/L'],
  ['N/mm', 'lineLoad', 'N/mm'],
  ['N/m', 'lineLoad', 'N/m'],
  ['kN/m', 'lineLoad', 'kN/m'],
  ['N·m', 'moment', 'N m'],
  ['N m', 'moment', 'N m'],
  ['GPa', 'modulus', 'GPa'],
  ['MPa', 'stress', 'MPa'],
  ['kPa', 'pressure', 'kPa'],
  ['µm', 'thickness', 'um'],
  ['mm', 'length', 'mm'],
  ['m', 'length', 'm'],
  ['kg', 'mass', 'kg'],
  ['g', 'mass', 'g'],
  ['kN', 'force', 'kN'],
  ['N', 'force', 'N'],
  ['mL', 'liquid', 'mL'],
  ['L', 'liquid', 'L'],
  ['°C', 'temperature', 'degC'],
];
const known = printed.filter(([, kind, unit]) => {
  if (!Object.hasOwn(kinds, kind)) return false;
  return kinds[kind].inch.length > 0 && unitsOf(kind).includes(unit);
});
const byPrint = new Map(known.map(([text, kind, unit]) => [text, { kind, unit }]));

/** How a metric unit of a chart becomes a customary one: `shown = metric * factor + offset`. */
export interface UnitChange {
  readonly unit: string;
  readonly factor: number;
  readonly offset: number;
}

/** The change for a printed metric unit in the present setting; undefined where it stays. */
export function unitChange(text: string | undefined): UnitChange | undefined {
  const found = unitSystem() === 'inches' && text !== undefined ? byPrint.get(text) : undefined;
  if (!found) return undefined;
  const from = unitOf(found.kind, found.unit);
  // Small sizes keep the smaller unit: areas of sheets are square feet, of sections square inches.
  const customary = kinds[found.kind].inch;
  const [small = '', large = small] = customary;
  const to = unitOf(found.kind, ['m²', 'm³', 'L', 'kg'].includes(text as string) ? large : small);
  return {
    unit: pretty(to.name),
    factor: from.scale / to.scale,
    offset: (from.offset - to.offset) / to.scale,
  };
}

const figure = '[−-]?\\d[\\d\\u202f]*(?:\\.\\d+)?';
const unitsPattern = [...byPrint.keys()].sort((a, b) => b.length - a.length).join('|');
const before = '(?<![\\w.,/])';
const after = `[ \\u202f\\u00a0]?(${unitsPattern})(?![\\w²³/·])`;
/** One figure, or several that share the unit after the last: `45 x 95 mm`, `3 to 5 mm`. */
const measures = new RegExp(`${before}((?:${figure}\\s?(?:x|×|to|by|–)\\s?)*${figure})${after}`, 'gu');
/** One figure: in workings a cross multiplies. */
const single = new RegExp(`${before}(${figure})${after}`, 'gu');
const figures = new RegExp(figure, 'gu');
const inBrackets =
  / \([−-]?\d[^()]*?(?:\d (?:in|ft|lbf?|oz|psi|psf|mil|gal|US gal|US fl oz|US qt)(?![a-z])|°F)[^()]*\)/gu;

function customary(text: string, metric: string): string {
  const change = unitChange(metric);
  const value = Number(text.replaceAll('\u202f', '').replace('−', '-'));
  if (!change || !Number.isFinite(value)) return text;
  const shown = value * change.factor + change.offset;
  const said = change.unit === 'in' ? inches(shown).replace(/ in$/, '') : number(shown, 3);
  return said.replace(/^-/, '−');
}

/**
 * A text for people in the present setting: metric figures become customary ones, or a customary figure in brackets
 * behind a metric one goes. Unchanged while both are shown.
 */
export function inUnits(text: string): string {
  if (unitSystem() === 'both') return text;
  const alone = text.replace(inBrackets, '');
  return unitSystem() === 'metric' ? alone : turned(alone, measures);
}

function turned(text: string, pattern: RegExp): string {
  return text.replace(pattern, (whole, numbers: string, unit: string) => {
    const change = unitChange(unit);
    if (!change) return whole;
    return `${numbers.replace(figures, (n) => customary(n, unit))} ${change.unit}`;
  });
}

const lengthsAlone = /^(?:mm|m)$/;
const anyUnit = /(?<=\d[ \u202f\u00a0]?)(?:[a-zA-Zµ°%][\w°²³⁴/·µ]*)/gu;

/**
 * A line of workings in the present setting. One of lengths alone becomes inches; any other stays in the units of its
 * formula, whose constants go with them, and its result stands in customary units behind it.
 */
export function workingInUnits(line: string, empirical: boolean): string {
  if (unitSystem() !== 'inches') return inUnits(line);
  const units = line.match(anyUnit) ?? [];
  if (!empirical && units.every((u) => lengthsAlone.test(u))) return turned(line, single);
  const result = line.slice(line.lastIndexOf('=') + 1).trim();
  const shown = inUnits(result);
  return shown === result ? line : `${line} (${shown})`;
}

/** A value that is known in both systems, as the present setting shows it. */
export function valueInUnits<T extends { readonly metric: string; readonly inch: string }>(value: T): T {
  if (unitSystem() === 'both') return value;
  if (unitSystem() === 'metric') return { ...value, metric: inUnits(value.metric), inch: '' };
  return { ...value, metric: value.inch === '' ? inUnits(value.metric) : value.inch, inch: '' };
}

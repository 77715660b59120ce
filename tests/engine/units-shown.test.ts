// One system of units at a time: results, charts, workings and errors of every recipe.
import { afterEach, describe, expect, it } from 'vitest';
import { catalogue } from '../../src/recipes/catalogue.js';
import { resultInternals } from '../../src/engine/result.js';
import { resultParts, type ResultParts } from '../../src/engine/result-parts.js';
import { inUnits, setUnits, withUnits, workingInUnits } from '../../src/units/unit-system.js';

afterEach(() => setUnits('both'));

const textsOf = (p: ResultParts): string[] => [
  p.sentence,
  ...[...p.lines, ...p.more, ...p.given, ...p.assumed].flatMap((l) => [l.metric, l.inch]),
  ...p.tables.flatMap((t) => [...t.columns, ...t.rows.flat()]),
  ...[...p.cautions, ...p.notes].map((c) => c.text),
];

/** Every string of a chart that is drawn: titles, labels, names. */
function drawn(chart: unknown): string[] {
  if (typeof chart === 'string') return [chart];
  if (Array.isArray(chart)) return chart.flatMap(drawn);
  if (typeof chart !== 'object' || chart === null) return [];
  return Object.entries(chart).flatMap(([key, v]) =>
    [
      'text',
      'subtitle',
      'title',
      'label',
      'name',
      'values',
      'layer',
      'data',
      'encoding',
      'x',
      'y',
      'vconcat',
      'hconcat',
      'spec',
    ].includes(key)
      ? drawn(v)
      : [],
  );
}

const metric = /\d[ \u202f](?:mm|m|cm|kg|g|N|kN|kPa|MPa|GPa|mL|L|m²|mm²|m³|°C)(?![\w/²³⁴·])/u;
const customary = /\d[ \u202f](?:in|ft|lbf?|oz|psi|psf|mil|°F|US gal|US fl oz)(?![\w/²³])/u;
/** Sizes that the trade names in the other system whatever one measures with. */
const named: Readonly<Record<string, RegExp>> = {
  // A board foot, an inch of surface measure and a quarter of thickness are units of the tally.
  boardMeasure: /board|super|bf/,
  boardTally: /board|quarter|inch|×|x|rough|Rough/,
  gradeYield: /./,
  cutterMarks: /marks an inch/,
  bill: /\d in all/,
  // Drills and sections of a standard as they are named in print.
  screwHold: /^5\/64 in$/,
  halfLap: /size factor, 2 in/,
};

describe.each([
  ['inches', metric],
  ['metric', customary],
] as const)('in %s', (system, other) => {
  it.each(catalogue.map((r) => [r.name, r] as const))('%s', async (name, recipe) => {
    setUnits(system);
    const result = await recipe(recipe.example);
    const parts = resultParts(resultInternals(result)!);
    const allowed = (text: string): boolean => named[name]?.test(text) ?? false;
    const wrong = [...textsOf(parts), ...drawn(result.chart)].filter((t) => other.test(t) && !allowed(t));
    expect(wrong).toEqual([]);
    expect(parts.lines.every((l) => l.inch === '')).toBe(true);
    // The figures themselves stay as they are.
    expect(result.toCSV()).toBe(withUnits('both', () => result.toCSV()));
  });
});

describe('a text in a system', () => {
  it('turns figures with metric units into inches a rule can show, and shares of an inch finer below one', () => {
    setUnits('inches');
    // 25.4 mm to the inch: 903 mm is 35.551 in, 35 9/16; 12 mm is 0.4724 in, 15/32; 45 x 95 mm is 1 3/4 by 3 3/4.
    expect(inUnits('It is 903 mm wide.')).toBe('It is 35 9/16 in wide.');
    expect(inUnits('allow 12 mm')).toBe('allow 15/32 in');
    expect(inUnits('a rail of 45 x 95 mm')).toBe('a rail of 1 3/4 x 3 3/4 in');
    expect(inUnits('from 3 to 5 mm')).toBe('from 1/8 to 3/16 in');
    // 38 kg is 83.8 lb; 20 °C is 68 °F; 100 N is 22.5 lbf.
    expect(inUnits('38 kg, at 20 °C and 100 N')).toBe('38 lb, at 68 °F and 22.5 lbf'.replace('38', '83.8'));
    expect(inUnits('900 mm (35 7/16 in) is left')).toBe('35 7/16 in is left');
    expect(inUnits('2.6 mm/m, row 3, C24, 8 %')).toBe('2.6 mm/m, row 3, C24, 8 %');
  });
  it('drops what stands in brackets in metric, and nothing while both are shown', () => {
    expect(inUnits('900 mm (35 7/16 in) is left')).toBe('900 mm (35 7/16 in) is left');
    expect(withUnits('metric', () => inUnits('900 mm (35 7/16 in) and 20 °C (68 °F)'))).toBe(
      '900 mm and 20 °C',
    );
  });
  it('leaves the constants of a formula with the units they belong to', () => {
    setUnits('inches');
    expect(workingInUnits('d = 40 mm − 2 × 6 mm = 28 mm', false)).toBe(
      'd = 1 9/16 in − 2 × 1/4 in = 1 1/8 in',
    );
    expect(workingInUnits('T = 0.5 × 21 °C + 4 = 14.5 °C', true)).toBe(
      'T = 0.5 × 21 °C + 4 = 14.5 °C (58.1 °F)',
    );
  });
  it('refuses another system', () => {
    expect(() => setUnits('feet' as never)).toThrow(/units: got "feet", takes one of metric, inches, both/);
  });
});

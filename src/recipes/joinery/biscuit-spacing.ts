import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';
import { tableRows, type DataRow } from '../../materials/data-tables.js';
import { biscuitDrawing } from './biscuit-drawing.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });

// A millionth is taken off before rounding up, or 900/150 could come out one biscuit too many by the last binary digit.
const gaps = formula({
  symbol: 'n',
  result: variable('count', 'gaps between biscuits'),
  expression: 'max(0, ceil((L - 2 e) / s - 10^(-6)))',
  variables: {
    L: mm('length of the joint'),
    e: mm('from each end to the middle of the first biscuit'),
    s: mm('greatest spacing'),
  },
  basis: 'geometry',
});
const spaced = formula({
  symbol: 'g',
  result: mm('spacing, middle to middle'),
  expression: '(L - 2 e) / n',
  variables: {
    L: mm('length of the joint'),
    e: mm('from each end to the middle of the first biscuit'),
    n: variable('count', 'gaps'),
  },
  basis: 'geometry',
});
const radius = formula({
  symbol: 'r',
  result: mm('radius of the biscuit’s two arcs'),
  expression: '(l^2 + w^2) / (4 w)',
  variables: { l: mm('length of a biscuit'), w: mm('width of a biscuit') },
  basis: 'geometry',
});
const lens = formula({
  symbol: 'A',
  result: variable('area', 'glued face of a biscuit, both its sides', { unit: 'mm2' }),
  expression: '4 (r^2 * asin(l / (2 r)) - l / 2 * (r - w / 2))',
  variables: { r: mm('radius of its arcs'), l: mm('length of a biscuit'), w: mm('width of a biscuit') },
  basis: 'estimate',
});

export const biscuitSizes = ['0', '10', '20'] as const;

/** Where to cut for biscuits along a joint, evenly and not farther apart than wanted, and the glued face they add. */
export const biscuitSpacing = recipe({
  name: 'biscuitSpacing',
  title: 'Biscuits along a joint',
  topic: 'joinery',
  about:
    'Where the biscuits of a joint go, evenly spaced, how many there are and the glued face they add. Biscuits line a joint up; in an edge joint long grain to long grain the glue holds without them.',
  sources: [],
  inputs: {
    length: field.length({ symbol: 'L', label: 'length of the joint', above: '0 mm', max: '20 m' }),
    endDistance: field.length({
      symbol: 'e',
      label: 'end distance',
      help: 'From each end to the middle of the first biscuit.',
      above: '0 mm',
      max: '2 m',
      default: '60 mm',
    }),
    spacing: field.length({
      symbol: 's',
      label: 'greatest spacing',
      help: 'From middle to middle.',
      above: '0 mm',
      max: '2 m',
      default: '200 mm',
    }),
    size: field.choice(biscuitSizes, { label: 'size of biscuit', default: '20' }),
  },
  outputs: {
    count: out.count({ label: 'biscuits' }),
    positions: out.list(out.length({ label: 'middle of a biscuit' }), {
      label: 'positions',
      help: 'Middle of each biscuit from the left end.',
    }),
    spacing: out.length({ label: 'spacing', help: 'From middle to middle.', optional: true }),
    glueArea: out.area({ label: 'glued area', help: 'Glued face of all the biscuits.' }),
    slotDepth: out.length({
      label: 'slot depth',
      help: 'Depth of the slot in each part, with 1 mm to spare.',
    }),
    biscuitLength: out.length({ label: 'length of a biscuit' }),
  },
  formulas: [gaps, spaced, radius, lens],
  solve: (given, trace) => {
    // The sizes are the rows of the table.
    const [row] = tableRows('biscuits.various').filter((r) => r.text('size') === given.size) as [DataRow];
    const [l, w] = [(row.number('length_mm') as number) / 1000, (row.number('width_mm') as number) / 1000];
    trace.note(
      `Biscuit ${given.size}: ${row.text('length_mm')} by ${row.text('width_mm')} by ${row.text('thickness_mm')} mm.`,
      row.citation,
    );
    const free = given.length - 2 * given.endDistance;
    if (nanometres(given.endDistance) < nanometres(l / 2))
      throw new InputError({
        field: 'endDistance',
        message: `got ${(given.endDistance * 1000).toFixed(1)} mm, takes at least half a biscuit, ${(l * 500).toFixed(1)} mm, or it shows at the end`,
      });
    if (nanometres(free) < 0)
      throw new InputError({
        field: 'length',
        message: `got ${(given.length * 1000).toFixed(1)} mm, takes at least twice the end distance, ${(given.endDistance * 2000).toFixed(1)} mm`,
      });
    const n = trace.evaluate(gaps, { L: given.length, e: given.endDistance, s: given.spacing });
    const g = n > 0 ? trace.evaluate(spaced, { L: given.length, e: given.endDistance, n }) : undefined;
    const apart = g ?? Infinity;
    if (nanometres(apart) < nanometres(l + 0.005))
      throw new InputError({
        field: 'spacing',
        message: `got ${(given.spacing * 1000).toFixed(1)} mm, which sets biscuits of ${(l * 1000).toFixed(0)} mm ${(apart * 1000).toFixed(1)} mm apart: takes a spacing that leaves wood between their slots`,
      });
    const r = trace.evaluate(radius, { l, w });
    const A = trace.evaluate(lens, { r, l, w });
    const positions = Array.from({ length: n + 1 }, (_, i) =>
      g === undefined ? given.length / 2 : given.endDistance + i * g,
    );
    return {
      count: n + 1,
      positions,
      spacing: g,
      glueArea: (n + 1) * A,
      slotDepth: w / 2 + 0.001,
      biscuitLength: l,
    };
  },
  cautions: (given) => [
    danger(
      'keep both hands behind the blade and clamp the work; let the blade stop before it leaves the slot',
    ),
    note(
      '150 to 250 mm between biscuits is common practice; glue the slots and not the biscuits alone, and clamp before they swell',
    ),
    ...(given.size === '20'
      ? [note('sources differ on the length of a size 20 biscuit, 56 or 60 mm: measure yours')]
      : []),
  ],
  chart: (given, answer) => biscuitDrawing({ ...given, ...answer }),
  sentence: 'Set {count} biscuits, one every {spacing}.',
  example: { length: '1950 mm', endDistance: '75 mm', spacing: '225 mm', size: '20' },
});

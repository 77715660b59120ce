import { danger, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { Refusal } from '../../quantities/refusal.js';
import { nanometres } from '../../recipe/nanometre.js';
import { tableRows, type DataRow } from '../../timber/tables.js';
import { biscuitPicture } from './biscuit-picture.js';

const mm = (says: string) => letter('length', says, { in: 'mm' });

// A millionth is taken off before rounding up, or 900/150 could come out one biscuit too many by the last binary digit.
const gaps = formula({
  symbol: 'n',
  gives: letter('count', 'gaps between biscuits'),
  text: 'max(0, ceil((L - 2 e) / s - 10^(-6)))',
  where: {
    L: mm('length of the joint'),
    e: mm('from each end to the middle of the first biscuit'),
    s: mm('greatest spacing'),
  },
  basis: 'geometry',
});
const spaced = formula({
  symbol: 'g',
  gives: mm('spacing, middle to middle'),
  text: '(L - 2 e) / n',
  where: {
    L: mm('length of the joint'),
    e: mm('from each end to the middle of the first biscuit'),
    n: letter('count', 'gaps'),
  },
  basis: 'geometry',
});
const radius = formula({
  symbol: 'r',
  gives: mm('radius of the biscuit’s two arcs'),
  text: '(l^2 + w^2) / (4 w)',
  where: { l: mm('length of a biscuit'), w: mm('width of a biscuit') },
  basis: 'geometry',
});
const lens = formula({
  symbol: 'A',
  gives: letter('area', 'glued face of a biscuit, both its sides', { in: 'mm2' }),
  text: '4 (r^2 * asin(l / (2 r)) - l / 2 * (r - w / 2))',
  where: { r: mm('radius of its arcs'), l: mm('length of a biscuit'), w: mm('width of a biscuit') },
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
    length: field.length({ symbol: 'L', says: 'length of the joint', above: '0 mm', max: '20 m' }),
    endDistance: field.length({
      symbol: 'e',
      says: 'from each end to the middle of the first biscuit',
      above: '0 mm',
      max: '2 m',
      default: '60 mm',
    }),
    spacing: field.length({
      symbol: 's',
      says: 'greatest spacing, middle to middle',
      above: '0 mm',
      max: '2 m',
      default: '200 mm',
    }),
    size: field.choice(biscuitSizes, { says: 'size of biscuit', default: '20' }),
  },
  outputs: {
    count: out.count({ says: 'biscuits' }),
    positions: out.list(out.length({ says: 'middle of a biscuit' }), {
      says: 'middle of each biscuit from the left end',
    }),
    spacing: out.length({ says: 'spacing, middle to middle', optional: true }),
    glueArea: out.area({ says: 'glued face of all the biscuits' }),
    slotDepth: out.length({ says: 'depth of the slot in each part, with 1 mm of room' }),
    biscuitLength: out.length({ says: 'length of a biscuit' }),
  },
  formulas: [gaps, spaced, radius, lens],
  solve: (given, work) => {
    // The sizes are the rows of the table.
    const [row] = tableRows('biscuits.various').filter((r) => r.text('size') === given.size) as [DataRow];
    const [l, w] = [(row.number('length_mm') as number) / 1000, (row.number('width_mm') as number) / 1000];
    work.say(
      `Biscuit ${given.size}: ${row.text('length_mm')} by ${row.text('width_mm')} by ${row.text('thickness_mm')} mm.`,
      row.citation,
    );
    const free = given.length - 2 * given.endDistance;
    if (nanometres(given.endDistance) < nanometres(l / 2))
      throw new Refusal({
        field: 'endDistance',
        says: `got ${(given.endDistance * 1000).toFixed(1)} mm, takes at least half a biscuit, ${(l * 500).toFixed(1)} mm, or it shows at the end`,
      });
    if (nanometres(free) < 0)
      throw new Refusal({
        field: 'length',
        says: `got ${(given.length * 1000).toFixed(1)} mm, takes at least twice the end distance, ${(given.endDistance * 2000).toFixed(1)} mm`,
      });
    const n = work.apply(gaps, { L: given.length, e: given.endDistance, s: given.spacing });
    const g = n > 0 ? work.apply(spaced, { L: given.length, e: given.endDistance, n }) : undefined;
    const apart = g ?? Infinity;
    if (nanometres(apart) < nanometres(l + 0.005))
      throw new Refusal({
        field: 'spacing',
        says: `got ${(given.spacing * 1000).toFixed(1)} mm, which sets biscuits of ${(l * 1000).toFixed(0)} mm ${(apart * 1000).toFixed(1)} mm apart: takes a spacing that leaves wood between their slots`,
      });
    const r = work.apply(radius, { l, w });
    const A = work.apply(lens, { r, l, w });
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
  chart: (given, answer) => biscuitPicture({ ...given, ...answer }),
  example: { length: '1950 mm', endDistance: '75 mm', spacing: '225 mm', size: '20' },
});

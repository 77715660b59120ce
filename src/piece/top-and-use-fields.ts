// What a description says of the top, of how the piece is used, and of the pile it is made from.
import { field, type Parsed } from '../engine/field.js';
import { cuttingPlan } from '../recipes/stock/cutting-plan.js';
import { topFromPile } from '../recipes/stock/top-from-pile.js';
import { tableField } from '../engine/table-field.js';
import { servicePlaces, useCategories } from '../materials/working-stress/use-category.js';
import { stabilityPieces } from '../recipes/rails/stability.js';
import { sagLimitField } from '../recipes/rails/sag-limit.js';
import { climateField } from '../recipes/moisture/climate-field.js';
import { optionalField } from './optional-field.js';
import { woodField } from './wood-field.js';

type Size = `${number} mm` | `${number} m`;
const length = (label: string, most: Size = '20 m') => field.length({ label, above: '0 mm', max: most });
const allowance = (label: string, usual: Size) =>
  field.length({ label, min: '0 mm', max: '500 mm', default: usual });

export const topFields = {
  length: length('Length'),
  width: length('Width'),
  thickness: length('Thickness', '500 mm'),
  timber: woodField({ label: 'Timber', default: 'unknown softwood' }),
  examined: field.flag({ label: 'Looked over for knots, grain, holes and rot', default: false }),
  cut: field.choice(['flat-sawn', 'quarter-sawn', 'rift-sawn', 'mixed'], {
    label: 'Cut',
    default: 'flat-sawn',
  }),
  grain: field.choice(['along', 'across'], { label: 'Grain direction', default: 'along' }),
  lay: field.choice(['flat', 'on edge', 'either'], { label: 'How the strips lie', default: 'either' }),
  strips: field.group(
    {
      width: length('Rough width of a strip', '500 mm'),
      jointing: allowance('Taken off in jointing', '3 mm'),
    },
    { label: 'Strips of one width', optional: true },
  ),
  slabs: field.record(
    field.group({ strips: field.count({ label: 'Strips in it', min: 1, max: 1000 }) }, { label: 'slab' }),
    { label: 'Slabs glued first', optional: true },
  ),
  gluing: tableField(
    {
      glues: field.text({ label: 'Slabs glued in this stage' }),
      clamps: field.count({ label: 'Clamps used', min: 1, max: 200, optional: true }),
    },
    { label: 'Stages of gluing', optional: true, most: 100 },
  ),
  slabThicknesses: field.list(field.length({ label: 'thickness', above: '0 mm', max: '500 mm' }), {
    label: 'Thicknesses of the slabs out of the clamps',
    optional: true,
    most: 100,
  }),
  trim: allowance('Kept for trimming to width', '10 mm'),
  spareEnds: allowance('Spare length', '40 mm'),
  flattening: allowance('Taken off in flattening, both faces', '3 mm'),
  ends: field.choice(['square', 'waterfall'], { label: 'Ends', default: 'square' }),
  endHeight: field.length({ label: 'Height of a waterfall end', above: '0 mm', max: '3 m', optional: true }),
  spline: field.group(
    {
      thickness: length('Thickness', '50 mm'),
      width: length('Width', '200 mm'),
      fromInside: length('From the inside of the mitre', '500 mm'),
    },
    { label: 'Spline in the mitre', optional: true },
  ),
  mass: field.mass({ label: 'Mass, weighed', above: '0 kg', max: '2000 kg', optional: true }),
} as const;
export type Top = Parsed<typeof topFields>;

export const useFields = {
  category: field.choice(useCategories, { label: 'Category of use', optional: true }),
  place: field.choice(servicePlaces, { label: 'Place', default: 'heated room' }),
  climate: optionalField(climateField('Air over the year')),
  moisture: field.moisture({
    label: 'Moisture of the wood when made',
    min: '2 %',
    max: '28 %',
    default: '12 %',
  }),
  goods: field.quantity('areaLoad', {
    label: 'Goods on the top',
    min: '0 kPa',
    max: '20 kPa',
    default: '1.5 kPa',
  }),
  person: field.force({ label: 'Somebody sitting on it', min: '0 N', max: '5 kN', default: '1 kN' }),
  leaning: field.force({ label: 'Somebody leaning on the edge', min: '0 N', max: '5 kN', default: '400 N' }),
  push: field.force({ label: 'Push along the top', min: '0 N', max: '2 kN', default: '100 N' }),
  sagLimit: sagLimitField({ label: 'Allowed sag', default: 'L/300' }),
  swayLimit: field.length({
    label: 'Allowed sway under the push',
    above: '0 mm',
    max: '200 mm',
    default: '5 mm',
  }),
  standsFree: field.flag({ label: 'Stands free, not fixed to wall or floor', default: true }),
  lifters: field.count({ label: 'People who lift it', min: 1, max: 12, default: 2 }),
  liftEach: field.mass({ label: 'What each lifts', above: '1 kg', max: '60 kg', default: '25 kg' }),
} as const;
export type Use = Parsed<typeof useFields>;

export const pileFields = {
  survey: optionalField(topFromPile.inputs.boards),
  plane: allowance('Planed off each face', '1 mm'),
  jointing: allowance('Taken off in jointing', '3 mm'),
  leastPiece: allowance('Shortest piece of a row', '250 mm'),
  stagger: allowance('Least stagger of end joints', '150 mm'),
  battens: optionalField(cuttingPlan.inputs.stock),
  timeLimit: field.time({ label: 'Time for each search', above: '0.05 s', max: '10 min', default: '4 s' }),
} as const;
export type Pile = Parsed<typeof pileFields>;

/** The kinds of furniture whose stability is checked. */
export const kindField = field.choice(stabilityPieces, { label: 'Kind of furniture' });

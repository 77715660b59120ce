// What a description says of the shop: its machines, its glue and clamps, its finishes and its prices.
import { field, type Parsed } from '../engine/field.js';
import { linesField } from '../recipes/bill/bill-lines.js';
import { linePriceField } from '../recipes/bill/line-quantity.js';
import { solidField } from '../recipes/rails/section.js';
import { optionalField } from './optional-field.js';
import { woodField } from './wood-field.js';

type Size = `${number} mm` | `${number} m`;
const size = (label: string, usual: Size, most: Size = '5 m') =>
  field.length({ label, min: '0 mm', max: most, default: usual });

export const shopFields = {
  thicknesser: size('Widest board for the thicknesser', '300 mm'),
  depthPerPass: field.length({ label: 'Depth of a pass', above: '0 mm', max: '10 mm', default: '0.5 mm' }),
  feed: field.quantity('speed', {
    label: 'Feed of the thicknesser',
    above: '0 m/min',
    max: '60 m/min',
    default: '6 m/min',
  }),
  spindleSpeed: field.rotation({
    label: 'Speed of the cutter block',
    above: '100 rpm',
    max: '30000 rpm',
    optional: true,
  }),
  knives: field.count({ label: 'Knives in the block', min: 1, max: 12, default: 2 }),
  handling: field.time({
    label: 'Handling of a piece in a pass',
    min: '0 s',
    max: '30 min',
    default: '40 s',
  }),
  kerf: size('Kerf of the saw', '3 mm', '20 mm'),
  trimEachEnd: size('Trimmed off each end of a batten', '15 mm', '1 m'),
  tape: field.length({ label: 'Error of a reading', above: '0 mm', max: '20 mm', default: '0.5 mm' }),
  bagSize: field.liquid({ label: 'Bag of the extractor', above: '1 L', max: '2000 L', default: '100 L' }),
} as const;
export type Shop = Parsed<typeof shopFields>;

export const gluingFields = {
  spread: field.applicationRate({
    label: 'Spread of the glue',
    above: '10 g/m2',
    max: '1000 g/m2',
    default: '180 g/m2',
  }),
  waste: field.share({ label: 'Glue wasted', min: '0 %', max: '200 %', default: '15 %' }),
  openTime: field.time({ label: 'Open time', above: '0 s', max: '4 h', default: '10 min' }),
  perJoint: field.time({ label: 'Time for a joint', above: '0 s', max: '1 h', default: '50 s' }),
  clampsUp: field.time({ label: 'Time for the clamps', min: '0 s', max: '2 h', default: '3 min' }),
  hold: field.time({ label: 'Time in the clamps', min: '0 s', max: '48 h', default: '60 min' }),
  temperature: field.temperature({
    label: 'Temperature of the shop',
    min: '0 degC',
    max: '45 degC',
    optional: true,
  }),
  clampForce: field.force({ label: 'Force of a clamp', above: '50 N', max: '50 kN', default: '5 kN' }),
  clamps: field.count({ label: 'Clamps in the shop', min: 0, max: 500, optional: true }),
  reach: field.length({ label: 'Reach of the clamps', above: '0 mm', max: '10 m', optional: true }),
  pad: size('Thickness of a clamp pad', '25 mm', '200 mm'),
  padLength: size('Length of a clamp pad', '60 mm', '1 m'),
  caul: solidField({ label: 'Section of a caul', optional: true }),
  caulTimber: woodField({ label: 'Timber of the cauls', default: 'unknown softwood' }),
} as const;
export type Gluing = Parsed<typeof gluingFields>;

export const finishFields = {
  surface: field.choice(['top', 'frame', 'all'], { label: 'Surface' }),
  coats: field.count({ label: 'Coats', min: 1, max: 20 }),
  coverage: field.coverage({ label: 'Coverage', above: '0.5 m2/L', max: '60 m2/L' }),
  loss: field.share({ label: 'Lost in application', min: '0 %', max: '90 %', default: '10 %' }),
  mix: field.record(field.ratio({ label: 'parts', above: 0, max: 1000 }), {
    label: 'Parts of the mix',
    optional: true,
  }),
  solids: field.share({ label: 'Solids by volume', above: '0 %', max: '100 %', optional: true }),
  film: field.thickness({ label: 'Dry film wanted', above: '1 um', max: '2000 um', optional: true }),
  voc: field.concentration({ label: 'VOC as supplied', min: '0 g/L', max: '1000 g/L', optional: true }),
  vocLimit: field.concentration({ label: 'Limit of VOC', above: '0 g/L', max: '1000 g/L', optional: true }),
  thinner: field.ratio({ label: 'Parts of thinner', min: 0, max: 10, default: 0 }),
  prices: field.record(linePriceField({ label: 'price' }), {
    label: 'Price of each part',
    optional: true,
  }),
} as const;
export type Finish = Parsed<typeof finishFields>;

export const costFields = {
  hourly: linePriceField({ label: 'Price of an hour', optional: true }),
  hours: field.record(field.time({ label: 'time', min: '0 s', max: '2000 h' }), {
    label: 'Hours at the bench',
    optional: true,
  }),
  glue: linePriceField({ label: 'Price of the glue', optional: true }),
  battens: linePriceField({ label: 'Price of the battens', optional: true }),
  boards: linePriceField({ label: 'Price of the boards', optional: true }),
  screws: linePriceField({ label: 'Price of a screw', optional: true }),
  lines: optionalField(linesField),
  forgotten: field.share({ label: 'For what was forgotten', min: '0 %', max: '200 %', default: '10 %' }),
  tax: field.share({ label: 'Sales tax', min: '0 %', max: '100 %', default: '0 %' }),
  budget: field.money({ label: 'Budget', above: 0, max: 10_000_000, optional: true }),
  hoursWanted: field.time({ label: 'Hours there are', above: '0 s', max: '5000 h', optional: true }),
  statedMass: field.mass({ label: 'Mass as stated', above: '0 kg', max: '5000 kg', optional: true }),
  statedCost: field.money({ label: 'Cost as stated', above: 0, max: 10_000_000, optional: true }),
} as const;
export type Costs = Parsed<typeof costFields>;

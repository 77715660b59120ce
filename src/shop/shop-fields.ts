import { field } from '../engine/field.js';
import { tableField } from '../engine/table-field.js';

const optional = true;

/** What a shop has and does as a rule: each may be left out. What is given fills the forms and `shop()` in notebooks. */
export const shopFields = {
  thicknesserWidth: field.length({
    label: 'Widest the thicknesser takes',
    above: '0 mm',
    max: '2 m',
    optional,
  }),
  thicknesserLeast: field.length({
    label: 'Thinnest the thicknesser planes',
    above: '0 mm',
    max: '200 mm',
    optional,
  }),
  sawKerf: field.length({ label: 'Saw kerf', above: '0 mm', max: '20 mm', optional }),
  jointing: field.length({
    label: 'Taken off in jointing: both edges together',
    min: '0 mm',
    max: '50 mm',
    optional,
  }),
  clamps: tableField(
    {
      kind: field.text({ label: 'kind' }),
      opens: field.length({ label: 'opens', above: '0 mm', max: '20 m', optional }),
      count: field.count({ label: 'how many', min: 0, max: 10_000 }),
    },
    { label: 'Your clamps', optional },
  ),
  clampForce: field.text({ label: 'Force of one clamp: or its kind', optional }),
  glue: field.text({ label: 'Usual glue', optional }),
  glueOpenTime: field.time({ label: 'Open time of the glue', above: '0 s', optional }),
  glueClosedTime: field.time({ label: 'Closed time of the glue', above: '0 s', optional }),
  glueHold: field.time({ label: 'Time in the clamps', above: '0 s', optional }),
  finish: field.text({ label: 'Usual finish', optional }),
  finishCoverage: field.coverage({ label: 'Coverage of the finish', above: '0 m2/L', optional }),
  finishTin: field.liquid({ label: 'Tin of finish', above: '0 mL', optional }),
  timber: field.text({ label: 'Usual timber', optional }),
  moistureNow: field.moisture({ label: 'Moisture of your timber', min: '0 %', max: '300 %', optional }),
  moistureLater: field.moisture({ label: 'Moisture where pieces end up', min: '0 %', max: '40 %', optional }),
  place: field.text({ label: 'Place: for the air over a year', optional }),
  timberPrice: field.text({ label: 'Price of timber: such as 450/m3', optional }),
  hourly: field.text({ label: 'Price of an hour', optional }),
  units: field.choice(['metric', 'inches', 'both'], { label: 'Units', optional }),
};

/** The names of what a shop may hold. */
export type ShopKey = keyof typeof shopFields;

/** A shop as it is written in its file: plain data, nothing secret. */
export type ShopValues = { readonly [K in ShopKey]?: unknown };

import { field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { clampFields } from './clamp-fields.js';

/** What gluing several slabs at once, or one small panel both ways, takes. */
export const slabStackFields = {
  way: field.choice(['stack', 'two-way'], {
    label: 'way',
    help: 'Slabs one upon another with release paper between, or one panel with edges and faces pressed at once.',
    default: 'stack',
  }),
  slabs: tableField(
    {
      length: field.length({ label: 'length', above: '0 mm', max: '20 m' }),
      width: field.length({ label: 'width', above: '0 mm', max: '5 m' }),
      thickness: field.length({ label: 'thickness', above: '0 mm', max: '500 mm' }),
      glueLines: field.count({
        label: 'glue lines',
        help: 'Glue lines inside this slab that are spread now.',
        min: 1,
        max: 100,
        default: 1,
      }),
      thinnest: field.length({
        label: 'thinnest place',
        help: 'Thickness at its thinnest place, where it is uneven.',
        above: '0 mm',
        max: '500 mm',
        optional: true,
      }),
    },
    { label: 'slabs', help: 'The slabs of one glue-up with a row for each.', most: 20 },
  ),
  pressure: clampFields.pressure,
  timberKind: clampFields.timberKind,
  clampForce: clampFields.clampForce,
  caulThickness: field.length({
    label: 'caul thickness',
    help: 'Depth of the cauls under and over the stack, in the direction of the press.',
    min: '5 mm',
    max: '500 mm',
    default: '60 mm',
  }),
  head: clampFields.head,
  reach: clampFields.reach,
  offset: clampFields.offset,
  perLine: field.time({
    symbol: 'p',
    label: 'time per line',
    help: 'Time to spread one glue line and lay it together.',
    min: '1 s',
    max: '2 h',
  }),
  openTime: field.time({
    symbol: 'O',
    label: 'open time',
    help: 'How long spread glue stays wet in the open, from its data sheet; at 20 °C when a temperature is given.',
    above: '0 s',
    max: '24 h',
  }),
  closedTime: field.time({
    label: 'closed time',
    help: 'How long a closed joint may wait for pressure; the open time where none is given.',
    above: '0 s',
    max: '24 h',
    optional: true,
  }),
  clampsUp: field.time({
    symbol: 'c',
    label: 'clamping time',
    help: 'Time to set all clamps.',
    min: '0 s',
    max: '2 h',
    default: '3 min',
  }),
  temperature: field.temperature({
    symbol: 'T',
    label: 'temperature',
    help: 'Of air and timber; the times are then taken as printed for 20 °C and corrected.',
    min: '0 degC',
    max: '45 degC',
    optional: true,
  }),
} as const;

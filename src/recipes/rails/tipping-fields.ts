import { field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { stabilityFields } from './stability-checks.js';

/** What the stability of a piece takes. */
export const tippingFields = {
  parts: tableField(
    {
      name: field.text({ label: 'what it is', optional: true }),
      mass: field.mass({ label: 'its mass', above: '0 kg', max: '5000 kg' }),
      position: field.length({
        label: 'position',
        help: 'Of its middle, from the front feet backward; in front of them is negative.',
        min: '-5 m',
        max: '5 m',
      }),
      height: field.length({
        label: 'height',
        help: 'Of its middle, over the floor.',
        min: '0 m',
        max: '10 m',
        optional: true,
      }),
    },
    { label: 'parts', help: 'Parts of the piece and what stands on them.', most: 500 },
  ),
  base: field.length({
    label: 'base',
    help: 'From the front feet to the back feet.',
    above: '0 mm',
    max: '10 m',
  }),
  overhang: field.length({
    label: 'front overhang',
    help: 'How far the front edge stands out before the front feet.',
    min: '0 mm',
    max: '3 m',
    default: '0 mm',
  }),
  backOverhang: field.length({
    label: 'back overhang',
    help: 'How far the back edge stands out behind the back feet.',
    min: '0 mm',
    max: '3 m',
    default: '0 mm',
  }),
  edgeLoad: field.force({
    label: 'edge load',
    help: 'Load down on the edge, front or back.',
    min: '0 N',
    max: '100 kN',
    default: '0 N',
  }),
  push: field.force({
    label: 'push',
    help: 'Level push, forward or back.',
    min: '0 N',
    max: '100 kN',
    default: '0 N',
  }),
  pushHeight: field.length({
    label: 'push height',
    help: 'Height of the push over the floor.',
    above: '0 mm',
    max: '10 m',
    default: '900 mm',
  }),
  factor: field.ratio({
    label: 'safety factor',
    help: 'How many times the restoring moment should be the overturning moment, for the forces given.',
    min: 1,
    max: 10,
    default: 1.5,
  }),
  ...stabilityFields,
} as const;

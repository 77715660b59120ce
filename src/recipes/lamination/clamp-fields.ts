import { field } from '../../engine/field.js';
import { tableField } from '../../engine/table-field.js';
import { measuredClamps, timberKinds } from './gluing-data.js';

/** What the plan of a glue-up takes. */
export const clampFields = {
  length: field.length({ symbol: 'L', label: 'length of the joint', above: '0 mm', max: '50 m' }),
  jointHeight: field.length({
    symbol: 'h',
    label: 'joint height',
    help: 'Thickness of the slab at an edge joint.',
    above: '0 mm',
    max: '5 m',
  }),
  pressure: field.pressure({
    symbol: 'p',
    label: 'pressure',
    help: 'Clamping pressure on the glue line; or give the kind of timber.',
    above: '0 kPa',
    max: '10 MPa',
    optional: true,
  }),
  timberKind: field.choice(timberKinds, {
    label: 'kind of timber',
    help: 'Kind of timber and glue whose printed pressure is taken, at the upper end; or give the pressure.',
    optional: true,
  }),
  clampForce: field.either(
    [
      field.choice(measuredClamps, { label: 'a kind of clamp' }),
      field.force({ label: 'force', above: '0 N', max: '100 kN' }),
    ],
    { label: 'clamp', help: 'Force that one clamp gives, or a kind of clamp whose force was measured.' },
  ),
  outerWidth: field.length({
    symbol: 'w',
    label: 'edge board width',
    help: 'From the edge that is pressed to the first glue line.',
    above: '0 mm',
    max: '2 m',
  }),
  pad: field.length({
    symbol: 't',
    label: 'pad thickness',
    help: 'Thickness of the pad or batten between clamp and edge.',
    min: '0 mm',
    max: '500 mm',
    default: '0 mm',
  }),
  padLength: field.length({
    symbol: 'a',
    label: 'pad length',
    help: 'Length of the pad along the joint; 0 for a batten that runs all along.',
    min: '0 mm',
    max: '2 m',
    default: '0 mm',
  }),
  head: field.length({
    symbol: 'k',
    label: 'clamp head width',
    help: 'Width of the clamp head along the joint.',
    min: '0 mm',
    max: '500 mm',
    default: '0 mm',
  }),
  reach: field.length({
    label: 'clamp reach',
    help: 'Opening of a bar clamp, or throat of a screw clamp.',
    above: '0 mm',
    max: '20 m',
    optional: true,
  }),
  needReach: field.length({
    label: 'reach needed',
    help: 'Width of the slab with both pads.',
    above: '0 mm',
    max: '20 m',
    optional: true,
  }),
  slabWidth: field.length({
    symbol: 'W',
    label: 'slab width',
    help: 'Between the clamp heads, to check that the slab stays flat.',
    above: '0 mm',
    max: '20 m',
    optional: true,
  }),
  offset: field.length({
    symbol: 'e',
    label: 'force offset',
    help: 'How far the force is off the middle of the thickness.',
    min: '0 mm',
    max: '500 mm',
    default: '2 mm',
  }),
  acrossModulus: field.modulus({
    symbol: 'E_x',
    label: 'modulus across grain',
    help: 'Modulus of elasticity across the grain.',
    above: '0 MPa',
    max: '10 GPa',
    default: '300 MPa',
  }),
  cauls: field.flag({ label: 'cauls', help: 'Whether cauls across the slab hold it flat.', default: false }),
  owned: tableField(
    {
      kind: field.choice(measuredClamps, { label: 'kind of clamp', optional: true }),
      force: field.force({
        label: 'force',
        help: 'Force of one clamp, in place of a kind.',
        above: '0 N',
        max: '100 kN',
        optional: true,
      }),
      count: field.count({
        label: 'count',
        help: 'How many clamps of this kind there are.',
        min: 1,
        max: 200,
        default: 1,
      }),
      reach: field.length({
        label: 'reach',
        help: 'How far clamps of this kind reach.',
        above: '0 mm',
        max: '20 m',
        optional: true,
      }),
    },
    {
      label: 'clamps owned',
      help: 'The clamps in the workshop with a row for each kind.',
      most: 50,
      optional: true,
    },
  ),
} as const;

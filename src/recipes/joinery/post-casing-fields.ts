import { field } from '../../engine/field.js';
import { timberField } from '../../materials/timber-field.js';

const size = (label: string, help: string) => field.length({ label, help, above: '0 mm', max: '2 m' });

/** What the casing of a post or a frame's leg takes. */
export const postCasingFields = {
  width: size('width of the post', 'Measured at its widest place, across the front.'),
  depth: size('depth of the post', 'Measured at its deepest place, from front to back.'),
  height: field.length({
    symbol: 'H',
    label: 'height',
    help: 'Height of the post that is boxed in.',
    above: '0 mm',
    max: '10 m',
  }),
  thickness: field.length({ symbol: 't', label: 'board thickness', above: '0 mm', max: '100 mm' }),
  corner: field.choice(['butt', 'mitred', 'rebated'], {
    label: 'corner',
    help: 'How the boards meet: front over the sides, mitred, or the sides let into a rebate of the front.',
    default: 'butt',
  }),
  rebate: field.length({
    symbol: 'r',
    label: 'rebate depth',
    help: 'How far the sides go into the front; half of its thickness where none is given.',
    above: '0 mm',
    max: '100 mm',
    optional: true,
  }),
  clearance: field.length({
    symbol: 'c',
    label: 'clearance',
    help: 'Room between post and boards on each side.',
    min: '0 mm',
    max: '100 mm',
    default: '3 mm',
  }),
  uneven: field.length({
    symbol: 'u',
    label: 'uneven post',
    help: 'How far the post leans, bows or twists over its height, in all.',
    min: '0 mm',
    max: '200 mm',
    default: '0 mm',
  }),
  chamfer: field.length({
    symbol: 'd',
    label: 'chamfer',
    help: 'Taken off either face at every outside corner, at 45 degrees.',
    min: '0 mm',
    max: '100 mm',
    default: '0 mm',
  }),
  floorGap: field.length({
    label: 'floor gap',
    help: 'Room under the boards, so that they do not stand in wet.',
    min: '0 mm',
    max: '200 mm',
    default: '3 mm',
  }),
  trim: field.length({
    label: 'trim',
    help: 'Left longer on each board, to be cut to the post.',
    min: '0 mm',
    max: '500 mm',
    default: '20 mm',
  }),
  posts: field.count({ symbol: 'N', label: 'posts', min: 1, max: 1000, default: 1 }),
  timber: timberField({
    label: 'timber',
    help: 'Species of the boards, for how much they move.',
    needs: 'movement',
    optional: true,
  }),
  moistureChange: field.share({
    label: 'moisture change',
    help: 'How far the moisture of the boards goes down or up over a year, in points of moisture.',
    min: '0 %',
    max: '20 %',
    default: '4 %',
  }),
} as const;

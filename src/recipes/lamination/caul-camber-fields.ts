import { field } from '../../engine/field.js';
import { stiffWoodField } from '../../materials/timber-field.js';

/** What the camber of a caul takes. */
export const caulCamberFields = {
  length: field.length({
    symbol: 'L',
    label: 'length',
    help: 'Length of the caul between its two clamps.',
    above: '0 mm',
    max: '5 m',
  }),
  width: field.length({
    symbol: 'b',
    label: 'width',
    help: 'Width of the caul across its pressing face.',
    min: '5 mm',
    max: '500 mm',
  }),
  depth: field.length({
    symbol: 'd',
    label: 'depth',
    help: 'Depth of the caul in the direction it bends.',
    min: '5 mm',
    max: '500 mm',
  }),
  timber: stiffWoodField({ label: 'timber', help: 'Timber or grade of the caul.' }),
  examined: field.flag({
    label: 'examined',
    help: 'Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.',
    default: false,
  }),
  clampForceEach: field.force({
    symbol: 'F',
    label: 'clamp force',
    help: 'Force of the clamp at each end.',
    above: '0 N',
    max: '50 kN',
  }),
} as const;

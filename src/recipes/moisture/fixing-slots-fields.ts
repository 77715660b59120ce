import { field } from '../../engine/field.js';
import { timberField } from '../../materials/timber-field.js';
import { cutField, optionalStateField } from './wood-state.js';

/** What the slots of a top’s fixings take. */
export const fixingSlotsFields = {
  width: field.length({
    label: 'width of top',
    help: 'Width across the grain.',
    above: '0 mm',
    max: '100 m',
  }),
  positions: field.list(
    field.length({
      label: 'position',
      help: 'Distance of a fixing from one edge.',
      min: '0 mm',
      max: '100 m',
    }),
    { label: 'positions', help: 'Distances of the fixings from one edge.', optional: true, most: 2000 },
  ),
  spacing: field.length({
    label: 'spacing',
    help: 'Distance between fixings counted from the held line; give it in place of positions.',
    above: '0 mm',
    max: '10 m',
    optional: true,
  }),
  edgeDistance: field.length({
    label: 'edge distance',
    help: 'Least distance of a fixing from the edge; used with a spacing.',
    min: '0 mm',
    max: '1 m',
    default: '30 mm',
  }),
  fixedAt: field.either(
    [
      field.choice(['centre', 'edge'], { label: 'middle or edge' }),
      field.length({ label: 'distance from the edge', min: '0 mm', max: '100 m' }),
    ],
    {
      label: 'held at',
      help: 'Centre, edge (the one measured from), or a distance from that edge.',
      default: 'centre',
    },
  ),
  movement: field.length({
    label: 'movement',
    help: 'Movement of the whole width; give it in place of timber and moistures.',
    min: '-1 m',
    max: '1 m',
    optional: true,
  }),
  timber: timberField({
    needs: ['movement', 'shrinkage'],
    label: 'timber',
    help: 'A species, or a group for a range.',
    optional: true,
  }),
  cut: cutField({
    label: 'cut',
    help: 'How it was sawn, or the angle of the rings to the face.',
    default: 'flat-sawn',
  }),
  from: optionalStateField('starting moisture content'),
  to: optionalStateField('final moisture content'),
  allowFor: field.choice(['middle', 'most'], {
    label: 'slots for',
    help: 'Slots for the middle figure, or for the most that is expected.',
    default: 'middle',
  }),
  fastenerDiameter: field.length({
    label: 'fastener diameter',
    help: 'Diameter of the screw or bolt.',
    above: '0 mm',
    max: '100 mm',
    default: '5 mm',
  }),
  margin: field.length({
    label: 'spare',
    help: 'Free length at each end of a slot.',
    min: '0 mm',
    max: '100 mm',
    default: '1 mm',
  }),
} as const;

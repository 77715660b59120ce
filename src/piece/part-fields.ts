// What a description says of the parts of a piece, its joints and its fixings.
import { field, type Parsed } from '../engine/field.js';
import { solidField } from '../recipes/rails/section.js';
import { screwField } from '../recipes/joinery/screw-size.js';
import { woodField } from './wood-field.js';

const place = (label: string) =>
  field.list(field.length({ label: 'position', min: '-10 m', max: '20 m' }), {
    label,
    optional: true,
    most: 200,
  });
const position = (label: string) => field.length({ label, min: '-10 m', max: '20 m', optional: true });

export const roles = ['rail', 'cross rail', 'leg', 'foot', 'brace', 'foot rail'] as const;
export type Role = (typeof roles)[number];
export const orientations = ['on edge', 'flat', 'wide face to the front', 'wide face to the end'] as const;
export type Orientation = (typeof orientations)[number];

/**
 * A group of parts alike. Places: along from the left end of the top, across from its front edge, heights from the floor.
 */
export const partFields = {
  role: field.choice(roles, { label: 'Role' }),
  section: solidField({ label: 'Section' }),
  orientation: field.choice(orientations, { label: 'Orientation', optional: true }),
  timber: woodField({ label: 'Timber', default: 'unknown softwood' }),
  examined: field.flag({ label: 'Looked over for knots, grain, holes and rot', default: false }),
  along: place('Axes along the piece'),
  across: place('Axes across the piece'),
  from: position('Beginning'),
  to: position('End'),
  level: position('Height of the axis'),
  rise: field.length({ label: 'Rise from one end to the other', min: '0 mm', max: '5 m', default: '0 mm' }),
  recess: field.length({ label: 'Depth let into its uprights', min: '0 mm', max: '200 mm', default: '0 mm' }),
  reaches: field.choice(['top', 'rails'], { label: 'What the upper end of a leg meets', default: 'top' }),
  mass: field.mass({ label: 'Mass of one, weighed', above: '0 kg', max: '500 kg', optional: true }),
} as const;
export type Part = Parsed<typeof partFields>;

export const jointKinds = [
  'half lap',
  'tee halving',
  'corner halving',
  'mortise and tenon',
  'screwed butt',
] as const;
export const cutFaces = ['top and bottom', 'front and back', 'ends'] as const;

export const jointFields = {
  between: field.list(field.text({ label: 'part' }), { label: 'The two parts', least: 2, most: 2 }),
  kind: field.choice(jointKinds, { label: 'Kind of joint' }),
  cutFrom: field.choice(cutFaces, { label: 'Faces it is cut from', optional: true }),
  depth: field.length({ label: 'Depth of the cut', above: '0 mm', max: '500 mm', optional: true }),
  width: field.length({ label: 'Width of the cut or tenon', above: '0 mm', max: '500 mm', optional: true }),
  screws: field.count({ label: 'Screws in each joint', min: 0, max: 20, default: 0 }),
} as const;
export type Joint = Parsed<typeof jointFields>;

export const fixingFields = {
  to: field.text({ label: 'Part that holds it' }),
  holds: field.text({ label: 'Part that is held', default: 'top' }),
  kind: field.choice(['fixed', 'slotted'], { label: 'Fixed or slotted', default: 'fixed' }),
  at: place('Places along the part that holds'),
  screw: screwField({ label: 'Screw diameter' }),
  length: field.length({ label: 'Screw length', above: '5 mm', max: '400 mm' }),
  through: field.length({
    label: 'Wood under the head, after counterboring',
    min: '0 mm',
    max: '300 mm',
    default: '20 mm',
  }),
  count: field.count({ label: 'Screws at each place', min: 1, max: 20, default: 1 }),
  into: woodField({ label: 'Timber the point goes into', optional: true }),
} as const;
export type Fixing = Parsed<typeof fixingFields>;

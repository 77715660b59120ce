// What the recipe takes.
import { field } from '../../../engine/field.js';
import type { Amount } from '../../../units/unit-scales.js';
import { pileField } from './pile-survey.js';

const size = (label: string, least: Amount<'length'>, most: Amount<'length'>) =>
  field.length({ label, above: least, max: most });
const setting = (label: string, most: Amount<'length'>, usual: Amount<'length'>) =>
  field.length({ label, min: '0 mm', max: most, default: usual });

export const topInputs = {
  boards: pileField,
  topLength: size('length of the top', '0 mm', '20 m'),
  width: size('width of the top', '0 mm', '200 m'),
  thickness: field.length({
    label: 'thickness',
    help: 'Leave it out for a top as thick as the pile allows.',
    min: '5 mm',
    max: '500 mm',
    optional: true,
  }),
  lay: field.choice(['flat', 'on edge', 'either'], {
    label: 'lay',
    help: "A board's width across the top, its thickness across the top, or whichever is better.",
    default: 'either',
  }),
  layers: field.count({ label: 'layers', help: 'Layers glued face to face.', min: 1, max: 4, default: 1 }),
  spare: setting('squaring allowance', '500 mm', '40 mm'),
  plane: setting('planed off each face', '20 mm', '1 mm'),
  jointing: setting('jointing allowance', '50 mm', '3 mm'),
  slabJointing: setting('slab jointing allowance', '50 mm', '3 mm'),
  kerf: setting('saw kerf', '20 mm', '3 mm'),
  widestSlab: field.length({
    label: 'thicknesser width',
    help: 'Widest board that the thicknesser takes.',
    above: '0 mm',
    max: '5 m',
    default: '300 mm',
  }),
  clampReach: field.length({
    label: 'clamp opening',
    help: 'Greatest opening of the clamps owned.',
    above: '0 mm',
    max: '10 m',
    optional: true,
  }),
  leastRow: setting('least row width', '1 m', '20 mm'),
  leastPiece: field.length({
    label: 'least piece',
    help: 'Least length of a piece that shows.',
    min: '20 mm',
    max: '5 m',
    default: '250 mm',
  }),
  stagger: setting('stagger', '5 m', '150 mm'),
  maxJoints: field.count({
    label: 'joints per row',
    help: 'Most joints in one row.',
    min: 0,
    max: 20,
    default: 3,
  }),
  rip: field.choice(['no', 'yes'], {
    label: 'rip flat boards',
    help: 'Whether a board laid flat may be ripped into several strips; boards on edge always are.',
    default: 'no',
  }),
  tones: field.choice(['mixed', 'apart'], {
    label: 'tones',
    help: 'Mixed, or apart: one tone to a row and rows of a tone together.',
    default: 'mixed',
  }),
  showFaces: field.choice(['one', 'both'], {
    label: 'faces that show',
    help: 'With one, faults marked "back" stay in a top laid flat.',
    default: 'both',
  }),
  leastOffcut: field.length({
    label: 'least offcut',
    help: 'Least offcut worth keeping; leave it out to take the least piece.',
    above: '0 mm',
    max: '5 m',
    optional: true,
  }),
  curves: field.flag({
    label: 'curves',
    help: 'Whether to find the curves over thickness and stagger.',
    default: true,
  }),
  whatIfs: field.flag({
    label: 'what-ifs',
    help: 'Whether to find what small changes would give.',
    default: true,
  }),
  rounds: field.count({
    label: 'rounds',
    help: 'Rounds of the search; leave it out to go by the size of the pile.',
    min: 1,
    max: 1_000_000_000,
    optional: true,
  }),
  timeLimit: field.time({
    label: 'time limit',
    help: 'Longest time to search, a last stop for slow machines.',
    min: '50 ms',
    max: '30 min',
    default: '60 s',
  }),
  seed: field.count({ label: 'seed of the search', min: 0, max: 4_000_000_000, default: 1 }),
} as const;

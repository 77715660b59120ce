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
    label: 'thickness of the top; left out: as thick as the pile allows',
    min: '5 mm',
    max: '500 mm',
    optional: true,
  }),
  lay: field.choice(['flat', 'on edge', 'either'], {
    label:
      "how strips lie: a board's width across the top, its thickness across the top, or whichever is better",
    default: 'either',
  }),
  layers: field.count({ label: 'layers glued face to face', min: 1, max: 4, default: 1 }),
  spare: setting('spare length for squaring both ends', '500 mm', '40 mm'),
  plane: setting('planed off each face', '20 mm', '1 mm'),
  jointing: setting('taken off each row in jointing, both edges together', '50 mm', '3 mm'),
  slabJointing: setting(
    'taken off each slab in jointing after the thicknesser, both edges together',
    '50 mm',
    '3 mm',
  ),
  kerf: setting('saw kerf', '20 mm', '3 mm'),
  widestSlab: field.length({
    label: 'widest board the thicknesser takes',
    above: '0 mm',
    max: '5 m',
    default: '300 mm',
  }),
  clampReach: field.length({
    label: 'greatest opening of the clamps owned',
    above: '0 mm',
    max: '10 m',
    optional: true,
  }),
  leastRow: setting('least width of a row once jointed', '1 m', '20 mm'),
  leastPiece: field.length({
    label: 'least length of a piece that shows',
    min: '20 mm',
    max: '5 m',
    default: '250 mm',
  }),
  stagger: setting('least distance of joints in neighbouring rows', '5 m', '150 mm'),
  maxJoints: field.count({ label: 'most joints in a row', min: 0, max: 20, default: 3 }),
  rip: field.choice(['no', 'yes'], {
    label: 'whether a board laid flat may be ripped into several strips; strips on edge always are',
    default: 'no',
  }),
  tones: field.choice(['mixed', 'apart'], {
    label: 'tones mixed, or apart: a row of one tone, and rows of a tone together',
    default: 'mixed',
  }),
  showFaces: field.choice(['one', 'both'], {
    label: 'faces of the top that show; with one, faults marked "back" stay in a top laid flat',
    default: 'both',
  }),
  leastOffcut: field.length({
    label: 'least offcut worth keeping; left out: the least piece',
    above: '0 mm',
    max: '5 m',
    optional: true,
  }),
  curves: field.flag({ label: 'whether to find the curves over thickness and stagger', default: true }),
  whatIfs: field.flag({ label: 'whether to find what small changes would free', default: true }),
  rounds: field.count({
    label: 'rounds of the search; left out: by the size of the pile',
    min: 1,
    max: 1_000_000_000,
    optional: true,
  }),
  timeLimit: field.time({
    label: 'a last stop for slow machines: longest to search',
    min: '50 ms',
    max: '30 min',
    default: '60 s',
  }),
  seed: field.count({ label: 'seed of the search', min: 0, max: 4_000_000_000, default: 1 }),
} as const;

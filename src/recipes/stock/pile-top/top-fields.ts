// What the recipe takes and gives.
import { field } from '../../../engine/field.js';
import { out } from '../../../engine/output.js';
import type { Amount } from '../../../units/unit-scales.js';
import { pileField } from './pile-survey.js';

const size = (label: string, least: Amount<'length'>, most: Amount<'length'>) =>
  field.length({ label, above: least, max: most });
const setting = (label: string, most: Amount<'length'>, usual: Amount<'length'>) =>
  field.length({ label, min: '0 mm', max: most, default: usual });

export const topInputs = {
  boards: pileField,
  topLength: size('length of the top', '0 mm', '20 m'),
  width: size('width of the top', '0 mm', '5 m'),
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
    label: 'widest slab that the thicknesser and the clamps take',
    above: '0 mm',
    max: '5 m',
    default: '300 mm',
  }),
  leastRow: setting('least width of a row once jointed', '1 m', '20 mm'),
  leastPiece: field.length({
    label: 'least length of a piece that shows',
    min: '50 mm',
    max: '5 m',
    default: '250 mm',
  }),
  stagger: setting('least distance of joints in neighbouring rows', '5 m', '150 mm'),
  maxJoints: field.count({ label: 'most joints in a row', min: 0, max: 20, default: 3 }),
  timeLimit: field.time({ label: 'longest to search', min: '50 ms', max: '30 min', default: '4 s' }),
  seed: field.count({ label: 'seed of the search', min: 0, max: 4_000_000_000, default: 1 }),
} as const;

export const topOutputs = {
  verdict: out.text({ label: 'is the pile enough?' }),
  sentence: out.text({ label: 'in one sentence' }),
  thickness: out.length({ label: 'thickness of the top' }),
  foundWidth: out.length({ label: 'width found' }),
  widthBound: out.length({ label: 'no lay-up can be wider' }),
  lay: out.text({ label: 'how the strips lie' }),
  rowCount: out.count({ label: 'rows' }),
  boardsCut: out.count({ label: 'boards cut' }),
  timber: out.volume({ label: 'timber used, less offcuts kept' }),
  worstStagger: out.length({ label: 'least stagger', optional: true }),
  rows: out.table(
    {
      row: out.count({ label: 'row' }),
      width: out.length({ label: 'width' }),
      pieces: out.text({ label: 'pieces from left to right, mm' }),
      joints: out.text({ label: 'joints from the left end, mm' }),
      slab: out.count({ label: 'slab' }),
    },
    { label: 'Rows' },
  ),
  cuts: out.table(
    {
      board: out.text({ label: 'board' }),
      dock: out.text({ label: 'clear between, mm' }),
      rip: out.text({ label: 'rip' }),
      cuts: out.text({ label: 'pieces, from the left end, mm' }),
    },
    { label: 'Board by board' },
  ),
  slabs: out.table(
    {
      slab: out.count({ label: 'slab' }),
      rows: out.text({ label: 'rows' }),
      width: out.length({ label: 'width' }),
    },
    { label: 'Slabs, glued first' },
  ),
  pieces: out.table(
    {
      row: out.count({ label: 'row' }),
      piece: out.text({ label: 'piece' }),
      board: out.text({ label: 'board' }),
      copy: out.count({ label: 'copy' }),
      boardFrom: out.length({ label: 'on the board, from its left end' }),
      stripFrom: out.length({ label: 'strip from' }),
      stripTo: out.length({ label: 'strip to' }),
      start: out.length({ label: 'from the left end' }),
      length: out.length({ label: 'length' }),
      width: out.length({ label: 'width' }),
    },
    { label: 'Pieces' },
  ),
  leftOver: out.table(
    {
      board: out.text({ label: 'board' }),
      length: out.length({ label: 'clear length' }),
      width: out.length({ label: 'width' }),
      thickness: out.length({ label: 'thickness' }),
      count: out.count({ label: 'count' }),
      whole: out.flag({ label: 'untouched' }),
    },
    { label: 'Left over' },
  ),
  curve: out.table(
    {
      thickness: out.length({ label: 'thickness' }),
      lay: out.text({ label: 'strips' }),
      width: out.length({ label: 'width found' }),
      bound: out.length({ label: 'no wider than' }),
    },
    { label: 'Thicknesses tried' },
  ),
  useless: out.table(
    {
      board: out.text({ label: 'board' }),
      count: out.count({ label: 'count' }),
      reason: out.text({ label: 'reason' }),
    },
    { label: 'Boards that give nothing', optional: true },
  ),
} as const;

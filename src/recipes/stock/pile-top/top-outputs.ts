// What the recipe gives.
import { out } from '../../../engine/output.js';

export const topOutputs = {
  verdict: out.text({ label: 'is the pile enough?' }),
  sentence: out.text({ label: 'in one sentence' }),
  thickness: out.length({ label: 'thickness of the top' }),
  foundWidth: out.length({ label: 'width found' }),
  widthBound: out.length({ label: 'width bound', help: 'No lay-up can be wider.' }),
  thicknessBound: out.length({
    label: 'thickness bound',
    help: 'No top of this width can be thicker.',
    optional: true,
  }),
  proof: out.text({ label: 'how it is proved' }),
  complete: out.flag({ label: 'search done in full' }),
  lay: out.text({ label: 'how the strips lie' }),
  rowCount: out.count({ label: 'rows' }),
  boardsCut: out.count({ label: 'boards cut' }),
  timber: out.volume({ label: 'timber used', help: 'Timber used less the offcuts kept.' }),
  timberBound: out.volume({
    label: 'timber bound',
    help: 'No top of this width takes less timber.',
    optional: true,
  }),
  surplus: out.length({ label: 'edge trim', help: 'Width ripped off an edge row.', optional: true }),
  missing: out.text({ label: 'what is missing', optional: true }),
  worstStagger: out.length({ label: 'least stagger', optional: true }),
  layerStagger: out.length({
    label: 'least layer stagger',
    help: 'Least distance of joints between layers.',
    optional: true,
  }),
  bendingShare: out.share({
    label: 'jointless width',
    help: 'Share of the width without joints at the worst section.',
  }),
  thicknessForBending: out.length({
    label: 'bending thickness',
    help: 'Thickness to calculate sag and bending with.',
  }),
  rows: out.table(
    {
      row: out.count({ label: 'row' }),
      width: out.length({ label: 'width' }),
      pieces: out.text({ label: 'pieces (mm)', help: 'From left to right.' }),
      joints: out.text({ label: 'joints (mm)', help: 'From the left end.' }),
      slab: out.count({ label: 'slab' }),
      layer: out.count({ label: 'layer' }),
    },
    { label: 'Rows' },
  ),
  cuts: out.table(
    {
      board: out.text({ label: 'board' }),
      dock: out.text({ label: 'clear between, mm' }),
      rip: out.text({ label: 'rip' }),
      cuts: out.text({ label: 'pieces (mm)', help: 'From the left end.' }),
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
  glueUps: out.table(
    {
      stage: out.count({ label: 'stage' }),
      what: out.text({ label: 'glued' }),
      opening: out.length({ label: 'clamps open to' }),
      clamps: out.count({ label: 'clamps' }),
    },
    { label: 'Glue-ups' },
  ),
  setups: out.table(
    {
      step: out.count({ label: 'step' }),
      machine: out.text({ label: 'cut' }),
      setting: out.length({ label: 'setting' }),
      what: out.text({ label: 'boards or pieces' }),
    },
    { label: 'Stops and fences', help: 'Each set once.' },
  ),
  pieces: out.table(
    {
      row: out.count({ label: 'row' }),
      piece: out.text({ label: 'piece' }),
      board: out.text({ label: 'board' }),
      copy: out.count({ label: 'copy' }),
      boardFrom: out.length({ label: 'position', help: 'On the board, from its left end.' }),
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
    { label: 'Width over thickness' },
  ),
  staggerCurve: out.table(
    {
      stagger: out.length({ label: 'stagger' }),
      width: out.length({ label: 'width found' }),
      waste: out.share({ label: 'waste' }),
    },
    { label: 'Waste over stagger', optional: true },
  ),
  whatIfs: out.table(
    {
      change: out.text({ label: 'change' }),
      width: out.length({ label: 'width found' }),
      timber: out.volume({ label: 'timber used' }),
      frees: out.text({ label: 'frees' }),
    },
    { label: 'What small changes free', optional: true },
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

import { out } from '../../../engine/output.js';
import { objectiveOutput } from './objective.js';

/** The outputs of a cutting plan: totals, the boards with their cuts, the stock used, and what is missing. */
export const planOutputs = {
  boardsUsed: out.count({ label: 'boards cut' }),
  waste: out.share({
    label: 'waste share',
    help: 'Share of the boards that is neither part nor offcut worth keeping.',
  }),
  achieved: objectiveOutput('what the plan takes'),
  lowerBound: objectiveOutput('lower bound'),
  optimal: out.flag({ label: 'proved', help: 'Whether the plan is proved to be the best.' }),
  stockLength: out.length({
    label: 'length cut',
    help: 'Length of the boards that the plan cuts.',
    unit: 'm',
  }),
  partsLength: out.length({ label: 'length of the parts', unit: 'm' }),
  wasteLength: out.length({
    label: 'wasted length',
    help: 'Length lost in kerfs, trims and short offcuts.',
    unit: 'm',
  }),
  kept: out.length({
    label: 'offcuts kept',
    help: 'Length of the offcuts worth keeping.',
    unit: 'm',
    optional: true,
  }),
  totalCost: out.money({ label: 'cost', help: 'Cost of the boards that the plan cuts.', optional: true }),
  plan: out.table(
    {
      board: out.count({ label: 'board' }),
      stock: out.text({ label: 'stock' }),
      stockLength: out.length({ label: 'length of the board' }),
      section: out.text({ label: 'section', optional: true }),
      pieces: out.table(
        {
          name: out.text({ label: 'part' }),
          length: out.length({ label: 'length' }),
          from: out.length({ label: 'from the left end' }),
        },
        { label: 'parts', help: 'Parts in the order they lie on the board.' },
      ),
      offcut: out.length({ label: 'left at the end' }),
      keep: out.flag({ label: 'worth keeping', help: 'Whether the offcut is long enough to keep.' }),
    },
    { label: 'Boards and cuts', help: 'Part, length and distance from the left end.' },
  ),
  stockUsed: out.table(
    {
      stock: out.text({ label: 'stock' }),
      length: out.length({ label: 'length of a board' }),
      there: out.text({ label: 'boards there are' }),
      used: out.count({ label: 'boards cut' }),
    },
    { label: 'Boards used', help: 'How many boards there were, and how many the plan cuts.' },
  ),
  missing: out.table(
    {
      name: out.text({ label: 'part' }),
      length: out.length({ label: 'length' }),
      count: out.count({ label: 'count' }),
    },
    { label: 'Missing parts', help: 'Parts that the stock does not give.', optional: true },
  ),
  boardsShort: out.count({
    label: 'boards to add',
    help: 'Further boards of the longest kind needed for the missing parts.',
    optional: true,
  }),
} as const;

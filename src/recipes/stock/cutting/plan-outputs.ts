import { out } from '../../../engine/output.js';
import { objectiveOutput } from './objective.js';

/** The outputs of a cutting plan: totals, the boards with their cuts, the stock used, and what is missing. */
export const planOutputs = {
  boardsUsed: out.count({ label: 'boards cut' }),
  waste: out.share({ label: 'share of the boards that is neither part nor offcut worth keeping' }),
  achieved: objectiveOutput('what the plan takes'),
  lowerBound: objectiveOutput('what no plan can go below'),
  optimal: out.flag({ label: 'whether the plan is proved to be the best' }),
  stockLength: out.length({ label: 'length of the boards cut', unit: 'm' }),
  partsLength: out.length({ label: 'length of the parts', unit: 'm' }),
  wasteLength: out.length({ label: 'length wasted in kerfs, trims and short offcuts', unit: 'm' }),
  kept: out.length({ label: 'length of the offcuts worth keeping', unit: 'm', optional: true }),
  totalCost: out.money({ label: 'cost of the boards cut', optional: true }),
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
        { label: 'parts in the order they lie' },
      ),
      offcut: out.length({ label: 'left at the end' }),
      keep: out.flag({ label: 'whether it is worth keeping' }),
    },
    { label: 'The boards and their cuts (part, length, distance from the left end)' },
  ),
  stockUsed: out.table(
    {
      stock: out.text({ label: 'stock' }),
      length: out.length({ label: 'length of a board' }),
      there: out.text({ label: 'boards there are' }),
      used: out.count({ label: 'boards cut' }),
    },
    { label: 'How many boards there were, and how many the plan cuts' },
  ),
  missing: out.table(
    {
      name: out.text({ label: 'part' }),
      length: out.length({ label: 'length' }),
      count: out.count({ label: 'count' }),
    },
    { label: 'Parts that the stock does not give', optional: true },
  ),
  boardsShort: out.count({
    label: 'further boards of the longest kind wanted for the missing parts',
    optional: true,
  }),
} as const;

import { danger, note, type Caution } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { asyncRecipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { tableField } from '../../engine/table-field.js';
import type { Trace } from '../../engine/trace.js';
import { aimOf, sectionsOf, type CuttingGiven } from './cutting/sections.js';
import { objectiveKinds } from './cutting/objective.js';
import { layOut, type Layout } from './cutting/layout.js';
import { planDrawing } from './cutting/plan-drawing.js';
import { planOutputs } from './cutting/plan-outputs.js';
import type { Aim } from './cutting/scale.js';

const wasteShare = formula({
  symbol: 'w',
  result: variable('share', 'waste'),
  expression: '(S - P - K) / S',
  variables: {
    S: variable('length', 'length of the boards cut'),
    P: variable('length', 'length of the parts'),
    K: variable('length', 'length of the offcuts worth keeping'),
  },
  basis: 'definition',
});

const sectionColumns = {
  width: field.length({ label: 'width of the section', above: '0 mm', max: '3 m', optional: true }),
  thickness: field.length({ label: 'thickness of the section', above: '0 mm', max: '1 m', optional: true }),
} as const;

/**
 * Which parts to cut from which boards so that the fewest boards, the least stock or the least money goes: patterns by
 * linear programming, rounded by search, closed by an integer programme. Says "optimal" only when a bound proves it. For
 * straight crosscuts of clear stock; dock faults first, and give what is left as stock.
 */
export const cuttingPlan = asyncRecipe({
  name: 'cuttingPlan',
  title: 'Cutting plan',
  topic: 'stock',
  about:
    'Which parts to cut from which boards so that the fewest boards, the least stock or the least cost results, with a proven bound beside it. For straight crosscuts of clear stock; dock faults first.',
  sources: [
    cite('gilmore-gomory-1961', 'patterns by linear programming'),
    cite('martello-toth-1990', 'bounds on the boards needed'),
  ],
  inputs: {
    parts: tableField(
      {
        name: field.text({ label: 'name of the part', optional: true }),
        length: field.length({ label: 'length of the part', min: '0.1 mm', max: '1 km' }),
        count: field.count({ label: 'parts of this kind', min: 1, max: 100_000, default: 1 }),
        ...sectionColumns,
      },
      { label: 'parts', help: 'One row for each part to cut.', most: 2000 },
    ),
    stock: tableField(
      {
        name: field.text({ label: 'name of the stock', optional: true }),
        length: field.length({ label: 'length of a board', min: '0.1 mm', max: '1 km' }),
        count: field.either(
          [
            field.count({ label: 'number', min: 1, max: 100_000 }),
            field.choice(['as needed'], { label: 'as many as needed' }),
          ],
          {
            label: 'count',
            help: 'One without a count, or "as needed" for as many as the plan takes.',
            default: 1,
          },
        ),
        cost: field.money({ label: 'cost of a board', min: 0, max: 1e6, optional: true }),
        ...sectionColumns,
      },
      { label: 'stock', help: 'One row for each length of board to cut from.', most: 500 },
    ),
    kerf: field.length({ label: 'saw kerf', min: '0 mm', max: '50 mm', default: '3 mm' }),
    trimEachEnd: field.length({
      label: 'trim, each end',
      help: 'Docked from each end of every board before parts are cut.',
      min: '0 mm',
      max: '5 m',
      default: '0 mm',
    }),
    keepOffcut: field.length({
      label: 'least offcut worth keeping',
      above: '0 mm',
      max: '100 m',
      optional: true,
    }),
    aim: field.choice(['boards', 'length', 'cost'], {
      label: 'minimise',
      help: 'What to keep least; leave it out for cost where costs are given, length where lengths differ, else boards.',
      optional: true,
    }),
    timeLimit: field.time({ label: 'longest to search', min: '0.05 s', max: '2 h', default: '20 s' }),
  },
  outputs: planOutputs,
  formulas: [wasteShare],
  search: async (given, trace) => {
    const aim = aimOf(given);
    const layouts = await layoutsOf(given, aim, trace);
    const boards = layouts.flatMap((l) => l.boards);
    const sum = (of: (l: Layout) => number): number => layouts.reduce((s, l) => s + of(l), 0);
    const stockLength = boards.reduce((s, b) => s + b.stockLength, 0);
    const partsLength = boards.reduce((s, b) => s + b.pieces.reduce((t, p) => t + p.length, 0), 0);
    const keeps = (offcut: number): boolean => offcut >= (given.keepOffcut ?? Infinity) - 1e-9;
    const kept = boards.reduce((s, b) => s + (keeps(b.offcut) ? b.offcut : 0), 0);
    const missing = layouts.flatMap((l) => l.missing);
    const kind = objectiveKinds[aim];
    trace.note(
      `A part of length l takes l + kerf of a board of length L - 2 trims + kerf: a part that ends at the board’s end needs no last cut. Made least: ${{ boards: 'the number of boards', length: 'the length of stock', cost: 'the cost of stock' }[aim]}.`,
    );
    for (const l of layouts) trace.note(`${l.label ? `${l.label}: ` : ''}${l.steps.join('; ')}.`);
    return {
      boardsUsed: boards.length,
      waste: trace.evaluate(wasteShare, { S: stockLength, P: partsLength, K: kept }),
      achieved: { kind, value: sum((l) => l.achieved) },
      lowerBound: {
        kind,
        value: Math.min(
          sum((l) => l.bound),
          sum((l) => l.achieved),
        ),
      },
      optimal: layouts.every((l) => l.proven) && missing.length === 0,
      stockLength,
      partsLength,
      wasteLength: stockLength - partsLength - kept,
      ...(given.keepOffcut === undefined ? {} : { kept }),
      ...(given.stock.some((s) => s.cost !== undefined)
        ? { totalCost: boards.reduce((s, b) => s + b.cost, 0) }
        : {}),
      plan: boards.map((b, i) => ({
        board: i + 1,
        stock: b.stock,
        stockLength: b.stockLength,
        ...(b.section === undefined ? {} : { section: b.section }),
        pieces: b.pieces,
        offcut: b.offcut,
        keep: keeps(b.offcut),
      })),
      stockUsed: given.stock.map((s) => stockRow(s, boards)),
      ...(missing.length > 0 ? { missing, boardsShort: sum((l) => l.boardsShort) } : {}),
    };
  },
  cautions: (given, answer): Caution[] => [
    ...(answer.missing
      ? [
          note(
            `the stock does not give every part: ${answer.missing.reduce((s, m) => s + m.count, 0)} missing; ${answer.boardsShort} more of the longest boards would do`,
          ),
        ]
      : []),
    ...(!answer.optimal && !answer.missing
      ? [
          note(
            'the search ended before it could prove this plan the best: no plan can go below the bound beside it; more time may close the gap',
          ),
        ]
      : []),
    ...(given.parts.some((p) => p.length < 0.15)
      ? [
          danger(
            'cut parts shorter than about 150 mm (common practice) against a stop with a hold-down, or with a hand saw: never hold them by hand at a power saw',
          ),
        ]
      : []),
    danger(
      'let no offcut lie between blade and fence or stop when you cut to length; wait until the blade stands still before you clear it',
    ),
    note(
      'the plan knows lengths and sections, not knots, splits or grain: mark faults first and give the clear lengths as stock',
    ),
  ],
  chart: (given, answer) => planDrawing(answer.plan, given.trimEachEnd, given.kerf),
  sentence: (_given, out) =>
    out.boardsShort === undefined
      ? `Cut {boardsUsed} ${out.boardsUsed === 1 ? 'board' : 'boards'}; {waste} of them is waste.`
      : 'The stock does not give every part: get {boardsShort} more of the longest boards.',
  mending: {
    fails: (_given, out) => out.boardsShort !== undefined,
    saidBySentence: 'the boards to get are an output of the search itself',
  },
  example: {
    parts: [
      { name: 'leg', length: '860 mm', count: 4 },
      { name: 'long rail', length: '1780 mm', count: 2 },
      { name: 'short rail', length: '520 mm', count: 4 },
      { name: 'brace', length: '690 mm', count: 4 },
    ],
    stock: [
      { name: 'batten, long', length: '2700 mm', count: 4 },
      { name: 'batten, short', length: '2100 mm', count: 6 },
    ],
    kerf: '3 mm',
    trimEachEnd: '15 mm',
    keepOffcut: '300 mm',
  },
});

/** How many boards of a row of stock there are, and how many the plan cuts. */
function stockRow(
  row: CuttingGiven['stock'][number],
  boards: readonly { readonly stock: string; readonly stockLength: number }[],
) {
  const name = row.name ?? `${Number((row.length * 1000).toFixed(1))} mm`;
  return {
    stock: name,
    length: row.length,
    there: row.count === 'as needed' ? 'as needed' : String(row.count ?? 1),
    used: boards.filter((b) => b.stock === name && b.stockLength === row.length).length,
  };
}

/** The plan of each section: each may use the time that is left, shared evenly among those still to do. */
async function layoutsOf(
  given: CuttingGiven & { readonly timeLimit: number },
  aim: Aim,
  trace: Trace,
): Promise<Layout[]> {
  const sections = sectionsOf(given);
  const layouts: Layout[] = [];
  const until = performance.now() + given.timeLimit * 1000;
  for (const [i, section] of sections.entries()) {
    const seconds = Math.max(0.01, (until - performance.now()) / 1000 / (sections.length - i));
    const label = sections.length > 1 ? `section ${i + 1} of ${sections.length}: ` : '';
    layouts.push(await layOut(section, given, aim, seconds, trace, label));
  }
  return layouts;
}

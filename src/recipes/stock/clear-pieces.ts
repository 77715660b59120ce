import { danger, note, type Caution } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { asyncRecipe } from '../../engine/recipe.js';
import { tableField } from '../../engine/table-field.js';
import { loadSolver } from './cutting/solver.js';
import { chooseStretches, type PartKind } from './pile-top/clear-choice.js';
import { boardsOf, pileField, um } from './pile-top/pile-survey.js';

const mm = (micrometres: number): string => `${Number((micrometres / 1000).toFixed(1))}`;

/**
 * Which clear parts to cut from boards with faults at known places, so that the boards cut are as short as can be in all: an
 * integer programme over the clear lengths between docked ends and faults, with a proven bound beside it. A row of the survey
 * without a count is one board. For parts of the boards' own section; lengths in m.
 * @throws InputError for a survey that cannot be right, or parts that no board is long enough for
 */
export const clearPieces = asyncRecipe({
  name: 'clearPieces',
  title: 'Clear pieces from faulty boards',
  topic: 'stock',
  about:
    'Which clear parts to cut from which boards with faults at known places, so that the boards cut are as short as can be in all, with a proven bound beside it. For parts of the boards’ own section.',
  sources: [],
  inputs: {
    boards: pileField,
    parts: tableField(
      {
        name: field.text({ label: 'name of the part', optional: true }),
        length: field.length({ label: 'length of the part', min: '10 mm', max: '20 m' }),
        count: field.count({ label: 'parts of this kind', min: 1, max: 1000, default: 1 }),
      },
      { label: 'parts', help: 'Parts to cut with a row for each size.', most: 100 },
    ),
    kerf: field.length({ label: 'saw kerf', min: '0 mm', max: '20 mm', default: '3 mm' }),
    timeLimit: field.time({ label: 'longest to search', min: '0.05 s', max: '30 min', default: '20 s' }),
  },
  outputs: {
    boardsCut: out.count({ label: 'boards cut' }),
    boardLength: out.length({ label: 'board length', help: 'Length of all boards cut.', unit: 'm' }),
    lowerBound: out.length({ label: 'no plan cuts less', unit: 'm' }),
    optimal: out.flag({ label: 'proved best', help: 'Whether the plan is proved to be the best.' }),
    missingLength: out.length({ label: 'missing length', help: 'Length of all parts missing.', unit: 'm' }),
    plan: out.table(
      {
        board: out.text({ label: 'board' }),
        part: out.text({ label: 'part' }),
        from: out.length({ label: 'from the left end' }),
        length: out.length({ label: 'length' }),
      },
      { label: 'Cuts, board by board' },
    ),
    missing: out.table(
      {
        part: out.text({ label: 'part' }),
        length: out.length({ label: 'length' }),
        count: out.count({ label: 'count' }),
      },
      { label: 'Missing parts', help: 'Parts that the boards do not give.', optional: true },
    ),
  },
  search: async (given, trace) => {
    const boards = boardsOf(given.boards, { leastPiece: 0, backHidden: false });
    const parts = given.parts.map((p, i): PartKind => ({
      name: p.name ?? `part ${i + 1}`,
      length: um(p.length),
      count: p.count,
    }));
    const chosen = chooseStretches(await loadSolver(), boards, parts, um(given.kerf), given.timeLimit);
    trace.note(
      `Parts of lengths l fill a clear length c where the sum of (l + kerf) is at most c + kerf. Made least: first the length of parts missing, then the length of the boards cut. Bound: ${mm(chosen.bound)} mm.`,
    );
    return {
      boardsCut: chosen.boards,
      boardLength: chosen.length / 1e6,
      lowerBound: chosen.bound / 1e6,
      optimal: chosen.proved,
      missingLength: chosen.missing.reduce((s, m) => s + m.length * m.count, 0) / 1e6,
      plan: chosen.cuts.map((c) => ({ ...c, from: c.from / 1e6, length: c.length / 1e6 })),
      ...(chosen.missing.length > 0
        ? {
            missing: chosen.missing.map((m) => ({ part: m.name, length: m.length / 1e6, count: m.count })),
          }
        : {}),
    };
  },
  cautions: (given, answer): Caution[] => [
    danger(
      'go over every salvaged board with a metal detector, from both faces, and pull nails, staples and screws before it meets a blade; then wear eye protection all the same',
    ),
    ...(answer.missing ? [note('the boards do not give every part: see the table of what is missing')] : []),
    ...(!answer.optimal
      ? [note('the search ended before it could prove this plan the best; the bound stands beside it')]
      : []),
    ...(given.parts.some((p) => p.length < 0.15)
      ? [
          danger(
            'cut parts shorter than about 150 mm (common practice) against a stop with a hold-down, or with a hand saw: never hold them by hand at a power saw',
          ),
        ]
      : []),
  ],
  sentence: (_given, out) =>
    out.missingLength > 0
      ? 'The boards do not give every part: {missingLength} is missing.'
      : `Cut {boardsCut} ${out.boardsCut === 1 ? 'board' : 'boards'}: every part is found.`,
  mending: {
    fails: (_given, out) => out.missingLength > 0,
    saidBySentence: 'the length that is missing is what must be found',
  },
  example: {
    boards: [
      {
        name: 'A',
        length: '2.4 m',
        width: '95 mm',
        thickness: '45 mm',
        faultsAt: '800-860; 1700-1730 mm',
        count: 2,
      },
      {
        name: 'B',
        length: '1.9 m',
        width: '95 mm',
        thickness: '45 mm',
        endLeft: '40 mm',
        faultsAt: '990-1030 mm',
      },
    ],
    parts: [
      { name: 'rail', length: '780 mm', count: 3 },
      { name: 'brace', length: '420 mm', count: 4 },
    ],
  },
});

import { boardMeasure } from '../../../src/recipes/stock/board-measure.js';
import { boardTally } from '../../../src/recipes/stock/board-tally.js';
import { clearPieces } from '../../../src/recipes/stock/clear-pieces.js';
import { cuttingPlan } from '../../../src/recipes/stock/cutting-plan.js';
import { flatteningLoss } from '../../../src/recipes/stock/flattening-loss.js';
import { gradeYield } from '../../../src/recipes/stock/grade-yield.js';
import { palletBoards } from '../../../src/recipes/stock/pallet-boards.js';
import { partsCost } from '../../../src/recipes/stock/parts-cost.js';
import { pileSampling } from '../../../src/recipes/stock/pile-sampling.js';
import { pileYield } from '../../../src/recipes/stock/pile-yield.js';
import { roughToDressed } from '../../../src/recipes/stock/rough-to-dressed.js';
import { topFromPile } from '../../../src/recipes/stock/top-from-pile.js';
import { lawsOf } from './monotony.js';

/** From the grade that promises least to the one that promises most. */
const grades = ['No.3A Common', 'No.2A Common', 'No.1 Common', 'FAS'];
type Answer = Readonly<Record<string, unknown>>;
/** A figure of a plan that is proved to be the best; no law holds of one that is not. */
const proved =
  (name: string) =>
  (answer: Answer): number | undefined =>
    answer['optimal'] === true ? (answer[name] as number) : undefined;
const amountOf = (name: string) => (answer: Answer) => {
  const value = answer[name] as number | { readonly value: number };
  return typeof value === 'number' ? value : value.value;
};

export const stockLaws = [
  lawsOf(boardMeasure, {
    numbers: { length: [500, 5000], width: [40, 400], thickness: [10, 90], count: [1, 40, 'whole'] },
    write: (n) => ({
      length: `${n.length} mm`,
      width: `${n.width} mm`,
      thickness: `${n.thickness} mm`,
      count: n.count,
      price: '6.50/bf',
    }),
    laws: (['length', 'width', 'thickness', 'count'] as const).map((raise) => ({
      raise,
      rises: ['boardFeet', 'superFeet', 'volume', 'price'],
    })),
  }),
  ...(['hardwood', 'softwood'] as const).map((rule) =>
    lawsOf(boardTally, {
      numbers: { width: [4, 14], length: [4, 16], quarters: [3, 12, 'whole'], count: [1, 9, 'whole'] },
      write: (n) => ({
        boards: [
          {
            width: `${n.width} in`,
            length: `${n.length} ft`,
            thickness: `${n.quarters}/4 in`,
            count: n.count,
          },
        ],
        rule,
      }),
      laws: (['width', 'length', 'quarters', 'count'] as const).map((raise) => ({
        raise,
        rises: ['boardFeet', 'bySize'],
      })),
    }),
  ),
  lawsOf(clearPieces, {
    numbers: {
      board: [1500, 2600],
      fault: [20, 200],
      kerf: [0, 6],
      part: [350, 700],
      count: [4, 6, 'whole'],
      boards: [1, 2, 'whole'],
    },
    write: (n) => ({
      boards: [
        {
          name: 'A',
          length: `${n.board} mm`,
          width: '95 mm',
          thickness: '45 mm',
          faultsAt: `700-${700 + n.fault} mm`,
          count: n.boards,
        },
      ],
      parts: [{ name: 'rail', length: `${n.part} mm`, count: n.count }],
      kerf: `${n.kerf} mm`,
      timeLimit: '150 ms',
    }),
    laws: [
      { raise: 'boards', falls: [proved('missingLength')] },
      { raise: 'count', rises: [proved('missingLength')] },
      { raise: 'fault', rises: [proved('missingLength')] },
    ],
    runs: 14,
  }),
  lawsOf(cuttingPlan, {
    numbers: { part: [300, 900], count: [1, 9, 'whole'], trim: [0, 200], stock: [1000, 2700] },
    write: (n) => ({
      parts: [
        { name: 'leg', length: `${n.part} mm`, count: n.count },
        { name: 'rail', length: '640 mm', count: 4 },
      ],
      stock: [{ name: 'batten', length: `${n.stock} mm`, count: 40 }],
      trimEachEnd: `${n.trim} mm`,
      aim: 'boards',
      timeLimit: '500 ms',
    }),
    laws: [
      ...(['part', 'count', 'trim'] as const).map((raise) => ({
        raise,
        rises: [proved('boardsUsed')],
      })),
      { raise: 'stock', falls: [proved('boardsUsed')] },
    ],
    runs: 24,
  }),
  lawsOf(cuttingPlan, {
    numbers: { kerf: [0, 12], count: [4, 12, 'whole'] },
    write: (n) => ({
      parts: [{ name: 'leg', length: '300 mm', count: n.count }],
      // Four to a board where three kerfs take 12 mm or less.
      stock: [{ name: 'batten', length: '1212 mm', count: 40 }],
      kerf: `${n.kerf} mm`,
      aim: 'boards',
    }),
    laws: [{ raise: 'kerf', rises: [proved('boardsUsed')] }],
  }),
  lawsOf(flatteningLoss, {
    numbers: {
      thickness: [25, 60],
      cup: [0, 4],
      bow: [0, 4],
      twist: [0, 4],
      rips: [0, 3, 'whole'],
      crosscuts: [0, 3, 'whole'],
      kerf: [0, 4],
    },
    write: (n) => ({
      thickness: `${n.thickness} mm`,
      width: '180 mm',
      length: '2 m',
      cup: `${n.cup} mm`,
      bow: `${n.bow} mm`,
      twist: `${n.twist} mm`,
      rips: n.rips,
      crosscuts: n.crosscuts,
      kerf: `${n.kerf} mm`,
    }),
    laws: [
      { raise: 'thickness', rises: ['dressedThickness'] },
      ...(['cup', 'bow', 'twist'] as const).map((raise) => ({
        raise,
        rises: ['loss'],
        falls: ['dressedThickness'],
      })),
      { raise: 'rips', falls: ['loss', 'pieceWidth'] },
      { raise: 'crosscuts', falls: ['loss', 'pieceLength'] },
      { raise: 'kerf', falls: ['pieceWidth', 'pieceLength'] },
    ],
  }),
  lawsOf(gradeYield, {
    numbers: { grade: [0, grades.length - 1, 'whole'], surface: [4, 16, 'whole'] },
    write: (n) => ({ grade: grades[n.grade], surfaceMeasure: n.surface }),
    laws: [
      { raise: 'grade', rises: ['clearUnits', 'area', 'yield'] },
      { raise: 'surface', rises: ['clearUnits', 'area', 'totalUnits'] },
    ],
  }),
  lawsOf(palletBoards, {
    numbers: {
      bearer: [30, 100],
      split: [0, 80],
      broken: [0, 60],
      cut: [0, 10],
      need: [1, 20],
      density: [350, 700],
    },
    write: (n) => ({
      kind: '48 x 40 pallet',
      mark: 'HT',
      bearerWidth: `${n.bearer} mm`,
      splitEnd: `${n.split} mm`,
      broken: `${n.broken} %`,
      cutLoss: `${n.cut} mm`,
      density: `${n.density} kg/m3`,
      need: `${n.need} m2`,
    }),
    laws: [
      { raise: 'bearer', rises: ['palletsSawn'], falls: ['sawnLength', 'sawnArea'] },
      { raise: 'split', rises: ['pallets'], falls: ['pulledLength', 'pulledArea'] },
      { raise: 'broken', rises: ['pallets'], falls: ['pulledArea'] },
      { raise: 'cut', falls: ['sawnLength', 'sawnArea'] },
      { raise: 'need', rises: ['pallets', 'palletsSawn'] },
      { raise: 'density', rises: ['mass'] },
    ],
  }),
  lawsOf(partsCost, {
    numbers: {
      length: [200, 3000],
      count: [1, 20, 'whole'],
      width: [20, 200],
      waste: [0, 90],
      price: [100, 2000],
    },
    write: (n) => ({
      parts: [
        {
          name: 'rail',
          count: n.count,
          length: `${n.length} mm`,
          width: `${n.width} mm`,
          thickness: '34 mm',
        },
      ],
      price: `${n.price.toFixed(2)}/m3`,
      waste: `${n.waste} %`,
    }),
    laws: [
      ...(['length', 'count', 'width'] as const).map((raise) => ({
        raise,
        rises: ['total', 'netCost', 'volume', 'volumeToBuy'],
      })),
      { raise: 'waste', rises: ['total', 'volumeToBuy'] },
      { raise: 'price', rises: ['total'] },
    ],
  }),
  lawsOf(pileSampling, {
    numbers: { scale: [0.5, 2], needed: [5, 60], confidence: [60, 98] },
    write: (n) => ({
      sample: [1.62, 1.48, 1.71, 1.33, 1.57, 1.66].map((x) => `${x * n.scale} m`),
      needed: `${n.needed} m`,
      confidence: `${n.confidence} %`,
    }),
    laws: [
      { raise: 'needed', rises: ['piecesToPull', 'low', 'high', 'expected'] },
      { raise: 'confidence', rises: ['piecesToPull', 'high'], falls: ['low'] },
      { raise: 'scale', rises: [amountOf('meanYield')], falls: ['piecesToPull', 'low', 'high', 'expected'] },
    ],
  }),
  lawsOf(pileYield, {
    numbers: {
      plane: [0, 3],
      kerf: [0, 5],
      jointing: [0, 6],
      end: [0, 200],
      fault: [0, 400],
      cup: [0, 3],
      count: [1, 9, 'whole'],
    },
    write: (n) => ({
      boards: [
        {
          name: 'R',
          count: n.count,
          length: '2310 mm',
          width: '97 mm',
          thickness: '47 mm',
          endLoss: `${n.end} mm`,
          faultLength: `${n.fault} mm`,
          faults: 1,
          cup: `${n.cup} mm`,
        },
      ],
      target: { thickness: '30 mm' },
      plane: `${n.plane} mm`,
      kerf: `${n.kerf} mm`,
      jointing: `${n.jointing} mm`,
    }),
    laws: [
      ...(['jointing', 'end', 'fault'] as const).map((raise) => ({
        raise,
        falls: ['yield', 'volume', 'area'],
      })),
      ...(['plane', 'cup'] as const).map((raise) => ({ raise, falls: ['peakThickness'] })),
      { raise: 'count', rises: ['volume', 'area', 'roughVolume'] },
    ],
  }),
  lawsOf(roughToDressed, {
    numbers: { thickness: [20, 80], width: [60, 250], allowance: [1, 6] },
    write: (n) => ({
      rough: { thickness: `${n.thickness} mm`, width: `${n.width} mm` },
      faces: 'S4S',
      allowances: { face: `${n.allowance} mm`, edge: `${n.allowance} mm` },
    }),
    laws: [
      { raise: 'thickness', rises: ['dressedThickness'], falls: ['planedAway'] },
      { raise: 'width', rises: ['dressedWidth'], falls: ['planedAway'] },
      { raise: 'allowance', rises: ['planedAway'], falls: ['dressedThickness', 'dressedWidth'] },
    ],
  }),
  lawsOf(topFromPile, {
    numbers: { boards: [3, 8, 'whole'], end: [0, 300], width: [70, 120], jointing: [0, 8] },
    write: (n) => ({
      boards: [
        {
          name: 'R',
          count: n.boards,
          length: '1600 mm',
          width: `${n.width} mm`,
          thickness: '47 mm',
          endLeft: `${n.end} mm`,
        },
      ],
      topLength: '1100 mm',
      width: '200 mm',
      thickness: '36 mm',
      lay: 'flat',
      jointing: `${n.jointing} mm`,
      curves: false,
      whatIfs: false,
      rounds: 20,
      timeLimit: '1 s',
    }),
    laws: [
      { raise: 'boards', rises: ['widthBound'] },
      { raise: 'width', rises: ['widthBound'] },
      { raise: 'end', falls: ['widthBound'] },
      { raise: 'jointing', falls: ['widthBound'] },
    ],
    runs: 8,
  }),
];

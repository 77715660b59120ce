import { plank } from '../sketch-figures.js';
import { arrow, box, dashed, ghostBox, line, measure, note, words } from '../model/marks.js';
import { sketchesOf } from '../model/sketch-definition.js';

/** A pallet from the side: boards on three blocks. */
const pallet = (x: number, y: number) => [
  box(x, y, 70, 6),
  ...[0, 27, 54].map((at) => box(x + at, y + 6, 16, 12, 'endGrain')),
  box(x, y + 18, 70, 5),
];

export const pileSketches = sketchesOf({
  partsCost: {
    shows: 'A part with its length, width and thickness, and the price of its timber.',
    height: 170,
    marks: [
      ...plank([50, 94], 180, 20, [40, -28]),
      measure('parts.length', [90, 66], [270, 66], [0, -24]),
      measure('parts.thickness', [50, 94], [50, 114], [-18, 0], [32, 132]),
      measure('parts.width', [230, 114], [270, 86], [14, 10]),
      note('parts.count', [80, 46], [110, 80]),
      note('waste', [150, 130], [160, 106]),
      note('price', [40, 156]),
      words([56, 156], 'price by volume, area or length', 'start'),
    ],
    measures: {
      'parts.length': 'Along the grain, finished.',
      'parts.width': 'Across the grain, finished.',
      'parts.thickness': 'From face to face, finished.',
      'parts.count': 'Parts of one size.',
      waste: 'Bought beside what the part itself takes.',
    },
  },
  pileSampling: {
    shows: 'Pallets that were broken down and what each gave, beside those that still stand.',
    height: 180,
    marks: [
      ...[20, 44, 68].flatMap((y) => [box(30, y + 20, 84, 7), box(30, y + 31, 60, 7)]),
      words([72, 128], 'broken down'),
      note('sample', [72, 150], [72, 138]),
      ...[88, 62, 36].flatMap((y) => pallet(200, y)),
      words([235, 128], 'still to do'),
      note('piecesToPull', [296, 80], [270, 74]),
      arrow([190, 72], [130, 72]),
      note('meanYield', [134, 44], [114, 44]),
      note('needed', [160, 104]),
    ],
    measures: {
      sample: 'What each pallet or board gave that was broken down so far.',
      needed: 'What the job still lacks.',
      meanYield: 'What one gives on average.',
    },
  },
  topFromPile: {
    shows: 'A top from above in rows of pieces, and its edge with layers glued face to face.',
    height: 280,
    marks: [
      box(30, 50, 250, 90),
      ...[72, 96, 118].map((y) => line([30, y], [280, y])),
      line([130, 50], [130, 72]),
      line([200, 72], [200, 96]),
      line([90, 96], [90, 118]),
      line([236, 96], [236, 118]),
      line([160, 118], [160, 140]),
      measure('topLength', [30, 50], [280, 50], [0, -28]),
      measure('width', [280, 50], [280, 140], [20, 0]),
      measure('stagger', [130, 61], [200, 61]),
      dashed([200, 72], [200, 54]),
      measure('leastPiece', [30, 107], [90, 107]),
      measure('leastRow', [30, 50], [30, 72], [-14, 0], [16, 34]),
      ghostBox(26, 46, 258, 98),
      note('spare', [300, 164], [284, 143]),
      note('jointing', [110, 164], [110, 140]),
      box(30, 200, 250, 12, 'endGrain'),
      box(30, 212, 250, 12, 'endGrain'),
      measure('thickness', [30, 200], [30, 224], [-14, 0], 'start'),
      measure('layers', [280, 200], [280, 212], [14, 0], [294, 240]),
      note('plane', [120, 190], [120, 212]),
      measure('widestSlab', [30, 224], [140, 224], [0, 18]),
      note('slabJointing', [176, 250], [140, 224]),
      measure('clampReach', [30, 224], [280, 224], [0, 44]),
    ],
    measures: {
      topLength: 'Along the grain.',
      width: 'Across the grain, finished.',
      leastRow: 'Across the grain, of the narrowest row.',
      stagger: 'Along the grain, from a joint to the nearest joint of the next row.',
      spare: 'Left on around the top for squaring it.',
      jointing: 'Off each strip, both edges together.',
      plane: 'Off each face of a board before it is glued.',
      widestSlab: 'Widest slab that goes through the thicknesser.',
      slabJointing: 'Where one slab is glued to the next.',
      clampReach: 'The clamps must open over the whole glue-up.',
    },
    unlettered: {
      boards: 'the survey of the pile, a row for each board',
      kerf: 'the width of any saw cut',
      leastOffcut: 'what is kept of a board, not part of the top',
    },
  },
});

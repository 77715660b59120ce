import { plank } from '../sketch-figures.js';
import { bend, box, line, measure, note, thin, words } from '../model/marks.js';
import { sketchesOf } from '../model/sketch-definition.js';

export const billSketches = sketchesOf({
  bill: {
    shows:
      'A bill with a line for each thing that goes into the piece, and the sum with what is added to it.',
    height: 190,
    marks: [
      box(70, 14, 180, 162, 'none'),
      ...[52, 76, 100].map((y) => thin([84, y + 8], [236, y + 8])),
      words([86, 30], 'item', 'start'),
      words([234, 30], 'price', 'end'),
      words([86, 50], 'timber, 0.2 m³', 'start'),
      words([86, 74], 'glue, 1 kg', 'start'),
      words([86, 98], 'work, 9 h', 'start'),
      line([84, 118], [236, 118]),
      words([86, 138], 'added', 'start'),
      words([86, 160], 'in all', 'start'),
      note('lines', [40, 74], [80, 74]),
      note('hourly', [280, 98], [230, 98]),
      note('forgotten', [160, 138]),
      note('tax', [190, 138]),
      note('total', [280, 160], [230, 160]),
    ],
    measures: {
      lines: 'Quantity and price of each.',
      forgotten: 'A share of the lines together.',
      tax: 'A share of the sum.',
    },
  },
  prepTime: {
    shows: 'A time line of the work on one piece after another, with the range for the whole job.',
    height: 170,
    marks: [
      ...plank([24, 54], 60, 10, [16, -12]),
      line([20, 104], [300, 104]),
      ...[20, 62, 110, 150, 206].map((x) => line([x, 98], [x, 110])),
      words([180, 64], 'one piece after another'),
      measure('works.times', [62, 98], [110, 98], [0, -16]),
      note('works.pieces', [30, 24], [50, 48]),
      line(...bend([206, 104], [290, 104], 26)),
      line([290, 98], [290, 110]),
      measure('low', [20, 110], [206, 110], [0, 16]),
      measure('high', [20, 110], [290, 110], [0, 38]),
      note('certainty', [276, 74], [250, 94]),
    ],
    measures: {
      'works.times': 'Taken on some pieces with a watch.',
      'works.pieces': 'How many need this operation.',
    },
  },
});

import { floor } from '../sketch-figures.js';
import { box, dashed, measure, note, outline, words } from '../model/marks.js';
import { sketchesOf } from '../model/sketch-definition.js';

export const casingSketch = sketchesOf({
  postCasing: {
    shows: 'A boxed post from above, and one from the front.',
    height: 320,
    marks: [
      box(100, 60, 100, 70, 'endGrain'),
      box(80, 52, 12, 86),
      box(208, 52, 12, 86),
      box(80, 40, 140, 12),
      outline('wood', [80, 138], [220, 138], [220, 142], [212, 150], [88, 150], [80, 142]),
      measure('width', [100, 60], [200, 60], [0, 54], 0.72),
      measure('depth', [100, 60], [100, 130], [24, 0], 0.3),
      measure('thickness', [80, 90], [92, 90], [0, 0], 'start'),
      measure('clearance', [200, 84], [208, 84], [0, 0], 'end'),
      measure('sideWidth', [80, 52], [80, 138], [-44, 0]),
      measure('outsideDepth', [220, 40], [220, 150], [46, 0]),
      measure('frontWidth', [80, 150], [220, 150], [0, 20]),
      note('chamfer', [240, 166], [216, 146]),
      note('rebate', [60, 160], [86, 138]),
      words([150, 26], 'back'),
      box(130, 208, 40, 84),
      dashed([136, 200], [140, 292]),
      dashed([164, 200], [168, 292]),
      ...floor(90, 220, 300),
      measure('height', [130, 208], [130, 300], [-30, 0]),
      measure('floorGap', [170, 292], [170, 300], [16, 0], [210, 288]),
      note('uneven', [196, 216], [164, 220]),
      note('trim', [112, 196], [130, 208]),
      words([262, 250], 'from the front'),
    ],
    measures: {
      thickness: 'From face to face, of the boards.',
      clearance: 'From the post to the board, on each side.',
      height: 'From the floor up.',
      floorGap: 'From the floor to the lower end of the boards.',
      frontWidth: 'Across the front and the back.',
      sideWidth: 'Across a side board.',
      rebate: 'From the inner face of the front to the end of a side in it.',
    },
  },
});

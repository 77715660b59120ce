import { plank, scales } from '../sketch-figures.js';
import {
  arc,
  arrow,
  bend,
  box,
  dashed,
  disc,
  ghostBox,
  grain,
  line,
  measure,
  note,
  outline,
  push,
  ring,
  words,
} from '../model/marks.js';
import { sketchesOf } from '../model/sketch-definition.js';

/** Growth rings on the end of a strip, the heart below or above it. */
const rings = (x: number, y: number, isUp: boolean) =>
  [10, 18].map((r) => ring(...(isUp ? arc([x, y], r, 205, 335) : arc([x, y], r, 25, 155))));

export const movementSketches = sketchesOf({
  cupDepth: {
    shows: 'The end of a flat-sawn board that has cupped: its growth rings with the heart of the tree below.',
    height: 190,
    marks: [
      outline('wood', ...bend([60, 54], [260, 54], -26), ...bend([260, 86], [60, 86], 26)),
      ...[60, 86, 112].map((r) => ring(...arc([160, 168], r, 244, 296))),
      dashed([60, 54], [260, 54]),
      measure('width', [60, 54], [260, 54], [0, -28]),
      measure('cup', [160, 54], [160, 80], [0, 0], [185, 67]),
      disc([160, 168], 2, 'solid'),
      words([172, 168], 'heart', 'start'),
      measure('ringRadius', [160, 168], [118, 104], [0, 0], 0.5),
    ],
    measures: {
      cup: 'From a straightedge across the edges down to the hollow.',
      ringRadius: 'From the heart of the tree to the rings at the middle of the board, read off its end.',
    },
  },
  fixingSlots: {
    shows:
      'A top from below, its grain up and down the sheet, with slots across it and one line held; and a slot enlarged.',
    height: 232,
    marks: [
      box(30, 46, 260, 54),
      ...grain(30, 46, 260, 54, 'down'),
      dashed([160, 40], [160, 106]),
      disc([160, 73], 4, 'solid'),
      ...[60, 110, 210, 260].map((x) => box(x - 9, 69, 18, 8, 'none')),
      ghostBox(24, 46, 272, 54),
      measure('width', [30, 46], [290, 46], [0, -26]),
      measure('fixedAt', [30, 100], [160, 100], [0, 20]),
      measure('spacing', [160, 100], [210, 100], [0, 20]),
      measure('edgeDistance', [260, 100], [290, 100], [0, 20]),
      measure('positions', [30, 100], [60, 100], [0, 42]),
      note('movement', [306, 20], [296, 50]),
      outline('none', ...arc([102, 186], 12, 90, 270), ...arc([198, 186], 12, 270, 450)),
      ...[103, 197].map((x) => line(...arc([x, 186], 8, 0, 360))),
      disc([150, 186], 8, 'solid'),
      measure('longest', [90, 198], [210, 198], [0, 18]),
      measure('fastenerDiameter', [142, 178], [158, 178], [0, -16]),
      measure('margin', [205, 186], [210, 186], [0, -24]),
    ],
    measures: {
      fixedAt: 'From the edge that you measure from to the line that is held still.',
      spacing: 'From the held line to the next fixing, and so on.',
      edgeDistance: 'From the last fixing to the edge.',
      positions: 'From one edge to the middle of each fixing.',
      margin: 'From the fastener at the end of its way to the end of the slot.',
    },
  },
  movementAcross: {
    shows:
      'A board across its grain before and after its moisture changes, and the end of a top of glued strips.',
    height: 250,
    marks: [
      ghostBox(60, 46, 200, 60),
      box(74, 46, 172, 60),
      ...grain(74, 46, 172, 60, 'down'),
      dashed([160, 40], [160, 112]),
      measure('width', [60, 46], [260, 46], [0, -26]),
      measure('finalWidth', [74, 106], [246, 106], [0, 20], 0.8),
      measure('fixedAt', [60, 106], [160, 106], [0, 42]),
      measure('perSide', [246, 106], [260, 106], [0, 42]),
      note('change', [28, 76], [67, 76]),
      ...[0, 1, 2, 3].flatMap((i) => [
        box(60 + 50 * i, 182, 50, 26),
        ...rings(85 + 50 * i, i % 2 === 0 ? 206 : 184, i % 2 === 0),
      ]),
      note('cut', [30, 195], [70, 195]),
      measure('strips.width', [210, 208], [260, 208], [0, 18]),
      words([130, 226], 'end of a glued top'),
    ],
    measures: {
      fixedAt: 'From one edge to the line that is held still.',
      change: 'The whole change, all edges together.',
      finalWidth: 'Across the grain at the final moisture.',
      perSide: 'From where an edge was to where it is then.',
      cut: 'How the growth rings lie to the face, seen on the end.',
    },
  },
  pieceWeight: {
    shows: 'A piece of timber on the scales, with its length, width and thickness.',
    height: 190,
    marks: [
      ...plank([50, 74], 190, 22, [40, -26]),
      ...scales([150, 122], 150),
      arrow([150, 100], [150, 118]),
      measure('length', [90, 48], [280, 48], [0, -22]),
      measure('thickness', [50, 74], [50, 96], [-18, 0], [32, 114]),
      measure('width', [240, 96], [280, 70], [14, 10]),
      note('mass', [60, 149], [134, 149]),
    ],
    unlettered: {
      dimensions: 'the three sizes in one text',
      volume: 'the whole body, in place of its sizes',
    },
  },
  restraintStress: {
    shows: 'A top across its grain, held rigid at both edges so that it cannot swell or shrink.',
    height: 160,
    marks: [
      box(70, 50, 180, 60),
      ...grain(70, 50, 180, 60, 'down'),
      box(56, 40, 14, 80, 'solid'),
      box(250, 40, 14, 80, 'solid'),
      measure('width', [70, 50], [250, 50], [0, -26]),
      push('stress', [100, 80], [72, 80]),
      push('strain', [220, 80], [248, 80]),
      note('cut', [160, 80]),
      words([160, 138], 'held along both edges'),
    ],
    measures: {
      stress: 'Across the grain, where the top presses on what holds it.',
      strain: 'The movement that the top would make if it were free.',
      cut: 'How the growth rings lie to the face.',
    },
  },
  seasonalMovement: {
    shows: 'A top across its grain in its widest month and in its narrowest, and its edge.',
    height: 190,
    marks: [
      ghostBox(50, 44, 220, 62),
      box(66, 44, 188, 62),
      ...grain(66, 44, 188, 62, 'down'),
      measure('widest', [50, 44], [270, 44], [0, -24]),
      measure('narrowest', [66, 106], [254, 106], [0, 18]),
      note('swing', [300, 76], [262, 76]),
      box(66, 148, 188, 18, 'endGrain'),
      measure('width', [66, 166], [254, 166], [0, 14]),
      measure('thickness', [66, 148], [66, 166], [-16, 0], 'start'),
    ],
    measures: {
      width: 'Across the grain as measured when the top is made.',
      thickness: 'From face to face; both faces take up moisture unless one is sealed.',
      swing: 'Both edges together, from the narrowest month to the widest.',
    },
  },
});

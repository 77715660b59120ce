import { dial, scales, thermometer } from '../sketch-figures.js';
import { arrow, box, disc, grain, line, note, words, type Mark } from '../model/marks.js';
import { sketchesOf } from '../model/sketch-definition.js';

/** A board on sticks in a room's air, with a thermometer and a hygrometer on the wall. */
const boardInAir: Mark<'temperature' | 'humidity' | 'moisture'>[] = [
  ...thermometer([80, 84]),
  ...dial([190, 54]),
  box(50, 116, 220, 18),
  ...grain(50, 116, 220, 18),
  ...[70, 155, 240].map((x) => box(x, 134, 10, 8, 'none')),
  line([40, 142], [280, 142]),
  note('temperature', [120, 40], [84, 40]),
  note('humidity', [242, 54], [210, 54]),
  note('moisture', [296, 106], [262, 124]),
];

export const moistureSketches = sketchesOf({
  equilibriumMoisture: {
    shows: 'A board in the air of a room, with a thermometer and a hygrometer beside it.',
    height: 155,
    marks: boardInAir,
    measures: { moisture: 'What the board comes to when it lies in this air for long.' },
  },
  humidityFor: {
    shows: 'A board in the air of a room, with a thermometer and a hygrometer beside it.',
    height: 155,
    marks: boardInAir,
    measures: { humidity: 'What the air must have so that the board stays as it is.' },
  },
  meterCorrection: {
    shows: 'A moisture meter with its pins driven into the face of a board, away from its ends.',
    height: 170,
    marks: [
      box(20, 112, 280, 34),
      ...grain(20, 112, 280, 34),
      box(120, 22, 60, 72, 'none'),
      box(130, 32, 40, 22, 'none'),
      disc([150, 74], 9),
      line([150, 74], [155, 68]),
      line([138, 94], [138, 124]),
      line([162, 94], [162, 124]),
      ...thermometer([246, 124], 54),
      note('reading', [90, 43], [136, 43]),
      note('calibrationTemperature', [210, 60], [159, 72]),
      note('woodTemperature', [280, 80], [251, 90]),
      note('moisture', [60, 92], [74, 124]),
      words([150, 157], 'pins along the grain, away from the ends'),
    ],
    measures: { moisture: 'Of the wood between the pins, corrected.' },
  },
  moistureByWeight: {
    shows: 'The same sample on the scales as it is, and again when it has been dried in an oven.',
    height: 160,
    marks: [
      ...scales([82, 84]),
      box(56, 46, 52, 38),
      ...grain(56, 46, 52, 38),
      ...scales([238, 84]),
      box(214, 50, 48, 34),
      ...grain(214, 50, 48, 34),
      arrow([134, 66], [186, 66]),
      words([160, 54], 'oven'),
      note('wetMass', [24, 111], [66, 111]),
      note('ovenDryMass', [296, 111], [254, 111]),
      note('moisture', [30, 50], [60, 60]),
      note('water', [160, 90]),
      words([82, 148], 'as it is'),
      words([238, 148], 'oven-dry'),
    ],
    measures: {
      moisture: 'Water as a share of the oven-dry mass.',
      water: 'What the oven drives off: the difference of the two.',
    },
  },
  woodDensity: {
    shows: 'A block of wood of a known volume on the scales, with the water that it holds.',
    height: 165,
    marks: [
      ...scales([150, 92]),
      box(120, 32, 60, 60),
      ...grain(120, 32, 60, 60),
      note('density', [82, 119], [134, 119]),
      note('moisture', [228, 74], [170, 70]),
      note('specificGravity', [80, 48], [130, 56]),
      words([150, 152], 'mass over volume'),
    ],
    measures: { density: 'Mass of a cubic metre at this moisture.' },
  },
});

import { cupDepth } from '../../../src/recipes/moisture/cup-depth.js';
import { equilibriumMoisture } from '../../../src/recipes/moisture/equilibrium-moisture.js';
import { fixingSlots } from '../../../src/recipes/moisture/fixing-slots.js';
import { humidityFor } from '../../../src/recipes/moisture/humidity-for.js';
import { meterCorrection } from '../../../src/recipes/moisture/meter-correction.js';
import { moistureByWeight } from '../../../src/recipes/moisture/moisture-by-weight.js';
import { movementAcross } from '../../../src/recipes/moisture/movement-across.js';
import { pieceWeight } from '../../../src/recipes/moisture/piece-weight.js';
import { restraintStress } from '../../../src/recipes/moisture/restraint-stress.js';
import { seasonalMovement } from '../../../src/recipes/moisture/seasonal-movement.js';
import { woodDensity } from '../../../src/recipes/moisture/wood-density.js';
import { lawsOf } from './monotony.js';

/** From light to heavy: specific gravity at 12 % of the Wood Handbook's Table 5-3, 0.32, 0.45, 0.48, 0.50, 0.63, 0.68, 0.72. */
const heavier = [
  'western redcedar',
  'western hemlock',
  'Douglas-fir',
  'black cherry',
  'sugar maple',
  'white oak',
  'shagbark hickory',
];
/** Across the grain: radial, between, tangential. */
const cuts = ['quarter-sawn', 'flat-sawn'];
const sealings = ['bare', 'oiled', 'varnished'];

export const moistureLaws = [
  lawsOf(cupDepth, {
    numbers: { width: [60, 300], ring: [60, 400], from: [12, 20], to: [5, 11] },
    write: (n) => ({
      width: `${n.width} mm`,
      timber: 'white oak',
      ringRadius: `${n.ring} mm`,
      from: `${n.from} %`,
      to: `${n.to} %`,
    }),
    laws: [
      { raise: 'width', rises: ['cup'] },
      { raise: 'ring', falls: ['cup'] },
      { raise: 'from', rises: ['cup', sizeOf('strainTangential')] },
      { raise: 'to', falls: ['cup', sizeOf('strainTangential')] },
    ],
  }),
  lawsOf(equilibriumMoisture, {
    numbers: { temperature: [15, 45], humidity: [5, 95] },
    write: (n) => ({ temperature: `${n.temperature} degC`, humidity: `${n.humidity} %` }),
    laws: [
      { raise: 'humidity', rises: ['moisture'] },
      { raise: 'temperature', falls: ['moisture'] },
    ],
  }),
  lawsOf(humidityFor, {
    numbers: { temperature: [15, 45], moisture: [4, 18] },
    write: (n) => ({ temperature: `${n.temperature} degC`, moisture: `${n.moisture} %` }),
    laws: [
      { raise: 'moisture', rises: ['humidity'] },
      { raise: 'temperature', rises: ['humidity'] },
    ],
  }),
  lawsOf(meterCorrection, {
    numbers: { reading: [8, 22], wood: [0, 40] },
    write: (n) => ({ reading: `${n.reading} %`, woodTemperature: `${n.wood} degC` }),
    laws: [
      { raise: 'reading', rises: ['moisture'] },
      { raise: 'wood', falls: ['moisture', 'correction'] },
    ],
  }),
  lawsOf(moistureByWeight, {
    numbers: { wet: [105, 250], dry: [60, 100], target: [5, 20] },
    write: (n) => ({ wetMass: `${n.wet} g`, ovenDryMass: `${n.dry} g`, target: `${n.target} %` }),
    laws: [
      { raise: 'wet', rises: ['moisture', 'water'] },
      { raise: 'dry', falls: ['moisture', 'water'] },
      { raise: 'target', rises: ['targetMass'] },
    ],
  }),
  lawsOf(movementAcross, {
    numbers: { width: [50, 1200], from: [4, 10], to: [11, 24], cut: [0, 1, 'whole'] },
    write: (n) => ({
      width: `${n.width} mm`,
      timber: 'red oak',
      cut: cuts[n.cut],
      from: `${n.from} %`,
      to: `${n.to} %`,
    }),
    laws: [
      { raise: 'width', rises: ['change', 'finalWidth', 'perSide', 'low', 'high'] },
      { raise: 'to', rises: ['change', 'finalWidth', 'perSide', 'low', 'high'] },
      { raise: 'from', falls: ['change', 'finalWidth', 'perSide', 'low', 'high'] },
      { raise: 'cut', rises: ['change', 'finalWidth', 'perSide', 'high'] },
    ],
  }),
  lawsOf(fixingSlots, {
    numbers: { width: [200, 1200], from: [5, 9], to: [10, 18], screw: [3, 8], margin: [0, 4] },
    write: (n) => ({
      width: `${n.width} mm`,
      spacing: '150 mm',
      timber: 'white oak',
      from: `${n.from} %`,
      to: `${n.to} %`,
      fastenerDiameter: `${n.screw} mm`,
      margin: `${n.margin} mm`,
    }),
    laws: [
      { raise: 'width', rises: ['movement', 'longest'] },
      { raise: 'to', rises: ['movement', 'longest'] },
      { raise: 'from', falls: ['movement', 'longest'] },
      { raise: 'screw', rises: ['longest'] },
      { raise: 'margin', rises: ['longest'] },
    ],
  }),
  lawsOf(pieceWeight, {
    numbers: {
      length: [200, 3000],
      width: [30, 700],
      thickness: [10, 90],
      count: [1, 12, 'whole'],
      wood: [0, heavier.length - 1, 'whole'],
      moisture: [0, 60],
    },
    write: (n) => ({
      dimensions: `${n.length} x ${n.width} x ${n.thickness} mm`,
      count: n.count,
      timber: heavier[n.wood],
      moisture: `${n.moisture} %`,
    }),
    laws: [
      { raise: 'length', rises: ['mass', 'volume'] },
      { raise: 'width', rises: ['mass', 'volume'] },
      { raise: 'thickness', rises: ['mass', 'volume'] },
      { raise: 'count', rises: ['mass', 'volume'] },
      { raise: 'moisture', rises: ['mass', 'density'] },
      { raise: 'wood', rises: ['mass', 'density'] },
    ],
  }),
  lawsOf(restraintStress, {
    numbers: { from: [10, 16], to: [5, 9.5], cut: [0, 1, 'whole'] },
    write: (n) => ({
      width: '640 mm',
      timber: 'white oak',
      cut: cuts[n.cut],
      from: `${n.from} %`,
      to: `${n.to} %`,
    }),
    laws: [
      { raise: 'from', rises: ['strain', 'stress', 'used'].map((name) => sizeOf(name)) },
      { raise: 'to', falls: ['strain', 'stress', 'used'].map((name) => sizeOf(name)) },
      { raise: 'cut', rises: [sizeOf('strain')] },
    ],
  }),
  lawsOf(seasonalMovement, {
    numbers: {
      width: [200, 1200],
      thickness: [15, 90],
      winter: [25, 45],
      summer: [55, 80],
      sealing: [0, sealings.length - 1, 'whole'],
    },
    write: (n) => ({
      width: `${n.width} mm`,
      thickness: `${n.thickness} mm`,
      timber: 'white oak',
      climate: `winter ${n.winter} %, summer ${n.summer} %`,
      sealing: sealings[n.sealing],
    }),
    laws: [
      { raise: 'width', rises: ['swing', 'swingLow', 'swingHigh', 'widest'] },
      { raise: 'thickness', rises: ['timeConstant', 'driest'], falls: ['swing', 'wettest'] },
      { raise: 'summer', rises: ['swing', 'wettest', 'widest'] },
      { raise: 'winter', rises: ['driest'], falls: ['swing'] },
      { raise: 'sealing', rises: ['timeConstant'], falls: ['swing'] },
    ],
  }),
  lawsOf(woodDensity, {
    numbers: { gravity: [0.3, 0.9], moisture: [0, 100] },
    write: (n) => ({
      specificGravity: n.gravity,
      gravityBasis: 'green',
      volumetricShrinkage: '12 %',
      moisture: `${n.moisture} %`,
    }),
    laws: [
      { raise: 'gravity', rises: ['density', 'specificGravity'], falls: ['volumePerTonne'] },
      { raise: 'moisture', rises: ['density'], falls: ['specificGravity'] },
    ],
  }),
];

function sizeOf(name: string) {
  return (answer: Readonly<Record<string, unknown>>): number => Math.abs(answer[name] as number);
}

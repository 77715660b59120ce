import { bill } from '../../../src/recipes/bill/bill.js';
import { prepTime } from '../../../src/recipes/bill/prep-time.js';
import { passage } from '../../../src/recipes/delivery/passage.js';
import { chamfer } from '../../../src/recipes/machining/chamfer.js';
import { chipVolume } from '../../../src/recipes/machining/chip-volume.js';
import { cutterMarks } from '../../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../../src/recipes/machining/planing-time.js';
import { heightsForPeople } from '../../../src/recipes/people/heights-for-people.js';
import { lawsOf } from './monotony.js';

const certainties = [60, 80, 95];

export const workshopLaws = [
  lawsOf(chamfer, {
    numbers: { width: [2, 15], pass: [1, 4], length: [300, 3000], parts: [1, 9, 'whole'], feed: [1, 6] },
    write: (n) => ({
      width: `${n.width} mm`,
      thickness: '40 mm',
      passDepth: `${n.pass} mm`,
      length: `${n.length} mm`,
      parts: n.parts,
      feed: `${n.feed} m/min`,
    }),
    laws: [
      { raise: 'width', rises: ['depth', 'alongFace', 'passes', 'time'], falls: ['flat'] },
      { raise: 'pass', falls: ['passes', 'time'] },
      { raise: 'length', rises: ['run', 'time'] },
      { raise: 'parts', rises: ['run', 'time'] },
      { raise: 'feed', falls: ['time'] },
    ],
  }),
  lawsOf(chipVolume, {
    numbers: { area: [0.5, 20], depth: [1, 12], density: [350, 900], bag: [30, 200] },
    write: (n) => ({
      area: `${n.area} m2`,
      depth: `${n.depth} mm`,
      density: `${n.density} kg/m3`,
      bagSize: `${n.bag} L`,
    }),
    laws: [
      { raise: 'area', rises: ['mass', 'volume', 'bags', 'solid'] },
      { raise: 'depth', rises: ['mass', 'volume', 'bags', 'solid'] },
      { raise: 'density', rises: ['mass'] },
      { raise: 'bag', falls: ['bags'] },
    ],
  }),
  lawsOf(cutterMarks, {
    numbers: {
      speed: [3000, 9000],
      knives: [1, 6, 'whole'],
      feed: [2, 30],
      diameter: [60, 140],
      wanted: [10, 40],
    },
    write: (n) => ({
      spindleSpeed: `${n.speed} rpm`,
      knives: n.knives,
      feed: `${n.feed} m/min`,
      cutterDiameter: `${n.diameter} mm`,
      wanted: `${n.wanted} 1/in`,
    }),
    laws: [
      { raise: 'feed', rises: ['pitch', 'waveDepth'], falls: ['marksPerInch'] },
      { raise: 'speed', rises: ['marksPerInch', 'rimSpeed', 'feedForWanted'], falls: ['pitch', 'waveDepth'] },
      { raise: 'knives', rises: ['marksPerInch', 'feedForWanted'], falls: ['pitch', 'waveDepth'] },
      { raise: 'diameter', rises: ['rimSpeed'], falls: ['waveDepth'] },
      { raise: 'wanted', falls: ['feedForWanted'] },
    ],
  }),
  lawsOf(planingTime, {
    numbers: {
      length: [2, 60],
      feed: [3, 12],
      handling: [5, 40],
      pieces: [1, 30, 'whole'],
      off: [1, 9],
      pass: [0.5, 3],
    },
    write: (n) => ({
      totalLength: `${n.length} m`,
      feed: `${n.feed} m/min`,
      handling: `${n.handling} s`,
      pieces: n.pieces,
      removal: `${n.off} mm`,
      depthPerPass: `${n.pass} mm`,
    }),
    laws: [
      { raise: 'length', rises: ['time', 'cutting', 'run'] },
      { raise: 'feed', falls: ['time', 'cutting'] },
      { raise: 'handling', rises: ['time', 'handlingTime'] },
      { raise: 'pieces', rises: ['time', 'handlingTime'] },
      { raise: 'off', rises: ['passes', 'time'] },
      { raise: 'pass', falls: ['passes', 'time'] },
    ],
  }),
  lawsOf(bill, {
    numbers: {
      metres: [1, 60],
      price: [1, 40],
      hours: [0, 30],
      rate: [10, 60],
      forgotten: [0, 30],
      tax: [0, 25],
    },
    write: (n) => ({
      lines: [
        { item: 'battens', kind: 'timber', quantity: `${n.metres} m`, price: `${n.price.toFixed(2)}/m` },
        { item: 'bench', kind: 'time', quantity: `${n.hours} h` },
      ],
      hourly: n.rate,
      forgotten: `${n.forgotten} %`,
      tax: `${n.tax} %`,
    }),
    laws: [
      { raise: 'metres', rises: ['total', 'subtotal'] },
      { raise: 'price', rises: ['total', 'subtotal'] },
      { raise: 'hours', rises: ['total', 'time'] },
      { raise: 'rate', rises: ['total'] },
      { raise: 'forgotten', rises: ['total', 'forgotten'] },
      { raise: 'tax', rises: ['total', 'tax'] },
    ],
  }),
  lawsOf(prepTime, {
    numbers: {
      pieces: [2, 60, 'whole'],
      slow: [1, 3],
      sure: [0, certainties.length - 1, 'whole'],
      rate: [10, 60],
    },
    write: (n) => ({
      works: [
        {
          work: 'de-nailing',
          times: [7, 11, 5, 9, 8].map((t) => `${t * n.slow} min`).join(', '),
          pieces: n.pieces,
        },
      ],
      certainty: `${certainties[n.sure]} %`,
      hourly: n.rate,
    }),
    laws: [
      { raise: 'pieces', rises: ['expected', 'high', 'cost'] },
      { raise: 'slow', rises: ['expected', 'high', 'low', 'cost'] },
      { raise: 'sure', rises: ['high', 'costHigh'], falls: ['low'] },
      { raise: 'rate', rises: ['cost', 'costHigh'] },
    ],
  }),
  lawsOf(passage, {
    numbers: {
      length: [800, 2600],
      width: [300, 900],
      mass: [15, 120],
      first: [500, 1200],
      second: [500, 1200],
      hand: [0, 60],
    },
    write: (n) => ({
      length: `${n.length} mm`,
      width: `${n.width} mm`,
      height: '60 mm',
      mass: `${n.mass} kg`,
      spare: `${n.hand} mm`,
      gates: [{ kind: 'corner', first: `${n.first} mm`, second: `${n.second} mm`, height: '2000 mm' }],
    }),
    laws: [
      { raise: 'length', rises: ['parts'], falls: ['fits'] },
      { raise: 'width', rises: ['parts'], falls: ['fits', 'longest'] },
      { raise: 'mass', rises: ['partMass', 'people'] },
      { raise: 'first', rises: ['fits', 'longest'] },
      { raise: 'second', rises: ['fits', 'longest'] },
      { raise: 'hand', falls: ['fits', 'longest'] },
    ],
    runs: 40,
  }),
  lawsOf(heightsForPeople, {
    numbers: { shoes: [0, 50], lowerLeg: [260, 480] },
    write: (n) => ({ height: '950 mm', shoes: `${n.shoes} mm`, lowerLeg: `${n.lowerLeg} mm` }),
    laws: [
      { raise: 'shoes', rises: ['best'] },
      { raise: 'lowerLeg', rises: ['schoolSeat', 'schoolTable'] },
    ],
  }),
];

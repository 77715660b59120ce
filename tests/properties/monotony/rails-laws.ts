import { beam } from '../../../src/recipes/rails/beam.js';
import { rackingFrame } from '../../../src/recipes/rails/racking-frame.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { tipping } from '../../../src/recipes/rails/tipping.js';
import { topSag } from '../../../src/recipes/rails/top-sag.js';
import { lawsOf } from './monotony.js';
import { categories, places, strengthClasses } from './ranks.js';

const grade = [0, strengthClasses.length - 1, 'whole'] as const;
const use = [0, categories.length - 1, 'whole'] as const;
const place = [0, places.length - 1, 'whole'] as const;
const spans = ['span', 'spanByDeflection', 'spanByBending', 'spanByShear'];
const uses = ['bendingUse', 'shearUse'];
const beamForces = [
  'maxDeflection',
  'longDeflection',
  'maxMoment',
  'maxShear',
  'bendingStress',
  'shearStress',
];
/** Nothing that tips it is endless safety. */
const safety = (answer: Readonly<Record<string, unknown>>): number =>
  Math.min(1e6, (answer['factor'] as number | undefined) ?? 1e6);

export const railsLaws = [
  lawsOf(railSpan, {
    numbers: {
      b: [30, 120],
      d: [50, 250],
      load: [100, 8000],
      stays: [0, 1000],
      sag: [200, 500],
      grade,
      use,
      place,
    },
    write: (n) => ({
      section: `${n.b} x ${n.d} mm`,
      load: `${n.load} N/m`,
      permanent: `${n.stays} N/m`,
      limit: `L/${Math.round(n.sag)}`,
      grade: strengthClasses[n.grade],
      category: categories[n.use],
      place: places[n.place],
    }),
    laws: [
      { raise: 'load', falls: spans },
      { raise: 'stays', falls: spans },
      { raise: 'b', rises: spans },
      { raise: 'd', rises: spans },
      { raise: 'grade', rises: spans },
      { raise: 'use', falls: ['span', 'spanByBending', 'spanByShear'] },
      { raise: 'place', falls: spans },
      { raise: 'sag', falls: ['spanByDeflection'] },
    ],
    runs: 24,
  }),
  lawsOf(beam, {
    numbers: {
      length: [400, 2500],
      b: [30, 100],
      d: [50, 200],
      load: [100, 3000],
      point: [50, 2000],
      grade,
      use,
      place,
    },
    write: (n) => ({
      length: `${n.length} mm`,
      supports: [{ position: '0 mm' }, { position: `${n.length} mm` }],
      loads: [`${n.load} N/m`, { position: `${n.length / 2} mm`, force: `${n.point} N` }],
      section: `${n.b} x ${n.d} mm`,
      grade: strengthClasses[n.grade],
      category: categories[n.use],
      place: places[n.place],
    }),
    laws: [
      { raise: 'load', rises: [...beamForces, ...uses, 'maxSlope'] },
      { raise: 'point', rises: [...beamForces, ...uses] },
      { raise: 'length', rises: [...beamForces, ...uses] },
      { raise: 'b', falls: ['maxDeflection', 'longDeflection', 'bendingStress', 'shearStress', ...uses] },
      { raise: 'd', falls: ['maxDeflection', 'longDeflection', 'bendingStress', 'shearStress', ...uses] },
      { raise: 'grade', falls: ['maxDeflection', 'longDeflection', ...uses] },
      { raise: 'use', rises: uses },
      { raise: 'place', rises: ['longDeflection', ...uses] },
    ],
  }),
  lawsOf(topSag, {
    numbers: {
      length: [500, 2200],
      width: [200, 900],
      t: [18, 60],
      load: [0.2, 5],
      person: [0, 1500],
      grade,
      place,
    },
    write: (n) => ({
      length: `${n.length} mm`,
      width: `${n.width} mm`,
      thickness: `${n.t} mm`,
      supports: ['0 mm', `${n.length} mm`],
      load: `${n.load} kPa`,
      edgeLoad: `${n.person} N`,
      grade: strengthClasses[n.grade],
      category: 'hall',
      place: places[n.place],
    }),
    laws: [
      { raise: 'load', rises: ['sag', 'firstSag', 'stress'], falls: ['ok'] },
      { raise: 'person', rises: ['sag', 'firstSag', 'stress'] },
      { raise: 'length', rises: ['sag', 'firstSag', 'stress', 'allowed'], falls: ['ok'] },
      { raise: 't', rises: ['ok'], falls: ['sag', 'firstSag', 'stress'] },
      { raise: 'grade', falls: ['sag', 'firstSag'] },
      { raise: 'place', rises: ['sag'] },
      { raise: 'width', falls: ['stress'] },
    ],
    runs: 24,
  }),
  lawsOf(rackingFrame, {
    numbers: {
      height: [400, 900],
      width: [400, 1500],
      t: [15, 60],
      d: [50, 90],
      push: [20, 250],
      frames: [1, 4, 'whole'],
      grade,
    },
    write: (n) => ({
      height: `${n.height} mm`,
      width: `${n.width} mm`,
      section: `${n.t} x ${n.d} mm`,
      joint: 'glued half lap',
      frames: n.frames,
      push: `${n.push} N`,
      grade: strengthClasses[n.grade],
    }),
    laws: [
      { raise: 'push', rises: ['sway', 'use'] },
      { raise: 'height', rises: ['sway', 'use', 'swayPerForce'], falls: ['pushAllowed', 'stiffness'] },
      { raise: 'width', rises: ['sway', 'swayPerForce'] },
      { raise: 't', rises: ['pushAllowed', 'stiffness'], falls: ['sway', 'use'] },
      { raise: 'd', rises: ['pushAllowed', 'stiffness', 'jointStiffness'], falls: ['sway', 'use'] },
      { raise: 'frames', rises: ['pushAllowed', 'stiffness'], falls: ['sway', 'use'] },
      { raise: 'grade', rises: ['pushAllowed'], falls: ['sway', 'use'] },
    ],
  }),
  lawsOf(tipping, {
    numbers: {
      mass: [8, 90],
      base: [250, 700],
      over: [0, 200],
      lean: [50, 600],
      push: [10, 100],
      high: [400, 1100],
      tilt: [0, 4],
    },
    write: (n) => ({
      parts: [{ mass: `${n.mass} kg`, position: `${n.base / 2} mm`, height: '450 mm' }],
      base: `${n.base} mm`,
      overhang: `${n.over} mm`,
      backOverhang: `${n.over} mm`,
      edgeLoad: `${n.lean} N`,
      push: `${n.push} N`,
      pushHeight: `${n.high} mm`,
      piece: 'table',
      floorTilt: `${n.tilt} deg`,
    }),
    laws: [
      { raise: 'mass', rises: [safety, 'forceToTip', 'edgeLoadToTip', leastCheck] },
      { raise: 'base', rises: [safety, 'forceToTip', 'margin', 'tilt', leastCheck] },
      { raise: 'over', falls: [safety, 'forceToTip', 'edgeLoadToTip', leastCheck] },
      { raise: 'lean', falls: [safety, 'forceToTip'] },
      { raise: 'push', falls: [safety, 'margin', leastCheck] },
      { raise: 'high', falls: [safety, 'forceToTip', leastCheck] },
      { raise: 'tilt', falls: [leastCheck] },
    ],
    runs: 24,
  }),
];

/** The least safety of all situations checked. */
function leastCheck(answer: Readonly<Record<string, unknown>>): number {
  const rows = answer['checks'] as readonly { readonly factor?: number | undefined }[];
  return Math.min(...rows.map((r) => r.factor ?? 1e6));
}

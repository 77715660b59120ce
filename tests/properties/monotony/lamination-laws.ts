import { caulCamber } from '../../../src/recipes/lamination/caul-camber.js';
import { clampPlan } from '../../../src/recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../../../src/recipes/lamination/glue-quantity.js';
import { glueTiming } from '../../../src/recipes/lamination/glue-timing.js';
import { layerCount } from '../../../src/recipes/lamination/layer-count.js';
import { matchSlabs } from '../../../src/recipes/lamination/match-slabs.js';
import { slabStack } from '../../../src/recipes/lamination/slab-stack.js';
import { stackUp } from '../../../src/recipes/lamination/stack-up.js';
import { stripCount } from '../../../src/recipes/lamination/strip-count.js';
import { stripLayout } from '../../../src/recipes/lamination/strip-layout.js';
import { lawsOf } from './monotony.js';
import { strengthClasses } from './ranks.js';

export const laminationLaws = [
  lawsOf(caulCamber, {
    numbers: {
      length: [400, 1200],
      width: [30, 90],
      depth: [40, 100],
      force: [200, 8000],
      grade: [0, strengthClasses.length - 1, 'whole'],
    },
    write: (n) => ({
      length: `${n.length} mm`,
      width: `${n.width} mm`,
      depth: `${n.depth} mm`,
      timber: strengthClasses[n.grade],
      clampForceEach: `${n.force} N`,
    }),
    laws: [
      { raise: 'force', rises: ['camber', 'stress', 'press'], falls: ['ok'] },
      { raise: 'length', rises: ['camber', 'stress'], falls: ['ok'] },
      { raise: 'width', rises: ['ok'], falls: ['camber', 'stress'] },
      { raise: 'depth', rises: ['ok'], falls: ['camber', 'stress', 'allowed'] },
      { raise: 'grade', rises: ['allowed'], falls: ['camber'] },
    ],
    runs: 24,
  }),
  lawsOf(clampPlan, {
    numbers: {
      length: [500, 2500],
      height: [15, 60],
      pressure: [100, 1200],
      clamp: [1, 6],
      outer: [30, 120],
      pad: [0, 40],
      slab: [200, 900],
      offset: [0, 6],
      modulus: [200, 700],
      owned: [1, 20, 'whole'],
      spare: [1, 10, 'whole'],
    },
    write: (n) => ({
      length: `${n.length} mm`,
      jointHeight: `${n.height} mm`,
      pressure: `${n.pressure} kPa`,
      clampForce: `${n.clamp} kN`,
      outerWidth: `${n.outer} mm`,
      pad: `${n.pad} mm`,
      padLength: '60 mm',
      needReach: `${n.slab + 40} mm`,
      slabWidth: `${n.slab} mm`,
      offset: `${n.offset} mm`,
      acrossModulus: `${n.modulus} MPa`,
      owned: [
        { force: '4 kN', count: n.owned, reach: '1200 mm' },
        { force: '3 kN', count: n.spare, reach: '600 mm' },
      ],
    }),
    laws: [
      {
        raise: 'length',
        rises: ['clamps', 'totalForce', 'byForce', 'bySpacing', 'liftForce'],
        falls: ['ownedPressure'],
      },
      {
        raise: 'height',
        rises: ['clamps', 'totalForce', 'byForce', 'liftForce', 'bucklingForce'],
        falls: ['ownedPressure'],
      },
      { raise: 'pressure', rises: ['clamps', 'totalForce', 'byForce'] },
      { raise: 'clamp', falls: ['clamps', 'byForce'] },
      { raise: 'outer', rises: ['coverEach'], falls: ['clamps', 'bySpacing'] },
      { raise: 'pad', rises: ['coverEach'], falls: ['clamps', 'bySpacing'] },
      { raise: 'slab', falls: ['liftForce', 'bucklingForce', 'ownedClamps'] },
      { raise: 'offset', falls: ['liftForce'] },
      { raise: 'modulus', rises: ['liftForce', 'bucklingForce'] },
      { raise: 'owned', rises: ['ownedPressure', 'ownedClamps'] },
      { raise: 'spare', rises: ['ownedPressure', 'ownedClamps'] },
    ],
    runs: 24,
  }),
  lawsOf(glueQuantity, {
    numbers: {
      length: [200, 3000],
      height: [10, 90],
      joints: [1, 30, 'whole'],
      spread: [100, 300],
      sides: [1, 2, 'whole'],
      waste: [0, 50],
    },
    write: (n) => ({
      jointLength: `${n.length} mm`,
      jointHeight: `${n.height} mm`,
      joints: n.joints,
      spread: `${n.spread} g/m2`,
      sides: n.sides,
      waste: `${n.waste} %`,
    }),
    laws: (['length', 'height', 'joints', 'spread', 'sides', 'waste'] as const).map((raise) => ({
      raise,
      rises: ['mass', 'volume'],
    })),
  }),
  lawsOf(glueTiming, {
    numbers: {
      joints: [1, 40, 'whole'],
      each: [10, 50],
      open: [5, 20],
      warm: [12, 30],
      up: [0, 3],
      hold: [20, 90],
    },
    write: (n) => ({
      joints: n.joints,
      perJoint: `${n.each} s`,
      openTime: `${n.open} min`,
      temperature: `${n.warm} degC`,
      clampsUp: `${n.up} min`,
      hold: `${n.hold} min`,
    }),
    laws: [
      { raise: 'joints', rises: ['batches', 'total'] },
      { raise: 'each', rises: ['batches', 'total'], falls: ['jointsPerBatch'] },
      { raise: 'open', rises: ['jointsPerBatch', 'openHere'], falls: ['batches', 'total'] },
      { raise: 'warm', rises: ['batches', 'total'], falls: ['jointsPerBatch', 'openHere'] },
      { raise: 'up', rises: ['batches', 'total'], falls: ['jointsPerBatch'] },
      { raise: 'hold', rises: ['total'] },
    ],
    runs: 24,
  }),
  lawsOf(layerCount, {
    numbers: { top: [30, 90], strip: [18, 50], plane: [0, 3], flatten: [0, 15] },
    write: (n) => ({
      topThickness: `${n.top} mm`,
      stripThickness: `${n.strip} mm`,
      planePerFace: `${n.plane} mm`,
      flattenPerGlueUp: `${n.flatten} mm`,
    }),
    laws: [
      { raise: 'top', rises: ['layers', 'finalThickness'] },
      { raise: 'strip', rises: ['layerPlaned'], falls: ['layers'] },
      { raise: 'plane', rises: ['layers'], falls: ['layerPlaned'] },
      { raise: 'flatten', rises: ['layers'] },
    ],
    runs: 40,
  }),
  lawsOf(matchSlabs, {
    numbers: { thin: [36, 40], thick: [41, 46], clean: [0, 2] },
    write: (n) => ({
      slabs: [n.thin, 40.5, n.thick].map((t, i) => ({
        name: `s${i}`,
        thickness: `${t} mm`,
        width: '225 mm',
        length: '2 m',
      })),
      cleanUp: `${n.clean} mm`,
    }),
    laws: [
      { raise: 'thin', rises: ['planeAllTo'], falls: ['loss', 'shimTotal', 'lossShare'] },
      { raise: 'thick', rises: ['loss', 'lossShare', 'shimTotal', 'shimTo'] },
      { raise: 'clean', rises: ['loss', 'lossShare'], falls: ['planeAllTo'] },
    ],
  }),
  lawsOf(slabStack, {
    numbers: {
      length: [800, 2000],
      width: [150, 320],
      pressure: [100, 600],
      clamp: [2, 6],
      caul: [30, 90],
      line: [0.5, 3],
      open: [5, 20],
      warm: [12, 30],
      up: [1, 4],
    },
    write: (n) => ({
      slabs: [1, 2].map(() => ({
        length: `${n.length} mm`,
        width: `${n.width} mm`,
        thickness: '40 mm',
        glueLines: 1,
      })),
      pressure: `${n.pressure} kPa`,
      clampForce: `${n.clamp} kN`,
      caulThickness: `${n.caul} mm`,
      perLine: `${n.line} min`,
      openTime: `${n.open} min`,
      clampsUp: `${n.up} min`,
      temperature: `${n.warm} degC`,
    }),
    laws: [
      { raise: 'length', rises: ['force', 'clamps'] },
      { raise: 'width', rises: ['force', 'clamps'] },
      { raise: 'pressure', rises: ['force', 'clamps'] },
      { raise: 'clamp', falls: ['clamps'] },
      { raise: 'caul', rises: ['reachNeeded'], falls: ['cauls'] },
      { raise: 'line', rises: ['batches'], falls: ['spare', 'inTime'] },
      { raise: 'open', rises: ['spare', 'inTime'], falls: ['batches'] },
      { raise: 'warm', rises: ['batches'], falls: ['spare', 'inTime'] },
      { raise: 'up', rises: ['batches'], falls: ['spare', 'inTime'] },
    ],
    runs: 24,
  }),
  lawsOf(stackUp, {
    numbers: {
      tolerance: [0.05, 0.4],
      setting: [0, 0.3],
      count: [2, 20, 'whole'],
      limits: [0.5, 4],
      confidence: [60, 99],
    },
    write: (n) => ({
      parts: [
        {
          name: 'strip',
          nominal: '45 mm',
          plusMinus: `${n.tolerance} mm`,
          setting: `${n.setting} mm`,
          count: n.count,
        },
      ],
      target: `${45 * n.count} mm`,
      limits: `${n.limits} mm`,
      confidence: `${n.confidence} %`,
    }),
    laws: [
      { raise: 'tolerance', rises: ['worstCase', 'rss', 'sd', 'high'], falls: ['chanceInside', 'low'] },
      { raise: 'setting', rises: ['worstCase', 'rss', 'sd', 'high'], falls: ['chanceInside', 'low'] },
      { raise: 'count', rises: ['nominal', 'worstCase', 'rss', 'sd'], falls: ['chanceInside'] },
      { raise: 'limits', rises: ['chanceInside'] },
      { raise: 'confidence', rises: ['high'], falls: ['low'] },
    ],
  }),
  lawsOf(stripCount, {
    numbers: { top: [300, 900], strip: [30, 90], jointing: [0, 6], trim: [0, 30], machine: [150, 350] },
    write: (n) => ({
      topWidth: `${n.top} mm`,
      stripWidth: `${n.strip} mm`,
      jointing: `${n.jointing} mm`,
      finalTrim: `${n.trim} mm`,
      machineWidth: `${n.machine} mm`,
    }),
    laws: [
      { raise: 'top', rises: ['strips', 'gluedWidth', slabsOf] },
      { raise: 'strip', rises: ['stripFinished'], falls: ['strips'] },
      { raise: 'jointing', rises: ['strips'], falls: ['stripFinished'] },
      { raise: 'trim', rises: ['strips'] },
      { raise: 'machine', falls: [slabsOf] },
    ],
    runs: 40,
  }),
  lawsOf(stripLayout, {
    numbers: { kerf: [0, 8] },
    write: (n) => ({
      topLength: '1500 mm',
      rows: 2,
      kerf: `${n.kerf} mm`,
      minStagger: '100 mm',
      lengths: [
        { name: 'A', length: '820 mm', count: 3 },
        { name: 'B', length: '710 mm', count: 3 },
        { name: 'C', length: '700 mm', count: 2 },
      ],
      timeLimit: '50 ms',
    }),
    laws: [{ raise: 'kerf', rises: ['leastWaste'] }],
    runs: 8,
  }),
];

function slabsOf(answer: Readonly<Record<string, unknown>>): number {
  return (answer['slabs'] as readonly unknown[]).length;
}

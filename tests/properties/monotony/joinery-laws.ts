import { angledRail } from '../../../src/recipes/joinery/angled-rail.js';
import { biscuitSpacing } from '../../../src/recipes/joinery/biscuit-spacing.js';
import { halfLap } from '../../../src/recipes/joinery/half-lap.js';
import { jointFit } from '../../../src/recipes/joinery/joint-fit.js';
import { mitreGap } from '../../../src/recipes/joinery/mitre-gap.js';
import { mitredEnd } from '../../../src/recipes/joinery/mitred-end.js';
import { postCasing } from '../../../src/recipes/joinery/post-casing.js';
import { screwHold } from '../../../src/recipes/joinery/screw-hold.js';
import { splayedCorner } from '../../../src/recipes/joinery/splayed-corner.js';
import { splineSlot } from '../../../src/recipes/joinery/spline-slot.js';
import { squareness } from '../../../src/recipes/joinery/squareness.js';
import { lawsOf } from './monotony.js';
import { categories, places, strengthClasses } from './ranks.js';

export const joineryLaws = [
  lawsOf(angledRail, {
    numbers: { run: [400, 1500], rise: [100, 900], depth: [30, 90], recess: [0, 20] },
    write: (n) => ({
      run: `${n.run} mm`,
      rise: `${n.rise} mm`,
      section: { width: '35 mm', depth: `${n.depth} mm` },
      recessDepth: `${n.recess} mm`,
      uprightWidth: '70 mm',
    }),
    laws: [
      { raise: 'run', rises: ['longPoint'], falls: ['angle'] },
      { raise: 'rise', rises: ['longPoint', 'angle', 'seat'] },
      { raise: 'depth', rises: ['longPoint', 'seat'], falls: ['shortPoint'] },
      { raise: 'recess', rises: ['longPoint'] },
    ],
  }),
  lawsOf(biscuitSpacing, {
    numbers: { length: [400, 2500], end: [40, 120], spacing: [100, 400] },
    write: (n) => ({ length: `${n.length} mm`, endDistance: `${n.end} mm`, spacing: `${n.spacing} mm` }),
    laws: [
      { raise: 'length', rises: ['count', 'glueArea'] },
      { raise: 'spacing', falls: ['count', 'glueArea'] },
      { raise: 'end', falls: ['count', 'glueArea'] },
    ],
  }),
  lawsOf(halfLap, {
    numbers: {
      a: [35, 120],
      b: [35, 120],
      t: [20, 90],
      moment: [1, 80],
      force: [10, 1000],
      grade: [0, strengthClasses.length - 1, 'whole'],
      use: [0, categories.length - 1, 'whole'],
      place: [0, places.length - 1, 'whole'],
    },
    write: (n) => ({
      widthA: `${n.a} mm`,
      widthB: `${n.b} mm`,
      thickness: `${n.t} mm`,
      timber: strengthClasses[n.grade],
      moment: `${n.moment} N m`,
      force: `${n.force} N`,
      category: categories[n.use],
      place: places[n.place],
    }),
    laws: [
      ...(['a', 'b'] as const).map((raise) => ({
        raise,
        rises: ['glueArea', 'twist', 'shearForce'],
        falls: ['use'],
      })),
      { raise: 't', rises: ['depth', 'removed'], falls: ['use'] },
      { raise: 'moment', rises: ['use'] },
      { raise: 'force', rises: ['use'] },
      { raise: 'grade', rises: ['shearForce'], falls: ['use'] },
      { raise: 'use', rises: ['use'], falls: ['twist', 'shearForce'] },
      { raise: 'place', rises: ['use'], falls: ['twist', 'shearForce'] },
    ],
    runs: 24,
  }),
  lawsOf(jointFit, {
    numbers: {
      error: [0.02, 0.2],
      setting: [0, 0.1],
      tightest: [-0.05, 0.02],
      loosest: [0.08, 0.3],
      joints: [1, 20, 'whole'],
    },
    write: (n) => ({
      slot: { size: '6.2 mm', plusMinus: `${n.error} mm` },
      part: { size: '6.15 mm', plusMinus: '0.05 mm' },
      tightest: `${n.tightest} mm`,
      loosest: `${n.loosest} mm`,
      setting: `${n.setting} mm`,
      joints: n.joints,
    }),
    laws: [
      { raise: 'error', rises: ['worstLoose', 'spread'], falls: ['worstTight', 'chanceAtAim'] },
      { raise: 'setting', rises: ['worstLoose', 'spread'], falls: ['worstTight', 'chanceAtAim'] },
      { raise: 'tightest', rises: ['chanceJams'], falls: ['chanceFits', 'chanceAll'] },
      { raise: 'loosest', rises: ['chanceFits', 'chanceAll'], falls: ['chanceLoose'] },
      { raise: 'joints', falls: ['chanceAll'] },
    ],
  }),
  lawsOf(mitreGap, {
    numbers: { t: [15, 60], length: [200, 900], bevel: [0, 1], fence: [0, 0.5], flat: [0, 2], cut: [0, 0.3] },
    write: (n) => ({
      thickness: `${n.t} mm`,
      length: `${n.length} mm`,
      bevelError: `${n.bevel} deg`,
      fenceError: `${n.fence} deg`,
      outOfFlat: `${n.flat} mm`,
      cutVariation: `${n.cut} deg`,
      slabs: 2,
    }),
    laws: [
      { raise: 't', rises: ['gap', 'worst'] },
      { raise: 'length', rises: ['fenceGap', 'worst'] },
      { raise: 'bevel', rises: ['gap', 'worst'] },
      { raise: 'fence', rises: ['fenceGap', 'worst'] },
      { raise: 'flat', rises: ['worst'] },
      { raise: 'cut', rises: ['step', 'worst'] },
    ],
  }),
  lawsOf(mitredEnd, {
    numbers: {
      top: [900, 2500],
      end: [300, 950],
      t: [15, 60],
      kerf: [0, 6],
      trim: [0, 30],
      ends: [1, 2, 'whole'],
    },
    write: (n) => ({
      topLength: `${n.top} mm`,
      endHeight: `${n.end} mm`,
      thickness: `${n.t} mm`,
      kerf: `${n.kerf} mm`,
      trim: `${n.trim} mm`,
      ends: n.ends,
    }),
    laws: [
      { raise: 'top', rises: ['stripLength', 'insideLength'] },
      { raise: 'end', rises: ['stripLength'] },
      { raise: 't', rises: ['wedge'], falls: ['insideLength'] },
      { raise: 'kerf', rises: ['grainBreak', 'stripLength'] },
      { raise: 'trim', rises: ['stripLength'] },
      { raise: 'ends', rises: ['stripLength'], falls: ['insideLength'] },
    ],
  }),
  lawsOf(postCasing, {
    numbers: {
      width: [70, 200],
      depth: [70, 200],
      height: [500, 2400],
      t: [15, 30],
      room: [2, 10],
      uneven: [0, 6],
      posts: [1, 6, 'whole'],
      change: [1, 8],
    },
    write: (n) => ({
      width: `${n.width} mm`,
      depth: `${n.depth} mm`,
      height: `${n.height} mm`,
      thickness: `${n.t} mm`,
      clearance: `${n.room} mm`,
      uneven: `${n.uneven} mm`,
      posts: n.posts,
      timber: 'Douglas-fir',
      moistureChange: `${n.change} %`,
    }),
    laws: [
      { raise: 'width', rises: ['frontWidth', 'outsideWidth', 'area'] },
      { raise: 'depth', rises: ['sideWidth', 'outsideDepth', 'area'] },
      { raise: 'height', rises: ['area'] },
      { raise: 't', rises: ['outsideWidth', 'outsideDepth'] },
      { raise: 'room', rises: ['outsideWidth', 'outsideDepth', 'clearanceLeft'] },
      { raise: 'uneven', rises: ['outsideWidth', 'outsideDepth'] },
      { raise: 'posts', rises: ['area'] },
      { raise: 'change', rises: ['movement'], falls: ['clearanceLeft'] },
    ],
  }),
  lawsOf(screwHold, {
    numbers: {
      gravity: [0.3, 0.85],
      d: [3, 6],
      thread: [15, 70],
      count: [1, 10, 'whole'],
      board: [10, 40],
      head: [7, 14],
      steel: [200, 800],
    },
    write: (n) => ({
      specificGravity: n.gravity,
      diameter: `${n.d} mm`,
      penetration: `${n.thread} mm`,
      count: n.count,
      boardThickness: `${n.board} mm`,
      headDiameter: `${n.head} mm`,
      tensile: `${n.steel} MPa`,
      breaking: true,
    }),
    laws: [
      { raise: 'gravity', rises: ['withdrawal', 'allowable', 'lateral', 'thread', 'head'] },
      { raise: 'd', rises: ['withdrawal', 'allowable', 'thread', 'steel'] },
      { raise: 'thread', rises: ['withdrawal', 'allowable', 'lateral', 'thread'] },
      { raise: 'count', rises: ['withdrawal', 'allowable', 'lateral'] },
      { raise: 'board', rises: ['allowable', 'lateral', 'head'] },
      { raise: 'head', rises: ['allowable', 'head'] },
      { raise: 'steel', rises: ['withdrawal', 'allowable', 'steel'] },
    ],
    runs: 40,
  }),
  lawsOf(splayedCorner, {
    numbers: { sides: [3, 24, 'whole'], slope: [0, 90] },
    write: (n) => ({ sides: n.sides, slope: `${n.slope} deg` }),
    laws: [
      { raise: 'sides', rises: ['between'], falls: ['mitre', 'bevel'] },
      { raise: 'slope', rises: ['bevel'], falls: ['mitre', 'lean', 'between'] },
    ],
  }),
  lawsOf(splineSlot, {
    numbers: { t: [20, 50], width: [8, 45], inside: [6, 20], room: [0, 2], wall: [2, 12] },
    write: (n) => ({
      thickness: `${n.t} mm`,
      splineThickness: '6 mm',
      splineWidth: `${n.width} mm`,
      fromInside: `${n.inside} mm`,
      glueRoom: `${n.room} mm`,
      leastWall: `${n.wall} mm`,
    }),
    laws: [
      { raise: 't', rises: ['wallOutside', 'deepest', 'faceLength', 'ok'] },
      { raise: 'width', rises: ['depth'], falls: ['wallOutside', 'ok'] },
      { raise: 'inside', rises: ['wallInside'] },
      { raise: 'room', rises: ['depth'], falls: ['wallOutside'] },
      { raise: 'wall', falls: ['deepest', 'ok'] },
    ],
    runs: 40,
  }),
  lawsOf(squareness, {
    numbers: { width: [600, 2000], height: [400, 1000], off: [0, 12], error: [0.2, 10] },
    write: (n) => ({
      width: `${n.width} mm`,
      height: `${n.height} mm`,
      cornerOffset: `${n.off} mm`,
      readingError: `${n.error} mm`,
    }),
    laws: [
      { raise: 'width', rises: ['trueDiagonal', 'diagonalA'] },
      { raise: 'off', rises: ['outOfSquare', 'outPerMetre', 'shorten', 'sure'] },
      { raise: 'height', falls: ['outOfSquare'] },
      { raise: 'error', rises: ['readingAngle'], falls: ['sure'] },
    ],
    runs: 40,
  }),
];

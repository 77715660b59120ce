import { lineChart } from '../../charts/lineChart.js';
import { danger } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';

const spindleSpeed = letter('rotation', 'speed of the cutter block', { in: '1/min', bare: true });
const knives = letter('count', 'knives that cut on the same circle');
const feed = letter('speed', 'feed of the timber', { in: 'mm/min', bare: true });

const pitch = formula({
  symbol: 'p',
  gives: letter('length', 'distance from one knife mark to the next', { in: 'mm', bare: true }),
  text: 'v / (z n)',
  where: { v: feed, z: knives, n: spindleSpeed },
  basis: 'geometry',
});

const marks = formula({
  symbol: 'N',
  gives: letter('marks', 'knife marks by length'),
  text: '1 / p',
  where: { p: letter('length', 'distance from one knife mark to the next') },
  basis: 'definition',
});

const wave = formula({
  symbol: 'h',
  gives: letter('length', 'depth of the ripple a knife leaves', { in: 'mm' }),
  text: 'p^2 / (4 d)',
  where: {
    p: letter('length', 'distance from one knife mark to the next', { in: 'mm' }),
    d: letter('length', 'cutting circle diameter', { in: 'mm' }),
  },
  basis: 'geometry',
});

/**
 * How close the knife marks of a planer or moulder stand, and how deep the ripple is: for choosing a feed that needs
 * little sanding. Not for spiral blocks with staggered inserts, whose marks overlap.
 */
export const cutterMarks = recipe({
  name: 'cutterMarks',
  title: 'Knife marks of a planer',
  topic: 'machining',
  about: 'How close the knife marks stand and how deep the ripple is, from speed, knives and feed.',
  sources: [],
  inputs: {
    spindleSpeed: field.quantity('rotation', { symbol: 'n', says: 'speed of the cutter block', above: '0 rpm', max: '60000 rpm' }),
    knives: field.count({ symbol: 'z', says: 'knives that cut on the same circle', min: 1, max: 24 }),
    feed: field.speed({ symbol: 'v', says: 'feed of the timber', above: '0 m/min', max: '300 m/min' }),
    cutterDiameter: field.length({ symbol: 'd', says: 'diameter of the cutting circle', min: '10 mm', max: '1000 mm', default: '72 mm' }),
  },
  steps: [pitch, marks, wave],
  outputs: {
    pitch: out.length({ symbol: 'p', says: 'distance from one knife mark to the next' }),
    marksPerInch: out.marks({ symbol: 'N', says: 'knife marks by length', unit: '1/in' }),
    waveDepth: out.length({ symbol: 'h', says: 'depth of the ripple a knife leaves' }),
  },
  cautions: [danger('keep to the machine maker’s least length and greatest cut; never plane timber that a metal detector has not passed')],
  chart: (given, answer) => {
    const feeds = Array.from({ length: 41 }, (_, i) => (given.feed * 60 * 2 * (i + 1)) / 41);
    return lineChart({
      title: 'Mark spacing against feed',
      x: { title: 'Feed', unit: 'm/min', values: feeds },
      y: { title: 'Distance between marks', unit: 'mm' },
      series: [{ name: `${given.knives} knives`, values: feeds.map((f) => (f * 1000) / (given.knives * given.spindleSpeed * 60)) }],
      marks: [{ x: given.feed * 60, y: answer.pitch * 1000, label: 'this feed' }],
    });
  },
  example: { spindleSpeed: '6000 rpm', knives: 4, feed: '60 ft/min' },
});

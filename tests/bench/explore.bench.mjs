// Sweeps and draws, each beside the same work done another way in the same run. Ratios, not times, are what counts.
import { create, all } from 'mathjs';
import { cutterMarks, movementAcross, uncertain, sweep, range } from '../../dist/index.js';

const median = (xs) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)];
async function time(run) {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

const n = 1_000_000;
const math = create(all);
const compiled = ['v / (z * n)', '1 / p', 'p^2 / (4 * d)'].map((t) => math.compile(t));
const ways = {
  'recipe.evaluate, one at a time': () => {
    let s = 0;
    for (let i = 0; i < n; i++) s += cutterMarks.evaluate({ spindleSpeed: 100, knives: 4, feed: 0.1 + i * 1e-7, cutterDiameter: 0.072 }).pitch;
    return s;
  },
  'sweep over a range': () => sweep(cutterMarks, { feed: range('6 m/min', '12 m/min', n), spindleSpeed: '6000 rpm', knives: 4, cutterDiameter: '72 mm' }),
  'the same loop by hand': () => {
    const feed = new Float64Array(n), shown = new Float64Array(n), a = new Float64Array(n), b = new Float64Array(n), c = new Float64Array(n), pitch = new Float64Array(n), marks = new Float64Array(n), wave = new Float64Array(n);
    for (let i = 0; i < n; i++) feed[i] = 0.1 + (0.1 * i) / (n - 1);
    for (let i = 0; i < n; i++) {
      const v = feed[i] * 60000;
      const p = (v / (4 * (100 * 60))) * 1e-3;
      const pm = p * 1000;
      a[i] = p;
      b[i] = 1 / p;
      c[i] = ((pm * pm) / (4 * 72)) * 1e-3;
    }
    // A sweep gives its columns in the units shown; so does this.
    for (let i = 0; i < n; i++) {
      shown[i] = feed[i] * 60;
      pitch[i] = a[i] * 1000;
      marks[i] = b[i] * 0.0254;
      wave[i] = c[i] * 1000;
    }
    return pitch;
  },
  'mathjs, its own compiled expressions (a tenth of the points, times ten)': () => {
    let s = 0;
    for (let i = 0; i < n / 10; i++) {
      const p = compiled[0].evaluate({ v: 6000 + i, z: 4, n: 6000 });
      s += compiled[1].evaluate({ p }) + compiled[2].evaluate({ p, d: 72 });
    }
    return s;
  },
};
const times = Object.fromEntries(Object.keys(ways).map((k) => [k, []]));
for (let round = 0; round < 9; round++) for (const [k, run] of Object.entries(ways)) times[k].push(await time(run));
const hand = median(times['the same loop by hand']);
console.log('Three formulas over a million points (medians of 9, interleaved)');
for (const [k, xs] of Object.entries(times)) {
  const t = median(xs) * (k.startsWith('mathjs') ? 10 : 1);
  console.log(`  ${k}: ${((3 * n) / t / 1000).toFixed(1)} million formulas a second; ${(t / hand).toFixed(2)} of the loop by hand`);
}

const draws = [];
for (let i = 0; i < 5; i++) draws.push(await time(() => uncertain(movementAcross, { width: '640 mm +- 2 mm', from: '8 % .. 9 %', to: '11 % .. 13 %', timber: 'white oak', cut: 'flat-sawn' }, { draws: 1_000_000, influence: false })));
console.log(`A million draws of movementAcross: ${median(draws).toFixed(0)} ms (median of 5)`);

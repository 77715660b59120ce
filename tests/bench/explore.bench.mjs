// Sweeps and draws, each beside the same work done another way in the same run. Ratios, not times, are what counts.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { create, all } from 'mathjs';
import { cutterMarks, movementAcross, uncertain, sweep, range } from '../../dist/index.js';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc');
const median = (xs) => [...xs].sort((a, b) => a - b)[Math.floor(xs.length / 2)];
/** Milliseconds of wall clock, and of this process on a processor: the second holds on a machine that others use too. */
async function time(run) {
  const [start, before] = [performance.now(), process.cpuUsage()];
  await run();
  return { wall: performance.now() - start, user: process.cpuUsage(before).user / 1000 };
}

// All five formulas of the recipe depend on the spindle speed, so none can be reckoned once for all points.
const n = 1_000_000;
const formulas = cutterMarks.formulas.length;
const fixed = { knives: 4, feed: 0.1, cutterDiameter: 0.072, wanted: 20 / 0.0254 };
const speeds = () => Float64Array.from({ length: n }, (_, i) => 50 + (100 * i) / (n - 1));
const perSecond = speeds();
const math = create(all);
// The five formulas as they stand in the recipe, in mathjs's own hands.
const [pitchOf, marksOf, waveOf, feedOf, rimOf] = [
  'v / (z * n)',
  '1 / p',
  'p^2 / (4 * d)',
  'z * n / w',
  'pi * d * n',
].map((t) => math.compile(t));
const columns = (length) => Array.from({ length: 6 }, () => new Float64Array(length));

// Each way gives six columns in the units shown: speed (rpm), pitch (mm), marks (1/in), ripple (um), feed (m/min), rim (m/s).
const ways = {
  'sweep over a range': async () => {
    const s = await sweep(cutterMarks, {
      spindleSpeed: range('3000 rpm', '9000 rpm', n),
      knives: 4,
      feed: '6 m/min',
      cutterDiameter: '72 mm',
      wanted: '20 1/in',
    });
    return ['spindleSpeed', 'pitch', 'marksPerInch', 'waveDepth', 'feedForWanted', 'rimSpeed'].map(
      (c) => s.column(c).values,
    );
  },
  'the same loop by hand': () => {
    const [speed, pitch, marks, wave, feed, rim] = columns(n);
    for (let i = 0; i < n; i++) {
      const perMinute = 3000 + (6000 * i) / (n - 1);
      const p = 6000 / (4 * perMinute);
      speed[i] = perMinute;
      pitch[i] = p;
      marks[i] = 25.4 / p;
      wave[i] = ((p * p) / (4 * 72)) * 1000;
      feed[i] = (4 * perMinute * 0.0254) / 20;
      rim[i] = (Math.PI * 0.072 * perMinute) / 60;
    }
    return [speed, pitch, marks, wave, feed, rim];
  },
  'recipe.evaluate, one at a time': () => {
    const [speed, pitch, marks, wave, feed, rim] = columns(n);
    for (let i = 0; i < n; i++) {
      const a = cutterMarks.evaluate({ spindleSpeed: perSecond[i], ...fixed });
      speed[i] = perSecond[i] * 60;
      pitch[i] = a.pitch * 1000;
      marks[i] = a.marksPerInch * 0.0254;
      wave[i] = a.waveDepth * 1e6;
      feed[i] = a.feedForWanted * 60;
      rim[i] = a.rimSpeed;
    }
    return [speed, pitch, marks, wave, feed, rim];
  },
  'mathjs, its own compiled expressions (a tenth of the points, times ten)': () => {
    const [speed, pitch, marks, wave, feed, rim] = columns(n / 10);
    for (let i = 0; i < n / 10; i++) {
      const perMinute = 3000 + (6000 * i) / (n / 10 - 1);
      const p = pitchOf.evaluate({ v: 6000, z: 4, n: perMinute });
      speed[i] = perMinute;
      pitch[i] = p;
      marks[i] = marksOf.evaluate({ p: p / 25.4 });
      wave[i] = waveOf.evaluate({ p, d: 72 }) * 1000;
      feed[i] = feedOf.evaluate({ z: 4, n: perMinute, w: 20 / 0.0254 });
      rim[i] = rimOf.evaluate({ d: 0.072, n: perMinute / 60 });
    }
    return [speed, pitch, marks, wave, feed, rim];
  },
};

// The ways must agree before their times mean anything: at the ends and in the middle of the range.
const reference = await ways['the same loop by hand']();
for (const [name, run] of Object.entries(ways)) {
  const got = await run();
  reference.forEach((column, k) => {
    for (const share of [0, 1]) {
      const [a, b] = [column[share * (n - 1)], got[k][share * (got[k].length - 1)]];
      if (Math.abs(a - b) > 1e-9 * Math.abs(a))
        throw new Error(`${name}: column ${k} gives ${b}, by hand ${a}`);
    }
  });
}

const times = Object.fromEntries(Object.keys(ways).map((k) => [k, []]));
// Each round begins with another, so that none always clears away what the one before it has left.
const order = Object.entries(ways);
for (let round = 0; round < 25; round++) {
  order.push(order.shift());
  for (const [k, run] of order) {
    // mathjs and the objects of evaluate leave much to clear away: each way pays for its own alone.
    collect();
    times[k].push(await time(run));
  }
}
const took = (k, clock) => median(times[k].map((t) => t[clock])) * (k.startsWith('mathjs') ? 10 : 1);
console.log(`${formulas} formulas over a million points (medians of 25, interleaved)`);
for (const k of Object.keys(ways)) {
  const [wall, user] = [took(k, 'wall'), took(k, 'user')];
  const hand = took('the same loop by hand', 'wall');
  console.log(
    `  ${k}: ${((formulas * n) / wall / 1000).toFixed(1)} million formulas a second (${((formulas * n) / user / 1000).toFixed(1)} by processor time); ${(wall / hand).toFixed(2)} of the loop by hand`,
  );
}

const draws = [];
for (let i = 0; i < 5; i++)
  draws.push(
    await time(() =>
      uncertain(
        movementAcross,
        {
          width: '640 mm +- 2 mm',
          from: '8 % .. 9 %',
          to: '11 % .. 13 %',
          timber: 'white oak',
          cut: 'flat-sawn',
        },
        { draws: 1_000_000, influence: false },
      ),
    ),
  );
console.log(
  `A million draws of movementAcross: ${median(draws.map((d) => d.wall)).toFixed(0)} ms, ${median(draws.map((d) => d.user)).toFixed(0)} ms of processor time (medians of 5)`,
);

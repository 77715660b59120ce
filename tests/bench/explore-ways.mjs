// The same million points calculated in several ways. Run by explore.bench.mjs with the name of one: each way has a process to
// itself, so that none lives on memory that another has left behind or clears away what another has used.
import { create, all } from 'mathjs';
import { cutterMarks, sweep, range } from '../../dist/index.js';

// All five formulas of the recipe depend on the spindle speed, so none can be calculated once for all points.
export const n = 1_000_000;
export const formulas = cutterMarks.formulas.length;
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
export const ways = {
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

/** Milliseconds of wall clock, and of this process on a processor: the second holds on a machine that others use too. */
async function time(run) {
  const [start, before] = [performance.now(), process.cpuUsage()];
  await run();
  const { user, system } = process.cpuUsage(before);
  return { wall: performance.now() - start, processor: (user + system) / 1000 };
}

const run = ways[process.argv[2]];
if (process.send && run) {
  const columns = await run();
  process.send({ ends: columns.map((c) => [c[0], c[c.length - 1]]) });
  process.on('message', async () => process.send(await time(run)));
}

// Sweeps and draws, each beside the same work done another way in the same run. Ratios, not times, are what counts.
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { movementAcross, uncertain } from '../../dist/index.js';
import { formulas, n, ways } from './explore-ways.mjs';
import { median } from './median.mjs';

const names = Object.keys(ways);
const hand = names.find((name) => name.includes('by hand'));
const children = Object.fromEntries(
  names.map((name) => [name, fork(new URL('explore-ways.mjs', import.meta.url), [name])]),
);
const heard = async (name) => (await once(children[name], 'message'))[0];

// The ways must agree before their times mean anything: at both ends of the range, in every column.
const ends = Object.fromEntries(
  await Promise.all(names.map(async (name) => [name, (await heard(name)).ends])),
);
for (const name of names)
  ends[hand].flat().forEach((a, k) => {
    const b = ends[name].flat()[k];
    if (!(Math.abs(a - b) <= 1e-9 * Math.abs(a)))
      throw new Error(`${name}: number ${k} is ${b}, by hand ${a}`);
  });

const times = Object.fromEntries(names.map((name) => [name, []]));
for (let round = 0; round < 25; round++)
  for (const name of names) {
    children[name].send('run');
    times[name].push(await heard(name));
  }
for (const child of Object.values(children)) child.disconnect();

const took = (name, clock) => median(times[name].map((t) => t[clock])) * (name.startsWith('mathjs') ? 10 : 1);
console.log(
  `${formulas} formulas over a million points (medians of 25, interleaved, each way in a process of its own)`,
);
for (const name of names) {
  const [wall, processor] = [took(name, 'wall'), took(name, 'processor')];
  console.log(
    `  ${name}: ${((formulas * n) / wall / 1000).toFixed(1)} million formulas a second; ${(wall / took(hand, 'wall')).toFixed(2)} of the loop by hand (${(processor / took(hand, 'processor')).toFixed(2)} by processor time)`,
  );
}

const samples = [];
for (let i = 0; i < 5; i++) {
  const start = performance.now();
  await uncertain(
    movementAcross,
    {
      width: '640 mm +- 2 mm',
      from: '8 % .. 9 %',
      to: '11 % .. 13 %',
      timber: 'white oak',
      cut: 'flat-sawn',
    },
    { samples: 1_000_000, influence: false },
  );
  samples.push(performance.now() - start);
}
console.log(`A million draws of movementAcross: ${median(samples).toFixed(0)} ms (median of 5)`);

// How many times a second one formula is evaluated through a recipe, and how long a command takes from start to answer.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { catalogue, cutterMarks, equilibriumMoisture } from '../../dist/index.js';
import { median } from './median.mjs';

function rate(run, n) {
  const rates = [];
  for (let round = 0; round < 7; round++) {
    const start = performance.now();
    let sum = 0;
    for (let i = 0; i < n; i++) sum += run(i);
    rates.push(n / (performance.now() - start) / 1000);
    if (!Number.isFinite(sum)) throw new Error('not finite');
  }
  return median(rates);
}

console.log('Recipes evaluated one at a time (million a second, median of 7)');
console.log(
  `  cutterMarks, ${cutterMarks.formulas.length} formulas: ${rate((i) => cutterMarks.evaluate({ spindleSpeed: 100, knives: 4, feed: 0.1 + i * 1e-8, cutterDiameter: 0.07 }).pitch, 2e6).toFixed(1)}`,
);
console.log(
  `  equilibriumMoisture, ${equilibriumMoisture.formulas.length} formulas: ${rate((i) => equilibriumMoisture.evaluate({ temperature: 20, humidity: 0.3 + (i % 1000) * 1e-4 }).moisture, 2e6).toFixed(1)}`,
);

const command = fileURLToPath(new URL('../../src/launch/reckoner.mjs', import.meta.url));
const words = [
  'work',
  'movementAcross',
  'width=900 mm',
  'timber=white oak',
  'cut=flat-sawn',
  'from=8 %',
  'to=12 %',
  '--json',
];
const times = { node: [], reckoner: [] };
for (let round = 0; round < 9; round++) {
  for (const [name, args] of [
    ['node', ['-e', '0']],
    ['reckoner', [command, ...words]],
  ]) {
    const start = performance.now();
    spawnSync(process.execPath, args);
    times[name].push(performance.now() - start);
  }
}
console.log(
  `A work command from start to answer (${catalogue.length} recipes known): ${median(times.reckoner).toFixed(0)} ms, ${(median(times.reckoner) / median(times.node)).toFixed(1)} times an empty Node`,
);

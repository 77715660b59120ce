// Cutting plans on public bin-packing instances, beside first-fit-decreasing, best-fit-decreasing and a plain assignment
// model in the same solver. Sources of the instances stand in their files. Another folder of such files may be named.
import loadHighs from 'highs';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cuttingPlan } from '../../dist/index.js';
import { median } from './median.mjs';

const folder = process.argv[2] ?? fileURLToPath(new URL('binpack', import.meta.url));
const plainSeconds = Number(process.env.RECKONER_PLAIN_SECONDS ?? 5);
const highs = await loadHighs();

/** Bins of first-fit or best-fit, longest first. */
function fit(items, capacity, best) {
  const room = [];
  for (const l of [...items].sort((a, b) => b - a)) {
    let at = -1;
    for (let j = 0; j < room.length; j++) {
      if (room[j] < l || (at >= 0 && room[j] >= room[at])) continue;
      at = j;
      if (!best) break;
    }
    if (at < 0) room.push(capacity - l);
    else room[at] -= l;
  }
  return room.length;
}

/** Item i in bin j, bin j open or not: the model of the textbooks. */
function assignment(items, capacity, bins) {
  const n = items.length;
  const cols = bins + n * bins;
  const starts = [0];
  const indices = [];
  const values = [];
  for (let j = 0; j < bins; j++) {
    indices.push(n + j);
    values.push(-capacity);
    starts.push(indices.length);
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < bins; j++) {
      indices.push(i, n + j);
      values.push(1, items[i]);
      starts.push(indices.length);
    }
  }
  const model = highs.createModel();
  try {
    model.options.set({ output_flag: false, time_limit: plainSeconds });
    model.passModel({
      numCols: cols,
      numRows: n + bins,
      colCost: [...Array(bins).fill(1), ...Array(n * bins).fill(0)],
      colLower: Array(cols).fill(0),
      colUpper: Array(cols).fill(1),
      rowLower: [...Array(n).fill(1), ...Array(bins).fill(-highs.infinity)],
      rowUpper: [...Array(n).fill(1), ...Array(bins).fill(0)],
      matrix: { format: 'csc', numRows: n + bins, numCols: cols, starts, indices, values },
      integrality: Array(cols).fill(1),
    });
    model.run();
    const solved = model.getModelStatus() === highs.constants.modelStatus.optimal;
    const value = model.getObjectiveValue();
    return {
      bins: Number.isFinite(value) && value > 0 && value <= bins ? Math.round(value) : undefined,
      solved,
    };
  } finally {
    model.dispose();
  }
}

const files = readdirSync(folder)
  .filter((f) => f.endsWith('.json'))
  .sort();
const times = [];
const plainTimes = [];
let wrong = 0;
console.log(
  `Cutting plans on ${files.length} public instances (plain model stopped after ${plainSeconds} s)`,
);
console.log('  instance    items  best  first-fit  best-fit  plain model        this plan  proved');
for (const file of files) {
  const { items, capacity, optimum } = JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const count = new Map();
  for (const l of items) count.set(l, (count.get(l) ?? 0) + 1);
  const parts = [...count].map(([l, n]) => ({ length: `${l} mm`, count: n }));
  const ffd = fit(items, capacity, false);
  let start = performance.now();
  const plan = await cuttingPlan({
    parts,
    stock: [{ length: `${capacity} mm` }],
    kerf: '0 mm',
    timeLimit: '60 s',
  });
  const took = performance.now() - start;
  times.push(took);
  start = performance.now();
  const plain = assignment(items, capacity, ffd);
  const plainTook = performance.now() - start;
  plainTimes.push(plain.solved ? plainTook : Infinity);
  if (plan.boardsUsed !== optimum || !plan.optimal) wrong++;
  const say = (v, w) => String(v).padStart(w);
  console.log(
    `  ${basename(file, '.json').padEnd(10)}${say(items.length, 7)}${say(optimum ?? '?', 6)}${say(ffd, 11)}${say(fit(items, capacity, true), 10)}${say(`${plain.bins ?? 'none'}${plain.solved ? '' : ' (open)'} ${plainTook.toFixed(0)} ms`, 20)}${say(`${plan.boardsUsed} ${took.toFixed(0)} ms`, 14)}${say(plan.optimal ? 'yes' : 'no', 8)}`,
  );
}
console.log(
  `  this plan: ${files.length - wrong} of ${files.length} at the known best and proved, median ${median(times).toFixed(0)} ms; plain model solved ${plainTimes.filter(Number.isFinite).length} of ${files.length}`,
);
if (wrong > 0) process.exitCode = 1;

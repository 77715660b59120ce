// How fast a piece answers, in processor time: described and checked, one value changed, a sweep of ten thousand variants.
import { fileURLToPath } from 'node:url';
import { openPiece, piece, range } from '../../dist/index.js';
import { median } from './median.mjs';

const file = fileURLToPath(new URL('../../data/demo/tea-counter.piece.json', import.meta.url));
/** Milliseconds of processor time: the same on a machine that does other work beside. */
const processor = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const timed = (run) => {
  const start = processor();
  run();
  return processor() - start;
};
let worst = 0;
const report = (what, ms, most) => {
  const over = ms > most;
  if (over) worst = 1;
  console.log(`  ${what}: ${ms.toFixed(1)} ms, at most ${most} ms${over ? '  TOO SLOW' : ''}`);
};

console.log('A piece');
const pictures = ['plan', 'front', 'end', 'section'];
const cold = timed(() => {
  const p = openPiece(file);
  if (p.questions.length < 25) throw new Error('too few questions');
});
console.log(
  `  described and checked for the first time in a process, tables of data read: ${cold.toFixed(0)} ms`,
);
const written = openPiece(file).written;
const whole = Array.from({ length: 15 }, (_, i) =>
  timed(() => {
    const p = piece({ ...written, name: `counter ${i}` });
    if (p.questions.length < 25) throw new Error('too few questions');
    for (const name of pictures) p.picture(name);
  }),
);
report('described, checked and drawn, no searches', median(whole), 150);

const counter = await openPiece(file).search();
if (counter.questions.length < 25) throw new Error('too few questions');
const changes = {
  'top.thickness': (i) => `${40 + i / 10} mm`,
  'use.goods': (i) => `${1.5 + i / 100} kPa`,
  'parts.leg.across[1]': (i) => `${85 + i} mm`,
  'costs.hourly': (i) => `£${15 + i}`,
};
for (const [path, value] of Object.entries(changes)) {
  const times = Array.from({ length: 15 }, (_, i) =>
    timed(() => counter.with({ [path]: value(i + 1) }).questions),
  );
  report(`${path} changed`, median(times), 50);
}

let reports = 0;
const start = processor();
const sweep = await counter.sweep(
  {
    'top.thickness': range('30 mm', '50 mm', 20),
    'use.goods': range('1 kPa', '4 kPa', 20),
    'use.leaning': range('200 N', '600 N', 25),
  },
  { onProgress: () => reports++ },
);
report(`${sweep.count} variants, ${reports} reports of progress`, processor() - start, 10_000);
process.exit(worst);

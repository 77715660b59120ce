// The part of README.md that tells the latest figures, between two markers: node tests/proof/proof.mjs --readme
import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const [from, to] = ['<!-- figures -->', '<!-- /figures -->'];

/** A row of the kernels' bench: ours, Python's, and the ratio of the two. */
function ratio(lines, name) {
  const row = lines
    ?.find((l) => l.startsWith(name))
    ?.slice(36)
    .trim()
    .split(/\s+/);
  return row && { ours: row[0], python: row[1], ratio: row[3] };
}

/** Puts the rows of the table into README.md. `rows`: [what, figure, when] */
export function writeReadme(root, rows) {
  const file = join(root, 'README.md');
  const text = readFileSync(file, 'utf8');
  if (!text.includes(from) || !text.includes(to)) throw new Error(`README.md lacks ${from} or ${to}`);
  const table = [
    '| what | figure | measured |',
    '| --- | --- | --- |',
    ...rows.map((r) => `| ${r.join(' | ')} |`),
  ].join('\n');
  const next = `${text.slice(0, text.indexOf(from) + from.length)}\n\n${table}\n\n${text.slice(text.indexOf(to))}`;
  writeFileSync(`${file}.new`, next);
  renameSync(`${file}.new`, file);
}

/** The rows, from what the table of the proof holds. */
export function rowsOf({ passed, total, recalled, mutation, kept }) {
  const rows = [];
  const add = (name, what, tell) => {
    const f = kept(name);
    if (f) rows.push([what, tell(f), f.date]);
  };
  const today = new Date().toISOString().slice(0, 10);
  rows.push([
    'published checks',
    `${passed} of ${total} agree, ${recalled} of them with a figure recalled and not seen in print`,
    today,
  ]);
  add(
    'fuzz-quantities',
    'malformed texts for a quantity',
    (f) => `${f.tried.toLocaleString('en')}: read or refused in one line`,
  );
  add(
    'fuzz-recipes',
    'malformed inputs for recipes',
    (f) => `${f.tried.toLocaleString('en')} over ${f.recipes} recipes: answered or refused by field`,
  );
  add(
    'fuzz-notebooks',
    'corrupted notebooks, surveys, notes',
    (f) => `${f.tried.toLocaleString('en')} of each: read right or refused with a place`,
  );
  if (mutation.tried > 0)
    rows.push([
      'faults put in on purpose',
      `${mutation.noticed} of ${mutation.tried} noticed, ${mutation.explained} change no answer, ${mutation.left} left`,
      mutation.date,
    ]);
  add('coverage', 'branches run through', (f) => {
    const all = Object.entries(f.branches)
      .filter(([room]) => room !== 'timber')
      .map(([, b]) => b);
    const [covered, whole] = ['covered', 'total'].map((k) => all.reduce((n, b) => n + b[k], 0));
    return `${covered} of ${whole} in units, engine and recipes`;
  });
  add('kernel', 'kernel against Jupyter’s own clients', (f) => f.count);
  add('protocol', 'kernel beside Python’s', (f) =>
    [
      ['first result', 'first result ms'],
      ['warm cell', '1+1 warm ms'],
      ['30 fresh lines', '30 lines ms'],
      ['20,000 lines printed', '20000 log lines ms'],
    ]
      .map(([what, row]) => [what, ratio(f.lines, row)])
      .filter(([, r]) => r)
      .map(([what, r]) => `${what} ${r.ours} ms (${r.ratio})`)
      .join(', '),
  );
  add('soak', 'soak', (f) => f.lines.find((l) => /interrupts/.test(l))?.replace(/;.*/, '') ?? '');
  add('fresh', 'fresh clone', (f) => `npm start ${f.start} s, npm test ${f.test} s; packed ${f.packedMB} MB`);
  return rows;
}

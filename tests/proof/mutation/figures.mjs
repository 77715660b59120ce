// The outcome of a run: printed for single files, kept as a part's figures for the table of the proof.
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { root } from './copy.mjs';

/** Whether a kept reason is about this fault. */
const explains = (reason, fault) =>
  reason.file === fault.file &&
  reason.line === fault.text &&
  reason.becomes === fault.becomes &&
  (reason.was === undefined || reason.was === fault.was);

/** Counts of a run by outcome and kind; what was not noticed, by place. */
function tally(faults, seen, reasons) {
  const count = { noticed: 0, 'out of time': 0, survived: 0, noTest: 0 };
  const kinds = {};
  const survivors = [];
  const pictures = { tried: 0, noticed: 0, survivors: [] };
  const explained = [];
  const live = (f, reached) => {
    if (!f.picture) count[reached ? 'survived' : 'noTest']++;
    const reason = reasons.find((r) => explains(r, f));
    const place = `${f.file}:${f.line}`;
    if (reason) explained.push({ place, line: f.text, was: f.was, becomes: f.becomes, why: reason.why });
    else
      (f.picture ? pictures.survivors : survivors).push(
        `${place} ${f.kind}${reached ? '' : ' (no test comes here)'}: ${f.text}  [${f.was}  ->  ${f.becomes}]`,
      );
  };
  for (const f of faults) {
    const end = seen.end.get(f.id);
    const kind = f.picture ? pictures : (kinds[f.kind] ??= { tried: 0, noticed: 0 });
    kind.tried++;
    if (!end) {
      live(f, seen.tests.has(f.id) || seen.loads.has(f.id));
      continue;
    }
    kind.noticed++;
    if (!f.picture) count[end]++;
  }
  return { count, kinds, survivors, pictures, explained };
}

/** Counts of a run, and every survivor by place, for the table of the proof. */
export function keep(name, part, faults, aside, seen, printed) {
  const told = join(root, 'tests/proof/surviving-mutants', `${name}.json`);
  const reasons = existsSync(told) ? JSON.parse(readFileSync(told, 'utf8')) : [];
  const { count, kinds, survivors, pictures, explained } = tally(faults, seen, reasons);
  const tried = faults.length - pictures.tried;
  const figures = {
    date: new Date().toISOString().slice(0, 10),
    machine: `${cpus().length} cores, ${cpus()[0]?.model.trim()}, Node ${process.versions.node}`,
    files: part.mutate,
    tried,
    killed: count.noticed,
    timeouts: count['out of time'],
    survived: count.survived,
    noTestComesThere: count.noTest,
    leftAside: aside,
    triedAlone: seen.triedAlone,
    score: tried === 0 ? 0 : Number((((count.noticed + count['out of time']) / tried) * 100).toFixed(1)),
    kinds,
    pictures,
    explained,
    survivors,
  };
  if (printed) {
    for (const s of pictures.survivors) console.log(`in a picture: ${s}`);
    for (const s of survivors) console.log(s);
    console.log(
      `${figures.score} % of ${tried} noticed, ${explained.length} explained, ${survivors.length} left`,
    );
    return;
  }
  const kept = join(root, 'tests/proof/figures', `mutation-${name}.json`);
  writeFileSync(`${kept}.new`, `${JSON.stringify(figures, null, 2)}\n`);
  renameSync(`${kept}.new`, kept);
  console.log(
    `${name}: ${figures.score} % of ${tried} noticed (${figures.timeouts} by running out of time), ${figures.survived} lived, ${figures.noTestComesThere} where no test comes; ${explained.length} explained`,
  );
}

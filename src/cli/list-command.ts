import { catalogue } from '../recipes/catalogue.js';
import type { Words } from './usage.js';

/** `reckoner list [WORD]`. */
export function list(words: Words): number {
  const word = words.plain[0]?.toLowerCase();
  const found = catalogue.filter(
    (r) => !word || [r.name, r.title, r.topic, r.about].some((t) => t.toLowerCase().includes(word)),
  );
  if (words.flags.has('json')) {
    const listed = found.map((r) => ({ name: r.name, topic: r.topic, title: r.title, about: r.about }));
    process.stdout.write(`${JSON.stringify(listed, null, 2)}\n`);
    return 0;
  }
  const wide = Math.max(0, ...found.map((r) => r.name.length));
  for (const topic of new Set(found.map((r) => r.topic))) {
    process.stdout.write(`${topic}\n`);
    for (const r of found.filter((x) => x.topic === topic))
      process.stdout.write(`  ${r.name.padEnd(wide)}  ${r.title}\n`);
  }
  if (found.length === 0)
    process.stdout.write(`no recipe has ${JSON.stringify(word)} in its name or title\n`);
  return 0;
}

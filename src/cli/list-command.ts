import { recipesFor } from '../recipes/glossary.js';
import type { Words } from './usage.js';

/** `reckoner list [WORD]`. */
export function list(words: Words): number {
  const word = words.plain.join(' ');
  const found = recipesFor(word);
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
  if (word === '') process.stdout.write('\nDoors and drawers are out of scope.\n');
  if (found.length === 0) process.stdout.write(`no recipe matches ${JSON.stringify(word)}\n`);
  return 0;
}

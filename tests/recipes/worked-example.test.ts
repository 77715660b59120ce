// The worked example of DEVELOPERS.md is a recipe of the project and its test, word for word.
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const guide = read('DEVELOPERS.md');
const start = guide.indexOf('<!-- worked example -->');
const section = guide.slice(start, guide.indexOf('<!-- /worked example -->', start));

/** Each block of code with the path that stands on the line before it, between backquotes. */
const blocks = [...section.matchAll(/`([^`\n]+)`[^`\n]*\n\n```ts\n([\s\S]*?)```\n/g)].map(
  ([, path, code]) => [path!, code!] as const,
);

it('shows one recipe file and one test file', () => {
  expect(blocks.map(([path]) => path)).toEqual([
    'src/recipes/joinery/splayed-corner.ts',
    'tests/recipes/joinery/splayed-corner.test.ts',
  ]);
});

it.each(blocks)('shows %s as it is', (path, code) => {
  expect(code).toBe(read(path));
});

it('imports from the engine no more than the six concepts and the cautions', () => {
  const names = [...blocks[0]![1].matchAll(/import \{ ([^}]+) \} from '..\/..\/engine\//g)].flatMap((m) => m[1]!.split(', ')); // prettier-ignore
  expect(names.sort()).toEqual(['cite', 'danger', 'field', 'formula', 'note', 'out', 'recipe', 'variable']);
});

// A caution that warns of injury is an instruction: what to do first, then why.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { asSentence, danger } from '../../src/engine/caution.js';
import { resultInternals } from '../../src/engine/result.js';
import { catalogue } from '../../src/recipes/catalogue.js';

const root = fileURLToPath(new URL('../../src', import.meta.url));

/** Texts that stand in the sources behind `danger(`, shown by the example or not. */
const written = ['recipes', 'materials'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((f) => f.endsWith('.ts') && !f.endsWith('interfaces.ts'))
    .flatMap((f) =>
      [
        ...readFileSync(join(root, folder, f), 'utf8').matchAll(/\bdanger\(\s*(['`])((?:\\.|(?!\1).)*)\1/gs),
      ].map(([, , text = '']) => ({ file: f, text })),
    ),
);

/** Verbs in the imperative that a caution may begin with. */
const imperative =
  /^(?:break|clear|cut|do not|draw|dress|dry|extract|feed|fix|flatten|follow|give|glue|go over|hold|join|keep|lay|leave|let no|let tops|let|lift|look|make|never|open|plane|plug|pull|put|read|rip|set|spread|stand|support|stop|take|use|wear|widen|drive|carry|move)\b/i;

/** Beginnings that are not a verb, each with the reason. */
const exceptions: Readonly<Record<string, string>> = {};

describe('a danger', () => {
  it('is found in the sources of many recipes', () => {
    expect(written.length).toBeGreaterThan(50);
  });
  it('begins with what to do', () => {
    const odd = written.filter(({ text }) => !imperative.test(text) && !(text in exceptions));
    expect(odd.map(({ file, text }) => `${file}: ${text}`)).toEqual([]);
  });
  it('is of injury: a joint, a board or a plan that fails is a note', () => {
    const ofThings = written.filter(({ text }) => /skinned|shimmed|nothing is left|do not reach/.test(text));
    expect(ofThings).toEqual([]);
  });
  it('is shown as a sentence with a capital and a full stop', () => {
    expect(asSentence(danger('keep hands away').text)).toBe('Keep hands away.');
  });
  it.each(catalogue.map((r) => [r.name, r] as const))(
    'of %s begins so when it is shown',
    async (_name, recipe) => {
      const shown = resultInternals(await recipe(recipe.example))!
        .cautions()
        .filter((c) => c.level === 'danger');
      expect(shown.map((c) => c.text).filter((t) => !imperative.test(t))).toEqual([]);
    },
  );
});

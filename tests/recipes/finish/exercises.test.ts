import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as library from '../../../src/index.js';

// The class exercises of "The last coat", each with an answer reckoned by hand; the answer of the notebook must take it.
const byHand: Readonly<Record<string, readonly [right: unknown, wrong: unknown]>> = {
  spirit: ['250 mL', '200 mL'], // a litre is 80 %, so the whole is 1.25 L
  coats: [5, 3], // 42 / 28 x 3 = 4.5
  bare: ['407 mL', '366 mL'], // (1.95 x 0.64 + 2 x 0.042 x 2.59) m2 x 3 / 12 / 0.9; without the loss 366 mL
  five: [0.444, 0.875], // (5 / 3 - 1) / 1.5; the chart prints 7/8
};

describe('class exercises of the last coat', () => {
  const cells = (
    JSON.parse(
      readFileSync(new URL('../../../notebooks/08-the-last-coat.ipynb', import.meta.url), 'utf8'),
    ) as {
      cells: { cell_type: string; source: string[] }[];
    }
  ).cells;
  const sources = cells.filter((c) => c.cell_type === 'code').map((c) => c.source.join(''));
  const code = (name: string): string =>
    sources.find((s) => s.includes(`const ${name} = exercise(`)) as string;
  it('are all answered here', () => {
    expect(sources.filter((s) => s.includes('= exercise(')).length).toBe(Object.keys(byHand).length);
  });
  it.each(Object.entries(byHand))(
    '%s takes the answer by hand and not the usual slip',
    (name, [right, wrong]) => {
      const body = `${code(name)
        .replace(/^import .*$/gm, '')
        .replace(/!/g, '')
        .replace(new RegExp(`^${name}$`, 'm'), '')}\nreturn ${name};`;
      const names = Object.keys(library);
      const made = new Function(...names, body)(
        ...names.map((n) => (library as Record<string, unknown>)[n]),
      ) as library.Exercise;
      expect(made.check(right).message, String(right)).toMatch(/^Right/);
      expect(made.check(wrong).right, String(wrong)).toBe(false);
      expect(made.check('?').right).toBe(false);
      expect(made.question).toMatch(/\?$/);
    },
  );
});

// Everything that a recipe's example shows a person: text, Markdown, page and the words of its chart.
import { describe, expect, it } from 'vitest';
import { resultInternals } from '../../src/engine/result.js';
import { spokenAnswer } from '../../src/engine/spoken.js';
import { catalogue } from '../../src/recipes/catalogue.js';

/** An epsilon, a unit of the code, a placeholder, an editor's note, an internal id. */
const forbidden =
  /10\^\(?[-−](?:9|12)\b|[-−] ?1e-\d|\bbase units?\b|\bdegC\b|\bmoney\b|from memory|recalled|row order|joined from heading|read in text|undefined|\bNaN\b|\[object|\bovendry\b|\breckoned\b|\bnought\b/i;

const titlesOf = (chart: unknown): string[] => {
  if (Array.isArray(chart)) return chart.flatMap(titlesOf);
  if (typeof chart !== 'object' || chart === null) return [];
  return Object.entries(chart).flatMap(([key, v]) => {
    const title = (v as { title?: unknown } | null)?.title;
    return [...(['x', 'y'].includes(key) && typeof title === 'string' ? [title] : []), ...titlesOf(v)];
  });
};

/** Internal ids of sources; the numbers of reports are written with capitals. */
const ids = /\b(?:fpl-gtr-\d|nds-20|ec5\.|en-338|astm-d)/;

describe.each(catalogue.map((r) => [r.name, r] as const))('%s', (_name, recipe) => {
  it('shows no word of the code and no note of an editor', async () => {
    const result = await recipe(recipe.example);
    for (const text of [
      result.toText(),
      result.toMarkdown(),
      result.toHtml().replace(/data-latex="[^"]*"/g, ''),
    ]) {
      const found = forbidden.exec(text) ?? ids.exec(text);
      expect(found && text.slice(Math.max(0, found.index - 60), found.index + 60)).toBeNull();
    }
  });
  it('has axes of at most thirty characters, and the finding as the alternative text of its chart', async () => {
    const result = await recipe(recipe.example);
    const { chart } = result;
    if (!chart) return;
    expect(titlesOf(chart).filter((t) => t.length > 30)).toEqual([]);
    expect(chart['description']).toContain(spokenAnswer(resultInternals(result)!));
  });
});

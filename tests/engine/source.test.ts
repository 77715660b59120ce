import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderAbove, packageFolder } from '../../src/engine/data-folder.js';
import { allSources, citationText, cite, shortCitation } from '../../src/engine/source.js';

describe('a citation', () => {
  it('names author, title and place, and says what was recalled', () => {
    const handbook = allSources().get('fpl-gtr-190');
    const text = citationText(cite('fpl-gtr-190', 'p. 13-15', { read: 'memory' }));
    expect(text).toContain(handbook?.title);
    expect(text).toMatch(/, p\. 13-15 \(not yet verified\)$/);
    expect(shortCitation(cite('fpl-gtr-190', 'p. 13-15', { read: 'memory' }))).toMatch(
      /, p\. 13-15, unverified$/,
    );
    expect(citationText(cite('fpl-gtr-190', 'p. 1', { also: cite('fpl-gtr-282', 'p. 2') }))).toMatch(
      /, p\. 1; also .*, p\. 2$/,
    );
  });

  it('of a source that is not on the shelf is its id and place', () => {
    expect(citationText(cite('a-lost-book', 'p. 3'))).toBe('a-lost-book, p. 3');
    expect(shortCitation(cite('a-lost-book', 'p. 3'))).toBe('a-lost-book, p. 3');
  });

  it('is short: a number, or a title cut at 48 characters', () => {
    for (const s of allSources().values()) {
      const short = shortCitation(cite(s.id, 'p. 1')).replace(/( \(\d{4}\))?, p\. 1$/, '');
      expect(short.length, s.id).toBeLessThanOrEqual(48);
      if (s.number === undefined && s.title.length <= 48) expect(short).toBe(s.title);
    }
  });
});

describe('the folder of the package', () => {
  it('is the nearest above whose package.json has its name', () => {
    expect(folderAbove(join(packageFolder(), 'src', 'recipe'))).toBe(packageFolder());
    const other = mkdtempSync(join(tmpdir(), 'other-'));
    try {
      writeFileSync(join(other, 'package.json'), '{ "name": "another" }');
      expect(() => folderAbove(other)).toThrow(`the folder of joiners-reckoner was not found above ${other}`);
    } finally {
      rmSync(other, { recursive: true });
    }
  });
});

import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { renderSvg } from '../../src/charts/svg.js';
import type { Piece } from '../../src/piece/piece.js';
import { pieceOf, searchedTeaCounter, teaCounterInput } from './samples.js';

/** The counter with its feet drawn in, so that it tips: a failing safety question. */
const tipping = async (): Promise<Piece> =>
  (await searchedTeaCounter()).with({
    'parts.foot.from': '200 mm',
    'parts.foot.to': '440 mm',
    'parts.leg.across': ['235 mm', '405 mm'],
    'parts.long rail.across': ['220 mm', '420 mm'],
    'parts.brace.across': ['420 mm'],
  });

describe('a failing safety question', () => {
  it('heads the text, the note, the cards, the bill and the handout', async () => {
    const piece = await tipping();
    const danger = piece.dangers.find((d) => d.name === 'tipping');
    expect(danger).toBeDefined();
    const words = 'It tips:';
    expect(piece.toText().split('\n')[0]).toContain(words);
    const note = await piece.note({ date: '2026-03-08' }).toMarkdown();
    expect(note.indexOf(words)).toBeGreaterThan(0);
    expect(note.indexOf(words)).toBeLessThan(note.indexOf('Every question'));
    const cards = await piece.cards().toHtml();
    // Once on each card.
    expect(cards.split('NOT SAFE AS DESCRIBED').length - 1).toBeGreaterThanOrEqual(
      piece.cards().cards.length,
    );
    for (const form of [
      piece.bill().toText(),
      piece.bill().toMarkdown(),
      piece.bill().toHtml(),
      piece.bill().toCSV(),
    ])
      expect(form).toContain('NOT SAFE AS DESCRIBED');
    const handout = await piece.handout().toHtml();
    expect(handout.indexOf(words)).toBeLessThan(handout.indexOf('Questions</h2>'));
    expect(handout).toContain('Not safe as described');
  });

  it('stands on nothing where no safety question fails', async () => {
    const piece = await searchedTeaCounter();
    for (const form of [
      piece.toText(),
      await piece.cards().toHtml(),
      piece.bill().toHtml(),
      await piece.handout().toHtml(),
    ])
      expect(form.toLowerCase()).not.toContain('not safe as described');
  });
});

describe('what comes out of a piece', () => {
  it('is written whole', async () => {
    const piece = await searchedTeaCounter();
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-piece-'));
    const at = (name: string): string => join(folder, name);
    await piece.note({ date: '2026-03-08' }).save(at('note.html'));
    await piece.cards({ paper: 'A5' }).save(at('cards.html'));
    await piece.cutList().save(at('cuts.csv'));
    await piece.bill().save(at('bill.html'));
    await piece.handout().save(at('handout.html'));
    for (const name of ['note.html', 'cards.html', 'cuts.csv', 'bill.html', 'handout.html']) {
      // Fonts inside the page hold any letters.
      const text = readFileSync(at(name), 'utf8').replace(/base64,[\w+/=]+/g, '');
      expect(text.length, name).toBeGreaterThan(300);
      expect(text, name).not.toMatch(/NaN|undefined|\[object/);
    }
    await expect(piece.handout().save(at('x.txt'))).rejects.toThrow(/\.html/);
    await expect(piece.cards().save(at('x.txt'))).rejects.toThrow(/\.html/);
    await expect(piece.bill().save(at('x.txt'))).rejects.toThrow(/\.csv/);
  });

  it('has no cut list before its frame is planned', () => {
    expect(() => pieceOf(teaCounterInput()).cutList()).toThrow(/run search\(\) first/);
  });

  it('takes the same numbers everywhere', async () => {
    const piece = await searchedTeaCounter();
    const changed = piece.with({ 'top.length': '1900 mm' });
    expect(await changed.handout().toHtml()).toContain('1900');
    expect(JSON.stringify(changed.picture('plan'))).toContain('1900');
    expect(JSON.stringify(changed.picture('plan'))).not.toContain('"1950"');
    const cards = changed.cards().cards.flatMap((c) => c.numbers);
    expect(cards).toContainEqual({ label: 'length', value: '1900 mm' });
  });
});

describe('pictures', () => {
  it.each(['plan', 'front', 'end', 'section', 'joint'] as const)('%s is drawn to scale', async (name) => {
    const piece = await searchedTeaCounter();
    const svg = await renderSvg(piece.picture(name));
    expect(svg).toContain('<svg');
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it('show the dimensions of the description', async () => {
    const piece = await searchedTeaCounter();
    const texts = async (name: 'plan' | 'front' | 'end'): Promise<string> => renderSvg(piece.picture(name));
    // Bays of 845 mm between legs at 130, 975 and 1820 mm.
    expect(await texts('plan')).toMatch(/>845</);
    expect(await texts('plan')).toMatch(/>640</);
    expect(await texts('front')).toMatch(/>910</);
    expect(await texts('end')).toMatch(/>95</);
  });

  it('refuse a picture or a joint that there is not', async () => {
    const piece = await searchedTeaCounter();
    expect(() => piece.picture('roof' as never)).toThrow(/"plan"/);
    expect(() => piece.picture('joint', 'dovetail')).toThrow(/long rail lap/);
  });
});

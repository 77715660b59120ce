import { describe, expect, it } from 'vitest';
import { benchCards } from '../../src/notes/bench-cards.js';

const card = (steps: number) => ({
  title: 'Rip the strips',
  numbers: [{ label: 'fence', value: '44 mm' }],
  steps: Array.from({ length: steps }, (_, i) => `strip ${i + 1}`),
  cautions: ['push stick'],
});

describe('bench cards', () => {
  it('hold one operation each, with boxes to tick', async () => {
    const html = await benchCards('Counter', [card(3)]).toHtml();
    expect(html).toContain('Rip the strips');
    expect(html.match(/<li>/g)).toHaveLength(3);
    expect(html).toContain('card 1 of 1');
  });

  it('go over several sheets where there are many steps, none lost and none twice', () => {
    const made = benchCards('Counter', [card(60)], { paper: 'A4' });
    expect(made.cards.length).toBeGreaterThan(2);
    expect(made.cards.flatMap((c) => c.steps)).toEqual(card(60).steps);
    expect(made.cards.filter((c) => c.numbers.length > 0)).toHaveLength(1);
  });

  it('print no letter smaller than 20 pt in their style', async () => {
    const html = await benchCards('Counter', [card(3)]).toHtml();
    const own = html.slice(html.lastIndexOf('@page{size:A4'));
    const sizes = [...own.matchAll(/font(?:-size)?:[^;}]*?(\d+(?:\.\d+)?)pt/g)].map((m) => Number(m[1]));
    expect(sizes.length).toBeGreaterThan(4);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(20);
  });

  it('escape what people write, and refuse a paper that there is not', async () => {
    const html = await benchCards('<b>', [{ ...card(1), title: '<script>' }]).toHtml();
    expect(html).not.toContain('<h1><script>');
    expect(() => benchCards('x', [], { paper: 'A9' as never })).toThrow(/"A5"/);
    expect(() => benchCards('', [])).toThrow(/name of the build/);
  });

  it('carry a warning on every card', async () => {
    const html = await benchCards('Counter', [card(1), card(2)], { warnings: ['it tips'] }).toHtml();
    expect(html.match(/NOT SAFE AS DESCRIBED: it tips/g)).toHaveLength(2);
  });
});

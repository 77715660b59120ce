import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { stripLayout } from '../../src/recipes/lamination/strip-layout.js';

async function refused(run: () => Promise<unknown>): Promise<{ fields: string[]; message: string }> {
  try {
    await run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    const r = error as InputError;
    expect(r.message).not.toMatch(/NaN|undefined|\n/);
    return { fields: r.issues.map((t) => t.field), message: r.message };
  }
  throw new Error('nothing was refused');
}

describe('stripLayout refuses', () => {
  const good = {
    topLength: '1 m',
    rows: 2,
    minStagger: '100 mm',
    timeLimit: '200 ms',
    lengths: '600 mm, 400 mm, 600 mm, 400 mm',
  };

  it('a pile that does not reach, saying by how much', async () => {
    const r = await refused(() => stripLayout({ ...good, rows: 3 }));
    expect(r.fields).toEqual(['lengths']);
    expect(r.message).toMatch(/2000 mm.*3000 mm.*1000 mm more/);
  });
  it('a pile that reaches only with pieces under the shortest', async () => {
    expect((await refused(() => stripLayout({ ...good, shortest: '500 mm' }))).message).toMatch(
      /not shorter than 500 mm/,
    );
  });
  it('a stagger that cannot be had, without claiming a proof', async () => {
    const r = await refused(() => stripLayout({ ...good, minStagger: '900 mm', shortest: '300 mm' }));
    expect(r.fields).toEqual(['minStagger']);
    expect(r.message).toMatch(/does not prove/);
  });
  it('wrong rows of a CSV, each by its line', async () => {
    const r = await refused(() =>
      stripLayout({ ...good, lengths: 'name,length (mm),tone\na,600,light\nb,-3,dark\nc,,dark\n' }),
    );
    expect(r.message).toMatch(/line 3/);
    expect(r.message).toMatch(/line 4/);
  });
  it('no rows, half a row, too many pieces', async () => {
    expect((await refused(() => stripLayout({ ...good, rows: 0 }))).fields).toEqual(['rows']);
    expect((await refused(() => stripLayout({ ...good, rows: 1.5 }))).fields).toEqual(['rows']);
    expect(
      (
        await refused(() =>
          stripLayout({
            ...good,
            lengths: Array.from({ length: 6 }, () => ({ length: '1 m', count: 1000 })),
          }),
        )
      ).message,
    ).toMatch(/5000 at most/);
  });
  it('to go on when stopped before it began', async () => {
    const stop = new AbortController();
    stop.abort();
    expect((await refused(() => stripLayout(good, { signal: stop.signal }))).message).toMatch(
      /stopped before/,
    );
  });
  it('but reads lengths as text, list, table with numbers for tones, and CSV', async () => {
    for (const lengths of [
      good.lengths,
      ['600 mm', '400 mm', '600 mm', '400 mm'],
      [
        { length: '600 mm', tone: 1, count: 2 },
        { length: '400 mm', tone: 2, count: 2 },
      ],
      'length (mm),tone,count\n600,light,2\n400,dark,2\n',
    ]) {
      const a = await stripLayout({ ...good, lengths: lengths });
      expect(a.waste.value).toBe(0);
      expect(a.rows).toHaveLength(2);
    }
  });
  it('but takes a stagger of nothing, and no kerf', async () => {
    const a = await stripLayout({ ...good, minStagger: '0 mm', kerf: '0 mm', shortest: '0 mm' });
    expect(a.waste.value).toBe(0);
  });
});

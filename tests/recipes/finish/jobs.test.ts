import { describe, expect, it } from 'vitest';
import { methods } from '../../../src/recipes/finish/application-loss.js';
import { printedCoverages } from '../../../src/recipes/finish/coverage.js';
import { agentsIn, finishHazards } from '../../../src/recipes/finish/hazards.js';
import { finishQuantity } from '../../../src/recipes/finish/finish-quantity.js';
import { tableRows } from '../../../src/materials/data-tables.js';
import { barsOf, titleOf } from '../chart-data.js';

const mentions = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
  r.cautions.some((c) => c.text.includes(text));
const close = (v: number, digits = 9) => expect.closeTo(v, digits) as number;
const job = { surfaces: ['3 m2'], coats: 2, coverage: '12 m2/L' };
const workingText = (r: { workings: readonly { text: string }[] }): string =>
  r.workings.map((w) => w.text).join('; ');

describe('faces of a piece by hand', () => {
  // 2 m x 0.5 m x 0.1 m: top 1 m2, edges 2 x 0.1 x 2.5 = 0.5 m2.
  it.each([
    ['all', 2.5],
    ['top and edges', 1.5],
    ['top and bottom', 2],
    ['top', 1],
  ] as const)('%s: %s m²', (faces, area) => {
    const at = (count: number) => finishQuantity({ ...job, surfaces: { length: '2 m', width: '500 mm', thickness: '100 mm', faces, count } }); // prettier-ignore
    expect(at(1).area.in('m2')).toEqual(close(area));
    expect(at(3).area.in('m2')).toEqual(close(3 * area));
    expect(workingText(at(1))).toContain(`area, ${faces === 'all' ? 'all faces' : faces}`);
    expect(workingText(at(3))).toContain('one of them');
    expect(workingText(at(1))).not.toContain('one of them');
    expect([workingText(at(1)).includes('Together'), workingText(at(3)).includes('Together')]).toEqual([
      false,
      true,
    ]);
  });

  it('of several pieces and areas are put together, each by its number', () => {
    const r = finishQuantity({ ...job, surfaces: ['1 m2', { length: '2 m', width: '500 mm', thickness: '100 mm' }] }); // prettier-ignore
    expect(r.area.in('m2')).toEqual(close(3.5));
    expect(workingText(r)).toMatch(/area of piece 2, all faces.*Together 3\.5 m²/);
    expect(workingText(finishQuantity(job))).not.toContain('Together');
  });

  it('left bare below, may cup', () => {
    const bare = (faces: 'all' | 'top' | 'top and edges' | 'top and bottom') => mentions(finishQuantity({ ...job, surfaces: [{ length: '1 m', width: '1 m', thickness: '1 m', faces }] }), 'can cup'); // prettier-ignore
    expect([bare('all'), bare('top'), bare('top and edges'), bare('top and bottom')]).toEqual([false, true, true, false]); // prettier-ignore
    expect(mentions(finishQuantity(job), 'can cup')).toBe(false);
    expect(mentions(finishQuantity({ ...job, surfaces: { length: '1 m', width: '1 m', thickness: '1 m', faces: 'top' } }), 'can cup')).toBe(true); // prettier-ignore
  });
});

describe('a job by hand', () => {
  it('two coats of 3 m² at 12 m² a litre are half a litre, in one tin', () => {
    const r = finishQuantity(job);
    expect([r.volume.in('L'), r.finish.in('L'), r.thinner.in('L')]).toEqual([
      close(0.5),
      close(0.5),
      close(0),
    ]);
    expect(r.perCoat.map((v) => v.in('L'))).toEqual([close(0.25), close(0.25)]);
    expect([r.tins, r.bought.in('L'), r.spare.in('L'), r.elapsed]).toEqual([
      1,
      close(1),
      close(0.5),
      undefined,
    ]);
    expect(workingText(r)).toMatch(/^mix for each coat; tins of 1 L for 2 coats$/);
    expect(workingText(finishQuantity({ ...job, coats: 1, firstCoverage: '8 m2/L' }))).toMatch(
      /^mix for the coat; tins/,
    );
    expect(workingText(finishQuantity({ ...job, coats: 1 }))).toMatch(/mix for the coat.*for 1 coat$/);
  });

  it('a tin that is used up leaves nothing, whatever its last binary digits', () => {
    // 3 coats of 1.2 m2 at 12 m2/L with 70 % lost: 3 x 0.1 / 0.3 = 1 L.
    const r = finishQuantity({ surfaces: '1.2 m2', coats: 3, coverage: '12 m2/L', method: 'cup gun spray' });
    expect([r.tins, r.spare.value]).toEqual([1, 0]);
    expect(workingText(r)).toContain('divided by 0.3.');
  });

  it('what is lost is a share of what leaves the tin: 0.25 / 0.8', () => {
    expect(finishQuantity({ ...job, loss: '20 %' }).perCoat[0]?.in('L')).toEqual(close(0.3125));
    // HVLP is printed with 40 to 50 %: the middle, 45 %.
    const sprayed = finishQuantity({ ...job, method: 'HVLP spray' });
    expect(sprayed.perCoat[0]?.in('L')).toEqual(close(0.25 / 0.55));
    expect(workingText(finishQuantity({ ...job, loss: '10 %' }))).toContain(
      'so the amount is divided by 0.9',
    );
    expect(workingText(sprayed)).toContain(
      'printed 40 to 50 %, the middle 45 % of what leaves the tin is lost, so the amount is divided by 0.55',
    );
    expect(workingText(finishQuantity({ ...job, method: 'cup gun spray' }))).toContain(
      'cup gun spray: 70 % of what leaves the tin is lost',
    );
    // Brush and roller lose 10 to 15 % of what leaves the tin: the middle divides by 0.875, which is more than adding 12.5 %.
    const brushed = finishQuantity({ ...job, method: 'brush or roller' });
    expect(brushed.perCoat[0]?.in('L')).toEqual(close(0.25 / 0.875));
    expect(workingText(brushed)).toContain('so the amount is divided by 0.875');
    expect(finishQuantity({ ...job, method: 'HVLP spray', loss: '0 %' }).perCoat[0]?.in('L')).toEqual(
      close(0.25),
    );
    expect(methods.every((m) => tableRows('application-loss.various').some((r) => r.text('method') === m))).toBe(true); // prettier-ignore
  });

  it('a first coat on bare wood, thinned by half, is calculated by itself', () => {
    // 3 / 8 L of mix, two thirds of it finish; then twice 3 / 12 L.
    const r = finishQuantity({
      ...job,
      coats: 3,
      firstCoverage: '8 m2/L',
      firstThinnerParts: 0.5,
      tinSize: '250 mL',
    });
    expect(r.perCoat.map((v) => v.in('L'))).toEqual([close(0.375), close(0.25), close(0.25)]);
    expect(r.volume.in('L')).toEqual(close(0.875));
    expect(r.finish.in('L')).toEqual(close(0.75));
    expect(r.thinner.in('L')).toEqual(close(0.125));
    // Three tins are just enough.
    expect([r.tins, r.spare.in('L')]).toEqual([3, close(0)]);
    expect(workingText(r)).toMatch(
      /mix for the first coat.*finish in it for the first coat.*mix for each later coat/,
    );
    for (const one of [{ firstCoverage: '8 m2/L' }, { firstThinnerParts: 0.5 }]) expect(workingText(finishQuantity({ ...job, ...one }))).toMatch(/first coat.*each later coat/); // prettier-ignore
    expect(workingText(finishQuantity({ ...job, coats: 1, firstCoverage: '8 m2/L' }))).toContain(
      'mix for the coat',
    );
    // All coats thinned: a quarter of each mix at one to three.
    const thin = finishQuantity({ ...job, thinnerParts: 1 / 3 });
    expect([thin.finish.in('L'), thin.thinner.in('L')]).toEqual([close(0.375), close(0.125)]);
  });

  it('takes half an hour and half a day for each coat', () => {
    const r = finishQuantity({ ...job, coats: 3, coatTime: '30 min', dryTime: '12 h' });
    expect(r.elapsed?.in('h')).toEqual(close(37.5));
  });

  it('warns by the name of the finish, and of all where it has none', () => {
    const rags = (more: object) => mentions(finishQuantity({ ...job, ...more }), 'spread oily rags');
    expect([rags({}), rags({ finish: 'oil varnish' }), rags({ finish: 'acrylic' })]).toEqual([
      true,
      true,
      false,
    ]);
  });

  it('reminds of loss not counted and of thin films', () => {
    const at = (more: object, text: string) => mentions(finishQuantity({ ...job, ...more }), text);
    expect([at({}, 'no loss was counted'), at({ loss: '0 %' }, 'no loss was counted'), at({ method: 'HVLP spray' }, 'no loss was counted')]).toEqual([true, false, false]); // prettier-ignore
    expect([at({}, 'thinner film'), at({ thinnerParts: 0.1 }, 'thinner film')]).toEqual([false, true]);
  });

  it('asks to look at the tin again beyond the coverages that were read in print', () => {
    const { low, high } = printedCoverages();
    // The table's rows: 4.9 m² a litre of the first coat of a stain, 17 of gloss paint.
    expect([low.amount, high.amount]).toEqual([close(4900), close(17_000)]);
    expect([low.text, high.text]).toEqual(['4.9 m²/L (siding stain, first coat)', '17 m²/L (gloss paint)']); // prettier-ignore
    const odd = (coverage: string) => mentions(finishQuantity({ ...job, coverage }), 'look at the tin again');
    expect(['4.9 m2/L', '4.89 m2/L', '17 m2/L', '17.1 m2/L'].map(odd)).toEqual([false, true, false, true]);
  });

  it('is drawn as bars of mix, or along time once the drying is known', () => {
    const bars = finishQuantity({ ...job, coats: 2, firstCoverage: '8 m2/L' }).chart;
    expect(titleOf(bars)).toBe('Mix for each coat on 3 m²');
    expect(barsOf(bars).map((b) => [b.name, b.value, b.label])).toEqual([['coat 1', close(375, 6), '375 mL'], ['coat 2', close(250, 6), '250 mL']]); // prettier-ignore
    const line = (more: object) => JSON.stringify(finishQuantity({ ...job, coatTime: '1 h', ...more }).chart);
    const day = line({ dryTime: '11 h' });
    // Coat 2 begins after 12 h, is on after 13 and dry after 24.
    expect(titleOf(JSON.parse(day) as never)).toBe('2 coats on 3 m²');
    expect(titleOf(JSON.parse(line({ dryTime: '11 h', coats: 1 })) as never)).toBe('1 coat on 3 m²');
    expect(day).toContain('Time (h)');
    for (const stretch of [[0, 1], [1, 12], [12, 13], [13, 24]]) expect(day).toContain(`"start":${stretch[0]},"end":${stretch[1]}`); // prettier-ignore
    // Three days and more are drawn in days.
    expect(line({ dryTime: '35 h' })).toContain('Time (days)');
    expect(line({ dryTime: '34.9 h' })).toContain('Time (h)');
    expect(line({ dryTime: '47 h' })).toContain('"start":2,"end":2.0416');
  });
});

describe('dangers by the names on jars', () => {
  const text = (...names: string[]) => finishHazards(names).map((c) => c.text).join('\n'); // prettier-ignore
  it('vapour wherever there is solvent, or nobody knows', () => {
    const vapour = (...names: string[]) => text(...names).includes('solvent dries and reddens skin');
    expect(vapour()).toBe(true);
    for (const n of ['meths', 'stain', 'xylene', 'nitrocellulose', 'wax', 'Brand X'])
      expect(vapour(n)).toBe(true);
    for (const n of ['water', 'acrylic', 'linseed oil']) expect(vapour(n)).toBe(false);
  });

  it('rags where something dries by itself, or nobody knows', () => {
    const rags = (...names: string[]) => text(...names).includes('spread oily rags');
    expect([rags(), rags('oil'), rags('water-borne oil'), rags('wax'), rags('water', 'acrylic'), rags('water', 'oil')]).toEqual([true, true, true, false, false, true]); // prettier-ignore
  });

  it('flash points in a cold, an ordinary and a warm room', () => {
    // 95 °F turpentine (to 100: a warm room), 55 °F alcohol (below 80: an ordinary one).
    for (const n of ['turpentine', 'meths', 'acetone', 'white spirit', 'kerosene']) expect(text(n).split('flash point').length).toBe(2); // prettier-ignore
    expect(text('turpentine')).toContain('in a warm room');
    expect(text('meths')).toContain('in an ordinary room');
    for (const row of tableRows('safety-limits.various').filter((r) => r.text('limit') === 'flash point')) {
      const line = text(row.text('agent')).split('\n').find((l) => l.startsWith(`${row.text('agent')}: flash`)); // prettier-ignore
      if (line === undefined) continue;
      const [low, high] = [row.number('low')!, row.number('high')!];
      expect(line.includes('ordinary room')).toBe(low < 80);
      expect(line.includes('warm room')).toBe(low >= 80 && low <= 100);
      expect(line.includes(' to ')).toBe(low !== high);
      expect(line).toContain(`flash point ${Math.round(((low - 32) * 5) / 9)} °C`);
    }
  });

  it('a vague name is said to be taken for mineral spirits, a clear one not', () => {
    for (const n of ['thinner', 'solvent', 'spirit'])
      expect(text(n)).toContain('is taken for mineral spirits');
    for (const n of ['white spirit', 'odourless spirit', 'mineral spirits', 'turps substitute', 'meths', 'wax']) expect(text(n)).not.toContain('is taken for'); // prettier-ignore
    expect(agentsIn(['spirit', 'white spirit', 'meths'])).toEqual(['mineral spirits', 'ethyl alcohol']);
    expect(finishHazards(['oil'], { food: true }).some((c) => c.text.includes('food contact'))).toBe(true);
    expect(finishHazards(['oil']).some((c) => c.text.includes('food contact'))).toBe(false);
  });
});

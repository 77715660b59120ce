import { describe, expect, it } from 'vitest';
import { each, range } from '../../src/explore/range.js';
import { pieceOf, searchedTeaCounter, teaCounterInput } from './samples.js';

describe('a changed value', () => {
  it('makes only what depends on it be worked out again', async () => {
    const counter = await searchedTeaCounter();
    expect(counter.questions.length).toBeGreaterThan(25);
    const dearer = counter.with({ 'costs.hourly': '£20' });
    expect(dearer.question('cost').answer).not.toBe(counter.question('cost').answer);
    expect(dearer.questions.length).toBe(counter.questions.length);
    expect([...dearer.recalculated].sort()).toEqual(['bill', 'cost']);
    // Answers that do not depend on it are the same objects.
    for (const a of dearer.questions) if (a.name !== 'cost') expect(a, a.name).toBe(counter.question(a.name));
  });

  it('gives what a fresh calculation gives', async () => {
    const counter = await searchedTeaCounter();
    const changes = {
      'top.thickness': '42 mm',
      'parts.leg.across': ['60 mm', '580 mm'],
      'use.goods': '2 kPa',
      'finishes.oil varnish.coats': 4,
    };
    const changed = counter.with(changes);
    const fresh = pieceOf(teaCounterInput()).with(changes);
    for (const a of fresh.questions) {
      // The fresh one has run no searches, so what rests on them is open there.
      if (a.verdict === 'open' || a.name === 'cost' || a.name === 'toBuy') continue;
      expect(changed.question(a.name).answer, a.name).toBe(a.answer);
      expect(changed.question(a.name).verdict, a.name).toBe(a.verdict);
    }
    // And back again: the first answers, from memory.
    const back = changed.with({
      'top.thickness': '40 mm',
      'parts.leg.across': ['85 mm', '555 mm'],
      'use.goods': '1.5 kPa',
      'finishes.oil varnish.coats': 3,
    });
    expect(back.questions.map((a) => a.answer)).toEqual(counter.questions.map((a) => a.answer));
    expect(back.recalculated).toEqual([]);
  });
});

describe('a search', () => {
  it('is kept while its plan fits, and runs again where it does not', async () => {
    const counter = await searchedTeaCounter();
    const narrower = await counter.with({ 'top.width': '600 mm' }).search();
    expect(narrower.news.find((n) => n.plan === 'top')).toMatchObject({ state: 'still fits' });
    expect(narrower.plans.top).toBe(counter.plans.top);
    // Shorter feet come out of the pieces planned.
    const shorter = await counter.with({ 'parts.foot.to': '630 mm' }).search();
    expect(shorter.plans.frame).toBe(counter.plans.frame);
    expect(shorter.question('battens').answer).toMatch(/still fits/);
    const longer = counter.with({ 'parts.foot.to': '700 mm' });
    expect(longer.question('battens')).toMatchObject({ verdict: 'open' });
    expect(longer.question('battens').answer).toMatch(/no longer fits: foot of 700 mm/);
    const again = await longer.search();
    expect(again.plans.frame).not.toBe(counter.plans.frame);
    expect(again.question('battens').verdict).toBe('ok');
  });

  it('that is asked for again says whether a better one exists, and replaces only when told', async () => {
    // Without boards for the top, only the plan of the frame is searched for.
    const input = teaCounterInput();
    delete input['pile']!['survey'];
    const counter = await pieceOf(input).search();
    // Fewer parts: the kept plan still fits, and one that takes less batten exists.
    const fewer = counter.with({ 'parts.leg.along': ['130 mm', '1820 mm'], 'parts.brace.to': '1797 mm' });
    const without = fewer.with({ 'parts.brace.rise': '0 mm', 'parts.brace.to': '900 mm' });
    const looked = await without.search({ again: true });
    const news = looked.news.find((n) => n.plan === 'frame');
    expect(news?.message).toMatch(/a better one exists \(saves \d+ mm of batten\)/);
    expect(looked.plans.frame).toBe(counter.plans.frame);
    const taken = await without.search({ again: true, replace: true });
    expect(taken.plans.frame).not.toBe(counter.plans.frame);
    expect(taken.plans.frame?.stockLength ?? 99).toBeLessThan(counter.plans.frame?.stockLength ?? 0);
  });
});

describe('alternatives', () => {
  it('stand side by side over all questions', async () => {
    const counter = await searchedTeaCounter();
    const table = counter.alternatives({
      'thicker top': { 'top.thickness': '45 mm' },
      'fewer legs': { 'parts.leg.along': ['130 mm', '1820 mm'] },
    });
    expect(table.names).toEqual(['as it is', 'thicker top', 'fewer legs']);
    expect(table.rows.length).toBeGreaterThanOrEqual(25);
    const sag = table.rows.find((r) => r.question === 'sagTop');
    const margins = sag?.answers.map((a) => a?.margin ?? 0) ?? [];
    // A thicker top sags less, one on two rails instead of three more.
    expect(margins[1]).toBeGreaterThan(margins[0] as number);
    expect(margins[2]).toBeLessThan(margins[0] as number);
    expect(table.toMarkdown()).toContain('fewer legs');
    expect(table.counts[2]?.fails).toBeGreaterThan(0);
  });
});

describe('remedies', () => {
  it('mend what fails, the smallest change first', () => {
    // As the counter stood before: feet under the legs alone, so that it tips.
    const input = teaCounterInput();
    delete (input['parts'] as Record<string, unknown>)['foot'];
    delete (input['joints'] as Record<string, unknown>)['foot tenon'];
    const tips = pieceOf(input).with({ 'parts.leg.across': ['180 mm', '500 mm'] });
    expect(tips.question('tipping').verdict).toBe('fails');
    const remedies = tips.remedies('tipping');
    expect(remedies.length).toBeGreaterThan(0);
    expect(remedies.map((r) => r.path)).toContain('use.standsFree');
    expect(remedies.map((r) => r.change)).toEqual([...remedies.map((r) => r.change)].sort((a, b) => a - b));
    for (const r of remedies) {
      const mended = tips.with({ [r.path]: r.value });
      expect(mended.question('tipping').verdict, r.path).not.toBe('fails');
    }
  });

  it('are the least: a step less does not mend it', () => {
    const bent = pieceOf(teaCounterInput()).with({ 'use.goods': '6 kPa' });
    const failing = bent.questions.filter((a) => a.verdict === 'fails').map((a) => a.name);
    expect(failing.length).toBeGreaterThan(0);
    const numeric = bent.remedies().filter((r) => r.path === 'top.thickness');
    for (const r of numeric) {
      const value = (r.value as { readonly value: number }).value;
      const less = bent.with({ 'top.thickness': `${Math.round(value * 1000) - 1} mm` });
      expect(less.question(r.question).verdict, r.question).toBe('fails');
    }
  });

  it('name fixing to the floor, which then asks for its screws', () => {
    const input = teaCounterInput();
    delete (input['parts'] as Record<string, unknown>)['foot'];
    delete (input['joints'] as Record<string, unknown>)['foot tenon'];
    const tips = pieceOf(input).with({ 'parts.leg.across': ['180 mm', '500 mm'], 'use.standsFree': false });
    expect(tips.question('tipping')).toMatchObject({ verdict: 'open', missing: 'fixings' });
    const fixed = tips.with({
      'fixings.floor': { to: 'floor', holds: 'leg', screw: '8 mm', length: '80 mm', through: '5 mm' },
    });
    expect(fixed.question('tipping').verdict).toBe('ok');
    expect(fixed.question('tipping').answer).toMatch(/^Fixed down:/);
    expect(fixed.question('tipping').answer).toMatch(/Until it is fixed it tips/);
  });
});

describe('a sweep', () => {
  it('asks every question of every variant', async () => {
    const counter = await searchedTeaCounter();
    const sweep = await counter.sweep({
      'top.thickness': range('30 mm', '50 mm', 5),
      'parts.cross rail.timber': each(['unknown softwood', 'C24']),
    });
    expect(sweep.count).toBe(10);
    expect(sweep.at(9)).toMatchObject({ 'parts.cross rail.timber': 'C24' });
    for (let i = 0; i < sweep.count; i++) {
      const at = sweep.at(i);
      const one = counter.with({
        'top.thickness': `${30 + 5 * Math.floor(i / 2)} mm`,
        'parts.cross rail.timber': at['parts.cross rail.timber'],
      });
      expect(sweep.verdicts[i], JSON.stringify(at)).toBe(one.questions[0]?.verdict);
      expect(sweep.safety[i] === 'fails', JSON.stringify(at)).toBe(one.dangers.length > 0);
    }
    expect(sweep.toText()).toMatch(/10 variants/);
  });

  it('reports progress and stops when it is interrupted', async () => {
    const counter = await searchedTeaCounter();
    const stop = new AbortController();
    const seen: number[] = [];
    const run = counter.sweep(
      { 'use.goods': range('1 kPa', '5 kPa', 200), 'top.thickness': range('30 mm', '60 mm', 500) },
      {
        signal: stop.signal,
        onProgress: (p) => {
          seen.push(p.done ?? 0);
          if (seen.length === 2) stop.abort();
        },
      },
    );
    await expect(run).rejects.toThrow(/stopped after/);
    expect(seen.length).toBeGreaterThanOrEqual(2);
    expect(seen[1]).toBeGreaterThan(seen[0] as number);
  });

  it.each([
    [{ 'top.thicknes': range('1 mm', '2 mm') }, /thickness/],
    [{ 'top.thickness': range('1 kg', '2 kg') }, /top\.thickness/],
    [{ 'top.timber': range('1 mm', '2 mm') }, /top\.timber/],
    [{}, /at least one/],
  ])('refuses %j', async (ranges, words) => {
    await expect(pieceOf(teaCounterInput()).sweep(ranges as never)).rejects.toThrow(words);
  });
});

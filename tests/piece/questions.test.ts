import { describe, expect, it } from 'vitest';
import { pieceOf, porchBenchInput, searchedTeaCounter, teaCounterInput } from './samples.js';

describe('the questions of the tea counter', () => {
  it('are more than 25, each with a verdict and a sentence, the worst first', async () => {
    const counter = await searchedTeaCounter();
    expect(counter.questions.length).toBeGreaterThanOrEqual(25);
    for (const a of counter.questions) {
      expect(['ok', 'tight', 'fails', 'open'], a.name).toContain(a.verdict);
      expect(a.answer, a.name).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(a.answer, a.name).toMatch(/[.!]$/);
    }
    const rank = counter.questions.map((a) => ['fails', 'open', 'tight', 'ok'].indexOf(a.verdict));
    expect(rank).toEqual([...rank].sort((x, y) => x - y));
  });

  it('cover the whole job', async () => {
    const names = new Set((await searchedTeaCounter()).questions.map((a) => a.name));
    for (const name of [
      'pileEnough',
      'strips',
      'rows',
      'slabs',
      'glue',
      'glueTime',
      'clamps',
      'stages',
      'cauls',
      'flattening',
      'weight',
      'lifting',
      'movement',
      'movementFrame',
      'slots',
      'sagTop',
      'topStrength',
      'sagRails',
      'railStrength',
      'joints',
      'racking',
      'tipping',
      'squareness',
      'angledParts',
      'screws',
      'screwEdges',
      'passes',
      'knifeMarks',
      'finish',
      'mix',
      'film',
      'voc',
      'waste',
      'cost',
      'hours',
      'toBuy',
      'battens',
      'agreement',
    ])
      expect(names, name).toContain(name);
  });

  it('come out well: no safety question fails, none is open, nothing contradicts', async () => {
    const counter = await searchedTeaCounter();
    expect(counter.dangers).toEqual([]);
    expect(counter.open).toEqual([]);
    expect(counter.contradictions).toEqual([]);
    expect(counter.questions.filter((a) => a.verdict === 'fails')).toEqual([]);
  });

  it('agree with geometry worked by hand', async () => {
    const counter = await searchedTeaCounter();
    // Legs at 130 and 1820 mm, 45 mm thick: 1735 mm over all; feet from 0 to 640 mm. Diagonal of 1735 by 640.
    const diagonal = Math.hypot(1735, 640);
    expect(counter.question('squareness').answer).toContain(
      `${Math.round(diagonal)} mm`.replace(/(\d)(\d{3}) /, '$1$2 '),
    );
    // Legs stand on feet 70 mm high and end under rails 95 mm deep and a top of 40 mm: 910 - 40 - 95 - 70 = 705 mm.
    const parts = counter.plans.frame?.asked.parts ?? [];
    expect(parts.find((p) => p.name === 'leg')).toMatchObject({ length: 0.705, count: 6 });
    // Brace: 805 mm along and 480 mm up.
    expect(parts.find((p) => p.name === 'brace')?.length).toBeCloseTo(Math.hypot(0.805, 0.48), 4);
  });

  it('are left open, with what is missing, where the description does not say', () => {
    const input = teaCounterInput();
    delete (input['use'] as Record<string, unknown>)['climate'];
    delete (input['gluing'] as Record<string, unknown>)['reach'];
    const counter = pieceOf(input);
    const movement = counter.question('movement');
    expect(movement).toMatchObject({ verdict: 'open', missing: 'use.climate' });
    expect(counter.question('pileEnough').verdict).toBe('open');
    expect(counter.toText()).toMatch(/\nOpen\n/);
  });

  it('tell where each input of a recipe came from', async () => {
    const counter = await searchedTeaCounter();
    const inputs = new Map(counter.inputs('sagTop').map((i) => [i.input, i]));
    expect(inputs.get('thickness')).toMatchObject({ from: 'top.thickness (given)' });
    expect(inputs.get('limit')?.from).toBe('use.sagLimit (assumed)');
    expect(inputs.get('supports')?.from).toBe('(what carries the top)');
    expect(counter.sag().recipe).toBe('topSag');
    expect(counter.sag('cross rail').recipe).toBe('railSpan');
    expect(counter.movement().recipe).toBe('seasonalMovement');
    expect(() => counter.sag('leg')).toThrow(/takes "cross rail"/);
    expect(() => counter.question('sagtop')).toThrow(/did you mean "sagTop"/);
  });

  it('give the same numbers as the recipe asked by itself', async () => {
    const counter = await searchedTeaCounter();
    for (const a of counter.questions)
      for (const asked of a.asks ?? []) {
        const result = counter.ask(a.name, asked.about);
        expect(result.recipe, a.name).toBe(asked.recipe.name);
        expect(result.toText(), a.name).not.toMatch(/NaN|undefined/);
      }
    // 1.95 m x 0.64 m x 40 mm.
    const weight = counter.weight() as unknown as { readonly volume: { readonly value: number } };
    expect(weight.volume.value).toBeCloseTo(1.95 * 0.64 * 0.04, 9);
  });
});

describe('a piece of another shape, the bench for the porch', () => {
  const bench = () => pieceOf(porchBenchInput());

  it('answers its questions without a pile', () => {
    const names = bench().questions.map((a) => a.name);
    expect(names).not.toContain('pileEnough');
    // 360 + 10 mm over strips of 92 mm: five.
    expect(bench().question('strips').answer).toMatch(/^5 strips across/);
  });

  it('is checked as a bench', () => {
    expect(bench().question('tipping').answer).toMatch(/sits/);
  });

  it('takes mitred ends and a spline when it folds down', () => {
    const folded = bench().with({
      'top.ends': 'waterfall',
      'top.endHeight': '440 mm',
      'top.spline': { thickness: '6 mm', width: '24 mm', fromInside: '16 mm' },
    });
    expect(folded.question('mitredEnds').verdict).toBe('ok');
    expect(folded.question('spline').verdict).toBe('ok');
    // The ends weigh too: 2 x 440 mm more than 1200 mm.
    const volume = (p: typeof folded) =>
      (p.weight() as unknown as { readonly volume: { readonly value: number } }).volume.value;
    expect(volume(folded) / volume(bench())).toBeCloseTo(2080 / 1200, 9);
  });
});

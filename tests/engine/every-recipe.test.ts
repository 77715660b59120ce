import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { kinds, type Kind } from '../../src/units/kind.js';
import { InputError } from '../../src/units/input-error.js';
import type { Formula } from '../../src/engine/formula.js';
import { TraceRecorder } from '../../src/engine/trace.js';
import { allSources, citationText } from '../../src/engine/source.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { renderSvg } from '../../src/charts/svg.js';

const imports = readFileSync(new URL('../../src/recipes/catalogue.ts', import.meta.url), 'utf8');

/** What holds of every recipe, whatever it calculates. */
describe.each(catalogue.map((r) => [r.name, r] as const))('%s', (_name, recipe) => {
  // Every formula applied in the example is caught on its way, with its arguments.
  const seen: { f: Formula; args: Readonly<Record<string, number>> }[] = [];
  const calculate = async () => {
    const apply = TraceRecorder.prototype.evaluate;
    TraceRecorder.prototype.evaluate = function (this: TraceRecorder, f: never, args: never, label?: string) {
      seen.push({ f, args });
      return apply.call(this, f, args, label);
    };
    try {
      return await recipe(recipe.example);
    } finally {
      TraceRecorder.prototype.evaluate = apply;
    }
  };

  it('works its example and shows it in every form', async () => {
    const result = await calculate();
    const text = result.toText();
    for (const form of [text, result.toMarkdown(), result.toHtml(), JSON.stringify(result.toJSON())]) {
      expect(form).not.toMatch(/NaN|undefined|\[object|Infinity/);
      expect(form).toContain(recipe.title.slice(0, 10));
    }
    // No overlong numbers: six significant digits after the point are the most that people read.
    expect(text).not.toMatch(/[1-9]\d*\.\d{7,}|\.0*[1-9]\d{6,}/);
    expect(result.workings.length).toBeGreaterThan(0);
    for (const [name, o] of Object.entries(recipe.outputs)) {
      if (!o.optional) expect((result as unknown as Record<string, unknown>)[name], name).toBeDefined();
    }
  });

  it('names only sources that data/ holds', async () => {
    const result = await recipe(recipe.example);
    for (const c of [
      ...recipe.sources,
      ...recipe.formulas.flatMap((f) => f.source ?? []),
      ...result.sources,
      ...result.cautions.flatMap((x) => x.source ?? []),
    ]) {
      expect(allSources().has(c.id), c.id).toBe(true);
      expect(citationText(c)).toContain(c.locator);
    }
  });

  it('has formulas whose dimensions balance in every branch, or that are declared empirical', () => {
    for (const f of recipe.formulas) f.assertBalanced();
  });

  it('has formulas that a library of units calculates alike', async () => {
    if (seen.length === 0) await calculate();
    for (const { f, args } of seen) {
      const plain = f.evaluate(args);
      expect(Math.abs(f.withUnits(args) - plain), f.plain).toBeLessThanOrEqual(
        Math.abs(plain) * 1e-9 + 1e-15,
      );
    }
  });

  it('draws a chart without a clipped or missing part', async () => {
    const result = await recipe(recipe.example);
    if (result.chart === undefined) return;
    const svg = await renderSvg(result.chart);
    expect(svg).toMatch(/^<svg/);
    expect(svg).not.toMatch(/NaN|undefined/);
  });

  it('stands in the folder of its topic', () => {
    const folder = new RegExp(`import \\{ ${recipe.name} \\} from '\\./([^/]+)/`).exec(imports)?.[1];
    expect(recipe.topic, `${recipe.name} in src/recipes/${folder}: write topic: '${folder}'`).toBe(folder);
  });

  it('describes its fields', () => {
    expect(recipe.about.length).toBeGreaterThan(20);
    for (const [name, f] of Object.entries(recipe.inputs)) {
      expect(f.label.length, name).toBeGreaterThan(2);
      expect(f.expects.length, name).toBeGreaterThan(3);
    }
    for (const [name, o] of Object.entries(recipe.outputs)) expect(o.label.length, name).toBeGreaterThan(2);
  });

  it('names every wrong field, and never answers nonsense', async () => {
    const wrong = [
      undefined,
      null,
      {},
      [],
      'text',
      7,
      NaN,
      { nonsense: 1 },
      Object.fromEntries(Object.keys(recipe.inputs).map((k) => [k, 'rubbish'])),
    ];
    const needs = Object.values(recipe.inputs).some((f) => !f.optional);
    for (const given of wrong) {
      // Nothing given is right where nothing is needed.
      if (!needs && JSON.stringify(given) === '{}') continue;
      await expect(
        Promise.resolve().then(() => recipe(given as never)),
        JSON.stringify(given),
      ).rejects.toBeInstanceOf(InputError);
    }
  });

  it('refuses nonsense in any one field', async () => {
    for (const [name, f] of Object.entries(recipe.inputs)) {
      for (const bad of [
        NaN,
        Infinity,
        -Infinity,
        '',
        '\u0000',
        'x'.repeat(10_000),
        Symbol('s'),
        () => 1,
        10n,
        { valueOf: () => 1 },
        '1e999 mm',
        '-1e300 m',
        '999999 furlong',
      ]) {
        if (f.kind === 'text' && typeof bad === 'string' && bad.trim() !== '' && bad.length <= 200) continue;
        try {
          const result = await recipe({ ...recipe.example, [name]: bad });
          expect(JSON.stringify(result.toJSON())).not.toMatch(/NaN|null,"unit"/);
          // Text may stand for a name; numbers without sense may not pass.
          expect(['string'].includes(typeof bad), `${name} took ${String(bad)}`).toBe(true);
        } catch (error) {
          expect(error, `${name} given ${String(bad)}: ${String(error)}`).toBeInstanceOf(InputError);
          expect((error as InputError).message.split('\n')).toHaveLength(1);
          expect(
            (error as InputError).issues.some(
              (t) => t.field === name || t.field.startsWith(`${name}.`) || t.field.startsWith(`${name}[`),
            ),
            (error as Error).message,
          ).toBe(true);
        }
      }
      if (Object.hasOwn(kinds, f.kind) && f.max !== undefined && kinds[f.kind as Kind].base !== '') {
        await expect(
          (async () =>
            recipe({
              ...recipe.example,
              [name]: { value: f.max! * 2 + 1, unit: kinds[f.kind as Kind].base },
            }))(),
        ).rejects.toBeInstanceOf(InputError);
      }
    }
  });
});

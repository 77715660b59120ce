// Every formula that a recipe uses, calculated a second time by a general library of algebra in sixty-four digits.
import { all, create, type BigNumber } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { unitOf } from '../../src/units/unit.js';
import type { Formula, Variable } from '../../src/engine/formula.js';
import { TraceRecorder } from '../../src/engine/trace.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { SeededRandom } from '../fuzz/seeded-random.js';

const math = create(all ?? {}, { number: 'BigNumber', precision: 64 });

const deg = math.divide(math.bignumber(math.pi), math.bignumber(180));

/** A letter of an empirical formula enters in its unit, a straight line: what is written = (base - offset) / scale. */
function lineOf(f: Formula, l: Variable): { scale: BigNumber; offset: BigNumber } {
  const u = l.unit === undefined || !f.empirical ? { scale: 1, offset: 0 } : unitOf(l.kind, l.unit);
  return { scale: math.bignumber(u.scale), offset: math.bignumber(u.offset) };
}

/** The formula's text with the numbers put in, in sixty-four digits; the answer in the base unit. */
function precisely(f: Formula, args: Readonly<Record<string, number>>): number {
  const scope = Object.fromEntries(
    Object.entries(f.variables).map(([name, l]) => {
      const { scale, offset } = lineOf(f, l);
      return [name, math.divide(math.subtract(math.bignumber(args[name] as number), offset), scale)];
    }),
  );
  const { scale, offset } = lineOf(f, f.result);
  const written = math.bignumber(String(math.evaluate(f.expression, { deg, ...scope })));
  return Number(math.add(math.multiply(written, scale), offset).toString());
}

const compared = new Set<Formula>();
describe.each(catalogue.map((r) => [r.name, r] as const))('%s', (_name, recipe) => {
  it('agrees with high precision to ten digits, on its example and round it', async () => {
    const used: { f: Formula; args: Readonly<Record<string, number>> }[] = [];
    const apply = TraceRecorder.prototype.evaluate;
    TraceRecorder.prototype.evaluate = function (this: TraceRecorder, f: never, args: never, label?: string) {
      if (used.length < 60) used.push({ f, args });
      return apply.call(this, f, args, label);
    };
    try {
      await recipe(recipe.example);
    } finally {
      TraceRecorder.prototype.evaluate = apply;
    }
    const random = new SeededRandom(64);
    for (const { f, args } of used) {
      compared.add(f);
      for (let round = 0; round < 6; round++) {
        // A tenth up or down takes every letter off the example's round numbers.
        const near = Object.fromEntries(
          Object.entries(args).map(([k, v]) => [k, round === 0 ? v : v * (0.9 + 0.2 * random.next())]),
        );
        const ours = f.evaluate(near);
        // Off the example a root or an arc may have no real value: then neither of the two may have one.
        const theirs = precisely(f, near);
        if (!Number.isFinite(ours) || Number.isNaN(theirs)) {
          expect(Number.isFinite(theirs), `${f.plain}: ${ours} and ${theirs}`).toBe(Number.isFinite(ours));
          continue;
        }
        const size = Math.max(Math.abs(ours), ...Object.values(near).map((v) => Math.abs(v) * 1e-6));
        expect(
          Math.abs(ours - theirs),
          `${f.plain}, ${JSON.stringify(near)}: ${ours} and ${theirs}`,
        ).toBeLessThanOrEqual(size * 1e-10);
      }
    }
  });
});

it('compared the formulas of the library, not a few of them', () => {
  expect(compared.size).toBeGreaterThan(100);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmBuild } from '../../src/recipes/finish/film-build.js';
import { grits } from '../../src/recipes/finish/grit.js';
import { gritSequence } from '../../src/recipes/finish/grit-sequence.js';
import { shellacCut } from '../../src/recipes/finish/shellac-cut.js';
import { thinnedVoc } from '../../src/recipes/finish/thinned-voc.js';
import { thinToSolids } from '../../src/recipes/finish/thin-to-solids.js';

const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-9);

describe('film and thinning', () => {
  const solids = fc.double({ min: 0.02, max: 1, noNaN: true });
  const film = fc.double({ min: 30e-6, max: 5e-3, noNaN: true });
  it('agree: the film of a thinned finish is the film of the finish shared with its thinner', () => {
    fc.assert(
      fc.property(solids, film, fc.double({ min: 0, max: 5, noNaN: true }), (S, w, k) => {
        const thin = thinToSolids.evaluate({ volumeSolids: S, thinnerParts: k });
        const a = filmBuild.evaluate({ volumeSolids: thin.solids, wetFilm: w });
        const b = filmBuild.evaluate({ volumeSolids: S, wetFilm: w });
        expect(close(a.dryFilm * (1 + k), b.dryFilm)).toBe(true);
        // The same finish from the tin still covers the same area at the same dry film, whatever was added.
        const same = filmBuild.evaluate({ volumeSolids: thin.solids, targetFilm: b.dryFilm });
        expect(close(same.coverage * (1 + k), b.coverage)).toBe(true);
      }),
    );
  });
  it('to a target and back comes to the target', () => {
    fc.assert(
      fc.property(solids, fc.double({ min: 0.05, max: 1, noNaN: true }), (S, part) => {
        const r = thinToSolids.evaluate({ volumeSolids: S, target: S * part });
        expect(close(r.solids, S * part)).toBe(true);
        expect(
          close(thinToSolids.evaluate({ volumeSolids: S, thinnerParts: r.thinnerParts }).solids, S * part),
        ).toBe(true);
      }),
    );
  });
  it('comes to the same film from rate, wet film and target', () => {
    fc.assert(
      fc.property(solids, film, fc.integer({ min: 1, max: 10 }), (S, w, coats) => {
        const a = filmBuild.evaluate({ volumeSolids: S, wetFilm: w, coats });
        const b = filmBuild.evaluate({ volumeSolids: S, spreadingRate: 1 / w, coats });
        const c = filmBuild.evaluate({ volumeSolids: S, targetFilm: a.dryFilm, coats });
        for (const x of [b, c])
          for (const n of ['wetFilm', 'dryFilm', 'coverage'] as const) expect(close(x[n], a[n])).toBe(true);
        // A litre spread over its coverage is as deep as the wet film.
        expect(close(a.coverage * a.wetFilm, 1)).toBe(true);
      }),
    );
  });
});

describe('VOC', () => {
  const voc = fc.double({ min: 0, max: 1500, noNaN: true });
  const dense = fc.double({ min: 600, max: 1600, noNaN: true });
  const parts = fc.double({ min: 0, max: 50, noNaN: true });
  const share = fc.double({ min: 0, max: 0.99, noNaN: true });
  it('lies between that of the finish and that of the thinner, and no thinner changes nothing', () => {
    fc.assert(
      fc.property(voc, dense, parts, share, (v, d, k, e) => {
        const r = thinnedVoc.evaluate({ voc: v, density: d, thinnerParts: k, exempt: e });
        expect(r.voc).toBeGreaterThanOrEqual(Math.min(v, d) - 1e-9 * d);
        expect(r.voc).toBeLessThanOrEqual(Math.max(v, d) + 1e-9 * d);
        expect(close(thinnedVoc.evaluate({ voc: v, density: d, thinnerParts: 0, exempt: e }).voc, v)).toBe(
          true,
        );
      }),
    );
  });
  it('is not lowered by water, though a litre of the mix then holds less', () => {
    fc.assert(
      fc.property(voc, fc.double({ min: 0.1, max: 10, noNaN: true }), (v, k) => {
        const r = thinnedVoc.evaluate({ voc: v, thinnerParts: k, thinnerExempt: 1 });
        expect(close(r.voc, v)).toBe(true);
        expect(close(r.vocAsIs * (1 + k), v)).toBe(true);
      }),
    );
  });
});

describe('a cut of shellac', () => {
  const lb = 119.82642731689663;
  const cut = fc.double({ min: 0.1, max: 10, noNaN: true });
  it('keeps its flakes when thinned, and is then the cut asked for', () => {
    fc.assert(
      fc.property(
        cut,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 1e-5, max: 1, noNaN: true }),
        (from, part, litres_) => {
          const to = Math.max(0.05, from * part);
          const r = shellacCut.evaluate({ cut: to * lb, existing: litres_, existingCut: from * lb });
          expect(close(r.mass / r.volume, to * lb)).toBe(true);
          expect(close(r.made, litres_ + (r.addAlcohol as number))).toBe(true);
        },
      ),
    );
  });
  it('thinned in two steps is as thinned in one', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 5, noNaN: true }), (from) => {
        const once = shellacCut.evaluate({ cut: lb, existing: 0.001, existingCut: from * lb });
        const half = shellacCut.evaluate({ cut: 1.5 * lb, existing: 0.001, existingCut: from * lb });
        const twice = shellacCut.evaluate({ cut: lb, existing: half.made, existingCut: 1.5 * lb });
        expect(
          close((half.addAlcohol as number) + (twice.addAlcohol as number), once.addAlcohol as number),
        ).toBe(true);
      }),
    );
  });
});

describe('a sequence of grits', () => {
  const all = grits();
  it('starts and ends as asked, never steps too far, and no shorter one would do', () => {
    fc.assert(
      fc.property(
        fc.nat(all.length - 1),
        fc.nat(all.length - 1),
        fc.double({ min: 1.5, max: 3, noNaN: true }),
        (i, j, stepRatio) => {
          const [from, to] = [
            all[Math.min(i, j)] as (typeof all)[number],
            all[Math.max(i, j)] as (typeof all)[number],
          ];
          const r = gritSequence.evaluate({ from, to, stepRatio });
          expect([r.steps[0]?.grit, r.steps.at(-1)?.grit]).toEqual([from.name, to.name]);
          for (const s of r.steps.slice(1))
            expect(s.finer as number).toBeLessThanOrEqual(stepRatio * (1 + 1e-9));
          // Greedy, always as far as allowed, gives the least number of steps on a line.
          let [count, at] = [1, all.indexOf(from)];
          while (all[at] !== to) {
            let next = at + 1;
            while (
              next + 1 < all.length &&
              (all[next + 1] as typeof from).size >= to.size &&
              (all[at] as typeof from).size / (all[next + 1] as typeof from).size <= stepRatio
            )
              next++;
            at = next;
            count++;
          }
          expect(r.count).toBe(count);
        },
      ),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindNames, kinds } from '../../src/units/kind.js';
import { anyQuantity, parseQuantity } from '../../src/units/parse-quantity.js';
import { Quantity } from '../../src/units/quantity.js';
import { InputError } from '../../src/units/input-error.js';
import { unitsOf } from '../../src/units/unit.js';
import { inches } from '../../src/units/format-quantity.js';
import { unquoted } from '../fuzz/unquoted.js';

const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('laws of quantities', () => {
  it('what a quantity prints as JSON reads back to the same number', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(
          ...kindNames.filter(
            (k) => k !== 'ratio' && k !== 'count' && !k.startsWith('price') && k !== 'money',
          ),
        ),
        size,
        (kind, value) => {
          const q = new Quantity(kind, value);
          const j = q.toJSON();
          const back = parseQuantity(`${j.value} ${j.unit}`, kind);
          expect(Math.abs(back.value - value)).toBeLessThanOrEqual(
            Math.abs(value) * 1e-13 + (kind === 'temperature' ? 1e-11 : 0),
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('every unit of every kind goes there and back', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kindNames.filter((k) => !kinds[k].plain)), size, (kind, value) => {
        for (const unit of unitsOf(kind)) {
          const n = new Quantity(kind, value).in(unit);
          if (unit.startsWith('money')) continue;
          // A bare gallon or pint may be US or imperial, and is asked about.
          if (/^(gal|pt|qt|floz)$/.test(unit)) {
            expect(() => parseQuantity(`${n} ${unit}`, kind)).toThrow(/US or imperial/);
            continue;
          }
          expect(parseQuantity(`${n} ${unit}`, kind).value).toBeCloseTo(
            value,
            6 - Math.ceil(Math.log10(value)),
          );
        }
      }),
      { numRuns: 300 },
    );
  });

  it('what a quantity shows, in metric and in inches, reads back to the figure shown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kindNames.filter((k) => k !== 'count')),
        fc.double({ min: 0.02, max: 1e5, noNaN: true }),
        (kind, value) => {
          const q = new Quantity(kind, value);
          for (const text of [q.format(), q.format({ system: 'inch' })]) {
            const back = parseQuantity(text, kind).value;
            // Three digits shown at least; degrees are read from the freezing point of water; inches to a sixteenth, money to a cent.
            const within =
              Math.abs(value) * 6e-3 +
              (kind === 'temperature' ? 0.2 : 0) +
              (/money|price/.test(kind) ? 1000 : kind === 'length' ? 0.0008 : 0);
            expect(Math.abs(back - value), text).toBeLessThanOrEqual(within);
          }
        },
      ),
      { numRuns: 4000 },
    );
  });

  it('inches are never off by more than half the fraction', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1e5, noNaN: true }), fc.constantFrom(16, 32, 64), (n, d) => {
        const text = inches(n, d).replace(/\u202f/g, '');
        const read = parseQuantity(text, 'length').value / 0.0254;
        expect(Math.abs(read - n)).toBeLessThanOrEqual(0.5 / d + 1e-9 * n);
      }),
      { numRuns: 3000 },
    );
  });

  it('any text gives a finite quantity or an InputError', () => {
    const nasty = fc.oneof(
      fc.string({ maxLength: 200 }),
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.stringMatching(/^[-+0-9/.,'" eE%a-z]{0,40}$/),
    );
    fc.assert(
      fc.property(nasty, fc.constantFrom(...kindNames), (text, kind) => {
        try {
          expect(Number.isFinite(parseQuantity(text, kind).value)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect(unquoted((error as InputError).message)).not.toMatch(/\n|NaN/);
          expect((error as InputError).message.length).toBeLessThan(400);
        }
      }),
      { numRuns: Number(process.env['HOSTILE_RUNS'] ?? 3000) },
    );
  });

  it('time to read grows with the length and no faster', () => {
    // Patterns that ruin a backtracking reader; at 120 characters each must be read thousands of times a second.
    const patterns = [
      '1 '.repeat(60),
      '1/'.repeat(60),
      '9'.repeat(120),
      `${'1'.repeat(60)}.${'1'.repeat(59)}`,
      `1${' '.repeat(118)}x`,
      '- '.repeat(60),
      "1'".repeat(60),
    ];
    const turns = Number(process.env['HOSTILE_RUNS'] ?? 3000) / 10;
    const start = performance.now();
    for (let i = 0; i < turns; i++) {
      for (const p of patterns) {
        try {
          parseQuantity(p, 'length');
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      }
    }
    expect(performance.now() - start).toBeLessThan(10 * turns);
  });

  it('reads a quantity of any kind from free text', () => {
    expect(anyQuantity('3 kg').kind).toBe('mass');
    expect(anyQuantity('900 mm').kind).toBe('length');
  });
});

import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { beam } from '../../src/recipes/rails/beam.js';

const good = {
  length: '2 m',
  supports: ['0 m', '2 m'],
  loads: ['450 N/m'],
  section: '45 x 95 mm',
  grade: 'C24',
};
const bad: readonly (readonly [string, Record<string, unknown>, RegExp])[] = [
  [
    'one support that lets it turn',
    { supports: ['1 m'] },
    /supports: got one support that lets the beam turn over it; takes two or more, or one that is fixed/,
  ],
  ['no supports', { supports: [] }, /supports: got 0 entries/],
  [
    'two supports in one place',
    { supports: ['0 m', '1 m', '1000 mm'] },
    /supports\[3\]\.position: .*support 2 is already/,
  ],
  ['a support beyond the end', { supports: ['0 m', '2.1 m'] }, /supports\[2\]\.position: .*on the beam/],
  ['a load beyond the end', { loads: ['1 kN at 2.5 m'] }, /loads\[1\]\.position: .*on the beam/],
  [
    'a load that ends before it begins',
    { loads: ['1 kN/m from 1 m to 0.5 m'] },
    /loads\[1\]\.to: .*more than where the load begins/,
  ],
  [
    'a spring without a stiffness',
    { supports: [{ position: '0 m' }, { position: '2 m', kind: 'spring' }] },
    /supports\[2\]\.stiffness: missing; a spring takes/,
  ],
  [
    'a pinned support with a stiffness',
    { supports: [{ position: '0 m' }, { position: '2 m', kind: 'pinned', stiffness: '5 N/mm' }] },
    /supports\[2\]\.stiffness/,
  ],
  [
    'a kind of support there is not',
    { supports: [{ position: '0 m' }, { position: '2 m', kind: 'pined' }] },
    /supports\[2\]\.kind: got "pined".*did you mean "pinned"/,
  ],
  ['a load in kilograms', { loads: ['40 kg at 1 m'] }, /loads\[1\]\.force: .*a force/],
  ['a load that is a number', { loads: [450] }, /loads\[1\]: got 450, takes a list of loads/],
  [
    'a kind of load there is not',
    { loads: [{ kind: 'pont', position: '1 m', force: '1 kN' }] },
    /loads\[1\]: .*"point"/,
  ],
  ['loads as a number', { loads: 5 }, /loads: got 5/],
  ['no length', { length: '0 m' }, /length: got "0 m"/],
  [
    'too many loads',
    { loads: Array.from({ length: 300 }, () => '1 N/m') },
    /loads: got 300 entries, takes 1 to 200/,
  ],
];

describe('beam refuses', () => {
  it.each(bad)('%s', (_, part, message) => {
    let error: unknown;
    try {
      beam({ ...good, ...part });
    } catch (e) {
      error = e;
    }
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).message).toMatch(message);
    expect((error as InputError).message).not.toMatch(/undefined|\[object/);
  });

  it('carries no load at all without dividing by zero', () => {
    const r = beam({ ...good, loads: ['0 N/m'] });
    expect(r.maxDeflection.value).toBe(0);
    expect(r.verdict).toBe('yes');
    expect(r.toText()).not.toMatch(/NaN|Infinity/);
    expect(r.chart).toBeDefined();
  });
});

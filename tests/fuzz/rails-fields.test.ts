import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { Quantity } from '../../src/units/quantity.js';
import { beam } from '../../src/recipes/rails/beam.js';
import { loadsField } from '../../src/recipes/rails/load-field.js';
import { rackingFrame } from '../../src/recipes/rails/racking-frame.js';
import { creepField, sagLimitField } from '../../src/recipes/rails/sag-limit.js';
import { sectionField, solidField } from '../../src/recipes/rails/section.js';
import { materialFields } from '../../src/recipes/rails/material-fields.js';
import { supportsField } from '../../src/recipes/rails/support-field.js';
import { findSpecies } from '../../src/materials/species.js';

const supports = supportsField({ label: 'supports' });
const loads = loadsField({ label: 'loads' });
const section = sectionField({ label: 'section' });
const solid = solidField({ label: 'solid' });
const limit = sagLimitField({ label: 'limit' });
const creep = creepField({ label: 'creep' });

function refused(read: () => unknown): string {
  try {
    read();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).message).not.toMatch(/undefined|\[object|NaN/);
    return (error as InputError).message;
  }
  throw new Error('nothing was refused');
}

describe('supports', () => {
  const two = (s: unknown) => () => supports.read(['0 m', s]);
  it.each([
    ['a number', 5, /\[2\]: got 5, takes a list of supports/],
    ['nothing', null, /\[2\]: got null/],
    [
      'a fixed one that turns by a stiffness',
      { position: '1 m', kind: 'fixed', turning: '500 N m/rad' },
      /\[2\]\.turning: got a stiffness against turning at a fixed support/,
    ],
    [
      'a fixed one that springs',
      { position: '1 m', kind: 'fixed', stiffness: '5 N/mm' },
      /\[2\]\.stiffness: got a stiffness at a support that is fixed/,
    ],
    ['one before the beam', { position: '-1 mm' }, /\[2\]\.position/],
    [
      'one in numbers before the beam',
      { position: -1, lift: Infinity, turn: 0 },
      /\[2\]\.(lift|turn): no such/,
    ],
    ['one in numbers that pulls down', { position: 1, lift: -5, turn: 0 }, /\[2\]\.(lift|turn): no such/],
    ['one in numbers that does not hold', { position: 1, lift: 0, turn: 0 }, /\[2\]\.(lift|turn): no such/],
    ['one in numbers that turns itself', { position: 1, lift: 5, turn: -1 }, /\[2\]\.(lift|turn): no such/],
  ])('refuses %s', (_, s, message) => expect(refused(two(s))).toMatch(message));
  it('are 1 to 60, as a list or a text', () => {
    const many = Array.from({ length: 61 }, (_, i) => `${i} m`);
    expect(supports.read(many.slice(0, 60))).toHaveLength(60);
    expect(refused(() => supports.read(many))).toMatch(/got 61 entries, takes 1 to 60/);
    expect(supports.read('fixed 0 m; 2 m, ')).toEqual([
      { position: 0, lift: Infinity, turn: Infinity },
      { position: 2, lift: Infinity, turn: 0 },
    ]);
    expect(refused(() => supports.read(' , '))).toMatch(/got 0 entries/);
  });
  it('may be named by type as well as by kind, and may spring against turning', () => {
    expect(supports.read([{ position: '1 m', type: 'fixed' }])).toEqual([
      { position: 1, lift: Infinity, turn: Infinity },
    ]);
    expect(supports.read([{ position: '1 m', stiffness: '2 N/mm', turning: '50 N m/rad' }])).toEqual([
      { position: 1, lift: 2000, turn: 50 },
    ]);
    expect(supports.read([{ position: '1 m', turning: '50 N m/rad' }])).toEqual([
      { position: 1, lift: Infinity, turn: 50 },
    ]);
  });
  it('are shown in words', () => {
    const shown = supports.format(
      supports.read(['fixed 0 m', '1 m', { position: '2 m', stiffness: '200 N/mm' }]),
    );
    expect(shown).toBe('fixed at 0 mm, pinned at 1000 mm, spring of 200 N/mm at 2000 mm');
  });
});

describe('loads', () => {
  it.each([
    ['before the beam', { kind: 'point', at: -1, force: 5 }],
    ['beyond any beam', { kind: 'point', at: 101, force: 5 }],
    ['without end', { kind: 'point', at: 1, force: Infinity }],
    ['that end where they begin', { kind: 'spread', from: 1, to: 1, q1: 5, q2: 5 }],
    ['that end before they begin', { kind: 'spread', from: 2, to: 1, q1: 5, q2: 5 }],
    ['of no number', { kind: 'uniform', q: NaN }],
    ['called by a word of the language', { kind: 'constructor', q: 5 }],
    ['of figures in quotes', { kind: 'uniform', q: '5' }],
  ])('in numbers, %s, are refused', (_, l) => expect(refused(() => loads.read([l]))).toMatch(/\[1\]/));
  it('in numbers, at the ends of their ranges, are taken', () => {
    const all = [
      { kind: 'point', at: 0, force: -1e7 },
      { kind: 'moment', at: 100, moment: 1e7 },
      { kind: 'spread', from: 0, to: 0.001, q1: -1e6, q2: 1e6 },
      { kind: 'uniform', q: 1e6 },
    ];
    expect(loads.read(all)).toEqual(all);
  });
  it('as text: a force, a moment, a part, and one from end to end', () => {
    expect(
      loads.read('10 kN at 500 mm; 120 N m at 1 m; 90 lbf ft at 1 ft; 2 kN/m  from 0 mm to 600 mm; 450 N/m'),
    ).toEqual([
      { kind: 'point', at: 0.5, force: 10000 },
      { kind: 'moment', at: 1, moment: 120 },
      { kind: 'moment', at: 0.3048, moment: expect.closeTo(90 * 4.4482216152605 * 0.3048, 6) as number },
      { kind: 'spread', from: 0, to: 0.6, q1: 2000, q2: 2000 },
      { kind: 'uniform', q: 450 },
    ]);
    expect(loads.read(['600 N mm at 0 m', '50 lbf in at 0 m'])).toMatchObject([
      { kind: 'moment' },
      { kind: 'moment' },
    ]);
  });
  it('by parts, with or without their kind, by kind or by type', () => {
    for (const more of [{}, { kind: 'partial' }, { type: 'partial' }])
      expect(loads.read([{ ...more, from: '0 m', to: '1 m', load: '5 N/m', loadTo: '9 N/m' }])).toEqual([
        { kind: 'spread', from: 0, to: 1, q1: 5, q2: 9 },
      ]);
    expect(loads.read([{ at: '1 m', moment: '5 N m' }])).toEqual([{ kind: 'moment', at: 1, moment: 5 }]);
    expect(refused(() => loads.read([{ to: '1 m', load: '5 N/m' }]))).toMatch(/\[1\]\.from: missing/);
    expect(refused(() => loads.read([{ kind: 7 }]))).toMatch(/\[1\]: got .*takes one of a list of loads/);
    expect(refused(() => loads.read([{ kind: 'momnt', position: '1 m' }]))).toMatch(/takes kind "moment"/);
    expect(refused(() => loads.read([{ from: '1 m', to: '1 m', load: '5 N/m' }]))).toMatch(
      /\[1\]\.to: got 1000 mm/,
    );
  });
  it('called by one kind with the parts of another are refused', () => {
    expect(refused(() => loads.read([{ kind: 'point', position: '1 m', moment: '5 N m' }]))).toMatch(
      /\[1\]\.(force: missing|moment: no such)/,
    );
    expect(refused(() => loads.read([{ type: 'uniform', from: '0 m', to: '1 m', load: '5 N/m' }]))).toMatch(
      /\[1\]\.(from|to): no such/,
    );
  });
  it('are shown in words', () => {
    const all = loads.read([
      '10 N at 1 m',
      '5 N m at 1 m',
      '450 N/m',
      '2 N/m from 0 m to 1 m',
      { from: '0 m', to: '1 m', load: '2 N/m', loadTo: '3 N/m' },
    ]);
    expect(loads.format(all)).toBe(
      '10 N at 1000 mm, 5 N·m at 1000 mm, 450 N/m all along, 2 N/m from 0 mm to 1000 mm, 2 N/m to 3 N/m from 0 mm to 1000 mm',
    );
  });
});

describe('sections', () => {
  it.each([
    ['a number', 45, /got 45, takes width by depth/],
    ['nothing before the by', ' x 95 mm', /got " x 95 mm"/],
    [
      'a box whose flanges meet',
      { width: '60 mm', depth: '40 mm', web: '9 mm', flange: '20 mm' },
      /flange: .*less than half the depth of 40 mm/,
    ],
    ['a box without flanges', { width: '60 mm', depth: '40 mm', web: '9 mm' }, /flange: missing/],
    ['a box without webs', { width: '60 mm', depth: '40 mm', flange: '9 mm' }, /web: missing/],
    [
      'a part there is not',
      { layers: [{ width: '9 mm', depth: '9 mm' }], glue: 'pva' },
      /glue: no such part/,
    ],
    [
      'a part of pieces side by side there is not',
      { beside: [{ width: '9 mm', depth: '9 mm' }], loose: true },
      /loose: no such part/,
    ],
    [
      'layers that may be loose',
      { layers: [{ width: '9 mm', depth: '9 mm' }], loose: 'maybe' },
      /loose: got "maybe", takes true \(layers slide\) or false/,
    ],
    [
      'pieces that are no list',
      { beside: '45 x 95 mm' },
      /beside: got "45 x 95 mm", takes a list of 1 to 100/,
    ],
    [
      'over a hundred pieces',
      { beside: Array.from({ length: 101 }, () => ({ width: '9 mm', depth: '9 mm' })) },
      /beside/,
    ],
    [
      'two wrong pieces at once',
      { beside: [{ width: '0 mm', depth: '9 mm' }, { width: '9 mm' }] },
      /beside\[1\]\.width: [\s\S]*beside\[2\]\.depth: missing/,
    ],
    ['a piece handed on that is none', { shape: 'layers', pieces: [5] }, /layers\[1\]: got 5/],
    ['a word', { shape: 'beside', pieces: 'two' }, /beside: got "two"/],
  ])('refuse %s', (_, s, message) => expect(refused(() => section.read(s))).toMatch(message));
  it('are shown in words', () => {
    const words: [unknown, string][] = [
      ['45 x 95 mm', '45 × 95 mm'],
      [{ diameter: '30 mm' }, 'round, 30 mm'],
      [
        { width: '60 mm', depth: '90 mm', web: '9 mm', flange: '12 mm' },
        'box 60 × 90 mm, webs 9 mm, flanges 12 mm',
      ],
      [
        {
          layers: [
            { width: '90 mm', depth: '20 mm' },
            { width: '80 mm', depth: '10 mm' },
          ],
        },
        'glued layers from the top: 90 × 20 mm, 80 × 10 mm',
      ],
      [
        { layers: [{ width: '90 mm', depth: '20 mm' }], loose: true },
        'loose layers from the top: 90 × 20 mm',
      ],
      [{ beside: [{ width: '20 mm', depth: '90 mm' }] }, 'side by side: 20 × 90 mm'],
    ];
    for (const [written, text] of words) expect(section.format(section.read(written))).toBe(text);
  });
  it('are read up to eighty letters and a hundred pieces', () => {
    const spaced = (n: number) => `45${' '.repeat(n - 9)}x 95 mm`;
    expect(spaced(80)).toHaveLength(80);
    expect(section.read(spaced(80))).toMatchObject({ width: 0.045 });
    expect(refused(() => section.read(spaced(81)))).toMatch(/takes width by depth/);
    const many = (n: number) => ({
      beside: Array.from({ length: n }, () => ({ width: '9 mm', depth: '9 mm' })),
    });
    expect(section.read(many(100))).toMatchObject({ shape: 'beside' });
    expect(section.read({ shape: 'layers', pieces: [{ width: 0.009, depth: 0.009 }] })).toMatchObject({
      loose: false,
    });
    for (const text of ['45 mm x', 'x 95 mm', '45 x 95 x 20 mm', '', 'by'])
      expect(refused(() => section.read(text))).toMatch(/takes width by depth/);
  });
  it('must be solid where the recipe asks for a rectangle', () => {
    expect(solid.read('45 x 95 mm')).toEqual({ shape: 'solid', width: 0.045, depth: 0.095 });
    expect(() => rackingFrame({ ...rackingFrame.example, section: { diameter: '30 mm' } })).toThrow(
      /section: got round, 30 mm, takes a solid section such as "45 x 95 mm"/,
    );
  });
  it('take the unit of the other side, fractions and half signs', () => {
    expect(section.read('1½ x 3½ in')).toEqual({
      shape: 'solid',
      width: expect.closeTo(0.0381, 9) as number,
      depth: expect.closeTo(0.0889, 9) as number,
    });
    expect(section.read(`${'4'.repeat(1)}5 ${' '.repeat(67)} x 95 mm`)).toMatchObject({ width: 0.045 });
    expect(refused(() => section.read(`45 ${' '.repeat(70)} x 95 mm`))).toMatch(/takes width by depth/);
  });
});

describe('limits of sag', () => {
  it.each([
    ['L/20', 20],
    ['L/10000', 10000],
    ['L/19.999', undefined],
    ['L/10000.5', undefined],
  ])('%s', (text, ratio) => {
    if (ratio === undefined) expect(refused(() => limit.read(text))).toMatch(/takes L\/20 to L\/10000/);
    else expect(limit.read(text)).toEqual({ of: 'span', ratio });
  });
  it.each([
    ['1 m', 1],
    ['0.001 mm', 1e-6],
    ['1.001 m', undefined],
    ['0 mm', undefined],
    ['-3 mm', undefined],
  ])('%s', (text, most) => {
    if (most === undefined) expect(refused(() => limit.read(text))).toMatch(/more than 0 mm and at most 1 m/);
    else expect(limit.read(text)).toEqual({ of: 'length', most });
  });
  it('are neither numbers nor nothing, and a limit handed on must be more than zero', () => {
    for (const wrong of [
      300,
      null,
      true,
      {},
      { of: 'span', ratio: 0 },
      { of: 'length', most: 0 },
      { of: 'length', ratio: 5 },
      { of: 'span', ratio: '300' },
      { of: 'length', most: '0.003' },
      { of: 'other', most: 5 },
      ['L/300'],
    ])
      expect(refused(() => limit.read(wrong))).toMatch(
        /takes a share of the span such as "L\/300", a length/,
      );
    expect(limit.read(new Quantity('length', 0.003))).toEqual({ of: 'length', most: 0.003 });
  });
  it('are shown by name', () => {
    expect(limit.format(limit.read('adjustable shelf'))).toBe('L/144 (adjustable shelf)');
    expect(limit.format(limit.read('L/333.333333'))).toBe('L/333.333');
    expect(limit.format(limit.read('3 mm'))).toMatch(/^3 mm/);
  });
});

describe('creep', () => {
  it.each([1, 5, '1', '5', ' 2.5 '])('%s is taken', (n) =>
    expect(creep.read(n)).toEqual({ factor: Number(n), name: String(Number(n)) }),
  );
  it.each([
    0.999,
    5.001,
    '0.999',
    '5.001',
    null,
    true,
    '',
    {},
    { factor: 2 },
    { factor: 5.1, name: 'x' },
    { factor: 0.9, name: 'x' },
    { factor: 'x', name: 'y' },
    { factor: '2', name: 'y' },
    { factor: 2, name: 7 },
    ['1.5'],
  ])('%j is refused', (n) =>
    expect(refused(() => creep.read(n))).toMatch(/takes a creep factor of 1 to 5, or one of "no creep"/),
  );
  it('handed on at the ends of its range is taken', () => {
    for (const factor of [1, 5]) expect(creep.read({ factor, name: 'x' })).toEqual({ factor, name: 'x' });
  });
  it('is shown with its factor', () => {
    expect(creep.format(creep.read(1.7))).toBe('1.7');
    expect(creep.format(creep.read('heated room'))).toBe('heated room (1.6)');
  });
});

describe('which values a field is meant for', () => {
  const oak = findSpecies('white oak');
  it.each([
    ['supports', supports, ['0 m', ['0 m']], [5, {}]],
    ['loads', loads, ['5 N/m', []], [5, {}]],
    ['section', section, ['45 x 95 mm', { diameter: '3 mm' }], [45, []]],
    ['solid', solid, ['45 x 95 mm', { width: '3 mm' }], [45, []]],
    ['limit', limit, ['L/300', new Quantity('length', 0.003)], [300, {}]],
    ['creep', creep, ['shelf', 1.5], [{}, true]],
    ['timber', materialFields.timber, ['white oak', oak], [5, {}]],
  ] as const)('%s', (_, field, fitting, other) => {
    expect(fitting.map((v) => field.accepts(v))).toEqual([true, true]);
    expect(other.map((v) => field.accepts(v))).toEqual([false, false]);
  });
});

describe('a beam whose own weight is asked for', () => {
  it('is refused without a density', () => {
    expect(() => beam({ ...beam.example, grade: undefined, modulus: '9 GPa', ownWeight: true })).toThrow(
      /ownWeight: got yes, takes it only with a density/,
    );
  });
});

import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/units/input-error.js';
import { loadsField } from '../../../src/recipes/rails/load-field.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { creepField, limitUses, sagLimitField } from '../../../src/recipes/rails/sag-limit.js';
import { sectionField } from '../../../src/recipes/rails/section.js';
import { supportsField } from '../../../src/recipes/rails/support-field.js';
import { tableRows } from '../../../src/materials/data-tables.js';

const limit = sagLimitField({ label: 'limit' });
const creep = creepField({ label: 'creep' });
const supports = supportsField({ label: 'supports' });
const loads = loadsField({ label: 'loads' });
const section = sectionField({ label: 'section' });

describe('limits of sag', () => {
  it.each([
    ['L/300', 300],
    ['l / 240', 240],
    ['span/150', 150],
    ['1/360', 360],
  ])('%s', (text, ratio) => expect(limit.read(text)).toEqual({ of: 'span', ratio }));
  it('a length', () => expect(limit.read('3 mm')).toEqual({ of: 'length', most: 0.003 }));
  it('a published use, with its source', () => {
    expect(limit.read('adjustable shelf')).toMatchObject({
      of: 'span',
      ratio: 144,
      source: { id: 'aws-2009' },
    });
    const r = railSpan({
      section: '300 x 20 mm',
      load: '300 N/m',
      modulus: '10 GPa',
      limit: 'adjustable shelf',
    });
    expect(r.sources.some((s) => s.id === 'aws-2009')).toBe(true);
    expect(r.inputs.find((g) => g.name === 'limit')?.metric).toMatch(/^L\/144/);
  });
  it('names the uses of the table, and its ratios are those of the printed limits', () => {
    const rows = tableRows('deflection-limits');
    expect([...limitUses]).toEqual([...new Set(rows.map((r) => r.text('use')))]);
    for (const r of rows) {
      const share = /^(?:l|span)\/(\d+)$/i.exec(r.text('limit'));
      const inches = /^(.*) in per ft$/.exec(r.text('limit'))?.[1];
      const mm = /^([\d.]+) mm in (\d+) mm$/.exec(r.text('limit'));
      const ratio = share
        ? Number(share[1])
        : inches
          ? 12 / (inches.includes('/') ? 1 / Number(inches.split('/')[1]) : Number(inches))
          : Number(mm?.[2]) / Number(mm?.[1]);
      expect(Math.abs(ratio - (r.number('ratio') as number)), r.text('use')).toBeLessThan(0.5);
    }
  });
});

describe('creep', () => {
  it('a number or a published choice', () => {
    expect(creep.read(1.7)).toMatchObject({ factor: 1.7 });
    expect(creep.read('1.7')).toMatchObject({ factor: 1.7 });
    expect(creep.read('Heated Room')).toMatchObject({ factor: 1.6, source: { id: 'en-1995-1-1' } });
  });
  it('its factors follow from the printed figures', () => {
    for (const r of tableRows('creep-factors')) {
      const printed = r.text('printed_value');
      const factor = /k_def/.test(r.text('printed_as'))
        ? 1 + Number(printed)
        : /50 %/.test(printed)
          ? 1.5
          : Number(printed);
      expect(r.number('factor'), r.text('choice')).toBeCloseTo(factor, 12);
    }
  });
});

describe('what a sweep hands on reads back, and what is half written is refused', () => {
  it('sections, supports, loads, limits and creep', () => {
    for (const written of [
      '45 x 95 mm',
      { width: '60 mm', depth: '90 mm', web: '9 mm', flange: '12 mm' },
      { diameter: '30 mm' },
      {
        layers: [
          { width: '90 mm', depth: '20 mm', modulus: '9 GPa' },
          { width: '90 mm', depth: '20 mm' },
        ],
        loose: true,
      },
      { beside: [{ width: '20 mm', depth: '90 mm' }] },
    ]) {
      const once = section.read(written);
      expect(section.read(once)).toEqual(once);
    }
    const held = supports.read([
      '0 m',
      { position: '1 m', stiffness: '200 N/mm' },
      { position: '2 m', kind: 'fixed' },
    ]);
    expect(supports.read(held)).toEqual(held);
    const borne = loads.read([
      '10 kN at 500 mm',
      '2 kN/m from 0 mm to 600 mm',
      '450 N/m',
      '120 N m at 1 m',
      { at: '1 m', force: '1 kN' },
    ]);
    expect(loads.read(borne)).toEqual(borne);
    expect(borne[4]).toEqual({ kind: 'point', at: 1, force: 1000 });
    for (const f of [limit.read('L/300'), limit.read('3 mm')]) expect(limit.read(f)).toEqual(f);
    expect(creep.read(creep.read('shelf'))).toEqual(creep.read('shelf'));
  });
  it.each([
    [() => section.read({ shape: 'solid', width: NaN, depth: 0.1 })],
    [() => section.read({ shape: 'solid', width: -1, depth: 0.1 })],
    [() => section.read({ shape: 'blob', width: 0.1 })],
    [() => section.read({ shape: 'layers' })],
    [() => supports.read([{ lift: 'a lot' }, '1 m'])],
    [() => supports.read([{ position: NaN, lift: 1, turn: 0 }, '1 m'])],
    [() => loads.read([{ kind: 'point', at: NaN, force: 1 }])],
    [() => loads.read([{ q: 'much' }])],
    [() => limit.read({ of: 'span' })],
    [() => limit.read({ of: 'length', most: -1 })],
    [() => creep.read({ factor: 99, name: 'x' })],
    [() => creep.read({ factor: NaN, name: 'x' })],
  ])('refuses %#', (read) => expect(read).toThrow(InputError));
});

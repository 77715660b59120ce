import { describe, expect, it } from 'vitest';
import { length } from '../../src/units/constructors.js';
import { InputError } from '../../src/units/input-error.js';
import {
  field,
  isPlainObject,
  makeField,
  makeParser,
  collectIssues,
  watchCurrency,
} from '../../src/engine/field.js';
import { tableField } from '../../src/engine/table-field.js';

/** The words of the refusal that `run` raises. */
function refusalOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).message;
  }
  throw new Error('nothing was refused');
}

describe('a field of a quantity', () => {
  const plank = field.length({ label: 'length of the plank', min: '100 mm', max: '5 m' });

  it('takes its limits and refuses just outside them', () => {
    expect(plank.read('100 mm')).toBe(0.1);
    expect(plank.read('5 m')).toBe(5);
    expect(refusalOf(() => plank.read('99.999 mm'))).toContain('at least 100 mm and at most 5000 mm');
    expect(refusalOf(() => plank.read('5.0001 m'))).toContain('takes a length');
  });

  it('takes a limit that the change from inches missed by the last binary digit', () => {
    // 100 mm is 3.937007874015748 in; read back it may lie a hair below.
    expect(plank.read('3.937007874015748 in')).toBeCloseTo(0.1, 12);
    expect(plank.read({ value: 5 * (1 + 1e-13), unit: 'm' })).toBeCloseTo(5, 9);
  });

  it('refuses exactly the limit where more than it is asked for', () => {
    const kerf = field.length({ label: 'kerf', above: '0 mm' });
    expect(refusalOf(() => kerf.read('0 mm'))).toContain('more than 0 mm');
    expect(kerf.read('0.001 mm')).toBeCloseTo(1e-6, 12);
    expect(kerf.min).toBe(0);
  });

  it('quotes a quantity as text, not as an object', () => {
    expect(refusalOf(() => plank.read(length('6 m')))).toMatch(/^got "6000 mm", takes a length/);
  });

  it('refuses a part of a piece', () => {
    const boards = field.count({ label: 'boards', min: 1 });
    expect(boards.read('3')).toBe(3);
    expect(refusalOf(() => boards.read(2.5))).toContain('got 2.5');
  });

  it('shows in both measures, or in its own unit where it has one', () => {
    // 127 mm is 5 in by definition of the inch.
    expect(plank.format(0.127)).toBe('127 mm (5 in)');
    const thick = field.length({ label: 'thickness', unit: 'cm' });
    expect(thick.unit).toBe('cm');
    expect(thick.format(0.127)).toBe('12.7 cm');
  });

  it('is meant by text, a number, a quantity or a value with its unit, and by nothing else', () => {
    for (const v of ['1 m', 1, length('1 m'), { value: 1, unit: 'm' }]) expect(plank.accepts(v)).toBe(true);
    for (const v of [null, undefined, true, {}, { value: 1 }, { unit: 'm' }])
      expect(plank.accepts(v)).toBe(false);
  });

  it('says that it was left out, by what it takes', () => {
    expect(refusalOf(() => plank.read(undefined))).toContain('missing; takes a length');
    const may = field.length({ label: 'overhang', optional: true });
    expect(may.read(undefined)).toBeUndefined();
    expect(may.format(undefined)).toBe('not given');
    expect(field.length({ label: 'kerf', default: '3 mm' }).read(undefined)).toBe(0.003);
  });

  it('tells the currency of one reading and refuses two', () => {
    const prices = field.list(field.money({ label: 'price' }), { label: 'prices' });
    expect(watchCurrency(() => prices.read(['$3', '$4']))).toEqual({ value: [3, 4], currency: '$' });
    expect(watchCurrency(() => prices.read([3, 4])).currency).toBeUndefined();
    expect(refusalOf(() => watchCurrency(() => prices.read(['$3', '€4'])))).toBe(
      '[2]: got prices in "$" and "€", takes one currency; nothing is exchanged here',
    );
  });
});

describe('a field of one of a few words', () => {
  const hold = field.choice(['centre', 'edge', 'both ends'], { label: 'where it is held' });
  it('takes its words whatever the case, spaces and hyphens', () => {
    expect(hold.read('Centre')).toBe('centre');
    expect(hold.read('both-ends')).toBe('both ends');
  });
  it('names all its words for a wrong one, and the nearest', () => {
    const all = 'takes one of "centre", "edge", "both ends"';
    expect(refusalOf(() => hold.read('center'))).toBe(`got "center", ${all}; did you mean "centre"?`);
    expect(refusalOf(() => hold.read('upside down'))).toBe(`got "upside down", ${all}`);
    expect(refusalOf(() => hold.read(7))).toBe(`got 7, ${all}`);
  });
});

describe('a field of yes or no', () => {
  const sanded = field.flag({ label: 'is it sanded' });
  it.each([
    [true, true],
    ['yes', true],
    ['true', true],
    [false, false],
    ['no', false],
    ['false', false],
  ])('reads %j as %j', (given, read) => {
    expect(sanded.read(given as never)).toBe(read);
    expect(sanded.accepts(given)).toBe(true);
  });
  it('refuses what is neither', () => {
    expect(sanded.accepts('perhaps')).toBe(false);
    expect(refusalOf(() => sanded.read('perhaps'))).toBe('got "perhaps", takes yes or no (true or false)');
    expect(sanded.format(true)).toBe('yes');
    expect(sanded.format(false)).toBe('no');
  });
});

describe('a field of text', () => {
  const name = field.text({ label: 'name' });
  it('takes 1 to 200 characters, without the spaces round them', () => {
    expect(name.read('  rail ')).toBe('rail');
    expect(name.read('x'.repeat(200))).toHaveLength(200);
    for (const wrong of ['', '   ', 'x'.repeat(201), 5])
      expect(refusalOf(() => name.read(wrong as string))).toContain('takes a text of 1 to 200 characters');
  });
});

describe('a list', () => {
  const lengths = field.list(field.length({ label: 'a length' }), { label: 'lengths', least: 2, most: 20 });
  it('shows a dozen whole and says how many more there are', () => {
    expect(lengths.format(Array(12).fill(0.1))).toBe(Array(12).fill('100 mm (3 15/16 in)').join(', '));
    const long = lengths.format(Array(13).fill(0.1));
    expect(long).toMatch(/ \.\.\. \(13 in all\)$/);
    expect(long.match(/100 mm/g)).toHaveLength(12);
  });
  it('says how many it takes, at both ends', () => {
    expect(lengths.read('1 m; 2 m')).toEqual([1, 2]);
    expect(refusalOf(() => lengths.read(['1 m']))).toContain('got 1 entries, takes 2 to 20');
    expect(lengths.read(Array<string>(20).fill('1 m'))).toHaveLength(20);
    expect(refusalOf(() => lengths.read(Array<string>(21).fill('1 m')))).toContain('got 21 entries');
    expect(refusalOf(() => lengths.read(5))).toContain('got 5, takes a list');
  });
  it('names every wrong entry by its place', () => {
    expect(refusalOf(() => lengths.read(['1 m', 'x', '2 kg']))).toMatch(/^\[2\]: .*; \[3\]: /);
  });
});

describe('a group', () => {
  const top = field.group(
    {
      width: field.length({ label: 'width' }),
      offcuts: field.list(field.length({ label: 'x' }), { label: 'y' }),
    },
    { label: 'the top' },
  );
  it('names the part that is wrong, and the place within it', () => {
    const said = refusalOf(() => top.read({ width: 'wide', offcuts: ['1 m', 'short'] }));
    expect(said).toContain('width: got "wide"');
    expect(said).toContain('offcuts[2]: got "short"');
  });
  it('refuses what has no parts, and a part it does not know', () => {
    expect(refusalOf(() => top.read(4))).toMatch(/^got 4, takes an object with width \(width\)/);
    expect(refusalOf(() => top.read({ widthh: '1 m', offcuts: ['1 m'] }))).toContain(
      'widthh: no such input; did you mean "width"?',
    );
    expect(refusalOf(() => makeParser({ width: field.length({ label: 'width' }) })(null))).toBe(
      'got null, takes an object with width',
    );
  });
});

describe('a record', () => {
  const parts = field.record(field.ratio({ label: 'parts of it' }), { label: 'the parts' });
  it('shows each part by its name', () => {
    expect(parts.format({ oil: 2, varnish: 1 })).toBe('oil 2, varnish 1');
  });
  it('refuses no part at all, a name twice, and what is neither text nor parts', () => {
    expect(refusalOf(() => parts.read({}))).toContain('got {}');
    expect(refusalOf(() => parts.read('oil:1, oil:2'))).toBe('got "oil" twice, takes each name once');
    expect(refusalOf(() => parts.read(5))).toContain('got 5, takes named parts');
    expect(refusalOf(() => parts.read({ oil: 'much' }))).toMatch(/^oil: got "much"/);
  });
});

describe('an either', () => {
  const clamp = field.either(
    [
      field.choice(['pipe clamp', 'bar clamp'], { label: 'kind' }),
      field.force({ label: 'force', max: '9 kN' }),
    ],
    { label: 'clamp' },
  );
  it('takes what any of its alternatives takes', () => {
    expect(clamp.read('Bar Clamp')).toBe('bar clamp');
    expect(clamp.read('2 kN')).toBe(2000);
    expect(clamp.accepts(true)).toBe(false);
  });
  it('names every alternative for a word that is none, and the nearest word', () => {
    const words = 'one of "pipe clamp", "bar clamp"';
    expect(refusalOf(() => clamp.read('no such'))).toBe(
      `got "no such", takes a force such as "2 kN"; or ${words}`,
    );
    expect(refusalOf(() => clamp.read('bra clamp'))).toMatch(/; did you mean "bar clamp"\?$/);
    expect(refusalOf(() => clamp.read('10 kN'))).toBe(
      `got "10 kN", takes a force such as "2 kN", at most 9 kN; or ${words}`,
    );
  });
  it('names every alternative for what fits none', () => {
    expect(refusalOf(() => clamp.read(true))).toBe(
      'got true, takes one of "pipe clamp", "bar clamp", or a force such as "2 kN", at most 9 kN',
    );
  });
  it('names every alternative where several of one shape refuse', () => {
    const size = field.either([field.length({ label: 'width' }), field.mass({ label: 'weight' })], {
      label: 'size',
    });
    expect(refusalOf(() => size.read('big'))).toMatch(/^got "big", takes a length such as .*, or .*mass/);
  });
  it('keeps the place of a trouble below it', () => {
    const limits = field.either(
      [
        field.length({ label: 'either way' }),
        field.group({ low: field.length({ label: 'least' }) }, { label: 'least' }),
      ],
      { label: 'limits' },
    );
    expect(refusalOf(() => limits.read({ low: 'x' }))).toMatch(/^low: got "x"/);
  });
  it('tells apart yes or no, parts and tables by their shape', () => {
    const any = field.either(
      [
        field.flag({ label: 'whether' }),
        field.record(field.ratio({ label: 'parts' }), { label: 'mix' }),
        tableField({ length: field.length({ label: 'length' }) }, { label: 'boards' }),
      ],
      { label: 'anything' },
    );
    expect(any.read('yes')).toBe(true);
    expect(any.read({ oil: 2 })).toEqual({ oil: 2 });
    expect(any.read([{ length: '1 m' }])).toEqual([{ length: 1 }]);
    expect(any.read({ columns: ['length (mm)'], values: [[900]] })).toEqual([{ length: 0.9 }]);
    expect(any.read('length\n2 m')).toEqual([{ length: 2 }]);
    expect(any.accepts(5)).toBe(false);
  });
  it('shows what no alternative can show as it stands', () => {
    expect(clamp.format('wedge' as never)).toBe('wedge');
  });
});

describe('a fault of the program inside a field', () => {
  const broken = makeField<string, string, { label: string }>(
    {
      kind: 'own',
      expects: 'anything',
      accepts: () => true,
      format: String,
      read: () => {
        throw new TypeError('a fault in the code');
      },
    },
    { label: 'own' },
  );
  it('is not taken for wrong input', () => {
    expect(() => field.either([broken, broken], { label: 'x' }).read('y')).toThrow(TypeError);
    expect(() => collectIssues([['a', () => broken.read('y')]])).toThrow(TypeError);
    expect(() => makeParser({ a: broken })({ a: 'y' })).toThrow(TypeError);
  });
});

describe('a plain object', () => {
  it('is one with named parts, and no list, quantity or thing of a class', () => {
    expect(isPlainObject({ a: 1 })).toBe(true);
    expect(isPlainObject(Object.create(null))).toBe(true);
    for (const other of [[], null, 5, 'x', new Date(0), length('1 m')])
      expect(isPlainObject(other)).toBe(false);
  });
});

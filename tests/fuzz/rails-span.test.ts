import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { railSpan } from '../../src/recipes/rails/rail-span.js';

const good = { section: '45 x 95 mm', load: '450 N/m', grade: 'C24' };
const bad: readonly (readonly [string, Record<string, unknown>, RegExp])[] = [
  ['a section with one side', { section: '45 mm' }, /section: got "45 mm", takes width by depth/],
  ['a section with three sides', { section: '45 x 95 x 20 mm' }, /section: got/],
  ['a section of zero', { section: '0 x 95 mm' }, /section\.width: got "0 mm".*more than 0 mm/],
  ['a section without a unit', { section: '45 x 95' }, /section: "45 x 95" has no unit; write "45 x 95 mm"/],
  ['a negative depth', { section: { width: '45 mm', depth: '-95 mm' } }, /section\.depth/],
  [
    'a box whose webs fill it',
    { section: { width: '60 mm', depth: '95 mm', web: '30 mm', flange: '10 mm' } },
    /section\.web: .*less than half/,
  ],
  ['an endless section text', { section: `${'4'.repeat(5000)} x 9 mm` }, /section/],
  ['layers that are none', { section: { layers: [] } }, /section\.layers/],
  [
    'a layer with a strange part',
    { section: { layers: [{ width: '10 mm', depth: '10 mm', colour: 'red' }] } },
    /layers\[1\]\.colour: no such input/,
  ],
  ['a load by area', { load: '2 kPa' }, /load: .*a load by length/],
  ['no load', { load: '0 N/m' }, /load/],
  ['a load that is no number', { load: NaN }, /load/],
  ['a limit of L/0', { limit: 'L/0' }, /limit: got "L\/0", takes L\/20/],
  [
    'a limit in words',
    { limit: 'a little' },
    /limit: got "a little", takes a share of the span such as "L\/300"/,
  ],
  ['a limit of zero', { limit: '0 mm' }, /limit/],
  ['a creep factor under one', { long: 0.5 }, /long: got 0.5, takes a creep factor of 1 to 5/],
  ['a creep nobody published', { long: 'forever' }, /long: got "forever".*"seasoned"/],
  ['a grade there is not', { grade: 'C99' }, /grade: no grade "C99"/],
  ['a misspelt species', { grade: undefined, timber: 'whit oak' }, /timber: .*white oak/i],
  ['a strength ratio over all', { strengthRatio: '120 %' }, /strengthRatio/],
  [
    'own weight without a density',
    { grade: undefined, modulus: '9 GPa', ownWeight: true },
    /ownWeight: .*density/,
  ],
  ['a field there is not', { sectoin: '45 x 95 mm' }, /sectoin: no such input; did you mean "section"\?/],
];

describe('railSpan refuses', () => {
  it.each(bad)('%s', (_, part, message) => {
    let error: unknown;
    try {
      railSpan({ ...good, ...part });
    } catch (e) {
      error = e;
    }
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).message).toMatch(message);
    expect((error as InputError).message).not.toMatch(/undefined|\[object/);
  });

  it('several wrong fields together', () => {
    expect(() => railSpan({ section: 'x', load: 'y', limit: 'z' })).toThrow(
      /section: [\s\S]*load: [\s\S]*limit: /,
    );
  });
});

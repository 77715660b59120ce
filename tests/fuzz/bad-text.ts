// Texts that somebody might write, paste or send where a quantity belongs: most nearly right, some right, some meant to hurt.
import { kindNames, kinds, type Kind } from '../../src/units/kind.js';
import { unitsOf } from '../../src/units/unit.js';
import type { SeededRandom } from './seeded-random.js';

const pieces = [
  ' ',
  '  ',
  '\t',
  '\n',
  '\r\n',
  '\u0000',
  '\u00a0',
  '\u202f',
  '\u2028',
  '\ufeff',
  '\ud800',
  '\u202e',
  '.',
  ',',
  ';',
  '-',
  '--',
  '+',
  '−',
  '–',
  '/',
  '//',
  '*',
  '^',
  '^2',
  '²',
  '½',
  '¾',
  '⅞',
  '"',
  "'",
  "''",
  '″',
  '′',
  '°',
  'µ',
  '%',
  '%%',
  '$',
  '€',
  'AUD',
  'e',
  'E',
  'e5',
  'e-5',
  'e999',
  'E-999',
  '1',
  '0',
  '00',
  '9'.repeat(30),
  '.5',
  '5.',
  'NaN',
  'Infinity',
  '-Infinity',
  'null',
  'undefined',
  'true',
  '0x10',
  '0b1',
  '1_000',
  '1,000',
  '1.000.000',
  '١٢',
  '一',
  '💥',
  '<b>',
  '${1}',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  '(',
  ')',
  '[',
  ']',
  '{',
  '}',
  '=',
  '#',
  '@',
  '!',
  '&',
  '|',
  '~',
  '`',
  '\\',
  'per',
  'per ',
  'mm mm',
  'm/m',
  'ft',
  'foot',
  'in',
  'x',
];
const numbers = [
  '0',
  '-0',
  '1',
  '12',
  '900',
  '0.5',
  '.5',
  '5.',
  '1e3',
  '1e-3',
  '1e308',
  '1e400',
  '1e-400',
  '-1',
  '+7',
  '35 7/16',
  '35-7/16',
  '3/4',
  '1/0',
  '0/0',
  '1/3',
  '5\' 10 1/2"',
  "6'",
  "6' 3",
  '1 1/2 1/2',
  '007',
  '1.7976931348623157e308',
  '5e-324',
  '999999999999999999999',
  '0.1',
  '12.50',
];
const anyUnit = [...new Set(kindNames.flatMap((k) => unitsOf(k)))];
// Units that only the general library of algebra knows, and some that nobody does.
const strange = [
  'furlong',
  'angstrom',
  'lightyear',
  'acre',
  'hectare',
  'stone',
  'hogshead',
  'atm',
  'mmHg',
  'weeks',
  'fortnight',
  'm^0',
  'm^-1',
  'm^1e9',
  'kg m^2 / s^2',
  'N/m^2/s',
  'deg',
  'i',
  'pi',
  'B',
  'bits',
  'K',
  'Ym',
  'ym',
  'yoctometre',
  'in^in',
  '/',
  '*',
  'm*',
  'm/',
  'm m',
  'm^m',
  '1m',
  'm1',
  'sqrt(m)',
  'createUnit',
  'import',
  'm;m',
  'm=2',
];

/** One hostile text for a kind. */
export function hostileText(random: SeededRandom, kind: Kind): string {
  const unit = (): string =>
    random.chance(0.6)
      ? random.pick(unitsOf(kind))
      : random.chance(0.6)
        ? random.pick(anyUnit)
        : random.pick(strange);
  switch (random.below(8)) {
    case 0:
      return `${random.pick(numbers)}${random.pick(['', ' ', '  '])}${unit()}`;
    case 1:
      return `${(random.chance(0.5) ? 1 : -1) * random.decade(1e-12, 1e12)} ${unit()}`;
    case 2: {
      // A right text, corrupted in a few places.
      let text = random.chance(0.5) ? kinds[kind].example : `${random.pick(numbers)} ${unit()}`;
      for (let i = 0; i <= random.below(3); i++) {
        const at = random.below(text.length + 1);
        text = text.slice(0, at) + random.pick(pieces) + text.slice(at + (random.chance(0.4) ? 1 : 0));
      }
      return text;
    }
    case 3:
      return Array.from({ length: 1 + random.below(8) }, () => random.pick(pieces)).join('');
    case 4:
      // The same over and over: what ruins a reader that goes back.
      return random
        .pick([...pieces, ...numbers, '1 ', '1/', "1'", '- ', ' /', '1e', '1.'])
        .repeat(1 + random.below(60));
    case 5:
      return Array.from({ length: random.below(130) }, () =>
        String.fromCharCode(random.chance(0.7) ? 32 + random.below(95) : random.below(65536)),
      ).join('');
    case 6:
      return `${random.pick(['', '$', '€ ', 'AUD ', 'A$', '-$', '$-'])}${random.pick(numbers)}${random.pick(['', '/', ' / ', ' per ', '/money/'])}${random.chance(0.7) ? unit() : ''}`;
    default:
      return `${random.pick(numbers)}${' '.repeat(random.below(40))}${random.pick(numbers)}${unit()}${random.chance(0.2) ? 'x'.repeat(random.below(5000)) : ''}`;
  }
}

// Inputs for any recipe, made from what its fields say of themselves: right ones, ones at and past the limits, and rubbish.
import { kinds, type Kind } from '../../src/units/kind.js';
import { unitsOf } from '../../src/units/unit.js';
import type { Field, Fields } from '../../src/engine/field.js';
import { hostileText } from './bad-text.js';
import type { SeededRandom } from './seeded-random.js';

const rubbish: readonly unknown[] = [
  null,
  undefined,
  NaN,
  Infinity,
  -Infinity,
  0,
  -0,
  -1,
  1,
  1e308,
  5e-324,
  2 ** 53,
  '',
  ' ',
  'rubbish',
  '\u0000',
  '__proto__',
  '💥',
  [],
  [[]],
  {},
  { value: 1 },
  { value: NaN, unit: 'mm' },
  { value: 1e308, unit: 'm' },
  { __proto__: null },
  new Date(0),
  /x/,
  new Map(),
  new Uint8Array(3),
  true,
  false,
  10n,
  Symbol('s'),
  () => 1,
  { toString: () => '1 m' },
  { valueOf: () => 1 },
  'x'.repeat(5000),
  [1, 2, 3],
  ['a'],
  { a: { b: { c: 1 } } },
];
const names = [
  'oak',
  'white oak',
  'spotted gum',
  'unknown hardwood',
  'Douglas-fir',
  'pine',
  'C24',
  'MGP10',
  'F17',
  'D30',
  'jarrah',
  'teak',
  'merbau',
  'balsa',
  'a wood nobody knows',
];
const sizes: Partial<Record<string, readonly [number, number]>> = {
  length: [1e-3, 10],
  thickness: [1e-5, 1e-2],
  area: [1e-4, 20],
  volume: [1e-5, 1],
  liquid: [1e-5, 0.1],
  mass: [1e-3, 500],
  density: [100, 1300],
  concentration: [10, 900],
  spread: [0.01, 0.5],
  coverage: [2e3, 3e4],
  force: [1, 1e5],
  pressure: [1e3, 1e8],
  stress: [1e5, 1e8],
  modulus: [1e8, 3e10],
  areaLoad: [10, 2e4],
  lineLoad: [1, 2e4],
  moisture: [0.01, 0.4],
  humidity: [0.02, 0.98],
  share: [0.001, 0.999],
  temperature: [0.1, 60],
  time: [1, 1e6],
  speed: [1e-3, 5],
  rotation: [0.1, 400],
  angle: [1e-3, 3],
  money: [0.01, 1e4],
  ratio: [0.01, 20],
  count: [1, 30],
};

/** A value for a field. `spoil` is how likely any part of it is made wrong. */
export function hostileValue(random: SeededRandom, f: Field, spoil: number, depth = 0): unknown {
  if (random.chance(spoil)) return random.pick(rubbish);
  if (f.default !== undefined && random.chance(0.1)) return f.default;
  if (Object.hasOwn(kinds, f.kind)) return quantityValue(random, f, f.kind as Kind, spoil);
  if (f.kind === 'choice' || f.kind === 'flag')
    return random.chance(spoil) ? random.pick(names) : random.pick(f.choices ?? ['yes', 'no']);
  return f.items === undefined && f.fields === undefined
    ? singleValue(random, f)
    : compoundValue(random, f, spoil, depth);
}

/** A value for a field of one text. */
function singleValue(random: SeededRandom, f: Field): unknown {
  switch (f.kind) {
    case 'text':
      return random.pick(['a batten', 'x', 'Ω', 'board 7', '<b>bold</b>', '"', ',', '| x |', '$1$', '=1+1']);
    case 'timber':
      return random.pick(names);
    default:
      return valueByExample(random, f);
  }
}

/** A value for a field that holds others. */
function compoundValue(random: SeededRandom, f: Field, spoil: number, depth: number): unknown {
  switch (f.kind) {
    case 'list':
      return many(random, () => hostileValue(random, f.items?.[0] as Field, spoil, depth + 1));
    case 'record':
      return Object.fromEntries(
        many(random, (i): [string, unknown] => [
          random.pick(['oil', 'thinner', 'resin', 'a', '', 'constructor', `p${i}`]),
          hostileValue(random, f.items?.[0] as Field, spoil, depth + 1),
        ]),
      );
    case 'either':
      return hostileValue(random, random.pick(f.items as readonly Field[]), spoil, depth + 1);
    case 'group':
      return hostileGiven(random, f.fields as Fields, spoil, depth + 1);
    case 'table': {
      const rows = many(random, () => hostileGiven(random, f.fields as Fields, spoil, depth + 1));
      return random.chance(0.2) ? csvOf(rows) : rows;
    }
    default:
      return valueByExample(random, f);
  }
}

/** A value for a field of a topic's own: an example from its description, else the text of any quantity. */
function valueByExample(random: SeededRandom, f: Field): unknown {
  if (random.chance(0.6))
    return random.pick([...f.expects.matchAll(/"([^"]+)"/g)].map((m) => m[1]).concat(names));
  return hostileText(
    random,
    random.pick(['length', 'area', 'money', 'share', 'concentration', 'liquid'] as const),
  );
}

function many<T>(random: SeededRandom, one: (i: number) => T): T[] {
  return Array.from(
    { length: random.chance(0.1) ? 0 : 1 + random.below(random.chance(0.1) ? 12 : 4) },
    (_, i) => one(i),
  );
}

function csvOf(rows: readonly object[]): string {
  const columns = [...new Set(rows.flatMap((r) => Object.keys(r)))];
  const cell = (v: unknown): string => {
    if (typeof v === 'string' || typeof v === 'number' || typeof v === 'boolean') return String(v);
    if (typeof v !== 'object' || v === null || !('value' in v && 'unit' in v)) return '';
    return `${Number(v.value)} ${String(v.unit)}`;
  };
  return [
    columns.join(','),
    ...rows.map((r) => columns.map((c) => cell((r as Record<string, unknown>)[c])).join(',')),
    '',
  ].join('\n');
}

/** A number of a field's own size, now and then at a limit, just past it, negative or of any size at all. */
function numberNearLimits(random: SeededRandom, f: Field, kind: Kind): number {
  const [usualLow, usualHigh] = sizes[kind] ?? [0.01, 1000];
  const low = f.min !== undefined && f.min > 0 ? f.min : Math.min(usualLow, (f.max ?? Infinity) / 10);
  const high = f.max ?? Math.max(usualHigh, low * 100);
  const n = random.decade(low, high);
  const edge = random.next();
  if (edge < 0.04) return f.min ?? 0;
  if (edge < 0.08) return high;
  if (edge < 0.1) return high * (1 + 1e-6);
  if (edge < 0.12) return (f.min ?? 0) - 1e-9;
  if (edge < 0.13) return -n;
  return edge < 0.14 ? random.decade(1e-30, 1e30) : n;
}

function quantityValue(random: SeededRandom, f: Field, kind: Kind, spoil: number): unknown {
  if (random.chance(spoil)) return hostileText(random, kind);
  const size = numberNearLimits(random, f, kind);
  const n = kind === 'count' && random.chance(0.95) ? Math.round(size) : size;
  const base = kinds[kind].base;
  if (kinds[kind].plain) return random.chance(0.8) ? n : String(n);
  if (kind === 'money') return random.chance(0.5) ? n : `${random.pick(['$', '€', ''])}${n.toFixed(2)}`;
  if (random.chance(0.5))
    return { value: n, unit: base === '' ? (unitsOf(kind)[0] as string) : base.replace('^', '') };
  return `${Number(n.toPrecision(4))} ${random.chance(0.7) ? (unitsOf(kind)[0] as string) : random.pick(unitsOf(kind))}`;
}

/** Inputs for a set of fields; now and then one is missing, or there is one too many. */
export function hostileGiven(
  random: SeededRandom,
  fields: Fields,
  spoil: number,
  depth = 0,
): Record<string, unknown> {
  const given: Record<string, unknown> = {};
  for (const [name, f] of Object.entries(fields)) {
    if (f.optional && random.chance(0.5)) continue;
    if (!f.optional && random.chance(spoil / 4)) continue;
    given[name] = hostileValue(random, f, spoil, depth);
  }
  if (random.chance(spoil / 4)) given[random.pick(['colour', 'lenght', 'constructor', 'toString', ''])] = 1;
  return given;
}

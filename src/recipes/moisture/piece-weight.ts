import { InputError, inspectValue } from '../../units/input-error.js';
import { parseQuantity } from '../../units/parse-quantity.js';
import { danger } from '../../engine/caution.js';
import { field, isPlainObject, makeField, type Field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { both, Quantity } from '../../units/quantity.js';
import { timberField } from '../../materials/timber-field.js';
import { densityCautions, densitySource, gravityFormulas } from './gravity-rules.js';
import { densityAt } from './wood-density.js';

const size = (label: string) => ({ label: label, above: '0 mm', max: '100 m', optional: true }) as const;
const length_ = variable('length', 'length', { unit: 'm' });

const volumeRule = formula({
  symbol: 'V',
  result: variable('volume', 'volume of the pieces'),
  basis: 'geometry',
  expression: 'n l b t',
  variables: {
    n: variable('count', 'pieces alike'),
    l: length_,
    b: variable('length', 'width'),
    t: variable('length', 'thickness'),
  },
});
const massRule = formula({
  symbol: 'm',
  result: variable('mass', 'mass'),
  basis: 'definition',
  expression: 'rho V',
  variables: { rho: variable('density', 'density, with its water'), V: variable('volume', 'volume') },
});

interface Dimensions {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}
const three = field.group(
  {
    length: field.length({ label: 'length', above: '0 mm', max: '100 m' }),
    width: field.length({ label: 'width', above: '0 mm', max: '100 m' }),
    thickness: field.length({ label: 'thickness', above: '0 mm', max: '100 m' }),
  },
  { label: 'dimensions', help: 'Length, width and thickness.' },
);
type Size = string | Quantity<'length'>;
type Written = string | { readonly length: Size; readonly width: Size; readonly thickness: Size };
const takes = 'length x width x thickness such as "1950 x 640 x 40 mm", or { length, width, thickness }';

/** Takes the three sizes in one text or as a group. */
const dimensionsField: Field<Written, Dimensions | undefined, true> = makeField<
  Written,
  Dimensions,
  { label: string; optional: true }
>(
  {
    kind: 'dimensions',
    expects: takes,
    accepts: (v) => typeof v === 'string' || isPlainObject(v),
    format: (d) => [d.length, d.width, d.thickness].map((x) => both(new Quantity('length', x))).join(' x '),
    read: (v) => {
      if (isPlainObject(v)) return three.read(v);
      const parts = typeof v === 'string' ? v.split(/[x×*]/).map((s) => s.trim()) : [];
      const last = parts[2];
      if (parts.length !== 3 || !last) throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
      // A unit written once, at the end, is meant for all three.
      const unit = /[a-zA-Z"'″′]+$/.exec(last)?.[0] ?? '';
      const [length, width, thickness] = parts.map(
        (p) => parseQuantity(/\d$/.test(p) ? `${p} ${unit}` : p, 'length').value,
      ) as [number, number, number];
      return three.read({
        length: new Quantity('length', length),
        width: new Quantity('length', width),
        thickness: new Quantity('length', thickness),
      });
    },
  },
  { label: 'dimensions', optional: true },
);

const sizes = ['length', 'width', 'thickness'] as const;

/** The three sizes, given in one or apart. @throws InputError naming those that are missing */
function sizesOf(given: {
  readonly dimensions: Dimensions | undefined;
  readonly length: number | undefined;
  readonly width: number | undefined;
  readonly thickness: number | undefined;
}): { readonly l: number; readonly b: number; readonly t: number } {
  const { length, width, thickness } = given.dimensions ?? given;
  if (length !== undefined && width !== undefined && thickness !== undefined)
    return { l: length, b: width, t: thickness };
  throw new InputError(
    sizes
      .filter((k) => given[k] === undefined)
      .map((k) => ({ field: k, message: 'missing; takes a length such as "900 mm"' })),
  );
}

/** What a board, a stack or a top weighs: for carrying, for trestles, and for loads of other recipes. */
export const pieceWeight = recipe({
  name: 'pieceWeight',
  title: 'Weight of a piece',
  topic: 'moisture',
  about:
    'The mass of a board, a pile of boards alike or a glued top, from its size or volume, its timber and its moisture.',
  sources: [densitySource],
  inputs: {
    dimensions: dimensionsField,
    length: field.length(size('length')),
    width: field.length(size('width')),
    thickness: field.length(size('thickness')),
    volume: field.volume({
      label: 'volume',
      help: 'Give it in place of the sizes.',
      above: '0 m3',
      max: '1000 m3',
      optional: true,
    }),
    count: field.count({ label: 'pieces alike', min: 1, max: 100_000, default: 1 }),
    timber: timberField({
      needs: ['density', 'gravity'],
      label: 'timber',
      help: 'A species, or a group for a range.',
    }),
    moisture: field.moisture({ label: 'moisture content', min: '0 %', max: '300 %', default: '12 %' }),
  },
  outputs: {
    mass: out.mass({ label: 'mass', help: 'Mass of all pieces.' }),
    volume: out.volume({ label: 'volume', help: 'Volume of all pieces.' }),
    density: out.density({ label: 'density at this moisture' }),
    low: out.mass({
      label: 'mass, low',
      help: 'Lower end: 10th percentile of a group, or the least printed.',
      optional: true,
    }),
    high: out.mass({
      label: 'mass, high',
      help: 'Upper end: 90th percentile of a group, or the most printed.',
      optional: true,
    }),
  },
  formulas: [volumeRule, massRule, ...gravityFormulas],
  solve: (given, trace) => {
    const ways = [
      given.dimensions ? 'dimensions' : [],
      sizes.find((k) => given[k] !== undefined) ?? [],
      given.volume === undefined ? [] : 'volume',
    ].flat();
    if (ways.length === 0)
      throw new InputError({ field: 'dimensions', message: `missing; takes ${takes}, or give volume` });
    if (ways.length > 1)
      throw new InputError({
        field: ways[1] as string,
        message: `given together with ${String(ways[0])}; takes one of the two`,
      });
    const V =
      given.volume === undefined
        ? trace.evaluate(volumeRule, { n: given.count, ...sizesOf(given) })
        : given.volume * given.count;
    const dense = densityAt(
      trace,
      {
        timber: given.timber,
        specificGravity: undefined,
        gravityBasis: 'at this moisture',
        volumetricShrinkage: undefined,
      },
      given.moisture,
    );
    const mass = trace.evaluate(massRule, { rho: dense.density, V });
    return {
      mass,
      volume: V,
      density: dense.density,
      ...(dense.high > dense.low ? { low: dense.low * V, high: dense.high * V } : {}),
    };
  },
  cautions: (given, answer) => [
    ...densityCautions(given.moisture),
    ...(answer.mass > 25
      ? [
          danger(
            'lift it with two people or a trolley, and follow the lifting rules where you are: it is over 25 kg',
          ),
        ]
      : []),
  ],
  sentence: (_given, out) => `It weighs {mass}${out.low === undefined ? '' : ', from {low} to {high}'}.`,
  example: { dimensions: '1950 x 640 x 40 mm', timber: 'unknown hardwood', moisture: '12 %' },
});

import { Refusal, shown } from '../../quantities/refusal.js';
import { parseQuantity } from '../../quantities/parse.js';
import { danger } from '../../recipe/caution.js';
import { field, isPlainObject, makeField, type Field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { both, Quantity } from '../../quantities/quantity.js';
import { timberField } from '../../timber/field.js';
import { densityCautions, densitySource, gravityFormulas } from './gravity-rules.js';
import { densityAt } from './wood-density.js';

const size = (says: string) => ({ says, above: '0 mm', max: '100 m', optional: true }) as const;
const length_ = letter('length', 'length', { in: 'm' });

const volumeRule = formula({
  symbol: 'V',
  gives: letter('volume', 'volume of the pieces'),
  basis: 'geometry',
  text: 'n l b t',
  where: {
    n: letter('count', 'pieces alike'),
    l: length_,
    b: letter('length', 'width'),
    t: letter('length', 'thickness'),
  },
});
const massRule = formula({
  symbol: 'm',
  gives: letter('mass', 'mass'),
  basis: 'definition',
  text: 'rho V',
  where: { rho: letter('density', 'density, with its water'), V: letter('volume', 'volume') },
});

interface Dimensions {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}
const three = field.group(
  {
    length: field.length({ says: 'length', above: '0 mm', max: '100 m' }),
    width: field.length({ says: 'width', above: '0 mm', max: '100 m' }),
    thickness: field.length({ says: 'thickness', above: '0 mm', max: '100 m' }),
  },
  { says: 'length, width and thickness' },
);
type Size = string | Quantity<'length'>;
type Written = string | { readonly length: Size; readonly width: Size; readonly thickness: Size };
const takes = 'length x width x thickness such as "1950 x 640 x 40 mm", or { length, width, thickness }';

/** Takes the three sizes in one text or as a group. */
const dimensionsField: Field<Written, Dimensions | undefined, true> = makeField<
  Written,
  Dimensions,
  { says: string; optional: true }
>(
  {
    kind: 'dimensions',
    takes,
    fits: (v) => typeof v === 'string' || isPlainObject(v),
    show: (d) => [d.length, d.width, d.thickness].map((x) => both(new Quantity('length', x))).join(' x '),
    read: (v) => {
      if (isPlainObject(v)) return three.read(v);
      const parts = typeof v === 'string' ? v.split(/[x×*]/).map((s) => s.trim()) : [];
      const last = parts[2];
      if (parts.length !== 3 || !last) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
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
  { says: 'length, width and thickness in one', optional: true },
);

const sizes = ['length', 'width', 'thickness'] as const;

/** The three sizes, given in one or apart. @throws Refusal naming those that are missing */
function sizesOf(given: {
  readonly dimensions: Dimensions | undefined;
  readonly length: number | undefined;
  readonly width: number | undefined;
  readonly thickness: number | undefined;
}): { readonly l: number; readonly b: number; readonly t: number } {
  const { length, width, thickness } = given.dimensions ?? given;
  if (length !== undefined && width !== undefined && thickness !== undefined)
    return { l: length, b: width, t: thickness };
  throw new Refusal(
    sizes
      .filter((k) => given[k] === undefined)
      .map((k) => ({ field: k, says: 'missing; takes a length such as "900 mm"' })),
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
    length: field.length(size('length, where dimensions is not given')),
    width: field.length(size('width, where dimensions is not given')),
    thickness: field.length(size('thickness, where dimensions is not given')),
    volume: field.volume({
      says: 'volume, in place of the sizes',
      above: '0 m3',
      max: '1000 m3',
      optional: true,
    }),
    count: field.count({ says: 'pieces alike', min: 1, max: 100_000, default: 1 }),
    timber: timberField({ needs: ['density', 'gravity'], says: 'species, or a group for a range' }),
    moisture: field.moisture({ says: 'moisture content', min: '0 %', max: '300 %', default: '12 %' }),
  },
  outputs: {
    mass: out.mass({ says: 'mass of all the pieces' }),
    volume: out.volume({ says: 'volume of all the pieces' }),
    density: out.density({ says: 'density at this moisture' }),
    low: out.mass({ says: 'mass, 10th percentile of a group or least printed', optional: true }),
    high: out.mass({ says: 'mass, 90th percentile of a group or most printed', optional: true }),
  },
  formulas: [volumeRule, massRule, ...gravityFormulas],
  solve: (given, work) => {
    const ways = [
      given.dimensions ? 'dimensions' : [],
      sizes.find((k) => given[k] !== undefined) ?? [],
      given.volume === undefined ? [] : 'volume',
    ].flat();
    if (ways.length === 0)
      throw new Refusal({ field: 'dimensions', says: `missing; takes ${takes}, or give volume` });
    if (ways.length > 1)
      throw new Refusal({
        field: ways[1] as string,
        says: `given together with ${String(ways[0])}; takes one of the two`,
      });
    const V =
      given.volume === undefined
        ? work.apply(volumeRule, { n: given.count, ...sizesOf(given) })
        : given.volume * given.count;
    const dense = densityAt(
      work,
      {
        timber: given.timber,
        specificGravity: undefined,
        gravityBasis: 'at this moisture',
        volumetricShrinkage: undefined,
      },
      given.moisture,
    );
    const mass = work.apply(massRule, { rho: dense.density, V });
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
      ? [danger('over 25 kg: lift with two people or a trolley, and follow the lifting rules where you are')]
      : []),
  ],
  example: { dimensions: '1950 x 640 x 40 mm', timber: 'unknown hardwood', moisture: '12 %' },
});

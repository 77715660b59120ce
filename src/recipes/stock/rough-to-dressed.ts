import { drawing } from '../../charts/drawing.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger, estimate, note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import type { Work } from '../../recipe/work.js';
import { nominalSides, standardSize } from './nominal-size.js';

/** How a board is surfaced, in the trade's short form: S1S one side, S1E one edge, S4S all four. */
const faces = {
  S1S: [1, 0],
  S2S: [2, 0],
  S1E: [0, 1],
  S2E: [0, 2],
  S1S1E: [1, 1],
  S2S1E: [2, 1],
  S1S2E: [1, 2],
  S4S: [2, 2],
} as const;
type Faces = keyof typeof faces;

const inch = 0.0254;

const rough = letter('length', 'rough size', { in: 'mm' });
const off = letter('length', 'taken off each side that is planed', { in: 'mm' });
const sides = letter('count', 'sides planed');
const dressed = letter('length', 'dressed size', { in: 'mm' });
const toDressed = formula({
  symbol: 'd',
  gives: dressed,
  text: 'r - n a',
  where: { r: rough, n: sides, a: off },
  basis: 'geometry',
});
const toRough = formula({
  symbol: 'r',
  gives: rough,
  text: 'd + n a',
  where: { d: dressed, n: sides, a: off },
  basis: 'geometry',
});
const planedAway = formula({
  symbol: 'q',
  gives: letter('share', 'share planed away'),
  text: '1 - (d_t / r_t) * (d_w / r_w)',
  where: {
    d_t: letter('length', 'dressed thickness'),
    r_t: letter('length', 'rough thickness'),
    d_w: letter('length', 'dressed width'),
    r_w: letter('length', 'rough width'),
  },
  basis: 'definition',
});

const section = (says: string) =>
  field.group(
    {
      thickness: field.length({ says: 'thickness', above: '0 mm', max: '1 m' }),
      width: field.length({ says: 'width', above: '0 mm', max: '3 m' }),
      length: field.length({ says: 'length', above: '0 mm', max: '30 m', optional: true }),
    },
    { says, optional: true },
  );

/** PS 20 sizes, dry and green, of a nominal section. */
function fromNominal(text: string, work: Work) {
  const { thickness: t, width: w } = nominalSides(text);
  const [a, b] = [standardSize('thickness', t, work), standardSize('width', w, work)];
  work.say(
    `Nominal ${t} x ${w} in, looked up in the table of standard sizes; the nominal size is a name and not a measure.`,
  );
  return {
    dressedThickness: a.dry * inch,
    dressedWidth: b.dry * inch,
    ...(a.green === undefined ? {} : { greenThickness: a.green * inch }),
    ...(b.green === undefined ? {} : { greenWidth: b.green * inch }),
    planedAway: work.apply(
      planedAway,
      { d_t: a.dry * inch, r_t: t * inch, d_w: b.dry * inch, r_w: w * inch },
      'nominal section that is not there',
    ),
  };
}

/**
 * The dressed size a rough board gives, or the rough size to saw or buy for a wanted one, by planing allowances; and the
 * dressed size of softwood sold by a nominal size. Allowances hold for flat boards: a bent one first takes flatteningLoss.
 */
export const roughToDressed = recipe({
  name: 'roughToDressed',
  title: 'Rough size and dressed size',
  topic: 'stock',
  about:
    'The dressed size a rough board gives, or the rough size to buy for a wanted one, by planing allowances; and the standard dressed size of nominal softwood. For bent boards reckon the flattening loss first.',
  sources: [],
  inputs: {
    rough: section('rough size, to find the dressed one'),
    dressed: section('dressed size, to find the rough one'),
    nominal: field.text({ says: 'nominal softwood size in inches, such as 2x4', optional: true }),
    faces: field.choice(Object.keys(faces) as [Faces, ...Faces[]], {
      says: 'sides and edges planed: S1S one side, S1E one edge, S4S all four',
      default: 'S4S',
    }),
    allowances: field.group(
      {
        face: field.length({ says: 'taken off each face', min: '0 mm', max: '50 mm', default: '2 mm' }),
        edge: field.length({ says: 'taken off each edge', min: '0 mm', max: '50 mm', default: '3 mm' }),
        end: field.length({ says: 'docked from each end', min: '0 mm', max: '1 m', default: '20 mm' }),
      },
      { says: 'planing allowances', default: {} },
    ),
  },
  outputs: {
    roughThickness: out.length({ says: 'rough thickness', optional: true }),
    roughWidth: out.length({ says: 'rough width', optional: true }),
    roughLength: out.length({ says: 'rough length', optional: true }),
    dressedThickness: out.length({ says: 'dressed thickness' }),
    dressedWidth: out.length({ says: 'dressed width' }),
    dressedLength: out.length({ says: 'dressed length', optional: true }),
    greenThickness: out.length({ says: 'thickness if dressed green', optional: true }),
    greenWidth: out.length({ says: 'width if dressed green', optional: true }),
    planedAway: out.share({ says: 'share of the section planed away' }),
  },
  formulas: [toDressed, toRough, planedAway],
  solve: (given, work) => {
    const ways = (['rough', 'dressed', 'nominal'] as const).filter((w) => given[w] !== undefined);
    if (ways.length !== 1)
      throw new Refusal({
        field: ways.length === 0 ? 'rough' : (ways[1] as string),
        says: `got ${ways.length === 0 ? 'no size' : ways.join(' and ')}, takes one of rough, dressed or nominal`,
      });
    if (given.nominal !== undefined) return fromNominal(given.nominal, work);
    const size = (given.rough ?? given.dressed) as { thickness: number; width: number; length?: number };
    const forward = given.rough !== undefined;
    const [n, m] = faces[given.faces];
    const side = (
      what: 'thickness' | 'width' | 'length',
      count: number,
      a: number,
      value: number,
    ): number => {
      const got = forward
        ? work.apply(toDressed, { r: value, n: count, a }, `dressed ${what}`)
        : work.apply(toRough, { d: value, n: count, a }, `rough ${what}`);
      if (got <= 0)
        throw new Refusal({
          field: `rough.${what}`,
          says: `got ${(value * 1000).toFixed(1)} mm, takes more than the ${(count * a * 1000).toFixed(1)} mm that dressing takes off`,
        });
      return got;
    };
    const t = side('thickness', n, given.allowances.face, size.thickness);
    const w = side('width', m, given.allowances.edge, size.width);
    const both = (known: number, reckoned: number) =>
      (forward ? [known, reckoned] : [reckoned, known]) as [number, number];
    const [r_t, d_t] = both(size.thickness, t);
    const [r_w, d_w] = both(size.width, w);
    let lengths = {};
    if (size.length !== undefined) {
      const [roughLength, dressedLength] = both(
        size.length,
        side('length', 2, given.allowances.end, size.length),
      );
      lengths = { roughLength, dressedLength };
    }
    return {
      roughThickness: r_t,
      roughWidth: r_w,
      dressedThickness: d_t,
      dressedWidth: d_w,
      ...lengths,
      planedAway: work.apply(planedAway, { d_t, r_t, d_w, r_w }),
    };
  },
  cautions: (given, answer) => [
    ...(given.nominal === undefined
      ? [
          estimate(
            'planing allowances are a custom of the workshop (common practice): give your own if you know them',
          ),
        ]
      : [note('hardwood and salvaged timber do not follow these sizes: measure them')]),
    ...((answer.dressedLength ?? 1) < 0.3
      ? [
          danger(
            'a piece shorter than about 300 mm must not be planed by machine on its own (common practice; the machine maker’s own limit rules): plane it while it is still long',
          ),
        ]
      : []),
    ...(answer.dressedThickness < 0.006
      ? [
          danger(
            'under about 6 mm a board may shatter in a thicknesser: keep to the machine maker’s least thickness',
          ),
        ]
      : []),
  ],
  chart: (given, a) => {
    const name = given.nominal === undefined ? 'rough' : 'nominal';
    // With a nominal size the outer line is what the name says, a size that the board never had.
    const named = given.nominal === undefined ? undefined : nominalSides(given.nominal);
    const R = (named ? named.width * inch : (a.roughWidth as number)) * 1000;
    const r = (named ? named.thickness * inch : (a.roughThickness as number)) * 1000;
    const [D, d] = [a.dressedWidth * 1000, a.dressedThickness * 1000];
    const mm = (v: number): string => `${Number(v.toFixed(1))} mm`;
    return drawing({
      title: `The board in end view, ${name} and dressed`,
      maxHeight: 300,
      shapes: [
        { kind: 'rectangle', x: 0, y: 0, width: R, height: r, fill: 'waste', hatch: 'waste' },
        { kind: 'dimension', from: [0, r], to: [R, r], text: `${name} ${mm(R)}`, offset: 14 },
        {
          kind: 'rectangle',
          x: (R - D) / 2,
          y: (r - d) / 2,
          width: D,
          height: d,
          fill: 'wood',
          label: 'dressed',
        },
        {
          kind: 'dimension',
          from: [(R - D) / 2, 0],
          to: [(R + D) / 2, 0],
          text: `dressed ${mm(D)}`,
          offset: -14,
        },
        { kind: 'dimension', from: [0, 0], to: [0, r], text: `${name} ${mm(r)}`, offset: 14 },
        {
          kind: 'dimension',
          from: [R, (r - d) / 2],
          to: [R, (r + d) / 2],
          text: `dressed ${mm(d)}`,
          offset: -14,
        },
      ],
    });
  },
  example: { rough: { thickness: '47 mm', width: '97 mm', length: '1870 mm' }, faces: 'S4S' },
});

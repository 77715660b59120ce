import { drawing } from '../../charts/drawing.js';
import { InputError } from '../../units/input-error.js';
import { danger, estimate, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import type { Trace } from '../../engine/trace.js';
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

const rough = variable('length', 'rough size', { unit: 'mm' });
const off = variable('length', 'taken off each side that is planed', { unit: 'mm' });
const sides = variable('count', 'sides planed');
const dressed = variable('length', 'dressed size', { unit: 'mm' });
const toDressed = formula({
  symbol: 'd',
  result: dressed,
  expression: 'r - n a',
  variables: { r: rough, n: sides, a: off },
  basis: 'geometry',
});
const toRough = formula({
  symbol: 'r',
  result: rough,
  expression: 'd + n a',
  variables: { d: dressed, n: sides, a: off },
  basis: 'geometry',
});
const planedAway = formula({
  symbol: 'q',
  result: variable('share', 'share planed away'),
  expression: '1 - (d_t / r_t) * (d_w / r_w)',
  variables: {
    d_t: variable('length', 'dressed thickness'),
    r_t: variable('length', 'rough thickness'),
    d_w: variable('length', 'dressed width'),
    r_w: variable('length', 'rough width'),
  },
  basis: 'definition',
});

const section = (label: string) =>
  field.group(
    {
      thickness: field.length({ label: 'thickness', above: '0 mm', max: '1 m' }),
      width: field.length({ label: 'width', above: '0 mm', max: '3 m' }),
      length: field.length({ label: 'length', above: '0 mm', max: '30 m', optional: true }),
    },
    { label: label, optional: true },
  );

/** PS 20 sizes, dry and green, of a nominal section. */
function fromNominal(text: string, trace: Trace) {
  const { thickness: t, width: w } = nominalSides(text);
  const [a, b] = [standardSize('thickness', t, trace), standardSize('width', w, trace)];
  trace.note(
    `Nominal ${t} x ${w} in, looked up in the table of standard sizes; the nominal size is a name and not a measure.`,
  );
  return {
    dressedThickness: a.dry * inch,
    dressedWidth: b.dry * inch,
    ...(a.green === undefined ? {} : { greenThickness: a.green * inch }),
    ...(b.green === undefined ? {} : { greenWidth: b.green * inch }),
    planedAway: trace.evaluate(
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
    'The dressed size a rough board gives, or the rough size to buy for a wanted one, by planing allowances; and the standard dressed size of nominal softwood. For bent boards calculate the flattening loss first.',
  sources: [],
  inputs: {
    rough: section('rough size'),
    dressed: section('dressed size'),
    nominal: field.text({
      label: 'nominal size',
      help: 'Softwood size in inches, such as 2x4.',
      optional: true,
    }),
    faces: field.choice(Object.keys(faces) as [Faces, ...Faces[]], {
      label: 'surfacing',
      help: 'S1S one side, S1E one edge, S4S all four.',
      default: 'S4S',
    }),
    allowances: field.group(
      {
        face: field.length({ label: 'taken off each face', min: '0 mm', max: '50 mm', default: '2 mm' }),
        edge: field.length({ label: 'taken off each edge', min: '0 mm', max: '50 mm', default: '3 mm' }),
        end: field.length({ label: 'docked from each end', min: '0 mm', max: '1 m', default: '20 mm' }),
      },
      { label: 'planing allowances', default: {} },
    ),
  },
  outputs: {
    roughThickness: out.length({ label: 'rough thickness', optional: true }),
    roughWidth: out.length({ label: 'rough width', optional: true }),
    roughLength: out.length({ label: 'rough length', optional: true }),
    dressedThickness: out.length({ label: 'dressed thickness' }),
    dressedWidth: out.length({ label: 'dressed width' }),
    dressedLength: out.length({ label: 'dressed length', optional: true }),
    greenThickness: out.length({ label: 'thickness if dressed green', optional: true }),
    greenWidth: out.length({ label: 'width if dressed green', optional: true }),
    planedAway: out.share({ label: 'planed away', help: 'Share of the section that is planed away.' }),
  },
  formulas: [toDressed, toRough, planedAway],
  solve: (given, trace) => {
    const ways = (['rough', 'dressed', 'nominal'] as const).filter((w) => given[w] !== undefined);
    if (ways.length !== 1)
      throw new InputError({
        field: ways.length === 0 ? 'rough' : (ways[1] as string),
        message: `got ${ways.length === 0 ? 'no size' : ways.join(' and ')}, takes one of rough, dressed or nominal`,
      });
    if (given.nominal !== undefined) return fromNominal(given.nominal, trace);
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
        ? trace.evaluate(toDressed, { r: value, n: count, a }, `dressed ${what}`)
        : trace.evaluate(toRough, { d: value, n: count, a }, `rough ${what}`);
      if (got <= 0)
        throw new InputError({
          field: `rough.${what}`,
          message: `got ${(value * 1000).toFixed(1)} mm, takes more than the ${(count * a * 1000).toFixed(1)} mm that dressing takes off`,
        });
      return got;
    };
    const t = side('thickness', n, given.allowances.face, size.thickness);
    const w = side('width', m, given.allowances.edge, size.width);
    const both = (known: number, computed: number): [number, number] =>
      forward ? [known, computed] : [computed, known];
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
      planedAway: trace.evaluate(planedAway, { d_t, r_t, d_w, r_w }),
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
            'plane a piece while it is still long: shorter than about 300 mm it must not be planed by machine on its own (common practice; the machine maker’s own limit rules)',
          ),
        ]
      : []),
    ...(answer.dressedThickness < 0.006
      ? [
          danger(
            'keep to the machine maker’s least thickness: under about 6 mm a board may shatter in a thicknesser',
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
  sentence: 'Rough {roughThickness} by {roughWidth} gives {dressedThickness} by {dressedWidth} dressed.',
  example: { rough: { thickness: '47 mm', width: '97 mm', length: '1870 mm' }, faces: 'S4S' },
});

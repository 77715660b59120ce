import { barChart } from '../../charts/bar-chart.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field, makeField, type Input, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { tableField, type TableGiven } from '../../engine/table-field.js';
import { metalFirst, mm, thicknesserLeast } from './salvage-caution.js';

const columns = {
  name: field.text({ label: 'name of the slab', optional: true }),
  thickness: field.length({ label: 'thickness', help: 'Where it is thinnest.', above: '0 mm', max: '1 m' }),
  width: field.length({ label: 'width', above: '0 mm', max: '5 m', optional: true }),
  length: field.length({ label: 'length', above: '0 mm', max: '50 m', optional: true }),
} as const;
const thicknesses = field.list(columns.thickness, { label: 'thicknesses', most: 500 });
const table = tableField(columns, { label: 'slabs', most: 500 });
type Slab = Parsed<typeof columns>;

/** Slabs as bare thicknesses or as a table. */
const slabsField = makeField<
  readonly (string | Input<typeof columns>)[] | TableGiven<typeof columns>,
  readonly Slab[],
  { label: string }
>(
  {
    kind: 'table',
    expects:
      "thicknesses such as '41 mm, 42.5 mm, 40 mm', or a table with columns name?, thickness, width?, length?",
    accepts: (v) => table.accepts(v),
    format: (slabs) => slabs.map((s, i) => `${s.name ?? i + 1}: ${mm(s.thickness, 2)}`).join(', '),
    read: (v) => {
      const bare =
        typeof v === 'string'
          ? !/[\r\n]|\.(csv|tsv|txt)$/i.test(v.trim())
          : Array.isArray(v) && !v.some((x) => typeof x === 'object' && x !== null && !('value' in x));
      return bare
        ? thicknesses
            .read(v)
            .map((thickness) => ({ name: undefined, thickness, width: undefined, length: undefined }))
        : table.read(v);
    },
  },
  { label: 'slabs' },
  { fields: columns },
);

const common = variable('length', 'thickness to plane all to', { unit: 'mm' });

const planeTo = formula({
  symbol: 'T',
  result: common,
  expression: 't_0 - c',
  variables: {
    t_0: variable('length', 'thinnest slab that reaches the least thickness', { unit: 'mm' }),
    c: variable('length', 'planed off every slab to clean it up', { unit: 'mm' }),
  },
  basis: 'geometry',
});

const planeOff = formula({
  symbol: 'o',
  result: variable('length', 'planed off the slab', { unit: 'mm' }),
  expression: 't - T',
  variables: { t: variable('length', 'thickness of the slab', { unit: 'mm' }), T: common },
  basis: 'geometry',
});

const shim = formula({
  symbol: 'i',
  result: variable('length', 'shim under the slab', { unit: 'mm' }),
  expression: 't_1 - t',
  variables: {
    t_1: variable('length', 'thickest slab', { unit: 'mm' }),
    t: variable('length', 'thickness of the slab', { unit: 'mm' }),
  },
  basis: 'geometry',
});

/**
 * Slabs glued apart seldom come out alike. Either all are planed to the thinnest, or each is shimmed from below until its
 * top lies with the thickest: this calculates both, and what each costs in timber. For slabs that lie side by side in one
 * top. Thicknesses (and sizes, for volumes) in; lengths, a share and a volume out. Source: geometry.
 * @throws InputError when no slab reaches the least thickness after cleaning up
 */
export const matchSlabs = recipe({
  name: 'matchSlabs',
  title: 'Levelling slabs of different thickness',
  topic: 'lamination',
  about: 'Plane all slabs to the thinnest, or shim them up to the thickest: both ways, with the timber lost.',
  sources: [],
  inputs: {
    slabs: slabsField,
    minimum: field.length({
      label: 'least thickness',
      help: 'Least thickness that a slab may end with; thinner ones are shimmed or left out.',
      min: '0 mm',
      max: '1 m',
      default: '0 mm',
    }),
    cleanUp: field.length({
      symbol: 'c',
      label: 'clean-up',
      help: 'Planed off every slab in any case, both faces together.',
      min: '0 mm',
      max: '50 mm',
      default: '0 mm',
    }),
  },
  outputs: {
    planeAllTo: out.length({ symbol: 'T', label: 'plane all to', help: 'Thickness to plane all slabs to.' }),
    loss: out.length({ label: 'planed off', help: 'Planed off all slabs together, when all are planed.' }),
    lossShare: out.share({
      label: 'share planed off',
      help: 'Planed off as a share of the slabs that are planed.',
    }),
    lossVolume: out.volume({
      label: 'timber planed off',
      help: 'Volume planed off, where widths and lengths are given.',
      optional: true,
    }),
    shimTo: out.length({
      label: 'shimmed height',
      help: 'Height of the top above the frame when slabs are shimmed instead.',
    }),
    shimTotal: out.length({ label: 'all shims together' }),
    shimLoss: out.length({
      label: 'planed off, shimmed',
      help: 'Planed off all slabs together when they are shimmed, which is the clean-up alone.',
    }),
    orShims: out.table(
      {
        slab: out.text({ label: 'slab' }),
        thickness: out.length({ label: 'thickness now' }),
        planeOff: out.length({ label: 'to plane off', help: 'When all slabs are planed.', optional: true }),
        shim: out.length({ label: 'or to shim' }),
        verdict: out.text({ label: 'against the least thickness' }),
      },
      { label: 'Slab by slab', help: 'Planed and shimmed.' },
    ),
  },
  formulas: [planeTo, planeOff, shim],
  solve: (given, trace) => {
    const slabs = given.slabs.map((s, i) => ({ ...s, name: s.name ?? `slab ${i + 1}` }));
    const fit = slabs.filter(
      (s) => s.thickness - given.cleanUp >= given.minimum - 1e-12 && s.thickness > given.cleanUp,
    );
    if (fit.length === 0)
      throw new InputError({
        field: 'minimum',
        message: `got ${mm(given.minimum)}${given.cleanUp > 0 ? ` after ${mm(given.cleanUp)} of cleaning up` : ''}, takes at most what the thickest slab of ${mm(Math.max(...slabs.map((s) => s.thickness)), 2)} can give`,
      });
    const thinnest = fit.reduce((a, b) => (b.thickness < a.thickness ? b : a));
    const thickest = slabs.reduce((a, b) => (b.thickness > a.thickness ? b : a));
    const T = trace.evaluate(planeTo, { t_0: thinnest.thickness, c: given.cleanUp });
    const top = thickest.thickness - given.cleanUp;
    const left = slabs.filter((s) => !fit.includes(s));
    if (left.length > 0)
      trace.note(
        `Under the least thickness, so left out of the planing: ${left.map((s) => s.name).join(', ')}.`,
      );
    const orShims = slabs.map((s) => ({
      slab: s.name,
      thickness: s.thickness,
      ...(fit.includes(s)
        ? { planeOff: trace.evaluate(planeOff, { t: s.thickness, T }, `planed off ${s.name}`) }
        : {}),
      shim: trace.evaluate(shim, { t_1: thickest.thickness, t: s.thickness }, `shim under ${s.name}`),
      verdict: fit.includes(s) ? 'thick enough' : 'too thin: shim or leave out',
    }));
    const loss = fit.reduce((sum, s) => sum + s.thickness - T, 0);
    const sized = fit.every((s) => s.width !== undefined && s.length !== undefined);
    const volume = (of: (s: Slab) => number): number =>
      fit.reduce((sum, s) => sum + of(s) * (s.width as number) * (s.length as number), 0);
    return {
      planeAllTo: T,
      loss,
      orShims,
      shimTo: top,
      lossShare: sized
        ? volume((s) => s.thickness - T) / volume((s) => s.thickness)
        : loss / fit.reduce((sum, s) => sum + s.thickness, 0),
      ...(sized ? { lossVolume: volume((s) => s.thickness - T) } : {}),
      shimTotal: orShims.reduce((sum, r) => sum + r.shim, 0),
      shimLoss: slabs.length * given.cleanUp,
    };
  },
  cautions: (given, answer) => [
    metalFirst,
    thicknesserLeast,
    ...(answer.orShims.some((r) => r.verdict !== 'thick enough')
      ? [
          note(
            'do not plane a slab under the least thickness with the others: shimmed it stays flush on top, but it is no stronger than it is thick',
          ),
        ]
      : []),
    ...(answer.orShims.some((r) => r.shim > 0.003)
      ? [
          note(
            'fix a shim over 3 mm to the rail and let the slab slide on it: it must not stop the top from moving',
          ),
        ]
      : []),
    ...(given.slabs.some((s) => s.width === undefined || s.length === undefined)
      ? [note('without widths and lengths the share counts every slab alike')]
      : []),
  ],
  chart: (given, answer) =>
    barChart({
      title: 'Thickness of the slabs',
      subtitle: `All planed: ${mm(answer.planeAllTo, 2)}. Shimmed instead: the top stands ${mm(answer.shimTo, 2)} above the frame.`,
      of: '',
      value: { title: 'Thickness now', unit: 'mm', zero: true },
      bars: answer.orShims.slice(0, 40).map((r) => ({
        name: r.slab,
        value: r.thickness * 1000,
        label: `${mm(r.thickness, 2)}: ${r.planeOff === undefined ? 'too thin to plane' : `plane ${mm(r.planeOff, 2)}`}, or shim ${mm(r.shim, 2)}`,
        chosen: Math.abs(r.thickness - given.cleanUp - answer.planeAllTo) < 1e-9,
      })),
    }),
  sentence: (_given, out) => {
    const thin = tooThin(out);
    return thin.length === 0
      ? 'Plane all slabs to {planeAllTo}.'
      : `Plane the slabs to {planeAllTo}, but ${thin.join(' and ')}: too thin, so shim it or leave it out.`;
  },
  mending: {
    fails: (_given, out) => tooThin(out).length > 0,
    saidBySentence: 'a slab that is too thin gets no thicker: it is shimmed or left out',
  },
  example: {
    slabs: [
      { name: 'left', thickness: '41.2 mm', width: '225 mm', length: '2 m' },
      { name: 'middle', thickness: '43.0 mm', width: '225 mm', length: '2 m' },
      { name: 'right', thickness: '40.6 mm', width: '225 mm', length: '2 m' },
    ],
    minimum: '38 mm',
    cleanUp: '1 mm',
  },
});

const tooThin = (answer: {
  readonly orShims: readonly { readonly slab: string; readonly verdict: string }[];
}): string[] => answer.orShims.filter((r) => r.verdict !== 'thick enough').map((r) => r.slab);

import { barChart } from '../../charts/barChart.js';
import { Refusal } from '../../quantities/refusal.js';
import { danger, note } from '../../recipe/caution.js';
import { field, makeField, type Given, type Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { tableField, type TableGiven } from '../../recipe/table.js';
import { metalFirst, mm, thicknesserLeast } from './salvage.js';

const columns = {
  name: field.text({ says: 'name of the slab', optional: true }),
  thickness: field.length({ says: 'thickness where it is thinnest', above: '0 mm', max: '1 m' }),
  width: field.length({ says: 'width', above: '0 mm', max: '5 m', optional: true }),
  length: field.length({ says: 'length', above: '0 mm', max: '50 m', optional: true }),
} as const;
const thicknesses = field.list(columns.thickness, { says: 'thicknesses', most: 500 });
const table = tableField(columns, { says: 'slabs', most: 500 });
type Slab = Read<typeof columns>;

/** Slabs as bare thicknesses or as a table. */
const slabsField = makeField<
  readonly (string | Given<typeof columns>)[] | TableGiven<typeof columns>,
  readonly Slab[],
  { says: string }
>(
  {
    kind: 'table',
    takes:
      "thicknesses such as '41 mm, 42.5 mm, 40 mm', or a table with columns name?, thickness, width?, length?",
    fits: (v) => table.fits(v),
    show: (slabs) => slabs.map((s, i) => `${s.name ?? i + 1}: ${mm(s.thickness, 2)}`).join(', '),
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
  { says: 'the slabs: thicknesses, or a table with names and sizes' },
  { fields: columns },
);

const common = letter('length', 'thickness to plane all to', { in: 'mm' });

const planeTo = formula({
  symbol: 'T',
  gives: common,
  text: 't_0 - c',
  where: {
    t_0: letter('length', 'thinnest slab that reaches the least thickness', { in: 'mm' }),
    c: letter('length', 'planed off every slab to clean it up', { in: 'mm' }),
  },
  basis: 'geometry',
});

const planeOff = formula({
  symbol: 'o',
  gives: letter('length', 'planed off the slab', { in: 'mm' }),
  text: 't - T',
  where: { t: letter('length', 'thickness of the slab', { in: 'mm' }), T: common },
  basis: 'geometry',
});

const shim = formula({
  symbol: 'i',
  gives: letter('length', 'shim under the slab', { in: 'mm' }),
  text: 't_1 - t',
  where: {
    t_1: letter('length', 'thickest slab', { in: 'mm' }),
    t: letter('length', 'thickness of the slab', { in: 'mm' }),
  },
  basis: 'geometry',
});

/**
 * Slabs glued apart seldom come out alike. Either all are planed to the thinnest, or each is shimmed from below until its
 * top lies with the thickest: this reckons both, and what each costs in timber. For slabs that lie side by side in one
 * top. Thicknesses (and sizes, for volumes) in; lengths, a share and a volume out. Source: geometry.
 * @throws Refusal when no slab reaches the least thickness after cleaning up
 */
export const matchSlabs = recipe({
  name: 'matchSlabs',
  title: 'Slabs of unlike thickness',
  topic: 'lamination',
  about: 'Plane all slabs to the thinnest, or shim them up to the thickest: both ways, with the timber lost.',
  sources: [],
  inputs: {
    slabs: slabsField,
    minimum: field.length({
      says: 'least thickness that a slab may end with; thinner ones are shimmed or left out',
      min: '0 mm',
      max: '1 m',
      default: '0 mm',
    }),
    cleanUp: field.length({
      symbol: 'c',
      says: 'planed off every slab in any case, both faces together',
      min: '0 mm',
      max: '50 mm',
      default: '0 mm',
    }),
  },
  outputs: {
    planeAllTo: out.length({ symbol: 'T', says: 'thickness to plane all to' }),
    loss: out.length({ says: 'planed off all slabs together, when all are planed' }),
    lossShare: out.share({ says: 'the same as a share of the slabs that are planed' }),
    lossVolume: out.volume({
      says: 'the same as timber, where widths and lengths are given',
      optional: true,
    }),
    shimTo: out.length({ says: 'height of the top above the frame when slabs are shimmed instead' }),
    shimTotal: out.length({ says: 'all shims together' }),
    shimLoss: out.length({
      says: 'planed off all slabs together, when they are shimmed: the cleaning up alone',
    }),
    orShims: out.table(
      {
        slab: out.text({ says: 'slab' }),
        thickness: out.length({ says: 'thickness now' }),
        planeOff: out.length({ says: 'to plane off, when all are planed', optional: true }),
        shim: out.length({ says: 'or to shim' }),
        verdict: out.text({ says: 'against the least thickness' }),
      },
      { says: 'Slab by slab, both ways' },
    ),
  },
  formulas: [planeTo, planeOff, shim],
  solve: (given, work) => {
    const slabs = given.slabs.map((s, i) => ({ ...s, name: s.name ?? `slab ${i + 1}` }));
    const fit = slabs.filter(
      (s) => s.thickness - given.cleanUp >= given.minimum - 1e-12 && s.thickness > given.cleanUp,
    );
    if (fit.length === 0)
      throw new Refusal({
        field: 'minimum',
        says: `got ${mm(given.minimum)}${given.cleanUp > 0 ? ` after ${mm(given.cleanUp)} of cleaning up` : ''}, takes at most what the thickest slab of ${mm(Math.max(...slabs.map((s) => s.thickness)), 2)} can give`,
      });
    const thinnest = fit.reduce((a, b) => (b.thickness < a.thickness ? b : a));
    const thickest = slabs.reduce((a, b) => (b.thickness > a.thickness ? b : a));
    const T = work.apply(planeTo, { t_0: thinnest.thickness, c: given.cleanUp });
    const top = thickest.thickness - given.cleanUp;
    const left = slabs.filter((s) => !fit.includes(s));
    if (left.length > 0)
      work.say(
        `Under the least thickness, so left out of the planing: ${left.map((s) => s.name).join(', ')}.`,
      );
    const orShims = slabs.map((s) => ({
      slab: s.name,
      thickness: s.thickness,
      ...(fit.includes(s)
        ? { planeOff: work.apply(planeOff, { t: s.thickness, T }, `planed off ${s.name}`) }
        : {}),
      shim: work.apply(shim, { t_1: thickest.thickness, t: s.thickness }, `shim under ${s.name}`),
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
          danger(
            'a slab under the least thickness is not planed with the others: shimmed it stays flush on top, but it is no stronger than it is thick',
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

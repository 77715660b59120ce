import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { amountField, amountOutput, type Amount, type Measure } from './finish-amount.js';
import { finishDangers } from './hazards.js';
import {
  added,
  batchIn,
  checkNames,
  converted,
  firstOf,
  ofMix,
  part,
  partPoured,
  partWeighed,
  poured,
  shareOfMix,
  thinnerOf,
  toMass,
  toVolume,
  weighed,
} from './mix.js';

/**
 * How much of each part goes into a mix of finish (oil, varnish, stain, spirit, any number of them): for a batch of a
 * wanted size, or the most that can be made of what is left in the tins, and then which part runs out first.
 * `parts`: name to ratio, by volume or by mass. `batch`, `have`: litres or kilograms; `densities` are needed only to
 * go from one to the other. Not for two-pack finishes, whose maker's ratio must be kept to the gram.
 * Mixing is taken to lose no volume: the shrinkage of such mixes is far below what a jug can show.
 * @throws InputError when neither batch nor have is given, when a name in have is not among the parts, or a density is missing
 */
export const thinningRatio = recipe({
  name: 'thinningRatio',
  title: 'Parts of a mixed finish',
  topic: 'finish',
  about:
    'How much of each part to pour or weigh for a batch, or the most that what is left in the tins will make. Not for two-pack finishes with a hardener.',
  sources: [],
  inputs: {
    parts: field.record(field.ratio({ label: 'parts of it in the mix', above: 0, max: 10_000 }), {
      label: 'the parts by name, such as oil 2, varnish 1, spirit 1',
    }),
    batch: amountField({ label: 'how much mix is wanted', optional: true }),
    have: field.record(amountField({ label: 'how much of it is there', orNone: true }), {
      label: 'what is left of each part; a part not named can be bought',
      optional: true,
    }),
    by: field.choice(['volume', 'mass'], {
      label: 'whether the parts are of volume or of mass; default as the amounts are given',
      optional: true,
    }),
    densities: field.record(field.density({ label: 'its density', min: '400 kg/m3', max: '3000 kg/m3' }), {
      label: 'density of each part, to go between volume and mass',
      optional: true,
    }),
    thinner: field.text({
      label: 'which part is the thinner; default the one whose name says so, else the last',
      optional: true,
    }),
  },
  outputs: {
    amounts: out.record(amountOutput({ label: 'amount' }), { label: 'amount of each part' }),
    total: amountOutput({ label: 'the mix in all' }),
    limiting: out.text({ label: 'part that runs out first', optional: true }),
    left: out.record(amountOutput({ label: 'left' }), {
      label: 'left in the tins afterwards',
      optional: true,
    }),
    toBuy: out.record(amountOutput({ label: 'to buy' }), { label: 'to buy', optional: true }),
    thinnerAdded: out.share({ label: 'thinner added, against what it is added to', optional: true }),
    thinnerShare: out.share({ label: 'thinner as a share of the mix', optional: true }),
    pour: out.table(
      {
        part: out.text({ label: 'part' }),
        add: amountOutput({ label: 'to add' }),
        fillTo: amountOutput({ label: 'the jug or the scale then shows' }),
        share: out.share({ label: 'share of the mix' }),
      },
      { label: 'In the order given, into one jug or on one scale' },
    ),
  },
  formulas: [shareOfMix, poured, weighed, partPoured, partWeighed, added, ofMix, toMass, toVolume],
  solve: (given, trace) => {
    const names = Object.keys(given.parts);
    const R = names.reduce((sum, n) => sum + (given.parts[n] as number), 0);
    checkNames('have', given.have, names);
    checkNames('densities', given.densities, names);
    const measure: Measure =
      given.by === undefined
        ? (given.batch?.kind ?? firstOf(given.have)?.kind ?? 'liquid')
        : given.by === 'mass'
          ? 'mass'
          : 'liquid';
    if (!trace.silent)
      trace.note(
        `${names.map((n) => `${n} ${String(given.parts[n])}`).join(' + ')}: ${String(Number(R.toPrecision(10)))} parts in all, by ${measure === 'mass' ? 'mass' : 'volume'}.`,
      );
    const asMeasured = (name: string, a: Amount, where: string): number =>
      converted(name, a, measure, given.densities, where, trace);
    const have =
      given.have &&
      Object.fromEntries(Object.entries(given.have).map(([n, a]) => [n, asMeasured(n, a, `have.${n}`)]));

    const one =
      have &&
      Object.entries(have).map(
        ([n, h]) =>
          [n, part(measure, h, given.parts[n] as number, trace, `${n}: what one part could be`)] as const,
      );
    const least = one?.reduce((a, b) => (b[1] < a[1] ? b : a));
    let whole: number;
    if (given.batch)
      whole =
        given.batch.kind === measure
          ? given.batch.value
          : batchIn(measure, given.batch, given.parts, R, given.densities, trace);
    else if (least) {
      whole = least[1] * R;
      trace.note(`${least[0]} gives the smallest part, so it runs out first and sets the whole.`);
    } else
      throw new InputError({
        field: 'batch',
        message:
          'missing; takes how much mix is wanted, such as "2 L", or give have with what is left in the tins',
      });

    const amounts: Record<string, Amount> = {};
    let level = 0;
    const pour = names.map((n) => {
      const r = given.parts[n] as number;
      const value =
        measure === 'mass'
          ? trace.evaluate(weighed, { M: whole, r, R }, `${n} to weigh`)
          : trace.evaluate(poured, { V: whole, r, R }, `${n} to pour`);
      level += value;
      amounts[n] = { kind: measure, value };
      return {
        part: n,
        add: { kind: measure, value },
        fillTo: { kind: measure, value: level },
        share: trace.evaluate(shareOfMix, { r, R }, `${n} as a share of the mix`),
      };
    });
    const thin = names.length > 1 ? thinnerOf(names, given.thinner) : undefined;
    let thinning = {};
    if (thin !== undefined) {
      const t = trace.evaluate(
        added,
        { r: given.parts[thin] as number, R },
        `${thin} added, against the rest`,
      );
      const s = trace.evaluate(ofMix, { t }, `${thin} as a share of the mix`);
      thinning = { thinnerAdded: t, thinnerShare: s };
      trace.note(
        `The two are not the same figure: adding 20 % of ${thin} to a tin does not make a mix that is 20 % ${thin}, since the mix has grown too; 20 on 100 is 20 of 120, or 16.7 %. For 20 % of the mix, 25 % must be added.`,
      );
    }

    const amount = (value: number): Amount => ({ kind: measure, value });
    // Short by less than a billionth of the batch is the arithmetic's, not the tin's.
    const short =
      have &&
      names.flatMap((n) =>
        (amounts[n] as Amount).value - (have[n] ?? 0) > whole * 1e-9
          ? [[n, amount((amounts[n] as Amount).value - (have[n] ?? 0))] as const]
          : [],
      );
    const left =
      have &&
      Object.entries(have).map(
        ([n, h]) => [n, amount(Math.max(0, h - (amounts[n] as Amount).value))] as const,
      );
    return {
      amounts,
      total: amount(whole),
      pour,
      ...(least && (!given.batch || short?.some(([n]) => n === least[0])) ? { limiting: least[0] } : {}),
      ...(left ? { left: Object.fromEntries(left) } : {}),
      ...(short && short.length > 0 ? { toBuy: Object.fromEntries(short) } : {}),
      ...thinning,
    };
  },
  cautions: (given, answer) => [
    ...finishDangers(Object.keys(given.parts), { food: true }),
    ...(answer.total.value === 0
      ? [note(`there is no ${answer.limiting as string} left, so nothing can be mixed`)]
      : []),
    ...(Object.keys(given.parts).some((n) => /hardener|part\s*b|catalyst/i.test(n))
      ? [
          note(
            'a hardener is not a thinner: keep to its maker’s ratio exactly and mix no more than its pot life allows',
          ),
        ]
      : []),
    note(
      'make a test patch of the mix on an offcut of the same timber, and label the jar with parts and date',
    ),
  ],
  chart: (_given, answer) => {
    if (answer.total.value === 0) return undefined;
    const unit =
      answer.total.kind === 'mass'
        ? answer.total.value < 1
          ? 'g'
          : 'kg'
        : answer.total.value < 1e-3
          ? 'mL'
          : 'L';
    const scale = { g: 1000, kg: 1, mL: 1e6, L: 1000 }[unit];
    return barChart({
      title: `${formatQuantity(answer.total)} of mix, part by part`,
      of: '',
      value: { title: answer.total.kind === 'mass' ? 'To weigh' : 'To pour', unit },
      bars: answer.pour.map((p) => ({
        name: p.part + (p.part === answer.limiting ? ' (runs out first)' : ''),
        value: p.add.value * scale,
        label: `${formatQuantity(p.add, { digits: 3 })}, ${formatQuantity({ kind: 'share', value: p.share })}`,
        chosen: p.part === answer.limiting,
      })),
    });
  },
  example: { parts: { oil: 2, varnish: 1, spirit: 1 }, batch: '2 L' },
});

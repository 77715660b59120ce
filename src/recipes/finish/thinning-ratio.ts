import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { amountField, amountOutput, type Amount } from './finish-amount.js';
import { finishHazards } from './hazards.js';
import {
  added,
  checkNames,
  converted,
  ofMix,
  partPoured,
  partWeighed,
  poured,
  shareOfMix,
  toMass,
  toVolume,
  weighed,
} from './mix.js';
import { leastPart, measureOf, pourList, stockAfter, thinning, wholeOf } from './mix-batch.js';

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
    parts: field.record(
      field.ratio({ label: 'parts', help: 'Parts of it in the mix.', above: 0, max: 10_000 }),
      {
        label: 'parts of the mix',
        help: 'Names and parts, such as oil 2, varnish 1, spirit 1.',
      },
    ),
    batch: amountField({ label: 'amount wanted', help: 'How much of the mix is wanted.', optional: true }),
    have: field.record(
      amountField({ label: 'amount in stock', help: 'How much of it is there.', orNone: true }),
      {
        label: 'in stock',
        help: 'What is left of each part; a part that is not named can be bought.',
        optional: true,
      },
    ),
    by: field.choice(['volume', 'mass'], {
      label: 'parts by',
      help: 'Whether the parts are of volume or of mass; leave it out to go by the amounts given.',
      optional: true,
    }),
    densities: field.record(field.density({ label: 'its density', min: '400 kg/m3', max: '3000 kg/m3' }), {
      label: 'densities',
      help: 'Density of each part, for going between volume and mass.',
      optional: true,
    }),
    thinner: field.text({
      label: 'thinner',
      help: 'Which part is the thinner; leave it out where its name tells.',
      optional: true,
    }),
  },
  outputs: {
    amounts: out.record(amountOutput({ label: 'amount' }), { label: 'amount of each part' }),
    total: amountOutput({ label: 'the mix in all' }),
    limiting: out.text({ label: 'limiting part', help: 'The part that runs out first.', optional: true }),
    left: out.record(amountOutput({ label: 'left' }), {
      label: 'left in the tins',
      help: 'What remains of each part afterwards.',
      optional: true,
    }),
    toBuy: out.record(amountOutput({ label: 'to buy' }), { label: 'to buy', optional: true }),
    thinnerAdded: out.share({
      label: 'thinner added',
      help: 'Thinner as a share of what it is added to.',
      optional: true,
    }),
    thinnerShare: out.share({
      label: 'share of thinner',
      help: 'Thinner as a share of the mix.',
      optional: true,
    }),
    pour: out.table(
      {
        part: out.text({ label: 'part' }),
        add: amountOutput({ label: 'to add' }),
        fillTo: amountOutput({ label: 'reading' }),
        share: out.share({ label: 'share of the mix' }),
      },
      { label: 'Pouring order', help: 'Poured in this order into one jug or on one scale.' },
    ),
  },
  formulas: [shareOfMix, poured, weighed, partPoured, partWeighed, added, ofMix, toMass, toVolume],
  solve: (given, trace) => {
    const names = Object.keys(given.parts);
    const R = names.reduce((sum, n) => sum + (given.parts[n] as number), 0);
    checkNames('have', given.have, names);
    checkNames('densities', given.densities, names);
    const measure = measureOf(given);
    if (!trace.silent)
      trace.note(
        `${names.map((n) => `${n} ${String(given.parts[n])}`).join(' + ')}: ${String(Number(R.toPrecision(10)))} parts in all, by ${measure === 'mass' ? 'mass' : 'volume'}.`,
      );
    const have =
      given.have &&
      Object.fromEntries(
        Object.entries(given.have).map(([n, a]) => [
          n,
          converted(n, a, measure, given.densities, `have.${n}`, trace),
        ]),
      );
    const least = have && leastPart(have, given.parts, measure, trace);
    const whole = wholeOf(given, measure, R, least, trace);
    const pour = pourList(given.parts, measure, whole, R, trace);
    const stock = have && stockAfter(have, pour, whole);
    const amount = (value: number): Amount => ({ kind: measure, value });
    const amounts = (list: readonly (readonly [string, number])[]): Record<string, Amount> =>
      Object.fromEntries(list.map(([n, value]) => [n, amount(value)]));
    const limits = least && (!given.batch || stock?.short.some(([n]) => n === least.name));
    return {
      amounts: amounts(pour.map((p) => [p.part, p.add.value])),
      total: amount(whole),
      pour,
      ...(limits ? { limiting: least.name } : {}),
      ...(stock ? { left: amounts(stock.left) } : {}),
      ...(stock && stock.short.length > 0 ? { toBuy: amounts(stock.short) } : {}),
      ...thinning(given, R, trace),
    };
  },
  cautions: (given, answer) => [
    ...finishHazards(Object.keys(given.parts), { food: true }),
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
  sentence: (_given, out) =>
    `It makes {total}${out.thinnerShare === undefined ? '' : ', {thinnerShare} of it thinner'}${out.limiting === undefined ? '' : '; {limiting} runs out first'}.`,
  example: { parts: { oil: 2, varnish: 1, spirit: 1 }, batch: '2 L' },
});

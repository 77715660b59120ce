import { drawing } from '../../charts/drawing.js';
import { rectangle, words } from '../../charts/shapes.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';

const ratio = (label: string) => variable('ratio', label);
const millilitres = (label: string) => variable('liquid', label, { unit: 'mL' });
const stepOf = formula({
  symbol: 'r',
  result: ratio('each strip over the one before'),
  expression: '(c_1 / c_0)^(1 / (n - 1))',
  variables: {
    c_1: variable('share', 'strongest'),
    c_0: variable('share', 'weakest'),
    n: variable('count', 'strips'),
  },
  basis: 'estimate',
});
const smallest = formula({
  symbol: 'V',
  result: millilitres('smallest batch of each strip'),
  expression: 'e / (p * m)',
  variables: {
    e: millilitres('how far the measure may be off'),
    p: variable('share', 'error of a strength that is allowed'),
    m: variable('share', 'smallest share measured'),
  },
  basis: 'definition',
});
const stainIn = formula({
  symbol: 'S',
  result: millilitres('stain in a batch'),
  expression: 'c V',
  variables: { c: variable('share', 'strength'), V: millilitres('batch') },
  basis: 'definition',
});

/**
 * A ladder of test strips for a stain thinned or mixed: strengths in even ratios, since the eye sees ratios rather than
 * differences, and batches so small that the measuring tool is still good enough. Shares and a volume in; a table out.
 * Source: even ratios look even (Weber's law, an estimate); the batch follows from the tool's own error.
 */
export const stainTrials = recipe({
  name: 'stainTrials',
  title: 'Test strips of a stain',
  topic: 'finish',
  about:
    'A ladder of test strips for a stain that is thinned or mixed: strengths in steps that look even, the smallest batch your measure allows, and a strip to label.',
  sources: [],
  inputs: {
    strongest: field.share({
      symbol: 'c_1',
      label: 'strongest strip',
      help: 'Share of stain in the mix of the strongest strip.',
      above: '0 %',
      max: '100 %',
      default: '100 %',
    }),
    weakest: field.share({
      symbol: 'c_0',
      label: 'weakest strip',
      above: '0 %',
      max: '100 %',
      default: '12.5 %',
    }),
    strips: field.count({ symbol: 'n', label: 'strips', min: 2, max: 12, default: 4 }),
    toolError: field.liquid({
      symbol: 'e',
      label: 'tool error',
      help: 'How far the measure may be off, such as half a mark.',
      above: '0 mL',
      max: '100 mL',
      default: '0.25 mL',
    }),
    strengthError: field.share({
      symbol: 'p',
      label: 'allowed error',
      help: 'Error of a strength that is allowed.',
      min: '0.5 %',
      max: '50 %',
      default: '5 %',
    }),
    least: field.liquid({
      label: 'least batch',
      help: 'Least batch that wets a strip.',
      above: '0 mL',
      max: '1 L',
      default: '10 mL',
    }),
    thinner: field.text({
      label: 'thinner',
      help: 'What the stain is thinned or mixed with.',
      default: 'thinner',
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    step: out.ratio({ label: 'step', help: 'Strength of each strip over the one before.' }),
    batch: out.liquid({ label: 'batch of each strip', unit: 'mL' }),
    stain: out.liquid({ label: 'stain for all strips', unit: 'mL' }),
    ladder: out.table(
      {
        strip: out.count({ label: 'strip' }),
        strength: out.share({ label: 'stain in the mix' }),
        stain: out.liquid({ label: 'stain', unit: 'mL' }),
        other: out.liquid({ label: 'the other', unit: 'mL' }),
        off: out.share({
          label: 'error of strength',
          help: 'How far the strength may be off, as a share of itself.',
        }),
      },
      { label: 'The strips, weakest first' },
    ),
  },
  formulas: [stepOf, smallest, stainIn],
  solve: (given, trace) => {
    if (given.weakest >= given.strongest)
      throw new InputError({
        field: 'weakest',
        message: `got ${(given.weakest * 100).toFixed(1)} %, takes less than the strongest of ${(given.strongest * 100).toFixed(1)} %`,
      });
    const r = trace.evaluate(stepOf, { c_1: given.strongest, c_0: given.weakest, n: given.strips });
    const strengths = Array.from({ length: given.strips }, (_, i) =>
      i === given.strips - 1 ? given.strongest : given.weakest * r ** i,
    );
    // The smaller part of a mix decides; the stain undiluted is not measured against anything.
    const shares = strengths.flatMap((c) => (c > 1 - 1e-9 ? [] : [Math.min(c, 1 - c)]));
    const m = shares.length === 0 ? 1 : Math.min(...shares);
    const V = Math.max(
      given.least,
      trace.evaluate(smallest, { e: given.toolError, p: given.strengthError, m }),
    );
    const ladder = strengths.map((c, i) => {
      const S = trace.evaluate(stainIn, { c, V }, `stain in strip ${i + 1}`);
      return {
        strip: i + 1,
        strength: c,
        stain: S,
        other: Math.max(0, V - S),
        off: c > 1 - 1e-9 ? 0 : given.toolError / Math.min(S, V - S),
      };
    });
    const total = ladder.reduce((sum, row) => sum + row.stain, 0);
    return {
      sentence: `${given.strips} strips, each ${r.toFixed(2)} times as strong as the one before: batches of ${(V * 1e6).toFixed(0)} mL, ${(total * 1e6).toFixed(0)} mL of stain in all.`,
      step: r,
      batch: V,
      stain: total,
      ladder,
    };
  },
  cautions: [
    danger(
      'spread oily rags out to dry in the open, or keep them under water in a closed tin: with oil stain they heat up by themselves and catch fire',
    ),
    note(
      'test on offcuts of the same boards, sanded to the same grit, and judge them dry, under the finish that goes over, in the light where the piece will stand',
    ),
    note('mix only what its maker allows; stir, and write strength, wood, grit and date on every strip'),
  ],
  chart: (given, answer) => {
    const w = 120;
    return drawing({
      title: 'Strip to label',
      subtitle: `Stain and ${given.thinner}, batches of ${(answer.batch * 1e6).toFixed(0)} mL; wood, grit and date below.`,
      shapes: answer.ladder.flatMap((row, i) => [
        rectangle(i * w, 0, w, 90, { fill: i % 2 === 0 ? 'wood' : 'woodDark' }),
        words(i * w + w / 2, 62, `${row.strip}: ${(row.strength * 100).toFixed(1)} %`, { bold: true }),
        words(i * w + w / 2, 34, `${(row.stain * 1e6).toFixed(1)} + ${(row.other * 1e6).toFixed(1)} mL`, {
          size: 11,
        }),
      ]),
      maxHeight: 220,
    });
  },
  example: { strongest: '100 %', weakest: '12.5 %', strips: 4, toolError: '0.25 mL' },
});

import { lineChart } from '../../charts/line-chart.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { note } from '../../engine/caution.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cite } from '../../engine/source.js';
import { nullTrace } from '../../engine/trace.js';
import { glueLineCautions } from './glue-lines.js';
import { loadBearingCautions, uniformOnly } from './loads-and-creep.js';
import type { Section } from './section.js';
import { sectionFacts } from './section-properties.js';
import { leastOf, leastSpan, sagAt, spanInputs, spanCase, spansOf, type SpanGiven } from './span-limits.js';
import { materialFields } from './material-fields.js';
import { notchCautions } from './notched-rail.js';
import { secondMoment, spanFormulas } from './span-formulas.js';

/**
 * The longest span of a rail for sag, bending and shear: simply supported, load spread evenly. For rails of tops,
 * benches and shelves; for other supports and loads take `beam`.
 */
export const railSpan = recipe({
  name: 'railSpan',
  title: 'How far a rail may span',
  topic: 'rails',
  about:
    'The longest span of a rail between two supports for a load spread evenly: by sag, by bending and by shear, and which of them decides. For other loads and supports use beam.',
  sources: [cite('fpl-gtr-190', 'ch. 9, Eq. 9-2, Table 9-1, p. 9-2')],
  inputs: spanInputs,
  outputs: {
    span: out.length({ label: 'longest span' }),
    governedBy: out.text({ label: 'what decides' }),
    spanByDeflection: out.length({ label: 'span by sag', help: 'Longest span for the sag.' }),
    spanByBending: out.length({
      label: 'span by bending',
      help: 'Longest span for the bending stress.',
      optional: true,
    }),
    spanByShear: out.length({
      label: 'span by shear',
      help: 'Longest span for the shear stress.',
      optional: true,
    }),
    spanByGlue: out.length({
      label: 'span by glue line',
      help: 'Longest span for the shear at a glue line of glued layers or a box.',
      optional: true,
    }),
    spanByNotch: out.length({
      label: 'span by notch',
      help: 'Longest span for what the notch leaves.',
      optional: true,
    }),
    firstSag: out.length({ label: 'first sag', help: 'Sag at that span when the load comes on.' }),
    sag: out.length({ label: 'long-term sag', help: 'Sag at that span in the long run.' }),
    bendingStress: out.stress({ label: 'bending stress', help: 'Bending stress at that span.' }),
    shearStress: out.stress({ label: 'shear stress', help: 'Shear stress at that span.' }),
    basis: out.text({ label: 'the timber’s figures' }),
    range: out.table(
      {
        figures: out.text({ label: 'species', help: 'Which of the group’s species.' }),
        span: out.length({ label: 'longest span' }),
        governedBy: out.text({ label: 'what decides' }),
      },
      { label: 'Species of the group', help: 'Over the species of the group.', optional: true },
    ),
  },
  formulas: spanFormulas,
  solve: (given, trace) => {
    const { material, facts, load, creep } = spanCase(given, given.section, trace);
    if (given.section.shape === 'solid')
      trace.evaluate(secondMoment, { b: given.section.width, h: given.section.depth });
    else trace.note(`Section worked out by strips: E I = ${(facts.EI / 1e3).toPrecision(4)} kN·m².`);
    if (given.limit.source) trace.source(given.limit.source);
    const spans = spansOf(facts, material, load, given.limit, creep, trace, given);
    const [longest, governedBy] = leastOf(spans);
    const sag = sagAt(facts, material, load, longest, creep, trace);
    if (material.bending === undefined || material.shear === undefined)
      trace.warn(
        note(
          `no ${[material.bending === undefined ? 'bending' : '', material.shear === undefined ? 'shear' : ''].filter(Boolean).join(' or ')} stress to stay under is known, so the span is not checked for it; give ${[material.bending === undefined ? 'allowableBending' : '', material.shear === undefined ? 'allowableShear' : ''].filter(Boolean).join(' and ')}`,
        ),
      );
    return {
      span: longest,
      governedBy,
      spanByDeflection: spans.deflection,
      spanByBending: spans.bending,
      spanByShear: spans.shear,
      spanByGlue: spans['glue line'],
      spanByNotch: spans.notch,
      firstSag: sag / creep,
      sag,
      bendingStress: ((load * longest ** 2) / 8) * facts.stressByMoment,
      shearStress: ((load * longest) / 2) * facts.stressByShear,
      basis: material.basis,
      range: rangeOver(given),
    };
  },
  limits: [
    {
      when: (given, answer) => answer.span < 4 * depthOf(given.section),
      message:
        'the span is less than four times the depth: beam formulas no longer hold well, look at it as a bracket',
    },
  ],
  cautions: (given, answer) => [
    ...loadBearingCautions,
    uniformOnly,
    ...glueLineCautions(given.section),
    ...(given.notch
      ? notchCautions(given.notch, given.section, answer.span)
      : [note('cut for a lap or a notch? Give notch: a rail half cut away carries a quarter or less')]),
    ...(given.section.shape === 'solid' && given.section.depth > 4 * given.section.width
      ? [note('deeper than four times its width: hold it sideways, or it turns over (common practice)')]
      : []),
  ],
  chart: (given, answer) =>
    given.section.shape === 'solid' ? spanAgainstDepth(given, answer.span, given.section) : undefined,
  sentence: 'It spans {span} at most; {governedBy} decides.',
  example: { section: '45 x 95 mm', grade: 'C24', load: '450 N/m', limit: 'L/300', category: 'hall' },
});

/** A group of species answers by a range. */
function rangeOver(given: SpanGiven): { figures: string; span: number; governedBy: string }[] | undefined {
  const chosen = given.grade ?? given.timber;
  if (given.modulus !== undefined || (chosen && (chosen.is === 'grade' || !chosen.timber.isGroup)))
    return undefined;
  return (['low', 'middle', 'high'] as const).map((at) => {
    const [span, governedBy] = leastSpan(given, given.section, at);
    return {
      figures: { low: '10th percentile', middle: 'middle', high: '90th percentile' }[at],
      span,
      governedBy,
    };
  });
}

const depthOf = (s: Section): number => sectionFacts(s, 1, undefined).depth;

const others = ['white oak', 'C24', 'C16', 'unknown softwood'];

function spanAgainstDepth(
  given: SpanGiven,
  span: number,
  section: Extract<Section, { shape: 'solid' }>,
): ChartSpec {
  // A shallower rail would be cut through, or have its notch within the span.
  const shallowest = given.notch
    ? Math.max(
        0.4 * section.depth,
        1.05 * given.notch.depth,
        given.notch.side === 'bottom' ? given.notch.at : 0,
      )
    : 0.4 * section.depth;
  const depths = Array.from(
    { length: 37 },
    (_, i) => shallowest + ((2 * section.depth - shallowest) * i) / 36,
  );
  const line = (w: SpanGiven, name: string) => ({
    name,
    values: depths.map((depth) => leastSpan(w, { ...section, depth })[0] * 1000),
  });
  const own = spanCase(given, section, nullTrace).material.name;
  const plain: SpanGiven = {
    ...given,
    modulus: undefined,
    shearModulus: undefined,
    allowableBending: undefined,
    allowableShear: undefined,
    density: undefined,
    strengthRatio: undefined,
    strengthReason: undefined,
    grade: undefined,
  };
  const rest = others.filter((n) => n !== own).slice(0, 3);
  return lineChart({
    title: 'Span against depth, for several timbers',
    subtitle: `Rail ${(section.width * 1000).toFixed(0)} mm wide, ${given.load.toFixed(0)} N/m; at each depth the least of sag, bending and shear. The dot is this rail.`,
    x: { title: 'Depth of the rail', unit: 'mm', values: depths.map((d) => d * 1000) },
    y: { title: 'Longest span', unit: 'mm' },
    series: [
      line(given, own),
      ...rest.map((n) => line({ ...plain, timber: materialFields.timber.read(n) }, n)),
    ],
    // Without words: between lines so near to one another none would stand clear.
    marks: [{ x: section.depth * 1000, y: span * 1000 }],
  });
}

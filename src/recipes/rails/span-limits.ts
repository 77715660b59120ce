import { field, type Parsed } from '../../engine/field.js';
import { nullTrace, type Trace } from '../../engine/trace.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { glueAllowed, glueLineAreaOf } from './glue-lines.js';
import { situationFields, situationOf } from './load-situation.js';
import { notchField, notchStrength, spanByNotch, type Notch } from './notched-rail.js';
import { sagLimitField, type SagLimit } from './sag-limit.js';
import { sagBent, sagWhole, spanByBending, spanByLength, spanByShare, spanByShear } from './span-formulas.js';
import { sectionField, type Section } from './section.js';
import { sectionFacts, type SectionFacts } from './section-properties.js';
import { materialFields } from './material-fields.js';
import type { Rank } from '../../materials/working-stress/ungraded-wood.js';
import { chosenOf, materialOf, ownWeightPerLength, type Material } from './design-values.js';

export const spanInputs = {
  section: sectionField({
    label: 'section',
    help: 'Width by depth of the rail, depth in the direction of the load.',
  }),
  load: field.lineLoad({
    symbol: 'q',
    label: 'load',
    help: 'Load on the rail by length.',
    above: '0 N/m',
    max: '1000 kN/m',
  }),
  limit: sagLimitField({ label: 'sag limit', help: 'A share of the span or a length.', default: 'L/300' }),
  permanent: field.lineLoad({
    label: 'permanent load',
    help: 'By length beside the load, such as the top itself.',
    min: '0 N/m',
    max: '1000 kN/m',
    default: '0 N/m',
  }),
  ownWeight: field.flag({
    label: 'own weight',
    help: 'Whether the rail carries its own weight beside the load.',
    default: false,
  }),
  notch: notchField,
  ...situationFields,
  ...materialFields,
} as const;
export type SpanGiven = Parsed<typeof spanInputs>;

export interface Spans {
  readonly deflection: number;
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  /** Of a section with glue lines. */
  readonly 'glue line'?: number | undefined;
  /** Where the rail is notched. */
  readonly notch?: number | undefined;
}

/** A rail ready to be checked: its timber, its section, the whole load and what creep makes of the sag. */
export interface SpanCase {
  readonly material: Material;
  readonly facts: SectionFacts;
  /** Permanent and imposed load together, N/m. */
  readonly load: number;
  /** Sag in the long run over the first sag. */
  readonly creep: number;
}

/** The timber, the load and the creep of a rail. @throws InputError where own weight counts and no density is known */
export function spanCase(given: SpanGiven, section: Section, trace: Trace, rank?: Rank): SpanCase {
  const situation = situationOf(given, chosenOf(given), trace);
  const own = given.ownWeight ? ownWeightPerLength(given, sectionFacts(section, 1).area, trace) : 0;
  const permanent = given.permanent + own;
  const mix = { permanent, imposed: given.load };
  const material = materialOf(given, trace, { section, mix, situation }, rank);
  const load = permanent + given.load;
  const creep = trace.evaluate(longTermFactor, {
    G: permanent / load,
    Q: given.load / load,
    k: situation.creep,
    s: situation.stays,
  });
  return { material, facts: sectionFacts(section, material.E, material.G), load, creep };
}

/** A section, and the notch cut into it where there is one. */
export interface Cut {
  readonly section: Section;
  readonly notch: Notch | undefined;
}

/** The longest spans for the sag, the stresses and the notch. */
export function spansOf(
  facts: SectionFacts,
  material: Material,
  load: number,
  limit: SagLimit,
  creep: number,
  trace: Trace,
  { section, notch }: Cut,
): Spans {
  return {
    notch: notch && spanByNotch(notch, notchStrength(notch, section, material, trace), load, trace),
    deflection: byDeflection(facts, material, load, limit, creep, trace),
    bending:
      material.bending === undefined
        ? undefined
        : trace.evaluate(spanByBending, { f_b: material.bending, W: 1 / facts.stressByMoment, q: load }),
    shear:
      material.shear === undefined
        ? undefined
        : trace.evaluate(spanByShear, { f_v: material.shear, A_v: 1 / facts.stressByShear, q: load }),
    'glue line': byGlueLine(section, material, load, trace),
  };
}

/** Undefined without glue lines, or where no shear strength is known. */
function byGlueLine(section: Section, material: Material, load: number, trace: Trace): number | undefined {
  const A_v = glueLineAreaOf(section, material.E);
  if (A_v === undefined) return undefined;
  const f_v = glueAllowed(material, trace);
  return f_v === undefined
    ? undefined
    : trace.evaluate(
        spanByShear,
        { f_v, A_v, q: load },
        'span at which the shear at the glue line is the one allowed',
      );
}

/** The formula of the sag turned round, with its shear where the shear modulus is known. */
function byDeflection(
  facts: SectionFacts,
  material: Material,
  load: number,
  limit: SagLimit,
  creep: number,
  trace: Trace,
): number {
  const I = facts.EI / material.E;
  if (material.G === undefined) {
    return limit.of === 'span'
      ? trace.evaluate(spanByShare, { E: material.E, I, n: limit.ratio, K: creep, q: load })
      : trace.evaluate(spanByLength, { E: material.E, I, d: limit.most, K: creep, q: load });
  }
  const a = (5 * creep * load) / (384 * facts.EI);
  const b = (creep * load) / (8 * facts.GA);
  // A length is met by a quadratic in L², written so that nothing cancels; a share by the one root of a L³ + b L = 1/n.
  const L =
    limit.of === 'length'
      ? Math.sqrt((2 * limit.most) / (b + Math.sqrt(b * b + 4 * a * limit.most)))
      : 2 *
        Math.sqrt(b / (3 * a)) *
        Math.sinh(Math.asinh((1.5 * Math.sqrt((3 * a) / b)) / (limit.ratio * b)) / 3);
  trace.note(`Longest span for the sag, bending and shear together: ${(L * 1000).toFixed(1)} mm.`);
  return L;
}

export function sagAt(
  facts: SectionFacts,
  material: Material,
  load: number,
  L: number,
  creep: number,
  trace: Trace,
): number {
  const I = facts.EI / material.E;
  const label = 'check: sag at that span in the long run';
  if (material.G === undefined)
    return trace.evaluate(sagBent, { K: creep, q: load, L, E: material.E, I }, label);
  return trace.evaluate(
    sagWhole,
    { K: creep, q: load, L, E: material.E, I, G: material.G, A_s: facts.GA / material.G },
    label,
  );
}

export function leastOf(spans: Spans): [number, string] {
  let best: [number, string] = [spans.deflection, 'deflection'];
  for (const by of ['bending', 'shear', 'glue line', 'notch'] as const) {
    const L = spans[by] ?? Infinity;
    if (L < best[0]) best = [L, by];
  }
  return best;
}

/** The least of the spans and what it is for, without workings: for charts and ranges. */
export function leastSpan(given: SpanGiven, section: Section, rank?: Rank): [number, string] {
  const { facts, material, load, creep } = spanCase(given, section, nullTrace, rank);
  return leastOf(
    spansOf(facts, material, load, given.limit, creep, nullTrace, { section, notch: given.notch }),
  );
}

import { Refusal } from '../../quantities/refusal.js';
import { field, type Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';
import { silentWork, type Work } from '../../recipe/work.js';
import { g0, longFactor, ownWeightOf } from './loads-and-creep.js';
import { creepField, sagLimitField, type SagLimit } from './sag-limit.js';
import { sectionField, type Section } from './section.js';
import { sectionFacts, type SectionFacts } from './section-facts.js';
import { stuffFields } from './stuff-fields.js';
import { stuffFormulas } from './stuff-formulas.js';
import { stuffOf, type Stuff } from './stuff.js';

const handbook = (what: string) => cite('fpl-gtr-190', `Eq. 9-2 and Table 9-1, p. 9-2${what}`);
const q = letter('lineLoad', 'load by length', { in: 'N/mm' });
const E = letter('modulus', 'modulus of elasticity', { in: 'MPa' });
const I = letter('secondMoment', 'second moment of area', { in: 'mm4' });
const K = letter('ratio', 'sag in the long run over the first sag');
const span = (says: string) => letter('length', says, { in: 'mm' });

export const secondMoment = formula({
  symbol: 'I',
  gives: I,
  text: 'b h^3 / 12',
  where: {
    b: letter('length', 'width of the rail', { in: 'mm' }),
    h: letter('length', 'depth of the rail', { in: 'mm' }),
  },
  source: cite('fpl-gtr-190', 'Eq. 9-3, p. 9-2'),
});
const spanByShare = formula({
  symbol: 'L_d',
  gives: span('span at which the sag is the share of it allowed'),
  text: 'cbrt(384 E I / (5 n K q))',
  where: { E, I, n: letter('ratio', 'span over allowed sag'), K, q },
  source: handbook(', turned round'),
});
const spanByLength = formula({
  symbol: 'L_d',
  gives: span('span at which the sag is the length allowed'),
  text: '(384 E I d / (5 K q))^(1/4)',
  where: { E, I, d: letter('length', 'allowed sag', { in: 'mm' }), K, q },
  source: handbook(', turned round'),
});
const sagBent = formula({
  symbol: 'delta',
  gives: letter('length', 'sag at midspan', { in: 'mm' }),
  text: '5 K q L^4 / (384 E I)',
  where: { K, q, L: span('span'), E, I },
  source: handbook(', bending alone'),
});
const sagWhole = formula({
  symbol: 'delta',
  gives: letter('length', 'sag at midspan', { in: 'mm' }),
  text: 'K * (5 q L^4 / (384 E I) + q L^2 / (8 G A_s))',
  where: {
    K,
    q,
    L: span('span'),
    E,
    I,
    G: letter('modulus', 'shear modulus', { in: 'MPa' }),
    A_s: letter('area', 'area that works in shear, 5/6 of a rectangle', { in: 'mm2' }),
  },
  source: handbook(', bending and shear'),
});
const spanByBending = formula({
  symbol: 'L_b',
  gives: span('span at which the bending stress is the one allowed'),
  text: 'sqrt(8 f_b W / q)',
  where: {
    f_b: letter('stress', 'bending stress to stay under', { in: 'MPa' }),
    W: letter('sectionModulus', 'section modulus', { in: 'mm3' }),
    q,
  },
  basis: 'definition', // statics: M = q L²/8, stress M/W
});
const spanByShear = formula({
  symbol: 'L_v',
  gives: span('span at which the shear stress is the one allowed'),
  text: '2 f_v A_v / q',
  where: {
    f_v: letter('stress', 'shear stress to stay under', { in: 'MPa' }),
    A_v: letter('area', 'shear force over greatest shear stress, 2/3 of a rectangle', { in: 'mm2' }),
    q,
  },
  basis: 'definition', // statics: V = q L/2, stress V/A_v
});

export const spanFormulas = [
  secondMoment,
  longFactor,
  ownWeightOf,
  spanByShare,
  spanByLength,
  spanByBending,
  spanByShear,
  sagBent,
  sagWhole,
  ...stuffFormulas,
];

export const spanInputs = {
  section: sectionField({ says: 'width by depth of the rail, depth in the direction of the load' }),
  load: field.lineLoad({ symbol: 'q', says: 'load on the rail by length', above: '0 N/m', max: '1000 kN/m' }),
  limit: sagLimitField({ says: 'how far it may sag: a share of the span or a length', default: 'L/300' }),
  long: creepField({ says: 'how much more it sags in the long run', default: 'no creep' }),
  longShare: field.share({
    says: 'share of the load that stays on for months',
    min: '0 %',
    max: '100 %',
    default: '100 %',
  }),
  ownWeight: field.flag({ says: 'whether the rail carries its own weight beside the load', default: false }),
  ...stuffFields,
} as const;
export type SpanGiven = Read<typeof spanInputs>;

export interface Spans {
  readonly deflection: number;
  readonly bending: number | undefined;
  readonly shear: number | undefined;
}

export function wholeLoad(given: SpanGiven, stuff: Stuff, facts: SectionFacts, work: Work): number {
  if (!given.ownWeight) return given.load;
  if (stuff.density === undefined)
    throw new Refusal({
      field: 'ownWeight',
      says: 'got yes, takes it only with a density; give density such as "500 kg/m3"',
    });
  return given.load + work.apply(ownWeightOf, { rho: stuff.density, A: facts.area, g: g0 });
}

export function spansOf(
  facts: SectionFacts,
  stuff: Stuff,
  load: number,
  limit: SagLimit,
  creep: number,
  work: Work,
): Spans {
  return {
    deflection: byDeflection(facts, stuff, load, limit, creep, work),
    bending:
      stuff.bending === undefined
        ? undefined
        : work.apply(spanByBending, { f_b: stuff.bending, W: 1 / facts.stressByMoment, q: load }),
    shear:
      stuff.shear === undefined
        ? undefined
        : work.apply(spanByShear, { f_v: stuff.shear, A_v: 1 / facts.stressByShear, q: load }),
  };
}

/** The formula of the sag turned round, with its shear where the shear modulus is known. */
function byDeflection(
  facts: SectionFacts,
  stuff: Stuff,
  load: number,
  limit: SagLimit,
  creep: number,
  work: Work,
): number {
  const I = facts.EI / stuff.E;
  if (stuff.G === undefined) {
    return limit.of === 'span'
      ? work.apply(spanByShare, { E: stuff.E, I, n: limit.ratio, K: creep, q: load })
      : work.apply(spanByLength, { E: stuff.E, I, d: limit.most, K: creep, q: load });
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
  work.say(`Longest span for the sag, bending and shear together: ${(L * 1000).toFixed(1)} mm.`);
  return L;
}

export function sagAt(
  facts: SectionFacts,
  stuff: Stuff,
  load: number,
  L: number,
  creep: number,
  work: Work,
): number {
  const I = facts.EI / stuff.E;
  const says = 'check: sag at that span in the long run';
  if (stuff.G === undefined) return work.apply(sagBent, { K: creep, q: load, L, E: stuff.E, I }, says);
  return work.apply(
    sagWhole,
    { K: creep, q: load, L, E: stuff.E, I, G: stuff.G, A_s: facts.GA / stuff.G },
    says,
  );
}

export function leastOf(spans: Spans): [number, string] {
  let best: [number, string] = [spans.deflection, 'deflection'];
  for (const by of ['bending', 'shear'] as const) {
    const L = spans[by] ?? Infinity;
    if (L < best[0]) best = [L, by];
  }
  return best;
}

/** The least of the three spans and what it is for, without workings: for charts and ranges. */
export function leastSpan(
  given: SpanGiven,
  section: Section,
  at?: 'low' | 'middle' | 'high',
): [number, string] {
  const stuff = stuffOf(given, silentWork, at);
  const facts = sectionFacts(section, stuff.E, stuff.G);
  const creep = longFactor.of({ k: given.long.factor, s: given.longShare });
  return leastOf(
    spansOf(facts, stuff, wholeLoad(given, stuff, facts, silentWork), given.limit, creep, silentWork),
  );
}

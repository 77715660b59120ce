import { Refusal } from '../../quantities/refusal.js';
import { dataCaution, note } from '../../recipe/caution.js';
import type { Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';
import type { Work } from '../../recipe/work.js';
import type { Grade } from '../../timber/grades.js';
import { citeTimber } from '../../timber/field.js';
import { findSpecies } from '../../timber/species.js';
import type { Spread } from '../../timber/spread.js';
import type { Timber } from '../../timber/timber.js';
import type { stuffFields } from './stuff-fields.js';

/** What a rail is made of, for reckoning at the loads as they are (not factored up): pascals, kg/m³. */
export interface Stuff {
  readonly name: string;
  readonly E: number;
  /** Undefined where the modulus is an apparent one that has shear in it already. */
  readonly G: number | undefined;
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly density: number | undefined;
  /** Where the figures come from and what kind they are: one line. */
  readonly basis: string;
}

const E = (says: string) => letter('modulus', says, { in: 'MPa' });
const stress = (says: string) => letter('stress', says, { in: 'MPa' });

const shearFree = formula({
  symbol: 'E',
  gives: E('modulus of elasticity without the shear of the bending test'),
  text: '1.1 q E_b',
  where: {
    q: letter('ratio', 'what the grade of the piece leaves of the stiffness'),
    E_b: E('modulus of elasticity from bending tests, as printed'),
  },
  source: cite('fpl-gtr-190', 'ch. 5, on Table 5-1: 10 % added to bending moduli', { read: 'memory' }),
});
const sixteenth = formula({
  symbol: 'G',
  gives: E('shear modulus'),
  text: 'E / 16',
  where: { E: E('modulus of elasticity') },
  source: cite('apa-tt-082', 'p. 1: solid lumber, 1/16'),
});
const fromRatio = formula({
  symbol: 'G',
  gives: E('shear modulus'),
  text: 'g E',
  where: {
    g: letter('ratio', 'shear modulus as a share of the modulus along the grain'),
    E: E('modulus of elasticity'),
  },
  source: cite('fpl-gtr-190', 'Table 5-1, elastic ratios', { read: 'memory' }),
});
const fromCharacteristic = formula({
  symbol: 'f',
  gives: stress('stress to stay under at the loads as they are'),
  text: 'k f_k / (gamma_M gamma_Q)',
  where: {
    k: letter('ratio', 'duration of load: long term indoors'),
    f_k: stress('characteristic strength'),
    gamma_M: letter('ratio', 'partial factor of solid timber'),
    gamma_Q: letter('ratio', 'partial factor of the load, put on the strength instead'),
  },
  source: cite('en-1995-1-1', '2.4.1 and Table 3.1 (0.7 long term, 1.3), EN 1990 (1.5)', { read: 'memory' }),
});
const fromAustralian = formula({
  symbol: 'f',
  gives: stress('stress to stay under at the loads as they are'),
  text: 'phi k_1 f_k / gamma_Q',
  where: {
    phi: letter('ratio', 'capacity factor'),
    k_1: letter('ratio', 'duration of load: long term'),
    f_k: stress('characteristic strength'),
    gamma_Q: letter('ratio', 'load factor, put on the strength instead'),
  },
  source: cite('as-1720-1-2010', 'Tables 2.1 and 2.3 (0.7, 0.57), AS/NZS 1170.0 (1.5)', { read: 'memory' }),
});
const fromMean = formula({
  symbol: 'f',
  gives: stress('stress to stay under at the loads as they are'),
  text: 'f_m * (1 - 1.645 V) * R / n',
  where: {
    f_m: stress('mean strength of clear wood'),
    V: letter('ratio', 'spread of clear wood: standard deviation over mean'),
    R: letter('ratio', 'strength ratio: what knots, holes and sloping grain leave'),
    n: letter('ratio', 'for duration of load and safety: 2.1 softwoods, 2.3 hardwoods'),
  },
  source: cite('astm-d245', 'Tables 8 and 10; spread from ASTM D2555', { read: 'memory' }),
});

/** Formulas that a recipe of this topic may use of its timber. */
export const stuffFormulas = [shearFree, sixteenth, fromRatio, fromCharacteristic, fromAustralian, fromMean];

const low = 0.26;
const usual = 0.45;

/** The stiffness and the stresses of a rail's timber, with workings and cautions. A figure given directly goes before a published one; a group of species gives its low figures unless told otherwise. */
export function stuffOf(given: Read<typeof stuffFields>, work: Work, at?: 'low' | 'middle' | 'high'): Stuff {
  const own = given.modulus !== undefined;
  const chosen = given.grade ?? given.timber;
  if (own && !chosen) {
    if (given.shearModulus === undefined)
      work.caution(
        note(
          'a modulus given by itself is taken as measured in bending, with the shear in it: no shear deflection is added. Give shearModulus to have it added',
        ),
      );
    return {
      name: 'the timber of the modulus given',
      E: given.modulus as number,
      G: given.shearModulus,
      bending: given.allowableBending,
      shear: given.allowableShear,
      density: given.density,
      basis: 'as given',
    };
  }
  const base =
    chosen?.is === 'grade'
      ? gradeStuff(chosen.grade, given, work)
      : speciesStuff(chosen?.timber ?? findSpecies('unknown softwood'), given, work, at);
  const replaced = (
    ['modulus', 'shearModulus', 'allowableBending', 'allowableShear', 'density'] as const
  ).filter((n) => given[n] !== undefined);
  const basis = replaced.length > 0 ? `${base.basis}; given directly: ${replaced.join(', ')}` : base.basis;
  work.say(`Timber: ${base.name}. Figures: ${basis}.`);
  return {
    ...base,
    E: given.modulus ?? base.E,
    G: given.shearModulus ?? (own ? undefined : base.G),
    bending: given.allowableBending ?? base.bending,
    shear: given.allowableShear ?? base.shear,
    density: given.density ?? base.density,
    basis,
  };
}

function gradeStuff(grade: Grade, given: Read<typeof stuffFields>, work: Work): Stuff {
  work.source(grade.row.citation);
  if (grade.row.doubt && grade.row.read === 'memory')
    work.caution(dataCaution(`grade ${grade.name}: ${grade.row.doubt}`, grade.row.citation));
  const E = given.modulus ?? grade.modulus;
  if (E === undefined)
    throw new Refusal({
      field: 'grade',
      says: `no modulus of elasticity is held for ${grade.name}; give modulus, such as "11 GPa"`,
    });
  const australian = grade.row.citation.id === 'as-1720-1-2010';
  const working = (f: number | undefined, what: string): number | undefined =>
    f === undefined
      ? undefined
      : grade.basis === 'allowable'
        ? f
        : australian
          ? work.apply(
              fromAustralian,
              { phi: 0.7, k_1: 0.57, f_k: f, gamma_Q: 1.5 },
              `${what} to stay under, from the characteristic strength`,
            )
          : work.apply(
              fromCharacteristic,
              { k: 0.7, f_k: f, gamma_M: 1.3, gamma_Q: 1.5 },
              `${what} to stay under, from the characteristic strength`,
            );
  return {
    name: grade.name,
    E,
    G: grade.shearModulus ?? (given.shearModulus === undefined ? work.apply(sixteenth, { E }) : undefined),
    bending: given.allowableBending === undefined ? working(grade.bending, 'bending stress') : undefined,
    shear: given.allowableShear === undefined ? working(grade.shear, 'shear stress') : undefined,
    density: grade.density,
    basis: `${grade.name}, mean modulus, ${grade.basis === 'allowable' ? 'allowable stresses as printed' : 'characteristic strengths brought down to working stresses'}`,
  };
}

function speciesStuff(
  timber: Timber,
  given: Read<typeof stuffFields>,
  work: Work,
  at?: 'low' | 'middle' | 'high',
): Stuff {
  const m = timber.mechanical();
  const unknown = timber.isGroup;
  if (!unknown) citeTimber(work, timber, m);
  const ratio = given.strengthRatio ?? (unknown ? low : usual);
  if (given.allowableBending === undefined) {
    if (unknown) {
      work.caution(
        dataCaution(
          `${timber.name}: neither species nor grade is known, so low figures were taken: the 10th percentile of ${m?.count ?? 0} species, and ${Math.round(ratio * 100)} % of clear wood for knots and holes${given.strengthRatio === undefined ? ' (the lowest framing grade)' : ''}. Test a piece: hang a known weight on it and give the modulus that the sag tells`,
          cite('astm-d245', 'strength ratios of the framing grades: 0.26 for the lowest', { read: 'memory' }),
        ),
      );
    } else if (given.strengthRatio === undefined) {
      work.caution(
        dataCaution(
          `${timber.name} without a grade: stiffness is the mean of clear wood, strength is taken as 45 % of clear wood, a middling framing grade. Give strengthRatio for better or worse pieces`,
          cite('astm-d245', 'strength ratio 0.45', { read: 'memory' }),
        ),
      );
    }
  }
  const read = (s: Spread | undefined): number | undefined => s?.[at ?? (unknown ? 'low' : 'middle')];
  const n = timber.group === 'softwood' ? 2.1 : 2.3;
  const working = (mean: number | undefined, V: number, R: number, what: string): number | undefined =>
    mean === undefined
      ? undefined
      : work.apply(fromMean, { f_m: mean, V, R, n }, `${what} to stay under, from the mean of clear wood`);
  const printed = read(m?.modulus);
  if (printed === undefined && given.modulus === undefined)
    throw new Refusal({
      field: 'timber',
      says: `no modulus of elasticity is held for ${timber.name}; give modulus, such as "11 GPa"`,
    });
  // The grading standard takes less stiffness too where the piece is poor.
  const q = given.strengthRatio === undefined && !unknown ? 1 : ratio >= 0.55 ? 1 : ratio >= 0.45 ? 0.9 : 0.8;
  const E = given.modulus ?? work.apply(shearFree, { q, E_b: printed as number });
  const ratios = timber.elasticRatios();
  const g =
    ratios && !unknown
      ? (ratios.shearRadial.middle + (ratios.shearTangential ?? ratios.shearRadial).middle) / 2
      : undefined;
  const G =
    given.modulus !== undefined || given.shearModulus !== undefined
      ? undefined
      : g === undefined
        ? work.apply(sixteenth, { E })
        : work.apply(fromRatio, { g, E });
  return {
    name: timber.name,
    E,
    G,
    bending:
      given.allowableBending === undefined
        ? working(read(m?.bending), 0.16, ratio, 'bending stress')
        : undefined,
    shear:
      given.allowableShear === undefined ? working(read(m?.shear), 0.14, 0.5, 'shear stress') : undefined,
    density: unknown ? timber.density()?.density.high : timber.density()?.density.middle,
    basis: `${timber.name}, ${unknown ? 'low' : (m?.basis ?? 'no published figures')}${unknown ? ' figures of the group' : ''}; strengths brought down to working stresses`,
  };
}

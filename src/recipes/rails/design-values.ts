import { InputError } from '../../units/input-error.js';
import { dataCaution, note } from '../../engine/caution.js';
import type { Parsed } from '../../engine/field.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber } from '../../materials/timber-field.js';
import type { Grade } from '../../materials/grades.js';
import { findSpecies } from '../../materials/species.js';
import type { PropertyRange } from '../../materials/property-range.js';
import { materialProperties, type MaterialProperties } from '../../materials/elastic-properties.js';
import type { Timber } from '../../materials/timber.js';
import type { materialFields } from './material-fields.js';
import {
  fromAustralian,
  fromCharacteristic,
  fromMean,
  fromRatio,
  shearFree,
  sixteenth,
} from './material-formulas.js';

/** What a rail is made of, for reckoning at the loads as they are (not factored up): pascals, kg/m³. */
export interface Material {
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

type Given = Parsed<typeof materialFields>;
type At = 'low' | 'middle' | 'high';

/** Strength ratios of ASTM D245: the lowest framing grade for timber nobody knows, a middling one where the species is known. */
const low = 0.26;
const usual = 0.45;

/** The stiffness and the stresses of a rail's timber, with workings and cautions. A figure given directly goes before a published one; a group of species gives its low figures unless told otherwise. */
export function materialOf(given: Given, trace: Trace, at?: At): Material {
  const chosen = given.grade ?? given.timber;
  if (given.modulus !== undefined && !chosen) {
    if (given.shearModulus === undefined)
      trace.warn(
        note(
          'a modulus given by itself is taken as measured in bending, with the shear in it: no shear deflection is added. Give shearModulus to have it added',
        ),
      );
    return {
      name: 'the timber of the modulus given',
      E: given.modulus,
      G: given.shearModulus,
      bending: given.allowableBending,
      shear: given.allowableShear,
      density: given.density,
      basis: 'as given',
    };
  }
  const wood = materialProperties(chosen ?? { is: 'species', timber: findSpecies('unknown softwood') });
  const base = wood.grade
    ? gradeMaterial(wood, wood.grade, given, trace)
    : speciesMaterial(wood, wood.timber, given, trace, at);
  const replaced = (
    ['modulus', 'shearModulus', 'allowableBending', 'allowableShear', 'density'] as const
  ).filter((n) => given[n] !== undefined);
  const basis = replaced.length > 0 ? `${base.basis}; given directly: ${replaced.join(', ')}` : base.basis;
  trace.note(`Timber: ${base.name}. Figures: ${basis}.`);
  return { ...base, density: given.density ?? base.density, basis };
}

/** The modulus given, or else what the figures make of the published one. @throws InputError where neither is known */
function modulusOf(wood: MaterialProperties, given: Given, published: number | undefined): number {
  const E = given.modulus ?? published;
  if (E === undefined)
    throw new InputError({
      field: wood.grade ? 'grade' : 'timber',
      message: `no modulus of elasticity is held for ${wood.name}; give modulus, such as "11 GPa"`,
    });
  return E;
}

/** A modulus given by itself has the shear of its bending test in it, so that none is added. */
function shearModulusOf(wood: MaterialProperties, E: number, given: Given, trace: Trace): number | undefined {
  if (given.shearModulus !== undefined || given.modulus !== undefined) return given.shearModulus;
  if (wood.shearModulus !== undefined) return wood.shearModulus;
  return wood.shearShare === undefined
    ? trace.evaluate(sixteenth, { E })
    : trace.evaluate(fromRatio, { g: wood.shearShare, E });
}

function gradeMaterial(wood: MaterialProperties, grade: Grade, given: Given, trace: Trace): Material {
  const { doubt, read, citation } = grade.row;
  trace.source(citation);
  if (doubt && read === 'memory') trace.warn(dataCaution(`grade ${grade.name}: ${doubt}`, citation));
  const E = modulusOf(wood, given, wood.modulus?.middle);
  const allowable = grade.basis === 'allowable';
  const working = (f: PropertyRange | undefined, what: string): number | undefined => {
    if (f === undefined || allowable) return f?.middle;
    const label = `${what} to stay under, from the characteristic strength`;
    return citation.id === 'as-1720-1-2010'
      ? trace.evaluate(fromAustralian, { phi: 0.7, k_1: 0.57, f_k: f.middle, gamma_Q: 1.5 }, label)
      : trace.evaluate(fromCharacteristic, { k: 0.7, f_k: f.middle, gamma_M: 1.3, gamma_Q: 1.5 }, label);
  };
  return {
    name: wood.name,
    E,
    G: shearModulusOf(wood, E, given, trace),
    bending: given.allowableBending ?? working(wood.bending, 'bending stress'),
    shear: given.allowableShear ?? working(wood.shear, 'shear stress'),
    density: wood.density?.middle,
    basis: `${wood.name}, mean modulus, ${allowable ? 'allowable stresses as printed' : 'characteristic strengths brought down to working stresses'}`,
  };
}

function speciesMaterial(
  wood: MaterialProperties,
  timber: Timber,
  given: Given,
  trace: Trace,
  at?: At,
): Material {
  const unknown = timber.isGroup;
  if (!unknown) citeTimber(trace, timber, wood.clear);
  const ratio = given.strengthRatio ?? (unknown ? low : usual);
  if (given.allowableBending === undefined && wood.clear)
    tellStrength(wood.name, wood.clear.count, given, unknown, trace);
  const take = (s: PropertyRange | undefined): number | undefined => s?.[at ?? (unknown ? 'low' : 'middle')];
  const n = timber.group === 'softwood' ? 2.1 : 2.3;
  const working = (s: PropertyRange | undefined, V: number, R: number, what: string): number | undefined => {
    const f_m = take(s);
    return f_m === undefined
      ? undefined
      : trace.evaluate(fromMean, { f_m, V, R, n }, `${what} to stay under, from the mean of clear wood`);
  };
  // The grading standard takes less stiffness too where the piece is poor.
  const poor = unknown || given.strengthRatio !== undefined;
  const q = !poor || ratio >= 0.55 ? 1 : ratio >= 0.45 ? 0.9 : 0.8;
  const E_b = take(wood.modulus);
  const E = modulusOf(
    wood,
    given,
    given.modulus === undefined && E_b !== undefined ? trace.evaluate(shearFree, { q, E_b }) : undefined,
  );
  return {
    name: wood.name,
    E,
    G: shearModulusOf(wood, E, given, trace),
    bending: given.allowableBending ?? working(wood.bending, 0.16, ratio, 'bending stress'),
    shear: given.allowableShear ?? working(wood.shear, 0.14, 0.5, 'shear stress'),
    // An unknown timber may be a heavy one.
    density: unknown ? wood.density?.high : wood.density?.middle,
    basis: `${wood.name}, ${unknown ? 'low figures of the group' : wood.basis}; strengths brought down to working stresses`,
  };
}

/** Says how much of clear wood's strength was taken, and why. */
function tellStrength(name: string, count: number, given: Given, unknown: boolean, trace: Trace): void {
  if (unknown) {
    const share = given.strengthRatio ?? low;
    trace.warn(
      dataCaution(
        `${name}: neither species nor grade is known, so low figures were taken: the 10th percentile of ${count} species, and ${Math.round(share * 100)} % of clear wood for knots and holes${given.strengthRatio === undefined ? ' (the lowest framing grade)' : ''}. Test a piece: hang a known weight on it and give the modulus that the sag tells`,
        cite('astm-d245', 'strength ratios of the framing grades: 0.26 for the lowest', { read: 'memory' }),
      ),
    );
  } else if (given.strengthRatio === undefined) {
    trace.warn(
      dataCaution(
        `${name} without a grade: stiffness is the mean of clear wood, strength is taken as 45 % of clear wood, a middling framing grade. Give strengthRatio for better or worse pieces`,
        cite('astm-d245', 'strength ratio 0.45', { read: 'memory' }),
      ),
    );
  }
}

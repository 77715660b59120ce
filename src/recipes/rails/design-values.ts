import { InputError } from '../../units/input-error.js';
import { dataCaution, note } from '../../engine/caution.js';
import type { Parsed } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import { materialProperties, type MaterialProperties } from '../../materials/elastic-properties.js';
import type { Grade } from '../../materials/grades.js';
import { findSpecies } from '../../materials/species.js';
import type { LoadMix } from '../../materials/working-stress/load-case.js';
import { classStress, fitsSize } from '../../materials/working-stress/strength-class.js';
import { ungradedWood, type Rank } from '../../materials/working-stress/ungraded-wood.js';
import { g0, ownWeightOf } from './loads-and-creep.js';
import { loadCaseOf, type Situation } from './load-situation.js';
import type { materialFields } from './material-fields.js';
import { sixteenth } from './material-formulas.js';
import { sectionFacts } from './section-properties.js';
import type { Section } from './section.js';

/** What a rail is made of, for calculating at the loads as they are (not factored up): pascals, kg/m³. */
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

/** What working stresses depend on besides the wood: the section, the mix of loads, duration and place. */
export interface DesignContext {
  readonly section: Section;
  readonly mix: LoadMix;
  readonly situation: Situation;
}

type Given = Parsed<typeof materialFields>;

/** The species or grade that was given; neither is salvaged wood of an unknown softwood. */
export const chosenOf = (given: Given) =>
  given.grade ??
  given.timber ??
  (given.modulus === undefined
    ? ({ is: 'species', timber: findSpecies('unknown softwood') } as const)
    : undefined);

/** Density for the own weight, kg/m³: given, or published; of a group the high one, since an unknown timber may be heavy. */
export function densityOf(given: Given): number | undefined {
  if (given.density !== undefined) return given.density;
  const chosen = chosenOf(given);
  const density = chosen && materialProperties(chosen).density;
  return chosen?.is === 'species' && chosen.timber.isGroup ? density?.high : density?.middle;
}

/** Own weight by length of a section, N/m. @throws InputError where no density is known */
export function ownWeightPerLength(given: Given, area: number, trace: Trace): number {
  const rho = densityOf(given);
  if (rho === undefined)
    throw new InputError({
      field: 'ownWeight',
      message: 'got yes, takes it only with a density; give density such as "500 kg/m3"',
    });
  return trace.evaluate(ownWeightOf, { rho, A: area, g: g0 });
}

/**
 * The stiffness and the working stresses of a rail's timber, with workings and cautions, for a section, a mix of loads,
 * a duration and a place. A figure given directly goes before a derived one; a group of species gives its low figures
 * unless another rank is asked for. @throws InputError where no modulus is held, or a strength ratio lacks its reason
 */
export function materialOf(given: Given, trace: Trace, context: DesignContext, rank?: Rank): Material {
  const chosen = chosenOf(given);
  if (!chosen) return bareModulus(given, trace);
  const wood = materialProperties(chosen);
  const base = wood.grade
    ? gradeMaterial(wood, wood.grade, given, trace, context)
    : speciesMaterial(wood, given, trace, context, rank);
  const replaced = (
    ['modulus', 'shearModulus', 'allowableBending', 'allowableShear', 'density'] as const
  ).filter((n) => given[n] !== undefined);
  const basis = replaced.length > 0 ? `${base.basis}; given directly: ${replaced.join(', ')}` : base.basis;
  trace.note(`Timber: ${base.name}. Figures: ${basis}.`);
  return {
    ...base,
    bending: given.allowableBending ?? base.bending,
    shear: given.allowableShear ?? base.shear,
    density: given.density ?? base.density,
    basis,
  };
}

function bareModulus(given: Given, trace: Trace): Material {
  if (given.shearModulus === undefined)
    trace.warn(
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

/** The modulus given, or else the one worked out. @throws InputError where neither is known */
function modulusOf(wood: MaterialProperties, given: Given, derived: number | undefined): number {
  const E = given.modulus ?? derived;
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
  return wood.shearModulus ?? trace.evaluate(sixteenth, { E });
}

/** Width and depth over all, metres. */
function sizeOf(section: Section): { width: number; depth: number } {
  const { width, depth } = sectionFacts(section, 1);
  return { width, depth };
}

function gradeMaterial(
  wood: MaterialProperties,
  grade: Grade,
  given: Given,
  trace: Trace,
  context: DesignContext,
): Material {
  const { doubt, read, citation } = grade.row;
  trace.source(citation);
  if (doubt && read === 'memory') trace.warn(dataCaution(`grade ${grade.name}: ${doubt}`, citation));
  const size = sizeOf(context.section);
  if (!fitsSize(grade, size))
    trace.warn(
      dataCaution(
        `${grade.name} is a grade of other sizes than ${Math.round(size.width * 1000)} x ${Math.round(size.depth * 1000)} mm`,
        citation,
      ),
    );
  const stress = classStress(grade, size, loadCaseOf(context.situation, context.mix), trace);
  const E = modulusOf(wood, given, stress.modulus);
  return {
    name: wood.name,
    E,
    G: shearModulusOf(wood, E, given, trace),
    bending: stress.bending,
    shear: stress.shear,
    density: wood.density?.middle,
    basis: `${wood.name}, ${grade.basis === 'allowable' ? 'allowable stresses' : 'characteristic strengths'} as working stresses at the loads as they are, mean modulus; ${context.situation.words}`,
  };
}

function speciesMaterial(
  wood: MaterialProperties & { timber: NonNullable<MaterialProperties['timber']> },
  given: Given,
  trace: Trace,
  context: DesignContext,
  rank: Rank | undefined,
): Material {
  const { stress, basis } = ungradedWood(
    wood.timber,
    {
      examined: given.examined,
      ratio: given.strengthRatio,
      reason: given.strengthReason,
      size: sizeOf(context.section),
      load: loadCaseOf(context.situation, context.mix),
      ...(rank === undefined ? {} : { rank }),
    },
    trace,
  );
  const E = modulusOf(wood, given, stress.modulus);
  return {
    name: wood.name,
    E,
    G: shearModulusOf(wood, E, given, trace),
    bending: stress.bending,
    shear: stress.shear,
    density: wood.timber.isGroup ? wood.density?.high : wood.density?.middle,
    basis: `${wood.name}, ${basis}; ${context.situation.words}`,
  };
}

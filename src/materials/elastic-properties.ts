import { InputError } from '../units/input-error.js';
import { isPlainObject } from '../engine/field.js';
import type { Citation } from '../engine/source.js';
import { findGrade, gradeNamed, type Grade } from './grades.js';
import { findSpecies } from './species.js';
import { exactly, type Sourced, type PropertyRange } from './property-range.js';
import { Timber } from './timber.js';

/** A species (or a group of them), or a structural grade. */
export type TimberOrGrade =
  { readonly is: 'species'; readonly timber: Timber } | { readonly is: 'grade'; readonly grade: Grade };

/** What a beam needs of its wood, Pa and kg/m³, from a species' clear wood or from a structural grade: as published, nothing taken off. */
export type MaterialProperties = BaseProperties &
  (
    | { readonly timber: Timber; readonly grade: undefined }
    | { readonly timber: undefined; readonly grade: Grade }
  );
interface BaseProperties {
  readonly name: string;
  /** 'mean of clear wood', 'characteristic' or 'allowable ...': never mix them. */
  readonly basis: string;
  /** Of a grade the mean, its low the fifth percentile or minimum; of a group of species its percentiles. */
  readonly modulus: PropertyRange | undefined;
  readonly bending: PropertyRange | undefined;
  readonly shear: PropertyRange | undefined;
  /** Printed for a grade. */
  readonly shearModulus: number | undefined;
  /** Of a species: shear modulus as a share of the modulus along the grain, both planes alike. */
  readonly shearShare: number | undefined;
  readonly density: PropertyRange | undefined;
  /** The rows of a species' stiffness and strength. */
  readonly clear: Sourced | undefined;
  readonly citations: readonly Citation[];
  readonly doubts: readonly string[];
}

/** Wood whose modulus of elasticity is known. */
export type StructuralMaterial = (MaterialProperties | (BaseProperties & MeasuredBoard)) & {
  readonly modulus: PropertyRange;
};
/** A board whose modulus was measured: neither a species nor a grade is known. */
interface MeasuredBoard {
  readonly timber: undefined;
  readonly grade: undefined;
}

/**
 * A grade (`C24`, `MGP10`, `F17`) or a species by name, as itself, or as read before; undefined for anything else.
 * @throws InputError for a name that is none, with the nearest
 */
export function timberOrGrade(value: unknown): TimberOrGrade | undefined {
  if (typeof value === 'string' && value.trim() !== '') return named(value.trim());
  if (value instanceof Timber) return { is: 'species', timber: value };
  if (!isPlainObject(value)) return undefined;
  if ('row' in value) return { is: 'grade', grade: value as unknown as Grade };
  const { is, timber, grade } = value;
  if (is === 'species' && timber instanceof Timber) return { is, timber };
  return is === 'grade' && isPlainObject(grade) && 'row' in grade
    ? { is, grade: grade as unknown as Grade }
    : undefined;
}

// A short word with a digit can only be meant for a grade; anything else is a species, whose own hint is the better one.
const named = (text: string): TimberOrGrade =>
  gradeNamed(text) || /^[a-z]{1,4} ?\d{1,3}$/i.test(text)
    ? { is: 'grade', grade: findGrade(text) }
    : { is: 'species', timber: findSpecies(text) };

/** The published figures of a species or a grade, whether or not its modulus is among them. */
export function materialProperties(chosen: TimberOrGrade): MaterialProperties {
  return chosen.is === 'grade' ? ofGrade(chosen.grade) : ofTimber(chosen.timber);
}

/** The figures of wood whose modulus of elasticity is published. @throws InputError */
export function structuralMaterial(chosen: TimberOrGrade): StructuralMaterial {
  const wood = materialProperties(chosen);
  const { modulus } = wood;
  if (!modulus) throw new InputError(lacking(wood));
  return { ...wood, modulus };
}

/** Whether it is stiff wood, as a sweep hands it on. */
export const isStructuralMaterial = (value: unknown): value is StructuralMaterial =>
  isPlainObject(value) &&
  ['name', 'basis'].every((k) => typeof value[k] === 'string') &&
  ['citations', 'doubts'].every((k) => Array.isArray(value[k])) &&
  isPlainObject(value.modulus) &&
  [value.modulus.low, value.modulus.middle, value.modulus.high].every((n) => typeof n === 'number' && n > 0);

function ofGrade(grade: Grade): MaterialProperties {
  const mean = exactly(grade.modulus);
  return {
    name: grade.name,
    timber: undefined,
    grade,
    basis: grade.basisWords,
    modulus: mean && { ...mean, low: grade.modulusLow ?? mean.low },
    bending: exactly(grade.bending),
    shear: exactly(grade.shear),
    shearModulus: grade.shearModulus,
    shearShare: undefined,
    density: exactly(grade.density),
    clear: undefined,
    citations: [grade.row.citation],
    doubts: grade.row.doubt ? [`${grade.name}: ${grade.row.doubt}`] : [],
  };
}

function ofTimber(timber: Timber): MaterialProperties {
  const clear = timber.mechanical();
  const density = timber.density();
  const ratios = timber.isGroup ? undefined : timber.elasticRatios();
  const rows = clear?.rows ?? [];
  return {
    name: timber.name,
    timber,
    grade: undefined,
    basis: clear?.basis ?? 'no published figures',
    modulus: clear?.modulus,
    bending: clear?.bending,
    shear: clear?.shear,
    shearModulus: undefined,
    // The grain of a rail may lie either way, so the two planes count alike.
    shearShare:
      ratios && (ratios.shearRadial.middle + (ratios.shearTangential ?? ratios.shearRadial).middle) / 2,
    density: density?.density,
    clear,
    citations: [...new Map(rows.map((r) => [`${r.citation.id}|${r.citation.locator}`, r.citation])).values()],
    doubts: timber.isGroup
      ? []
      : [...new Set(rows.flatMap((r) => (r.doubt ? [`${r.printedAs}: ${r.doubt}`] : [])))],
  };
}

const lacking = (wood: MaterialProperties): string =>
  wood.grade
    ? `the grade ${wood.name} has no modulus of elasticity in the data; take another grade or a species`
    : `${wood.name} has no modulus of elasticity in the data; give a grade such as "C24", or "unknown ${wood.timber.group === 'softwood' ? 'softwood' : 'hardwood'}" for a range over its kind`;

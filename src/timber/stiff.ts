import { Refusal } from '../quantities/refusal.js';
import type { Citation } from '../recipe/source.js';
import { gradeNamed, type Grade } from './grades.js';
import { findSpecies } from './species.js';
import type { Timber } from './timber.js';

/** What a beam needs of its wood, Pa and kg/m³, from a species' clear wood or from a structural grade. */
export interface StiffWood {
  readonly name: string;
  readonly timber: Timber | undefined;
  readonly grade: Grade | undefined;
  /** 'mean of clear wood', 'characteristic' or 'allowable ...': never mix them. */
  readonly basis: string;
  /** Mean modulus of elasticity; of a group its median. */
  readonly modulus: number;
  /** 10th and 90th percentile of a group; equal to the mean for a species. */
  readonly modulusLow: number;
  readonly modulusHigh: number;
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly shearModulus: number | undefined;
  /** True where the shear modulus is the modulus over 16, a rule for softwood classes, for want of a figure. */
  readonly shearModulusAssumed: boolean;
  readonly density: number | undefined;
  readonly citations: readonly Citation[];
  readonly doubts: readonly string[];
}

/** Reads a grade (`C24`, `MGP10`, `F17`) or a species' name. @throws Refusal */
export function stiffWood(written: string | Timber | Grade): StiffWood {
  if (typeof written === 'string') {
    const grade = gradeNamed(written);
    return grade ? ofGrade(grade) : ofTimber(findSpecies(written));
  }
  return 'row' in written ? ofGrade(written) : ofTimber(written);
}

function ofGrade(grade: Grade): StiffWood {
  if (grade.modulus === undefined)
    throw new Refusal(
      `the grade ${grade.name} has no modulus of elasticity in the data; take another grade or a species`,
    );
  const E = grade.modulus;
  return {
    name: grade.name,
    timber: undefined,
    grade,
    basis: grade.basisWords,
    modulus: E,
    modulusLow: grade.modulusLow ?? E,
    modulusHigh: E,
    bending: grade.bending,
    shear: grade.shear,
    shearModulus: grade.shearModulus ?? E / 16,
    shearModulusAssumed: grade.shearModulus === undefined,
    density: grade.density,
    citations: [grade.row.citation],
    doubts: grade.row.doubt ? [`${grade.name}: ${grade.row.doubt}`] : [],
  };
}

function ofTimber(timber: Timber): StiffWood {
  const m = timber.mechanical('12%');
  if (!m?.modulus) throw new Refusal(lacking(timber));
  const ratios = timber.elasticRatios();
  const density = timber.density();
  const rows = [...m.rows, ...(ratios?.rows ?? []), ...(density?.rows ?? [])];
  return {
    name: timber.name,
    timber,
    grade: undefined,
    basis: m.basis,
    modulus: m.modulus.middle,
    modulusLow: m.modulus.low,
    modulusHigh: m.modulus.high,
    bending: m.bending?.middle,
    shear: m.shear?.middle,
    shearModulus: m.modulus.middle * (ratios?.shearRadial.middle ?? 1 / 16),
    shearModulusAssumed: ratios === undefined,
    density: density?.density.middle,
    citations: [...new Map(rows.map((r) => [`${r.citation.id}|${r.citation.locator}`, r.citation])).values()],
    doubts: timber.isGroup
      ? []
      : [...new Set(rows.flatMap((r) => (r.doubt ? [`${r.printedAs}: ${r.doubt}`] : [])))],
  };
}

const lacking = (t: Timber): string =>
  `${t.name} has no modulus of elasticity in the data; give a grade such as "C24", or "unknown ${t.group === 'softwood' ? 'softwood' : 'hardwood'}" for a range over its kind`;

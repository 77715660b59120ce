import { nullTrace, type Trace } from '../../engine/trace.js';
import { allGrades } from '../grades.js';
import type { WoodGroup } from './clear-wood.js';
import { clearWoodStress, lowerLimit, sizeFactor, ungradedModulus } from './clear-wood-formulas.js';
import { durationFactor, factor } from './factors.js';
import { governing, type Combination, type LoadCase, type SectionSize } from './load-case.js';
import { classStress, fitsSize } from './strength-class.js';

/** Means of green clear wood, pascals; undefined where the data hold none. */
export interface GreenMeans {
  readonly group: WoodGroup | 'mixed';
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly modulus: number | undefined;
}

/** The least working stress and modulus of the held grades, with the grade each comes from. */
export interface Cap {
  readonly bending: { readonly value: number; readonly grade: string };
  readonly shear: { readonly value: number; readonly grade: string };
  readonly modulus: { readonly value: number; readonly grade: string };
}

/** The least that the held grades of a wood's group allow for this size and load: ungraded wood never goes above it. */
export function leastGrade(group: GreenMeans['group'], size: SectionSize, load: LoadCase): Cap {
  const grades = allGrades().filter(
    (g) => g.row.preferred && fitsSize(g, size) && (g.group === '' || group === 'mixed' || g.group === group),
  );
  const least = (kind: 'bending' | 'shear' | 'modulus') =>
    grades
      .flatMap((g) => {
        const value = classStress(g, size, load)[kind];
        return value === undefined ? [] : [{ value, grade: g.name }];
      })
      .reduce((a, b) => (b.value < a.value ? b : a));
  return { bending: least('bending'), shear: least('shear'), modulus: least('modulus') };
}

export interface UngradedStress {
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly modulus: number | undefined;
  /** The grades that hold a figure down; empty where none does. */
  readonly capped: readonly { readonly kind: 'bending' | 'shear' | 'modulus'; readonly grade: string }[];
}

/**
 * Working stresses of salvaged or ungraded wood, pascals: the lower 5 % limit of green clear wood, the strength ratio of
 * the piece, no gain from drying, and never above the lowest held grade of its group (`cap: false` leaves that
 * out; `quality` is the share of the green modulus).
 * The modulus is as measured in bending, with the shear of the test in it.
 */
export function ungradedStress(
  means: GreenMeans,
  ratio: number,
  size: SectionSize,
  load: LoadCase,
  options: { readonly cap?: boolean; readonly quality?: number; readonly trace?: Trace } = {},
): UngradedStress {
  const trace = options.trace ?? nullTrace;
  const cap = options.cap === false ? undefined : leastGrade(means.group, size, load);
  const capped: { kind: 'bending' | 'shear' | 'modulus'; grade: string }[] = [];
  const held = (kind: 'bending' | 'shear' | 'modulus', value: number): number => {
    if (!cap || value <= cap[kind].value) return value;
    capped.push({ kind, grade: cap[kind].grade });
    return cap[kind].value;
  };
  const stress = (kind: 'bending' | 'shear'): number | undefined => {
    const mean = means[kind];
    if (mean === undefined) return undefined;
    const one = (c: Combination, w: Trace): number => clearStress(kind, means.group, mean, ratio, size, c, w);
    const worst = governing(load, (c) => one(c, nullTrace));
    if (!trace.silent) one(worst.combination, trace);
    return held(kind, worst.stress);
  };
  const bending = stress('bending');
  const shear = stress('shear');
  const modulus =
    means.modulus === undefined
      ? undefined
      : held(
          'modulus',
          trace.evaluate(ungradedModulus, {
            Q: options.quality ?? factor('stiffness.ungraded'),
            E_m: means.modulus,
          }),
        );
  return { bending, shear, modulus, capped };
}

function clearStress(
  kind: 'bending' | 'shear',
  group: GreenMeans['group'],
  mean: number,
  ratio: number,
  size: SectionSize,
  c: Combination,
  trace: Trace,
): number {
  const f_5 = trace.evaluate(
    lowerLimit,
    { f_m: mean, z: factor('exclusion'), V: factor(`spread.${kind}`) },
    `lower 5 % limit of green clear wood in ${kind}`,
  );
  return trace.evaluate(
    clearWoodStress,
    {
      f_5,
      // Of a mixed group the larger divisor, that of hardwoods.
      n: factor(`divisor.${kind}.${group === 'softwood' ? 'softwood' : 'hardwood'}`),
      R: kind === 'bending' ? ratio : factor('ratio.shear'),
      C_d: kind === 'bending' ? trace.evaluate(sizeFactor, { d: size.depth }) : 1,
      C_s: 1,
      C_D: durationFactor('nds', c.duration, 1).value,
    },
    `working stress in ${kind}`,
  );
}

import { nullTrace, type Trace } from '../../engine/trace.js';
import type { Grade } from '../grades.js';
import {
  americanStress,
  australianLoadFactor,
  australianStress,
  eurocodeDepthFactor,
  eurocodeLoadFactor,
  eurocodeStress,
} from './class-formulas.js';
import { sizeFactor } from './clear-wood-formulas.js';
import { durationFactor, factor, ndsSizeFactor, type Route } from './factors.js';
import { governing, type Combination, type LoadCase, type SectionSize } from './load-case.js';

/** The rules a grade's figures are brought to a working stress by. */
export function routeOf(grade: Grade): Route {
  return grade.basis === 'allowable' ? 'nds' : grade.row.citation.id === 'as-1720-1-2010' ? 'as' : 'ec5';
}

/** Large timbers of the NDS: graded as such from 5 in (114 mm dressed) each way. */
const largeTimber = /Posts & Timbers|Beams & Stringers/;
const largeSide = 0.1143;

/** Whether a section is of the sizes that a grade is for. */
export function fitsSize(grade: Grade, size: SectionSize): boolean {
  const large = Math.min(size.width, size.depth) >= largeSide - 1e-9;
  return routeOf(grade) !== 'nds' || large === largeTimber.test(grade.name);
}

type Kind = 'bending' | 'shear';

/** The working stress of a grade's printed figure in one combination, pascals; `work` gets the formula. */
function inCombination(
  grade: Grade,
  kind: Kind,
  size: SectionSize,
  load: LoadCase,
  c: Combination,
  trace: Trace,
): number {
  const printed = grade[kind] as number;
  const route = routeOf(grade);
  const duration = durationFactor(route, c.duration, load.serviceClass).value;
  const shares = { G: c.permanent, Q: c.imposed };
  const label = `working stress in ${kind}`;
  switch (route) {
    case 'ec5':
      return trace.evaluate(
        eurocodeStress,
        {
          k_mod: duration,
          k_h: kind === 'bending' ? trace.evaluate(eurocodeDepthFactor, { h: size.depth }) : 1,
          k_cr: kind === 'shear' ? factor('ec5.k-cr') : 1,
          f_k: printed,
          gamma_M: factor('ec5.gamma-m'),
          gamma: trace.evaluate(eurocodeLoadFactor, shares),
        },
        label,
      );
    case 'as':
      return trace.evaluate(
        australianStress,
        {
          phi: factor(grade.name.startsWith('MGP') ? 'as.phi.mgp' : 'as.phi.f'),
          k_1: duration,
          k_4: load.serviceClass === 3 ? factor('as.k4.outdoors') : 1,
          f_k: printed,
          gamma: trace.evaluate(australianLoadFactor, shares),
        },
        label,
      );
    case 'nds':
      return trace.evaluate(
        americanStress,
        {
          F_ref: printed,
          C_D: duration,
          C_F: kind === 'bending' ? americanSizeFactor(grade, size) : 1,
          C_M: load.serviceClass === 3 ? factor(`nds.wet.${kind}`) : 1,
        },
        label,
      );
  }
}

/** Size factor in bending: the table of dimension lumber; large timbers by depth over 12 in; none for other stresses. */
function americanSizeFactor(grade: Grade, size: SectionSize): number {
  if (largeTimber.test(grade.name)) return Math.min(1, sizeFactor.evaluate({ d: size.depth / 6 }));
  return grade.row.citation.id === 'nds-supplement' ? ndsSizeFactor(size.depth).value : 1;
}

/** What a strength class allows at the loads as they are. */
export interface ClassStress {
  /** Pascals; undefined where the grade prints no such strength. */
  readonly bending: number | undefined;
  readonly shear: number | undefined;
  readonly modulus: number | undefined;
}

/**
 * Working stresses of a strength class or visual grade, pascals, for a section and a load case: the load as it is may
 * be compared with them directly, since the load factors stand in them. `work` gets the formulas that govern.
 */
export function classStress(
  grade: Grade,
  size: SectionSize,
  load: LoadCase,
  trace: Trace = nullTrace,
): ClassStress {
  const one = (kind: Kind): number | undefined => {
    if (grade[kind] === undefined) return undefined;
    const worst = governing(load, (c) => inCombination(grade, kind, size, load, c, nullTrace));
    if (!trace.silent) inCombination(grade, kind, size, load, worst.combination, trace);
    return worst.stress;
  };
  const wet = routeOf(grade) === 'nds' && load.serviceClass === 3 ? factor('nds.wet.modulus') : 1;
  return {
    bending: one('bending'),
    shear: one('shear'),
    modulus: grade.modulus === undefined ? undefined : grade.modulus * wet,
  };
}

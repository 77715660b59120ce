import type { Trace } from '../../engine/trace.js';
import type { StructuralMaterial } from '../elastic-properties.js';
import type { LoadCase, SectionSize } from './load-case.js';
import { classStress } from './strength-class.js';
import { ungradedWood } from './ungraded-wood.js';

/** Working stresses of a wood for a section and a load, pascals; undefined where no strength is held. */
export interface WoodStress {
  readonly bending: number | undefined;
  readonly shear: number | undefined;
}

/**
 * Working stresses by the rule of every recipe: a grade by its own standard, a species without one by green clear wood
 * and the strength ratio of an examined or unexamined piece; none for a board of which only the stiffness was measured.
 */
export function woodStress(
  wood: StructuralMaterial,
  piece: { readonly examined: boolean; readonly size: SectionSize; readonly load: LoadCase },
  trace: Trace,
): WoodStress {
  if (wood.grade) return classStress(wood.grade, piece.size, piece.load, trace);
  return wood.timber
    ? ungradedWood(wood.timber, piece, trace).stress
    : { bending: undefined, shear: undefined };
}

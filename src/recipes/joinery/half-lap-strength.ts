// What a half lap leaves: the net section of each piece, and the glued face, which is never as strong as glue.
import { danger, note, type Caution } from '../../engine/caution.js';
import type { Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { nullTrace, type Trace } from '../../engine/trace.js';
import { durationFactor, factor } from '../../materials/working-stress/factors.js';
import {
  crossingPolar,
  crossingTorque,
  crossingUse,
  rollingShear,
  workingTorsion,
} from '../../materials/working-stress/lap.js';
import type { LoadCase } from '../../materials/working-stress/load-case.js';
import { netMoment } from '../../materials/working-stress/notch.js';
import { stressFormulas } from '../../materials/working-stress/stress-formulas.js';
import { placeFigures, useFigures } from '../../materials/working-stress/use-category.js';
import { woodStress } from '../../materials/working-stress/wood-stress.js';
import type { lapStrengthFields } from './half-lap-fields.js';

const shearOfFace = formula({
  symbol: 'R_R',
  result: variable('force', 'force across the glued face that it carries'),
  expression: 'f_R A',
  variables: {
    f_R: variable('stress', 'working rolling shear', { unit: 'MPa' }),
    A: variable('area', 'glued face', { unit: 'mm2' }),
  },
  basis: 'definition',
});
export const lapStrengthFormulas = [
  netMoment,
  rollingShear,
  shearOfFace,
  workingTorsion,
  crossingPolar,
  crossingTorque,
  crossingUse,
  ...stressFormulas,
];

type Given = Parsed<typeof lapStrengthFields> & {
  readonly widthA: number;
  readonly widthB: number;
  readonly thickness: number;
};

/** Without a category the load is taken to stay for good; always with the load factor of an imposed load, the larger. */
function loadCase(given: Given): LoadCase {
  const duration = given.category === undefined ? 'permanent' : useFigures(given.category).duration;
  return {
    mix: { permanent: 0, imposed: 1 },
    duration,
    serviceClass: placeFigures(given.place).serviceClass,
  };
}

/** Working moments, force and twist of a lap, newtons and N·m. */
export function lapStrength(given: Given, glueArea: number, trace: Trace) {
  const load = loadCase(given);
  const { widthA, widthB, thickness } = given;
  // The stress of piece A is written out; that of piece B and on edge follow by the same formulas.
  const stress = (width: number, depth: number, work: Trace = nullTrace) =>
    woodStress(given.timber, { examined: given.examined, size: { width, depth }, load }, work);
  trace.note(`Strength of ${given.timber.name}, load of ${load.duration} duration, ${given.place}.`);
  const pieces = [
    { piece: 'A', width: widthA, work: trace },
    { piece: 'B', width: widthB, work: nullTrace },
  ].map(({ piece, width, work }) => ({
    piece,
    width,
    face: stress(width, thickness, work),
    edge: stress(thickness / 2, width),
  }));
  const moment = (f: number, b: number, d_n: number, label: string): number =>
    trace.evaluate(netMoment, { f, b, d_n }, label);
  const strength = pieces.flatMap(({ piece, width, face, edge }) =>
    face.bending === undefined || edge.bending === undefined
      ? []
      : [
          {
            piece,
            whole: moment(face.bending, width, thickness, `moment that the whole of piece ${piece} carries`),
            atLap: moment(
              face.bending,
              width,
              thickness / 2,
              `moment of piece ${piece} at the lap, across its face`,
            ),
            inPlane: moment(
              edge.bending,
              thickness / 2,
              width,
              `moment of piece ${piece} at the lap, in the plane`,
            ),
          },
        ],
  );
  const f_v = pieces[0]?.face.shear;
  const glued = f_v === undefined ? undefined : gluedFace(given, load, f_v, glueArea, trace);
  const use = useOf(given, strength, glued, trace);
  return {
    ...(strength.length === 0 ? {} : { strength }),
    ...(glued ? { shearForce: glued.shearForce, twist: glued.twist } : {}),
    ...(use === undefined ? {} : { use }),
    verdict: verdictOf(given, use, strength.length > 0 && glued !== undefined),
  };
}

interface GluedFace {
  readonly shearForce: number;
  readonly twist: number;
  readonly rolling: number;
}

/** The glued face as a rectangle of the two widths: at an angle it is larger, so this is on the safe side. */
function gluedFace(given: Given, load: LoadCase, f_v: number, A: number, trace: Trace): GluedFace {
  const [a, b] = [given.widthA, given.widthB];
  const f_R = trace.evaluate(rollingShear, { f_v });
  const tau = trace.evaluate(workingTorsion, {
    n: factor('joint.shop-glued'),
    k_mod: durationFactor('ec5', load.duration, load.serviceClass).value,
    f_tor: factor('joint.torsion') * 1e6,
    gamma_M: factor('ec5.gamma-m'),
    gamma: factor('ec5.gamma-q'),
  });
  const I_p = trace.evaluate(crossingPolar, { a, b });
  return {
    rolling: f_R,
    shearForce: trace.evaluate(shearOfFace, { f_R, A }),
    twist: trace.evaluate(crossingTorque, { tau, I_p, a, b }),
  };
}

function useOf(
  given: Given,
  strength: readonly { readonly inPlane: number }[],
  glued: GluedFace | undefined,
  trace: Trace,
): number | undefined {
  if ((given.moment === undefined && given.force === undefined) || !glued || strength.length === 0)
    return undefined;
  const [M, R] = [given.moment ?? 0, given.force ?? 0];
  const face = trace.evaluate(crossingUse, {
    M,
    T: glued.twist,
    R,
    a: given.widthA,
    b: given.widthB,
    f_R: glued.rolling,
  });
  return Math.max(face, ...strength.map((s) => M / s.inPlane));
}

function verdictOf(given: Given, use: number | undefined, known: boolean): string {
  if (!known) return `Not checked: no strength of ${given.timber.name} is held.`;
  if (use === undefined) return 'Not checked: give the moment in the plane or the force across.';
  return use <= 1
    ? `Holds in the plane of the frame: ${Math.round(use * 100)} % of its strength is used.`
    : `Too weak: ${Math.round(use * 100)} % of its strength would be used.`;
}

/** Cautions of a lap that carries something. */
export const lapCautions = (answer: { readonly use?: number | undefined }): Caution[] => [
  danger(
    'follow local codes and licensed practice where it carries people or a fall could hurt someone: they decide, not this page',
  ),
  ...((answer.use ?? 0) > 1
    ? [
        danger(
          'do not build it so: the lap is too weak. Take wider or thicker pieces, a brace, or one piece that runs whole',
        ),
      ]
    : []),
  note(
    'the wood of the face rolls off long before the glue gives: never multiply the glued face by the strength of the glue',
  ),
  note(
    'cut from below within a span a lap is not for a loaded rail: no standard gives it a strength. Lap near the supports, cut a third, or seat one piece on the other',
  ),
];

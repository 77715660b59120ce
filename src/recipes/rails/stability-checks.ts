import { danger, note, type Caution } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import {
  loadThatTips,
  pushThatTips,
  situationsOf,
  stabilityFactor,
  stabilityPieces,
  tiltedArm,
  type Side,
  type Situation,
  type StabilityPiece,
} from './stability.js';

/** What the situations of a kind of furniture need besides its masses and feet. */
export const stabilityFields = {
  piece: field.choice(stabilityPieces, {
    label: 'kind of furniture',
    help: 'For the situations after furniture tests.',
    optional: true,
  }),
  topHeight: field.length({
    label: 'top height',
    help: 'Height of the top over the floor; leave it out where it is the height of the push.',
    above: '0 mm',
    max: '10 m',
    optional: true,
  }),
  endBase: field.length({
    label: 'base length',
    help: 'From the feet at one end to those at the other, lengthwise.',
    above: '0 mm',
    max: '10 m',
    optional: true,
  }),
  endOverhang: field.length({
    label: 'end overhang',
    help: 'How far each end stands out past those feet.',
    min: '0 mm',
    max: '3 m',
    default: '0 mm',
  }),
  openReach: field.length({
    label: 'open drawers',
    help: 'How far the fronts of open drawers stand out before the front feet.',
    min: '0 mm',
    max: '2 m',
    default: '0 mm',
  }),
  floorTilt: field.angle({
    label: 'floor slope',
    help: 'How far the floor is out of level, for those situations.',
    min: '0 deg',
    max: '10 deg',
    default: '1 deg',
  }),
} as const;

interface Given {
  readonly base: number;
  readonly overhang: number;
  readonly backOverhang: number;
  readonly edgeLoad: number;
  readonly push: number;
  readonly pushHeight: number;
  readonly factor: number;
  readonly piece?: StabilityPiece | undefined;
  readonly topHeight?: number | undefined;
  readonly endBase?: number | undefined;
  readonly endOverhang: number;
  readonly openReach: number;
  readonly floorTilt: number;
}

/** Mass and centre of gravity of the whole; the height of the centre where every part has one. */
interface Weight {
  readonly mass: number;
  readonly centre: number;
  readonly height: number | undefined;
}

/** One situation on one side, and how it comes out. */
export interface StabilityCheck {
  readonly situation: Situation;
  readonly side: string;
  readonly factor: number | undefined;
  readonly wanted: number;
  /** The force that tips it with the other in place: the load down, or the level push where there is no load or none tips it. */
  readonly tipsAt: number | undefined;
  readonly tipsBy: 'load' | 'push';
}

/** Height over which the kind of test in EN 16122 pushes a cabinet outward too, metres. */
const lowCabinet = 1;

/** Furniture that is meant to stand with its back to a wall is not checked backward. */
const againstWall: ReadonlySet<string> = new Set(['low cabinet', 'tall cabinet', 'drawers']);

function sidesOf(
  given: Given,
  weight: Weight,
  tilt: number,
): { readonly name: string; readonly side: Side }[] {
  // Without heights the centre is taken at the top, the safe side.
  const h = weight.height ?? given.topHeight ?? given.pushHeight;
  const side = (name: string, arm: number, overhang: number) => ({
    name,
    side: { mass: weight.mass, arm: tiltedArm(arm, h, tilt), overhang },
  });
  const front = given.piece === 'drawers' ? Math.max(given.overhang, given.openReach) : given.overhang;
  return [
    side('forward', weight.centre, front),
    ...(given.piece !== undefined && againstWall.has(given.piece)
      ? []
      : [side('backward', given.base - weight.centre, given.backOverhang)]),
    ...(given.endBase === undefined ? [] : [side('over an end', given.endBase / 2, given.endOverhang)]),
  ];
}

function check(name: string, side: Side, situation: Situation, wanted: number): StabilityCheck {
  const push = situation.outward * situation.height;
  const down = situation.down > 0 ? loadThatTips(side, situation.inset, push) : undefined;
  return {
    situation,
    side: name,
    factor: stabilityFactor(side, situation),
    wanted,
    tipsAt: down ?? (situation.outward > 0 ? pushThatTips(side, situation) : undefined),
    tipsBy: down === undefined ? 'push' : 'load',
  };
}

/** Every situation on every side: those of the kind of furniture, and the forces given. */
export function stabilityChecks(given: Given, weight: Weight, trace: Trace): StabilityCheck[] {
  const top = given.topHeight ?? given.pushHeight;
  const checks: StabilityCheck[] = [];
  if (given.piece === 'low cabinet' && top > lowCabinet)
    throw new InputError({
      field: 'piece',
      message: `got "low cabinet" with its top at ${Math.round(top * 1000)} mm, takes "tall cabinet" over ${lowCabinet * 1000} mm`,
    });
  if (given.piece !== undefined) {
    for (const situation of situationsOf(given.piece, top)) {
      trace.note(
        `${situation.label}: ${situation.down} N down at ${situation.inset * 1000} mm in${situation.outward > 0 ? `, ${situation.outward} N outward` : ''}; after the kind of test in ${situation.like ?? 'furniture standards'}, not a certificate.`,
        situation.citation,
      );
      for (const { name, side } of sidesOf(given, weight, given.floorTilt))
        // A person at an end tips a bench over its end alone.
        if (situation.label !== 'one person sits at an end' || name === 'over an end')
          checks.push(check(name, side, situation, 1));
    }
  }
  if (given.edgeLoad > 0 || given.push > 0) {
    // On the very edge: the safe side for a force that the user gives.
    const own: Situation = {
      label: 'the forces given',
      down: given.edgeLoad,
      inset: 0,
      outward: given.push,
      height: given.pushHeight,
    };
    const level = { ...given, endBase: undefined, piece: undefined };
    for (const { name, side } of sidesOf(level, weight, 0)) checks.push(check(name, side, own, given.factor));
  }
  return checks;
}

const passes = (c: StabilityCheck): boolean => c.factor === undefined || c.factor >= c.wanted * (1 - 1e-12);

/** A check as a row of the answer. */
export const checkRow = (c: StabilityCheck) => ({
  situation: c.situation.label,
  side: c.side,
  factor: c.factor,
  tipsAt: c.tipsAt,
  result: passes(c) ? 'stands' : 'tips',
});

/** What pushes it over, in newtons and in words. */
export function answerOf(given: Given, checks: readonly StabilityCheck[]): string {
  if (checks.length === 0) return 'Not checked: no kind of piece and no force was given.';
  const reserve = (c: StabilityCheck): number => (c.factor ?? Infinity) / c.wanted;
  const worst = checks.reduce((a, b) => (reserve(b) < reserve(a) ? b : a));
  if (!passes(worst)) return `Tips ${worst.side}: ${worst.situation.label}${forceOf(worst)}.`;
  const n = checks.length === 1 ? 'the one situation' : `all ${checks.length} situations`;
  const ends = endsUnchecked(given) ? ', the ends not checked' : '';
  return worst.factor === undefined
    ? `Stands: nothing tips it in ${n}${ends}.`
    : `Stands in ${n}${ends}; nearest to tipping ${worst.side}: ${worst.situation.label}, held ${worst.factor.toFixed(1)} times${forceOf(worst)}.`;
}

/** The force that tips it, with where it acts and what acts beside it. */
function forceOf({ situation, tipsAt, tipsBy }: StabilityCheck): string {
  if (tipsAt === undefined) return '';
  const { down, inset, outward } = situation;
  const where = inset > 0 && down > 0 ? `${Math.round(inset * 1000)} mm inside the edge` : 'there';
  const force = `${Math.floor(tipsAt)} N`;
  if (tipsBy === 'load')
    return `; ${force} ${where}${outward > 0 ? ` with ${outward} N outward` : ''} tips it`;
  return down > 0 ? `; ${force} outward with ${down} N ${where} tips it` : `; ${force} there tips it`;
}

const endsUnchecked = (given: Given): boolean => given.piece !== undefined && given.endBase === undefined;

/** What a kind of furniture always needs. */
export function stabilityCautions(given: Given): Caution[] {
  return [
    ...(given.piece === 'tall cabinet' || given.piece === 'drawers'
      ? [danger('fix it to the wall whatever comes out: children climb drawers and shelves')]
      : [danger('fix tall or narrow furniture to the wall where children are, whatever this page says')]),
    ...(given.piece === 'drawers' && given.openReach === 0
      ? [note('give openReach, and put the loaded open drawers among the parts where they then stand')]
      : []),
    ...(given.piece === undefined
      ? []
      : [note('it may not be stood or climbed on: that is outside this recipe')]),
    ...(endsUnchecked(given) ? [note('the ends were not checked: give endBase and endOverhang')] : []),
  ];
}

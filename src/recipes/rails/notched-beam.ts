import { InputError } from '../../units/input-error.js';
import type { Trace } from '../../engine/trace.js';
import type { BeamGiven } from './beam-case.js';
import type { Solved } from './beam-solver.js';
import type { Material } from './design-values.js';
import { notchStrength, type Notch } from './notched-rail.js';
import type { Section } from './section.js';

/** The shortest distance between two supports, metres: the span that the limits of a notch refer to. */
export function shortestBay(given: BeamGiven): number {
  const places = [0, ...given.supports.map((s) => s.position), given.length].sort((a, b) => a - b);
  const bays = places.slice(1).map((x, i) => x - (places[i] as number));
  return Math.min(...bays.filter((x) => x > 1e-9));
}

/**
 * Force or moment at a notch over what the notch carries, the larger. The notch lies at its distance from every support,
 * on the side where it fares worst. @throws InputError where the distance from a support leaves the beam
 */
export function notchUseOf(
  notch: Notch,
  section: Section,
  solved: Solved,
  material: Material,
  trace: Trace,
): number | undefined {
  const { length, supports } = solved.beam;
  const places = supports
    .flatMap((s) => [s.position - notch.at, s.position + notch.at])
    .filter((x) => x >= -1e-9 && x <= length + 1e-9);
  if (places.length === 0)
    throw new InputError({
      field: 'notch.at',
      message: `got ${(notch.at * 1000).toFixed(0)} mm, takes a distance from a support that lies on the beam`,
    });
  const { shear, moment } = notchStrength(notch, section, material, trace);
  const there = places.flatMap((x) => (['left', 'right'] as const).map((side) => solved.at(x, side)));
  const most = (of: (s: { readonly V: number; readonly M: number }) => number): number =>
    Math.max(...there.map((s) => Math.abs(of(s))));
  const [V, M] = [most((s) => s.V), most((s) => s.M)];
  const uses = [...(shear === undefined ? [] : [V / shear]), ...(moment === undefined ? [] : [M / moment])];
  trace.note(
    `At the notch, where it fares worst: shear force ${V.toFixed(0)} N, moment ${M.toFixed(1)} N·m.`,
  );
  return uses.length === 0 ? undefined : Math.max(...uses);
}

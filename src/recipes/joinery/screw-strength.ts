import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import {
  endGrainShare,
  headAllowed,
  steelAllowed,
  steelBreaks,
  threadAllowed,
  threadBreaks,
} from '../../materials/fasteners/screw-axial.js';
import {
  bendingYieldOf,
  olderSideways,
  penetrationFactor,
  weakestMode,
} from '../../materials/fasteners/screw-lateral.js';
import {
  axialDistances,
  lateralDistances,
  screwSteels,
  tensileOf,
  type ScrewSteel,
} from '../../materials/fasteners/screw-spacing.js';
import { gaugeOf } from './screw-size.js';

/** What a screw's strength depends on besides its size and the wood. */
export const screwFields = {
  boardThickness: field.length({
    label: 'head-side thickness',
    help: 'Thickness of the piece under the head.',
    above: '0 mm',
    max: '300 mm',
    optional: true,
  }),
  boardGravity: field.ratio({
    label: 'head-side gravity',
    help: 'Specific gravity of the piece under the head; leave it out where it is that of the other piece.',
    min: 0.1,
    max: 1.3,
    optional: true,
  }),
  headDiameter: field.length({
    label: 'head diameter',
    help: 'Leave it out for twice the shank.',
    above: '0 mm',
    max: '60 mm',
    optional: true,
  }),
  steel: field.choice(screwSteels, { label: 'steel of the screw', default: 'mild steel' }),
  tensile: field.stress({
    label: 'steel strength',
    help: 'Tensile strength as declared; give it in place of that of the kind.',
    above: '0 MPa',
    max: '2000 MPa',
    optional: true,
  }),
  drilled: field.flag({
    label: 'predrilled',
    help: 'Whether holes are drilled for the screws.',
    default: true,
  }),
  breaking: field.flag({
    label: 'show breaking load',
    help: 'Whether the average load at which the screws come out is shown too; nothing is designed by it.',
    default: false,
  }),
} as const;

/** Groups of timber of the older rule for screws loaded sideways, with their constants. */
const groups = { I: 4800, II: 3960, III: 3240, IV: 2520 } as const;

interface Given {
  readonly diameter: number;
  readonly penetration: number;
  readonly grain: 'side' | 'end';
  readonly group?: keyof typeof groups | undefined;
  readonly boardThickness?: number | undefined;
  readonly boardGravity?: number | undefined;
  readonly headDiameter?: number | undefined;
  readonly steel: ScrewSteel;
  readonly tensile?: number | undefined;
  readonly drilled: boolean;
  readonly breaking: boolean;
}

/** One screw pulled along its axis, newtons: the least of thread, steel and head. */
export interface Axial {
  /** Average pull that ends the hold; only where it was asked for. */
  readonly breaks: number | undefined;
  readonly allowed: number;
  readonly governedBy: string;
  readonly thread: number;
  readonly steel: number;
  readonly head: number | undefined;
}

/** What one screw holds along its axis: allowed, and at breaking where that is asked for. */
export function alongTheScrew(given: Given, gravity: number, root: number, trace: Trace): Axial {
  const at = { G: gravity, D: given.diameter, L: given.penetration };
  const end = given.grain === 'end';
  const thread = end ? 0 : trace.evaluate(threadAllowed, at);
  if (end)
    trace.note(
      `In end grain no withdrawal load is allowed${given.breaking ? '; what pulls the screw out is taken as 60 % of side grain (common practice)' : ''}.`,
      cite('structural-handbook-screws', 'p. 170: no withdrawal load in end grain'),
    );
  const f_u = given.tensile ?? tensileOf(given.steel);
  if (given.tensile === undefined)
    trace.warn(
      note(
        `the steel is taken to hold ${Math.round(f_u / 1e6)} MPa, a low figure of ${given.steel}; a declared strength goes before it`,
      ),
    );
  const F_u = trace.evaluate(steelBreaks, { f_u, d_r: root });
  const steel = trace.evaluate(steelAllowed, { F_u });
  const head =
    given.boardThickness === undefined
      ? undefined
      : trace.evaluate(headAllowed, {
          D_H: given.headDiameter ?? 2 * given.diameter,
          G: given.boardGravity ?? gravity,
          t: given.boardThickness,
        });
  const least = [
    { value: thread, by: end ? 'end grain: no load is allowed' : 'the thread in the wood' },
    { value: steel, by: 'the steel of the screw' },
    ...(head === undefined ? [] : [{ value: head, by: 'the head pulling through' }]),
  ].reduce((a, b) => (b.value < a.value ? b : a));
  return {
    breaks: given.breaking
      ? Math.min(trace.evaluate(threadBreaks, at) * (end ? endGrainShare : 1), F_u)
      : undefined,
    allowed: least.value,
    governedBy: least.by,
    thread,
    steel,
    head,
  };
}

/**
 * What one screw is allowed sideways, newtons: the least yield mode of both pieces, where the thickness of the one under
 * the head is known, and the older rule, where the group is; none under six diameters of penetration.
 */
export function acrossTheScrew(
  given: Given,
  gravity: number,
  root: number,
  trace: Trace,
): { readonly value: number | undefined; readonly governedBy: string } {
  const share = penetrationFactor(given.penetration, given.diameter);
  const end = given.grain === 'end' ? 2 / 3 : 1;
  const values: { value: number; by: string }[] = [];
  if (given.boardThickness !== undefined) {
    const { mode, value } = weakestMode({
      diameter: root,
      mainGravity: gravity,
      sideGravity: given.boardGravity ?? gravity,
      mainLength: given.penetration,
      sideLength: given.boardThickness,
      bendingYield: bendingYieldOf(gaugeOf(given.diameter)),
    });
    trace.note(
      `Sideways by the yield modes of both pieces: mode ${mode}, ${Math.round(value)} N for one screw.`,
      cite('nds-2018', '12.3, wood screws by the root diameter', { read: 'memory' }),
    );
    values.push({ value, by: `yield mode ${mode}` });
  }
  if (given.group !== undefined)
    values.push({
      value: trace.evaluate(olderSideways, { C: groups[given.group], D: given.diameter }),
      by: 'the older rule C D²',
    });
  const least = values.reduce<{ value: number; by: string } | undefined>(
    (a, b) => (a === undefined || b.value < a.value ? b : a),
    undefined,
  );
  if (!least) return { value: undefined, governedBy: 'not checked: give boardThickness, or group' };
  trace.note(
    `Penetration of ${(given.penetration / given.diameter).toFixed(1)} diameters: ${Math.round(share * 100)} % of the value sideways; none under 6, all from 10.`,
    cite('awc-faq-penetration', 'penetration depth factor'),
  );
  return {
    value: least.value * share * end,
    governedBy: share === 0 ? 'less than six diameters of penetration: nothing' : least.by,
  };
}

/** Least distances of screws loaded sideways and pulled out, side by side. */
export function distancesOf(diameter: number, drilled: boolean) {
  const pulled = axialDistances(diameter);
  return [
    ...lateralDistances(diameter, drilled).map((l) => ({
      place: l.place,
      sideways: l.least,
      pulled: pulled.find((a) => a.place === l.place)?.least,
    })),
    ...pulled
      .filter((a) => a.place === 'end' || a.place === 'edge')
      .map((a) => ({ place: a.place, sideways: undefined, pulled: a.least })),
  ];
}

// Slabs pressed one upon another, and a small panel pressed at its edges and faces at once. Metres, newtons, seconds.
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import { byForce, bySpacing, cover, total } from './clamp-formulas.js';
import { mm } from './salvage-caution.js';

const length = (label: string) => variable('length', label, { unit: 'mm' });
const force = (label: string) => variable('force', label, { unit: 'N' });

export const facePressure = formula({
  symbol: 'p_i',
  result: variable('pressure', 'pressure on the joints of one slab', { unit: 'MPa' }),
  expression: 'F / (l w)',
  variables: { F: force('force through the stack'), l: length('length pressed'), w: length('width pressed') },
  basis: 'definition',
});
/** Cauls across the slabs, each pressed at both ends. */
export const caulCount = formula({
  symbol: 'k',
  result: variable('count', 'pairs of cauls'),
  expression: 'max(ceil(n_F / 2), n_c)',
  variables: {
    n_F: variable('count', 'clamps by force'),
    n_c: variable('count', 'places by spacing'),
  },
  basis: 'definition',
});
/** A panel pressed off its middle bends as under an even load: M = F e = P W / 8. */
export const holdDown = formula({
  symbol: 'P',
  result: force('force of the cauls that holds the panel flat'),
  expression: '8 F e / W',
  variables: {
    F: force('force at the edges'),
    e: length('how far it is off the middle'),
    W: length('width of the panel'),
  },
  basis: 'estimate',
});
export const pressFormulas = [total, byForce, cover, bySpacing, facePressure, caulCount, holdDown] as const;

/** A slab as it goes under the clamps. */
export interface Slab {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly glueLines: number;
  readonly thinnest?: number | undefined;
}

/** Slabs are told apart from half a millimetre on. */
const alike = 0.0005;

/** What lies beside or on a slab that is shorter, narrower or thinner than the rest, in words. */
export function packingOf(slab: Slab, longest: number, widest: number): string {
  const parts = [
    longest - slab.length > alike
      ? `${mm(longest - slab.length)} long and ${mm(slab.thickness)} thick at its end`
      : '',
    widest - slab.width > alike
      ? `${mm(widest - slab.width)} wide and ${mm(slab.thickness)} thick at its edge`
      : '',
    slab.thinnest !== undefined && slab.thickness - slab.thinnest > alike
      ? `up to ${mm(slab.thickness - slab.thinnest)} over its thin place`
      : '',
  ].filter(Boolean);
  return parts.length === 0 ? 'none' : parts.join('; ');
}

interface Press {
  readonly pressure: number;
  readonly clampForce: number;
  readonly caulThickness: number;
  readonly head: number;
}

/** What either way of pressing takes. */
interface Pressed {
  readonly force: number;
  readonly cauls: number;
  readonly clamps: number;
  readonly forceEach: number;
  readonly caulForceEach?: number;
  readonly reachNeeded: number;
  readonly joints: readonly {
    readonly slab: number;
    readonly glueLines: number;
    readonly bare: number;
    readonly packed: number;
    readonly packing: string;
  }[];
}

/** Force, cauls and clamps of a stack, and the pressure on the joints of each slab without and with packing. */
export function stackPress(slabs: readonly Slab[], press: Press, trace: Trace): Pressed {
  const L = Math.max(...slabs.map((s) => s.length));
  const W = Math.max(...slabs.map((s) => s.width));
  const F = trace.evaluate(total, { p: press.pressure, L, h: W }, 'force through the whole stack');
  const n_F = trace.evaluate(byForce, { F, q: press.clampForce });
  // The force spreads through the caul, then to the first glue line of the outermost slab.
  const first = Math.min(...[slabs[0], slabs.at(-1)].map((s) => (s ? s.thickness / (s.glueLines + 1) : 0)));
  const widened = press.head + 2 * press.caulThickness;
  const c = trace.evaluate(cover, { a: widened, k: press.head, w: first, t: press.caulThickness });
  const n_c = trace.evaluate(bySpacing, { L, c });
  const cauls = trace.evaluate(caulCount, { n_F, n_c });
  const joints = slabs.map((slab, i) => ({
    slab: i + 1,
    glueLines: slab.glueLines,
    bare: trace.evaluate(
      facePressure,
      { F, l: slab.length, w: slab.width },
      `pressure on slab ${i + 1} without packing`,
    ),
    packed: F / (L * W),
    packing: packingOf(slab, L, W),
  }));
  return {
    force: F,
    cauls,
    clamps: 2 * cauls,
    forceEach: F / (2 * cauls),
    reachNeeded: slabs.reduce((sum, s) => sum + s.thickness, 0) + 2 * press.caulThickness,
    joints,
  };
}

/** Edges and faces of one panel at once: clamps across, and cauls that hold it flat with their own clamps. */
export function twoWayPress(slab: Slab, press: Press & { readonly offset: number }, trace: Trace): Pressed {
  const { length: L, width: W, thickness: h, glueLines } = slab;
  const F = trace.evaluate(total, { p: press.pressure, L, h }, 'force on the edges');
  const n_F = trace.evaluate(byForce, { F, q: press.clampForce });
  const strip = W / (glueLines + 1);
  const c = trace.evaluate(cover, { a: press.head, k: press.head, w: strip, t: 0 });
  const n_c = trace.evaluate(bySpacing, { L, c });
  const edge = Math.max(n_F, n_c);
  const P = trace.evaluate(holdDown, { F, e: press.offset, W });
  // A caul stands beside every clamp, so that no joint between two of them is left free to rise.
  const cauls = Math.max(edge, 2);
  return {
    force: F,
    cauls,
    clamps: edge + 2 * cauls,
    forceEach: F / edge,
    caulForceEach: P / (2 * cauls),
    reachNeeded: W,
    joints: [
      { slab: 1, glueLines, bare: press.pressure, packed: press.pressure, packing: packingOf(slab, L, W) },
    ],
  };
}

import type { Piece, Section } from './section.js';

/** What a section does under load, with the stiffness of its timber in it. SI units. */
export interface SectionFacts {
  /** Bending stiffness, N·m². */
  readonly EI: number;
  /** Shear stiffness G A' with the section's form factor, N; infinite where shear deflection is left out. */
  readonly GA: number;
  /** Greatest bending stress for a moment of 1 N·m, Pa. */
  readonly stressByMoment: number;
  /** Greatest shear stress for a shear force of 1 N, Pa. */
  readonly stressByShear: number;
  readonly area: number;
  readonly width: number;
  readonly depth: number;
  /** Height of the neutral axis over the bottom, m. */
  readonly axis: number;
}

/** A horizontal strip of a section: all its timber at one height. */
export interface Strip {
  readonly bottom: number;
  readonly top: number;
  readonly width: number;
  readonly E: number;
  readonly G: number;
}

/**
 * Stiffness and stress factors of a section. Solid, round and box sections are of one timber; layers and pieces may
 * each have a modulus of their own, and their shear modulus then keeps the ratio of the whole.
 * @param E modulus of elasticity, Pa @param G shear modulus, Pa; left out, or infinite, where shear deflection is left out
 */
export function sectionFacts(section: Section, E: number, G: number = Infinity): SectionFacts {
  switch (section.shape) {
    case 'round': {
      const d = section.diameter;
      const area = (Math.PI * d ** 2) / 4;
      const I = (Math.PI * d ** 4) / 64;
      // 9/10 of the area works in shear, and the greatest stress is 4/3 of the mean.
      return {
        EI: E * I,
        GA: 0.9 * G * area,
        stressByMoment: d / 2 / I,
        stressByShear: 4 / (3 * area),
        area,
        width: d,
        depth: d,
        axis: d / 2,
      };
    }
    case 'solid':
    case 'box':
      return stacked(stripsOf(section, E, G));
    case 'layers':
      return section.loose ? alike(section.pieces, E, G, true) : stacked(stripsOf(section, E, G));
    case 'beside':
      return alike(section.pieces, E, G, false);
  }
}

/** The strips of a solid section, a box or glued layers, in any order; the lowest stands on zero. */
export function stripsOf(
  section: Extract<Section, { shape: 'solid' | 'box' | 'layers' }>,
  E: number,
  G: number = Infinity,
): readonly Strip[] {
  if (section.shape === 'solid') return [{ bottom: 0, top: section.depth, width: section.width, E, G }];
  if (section.shape === 'box') {
    const { width, depth, web, flange } = section;
    return [
      { bottom: 0, top: flange, width, E, G },
      { bottom: flange, top: depth - flange, width: 2 * web, E, G },
      { bottom: depth - flange, top: depth, width, E, G },
    ];
  }
  let top = section.pieces.reduce((s, p) => s + p.depth, 0);
  return section.pieces.map((p) => {
    const strip = { bottom: top - p.depth, top, width: p.width, E: p.modulus ?? E, G: ownG(p, E, G) };
    top -= p.depth;
    return strip;
  });
}

const ownG = (p: Piece, E: number, G: number): number => (G * (p.modulus ?? E)) / E;

/**
 * Strips glued one on another: plane sections stay plane. The shear stiffness follows from the energy of the shear
 * flow, 1/GA' = ∫ S_E² / (G b) dy / EI², which is 5/6 of the area for a rectangle.
 */
function stacked(strips: readonly Strip[]): SectionFacts {
  let EA = 0;
  let first = 0;
  let area = 0;
  for (const s of strips) {
    const a = s.width * (s.top - s.bottom);
    area += a;
    EA += s.E * a;
    first += s.E * a * ((s.top + s.bottom) / 2);
  }
  const axis = first / EA;
  let EI = 0;
  for (const s of strips) EI += (s.E * s.width * ((s.top - axis) ** 3 - (s.bottom - axis) ** 3)) / 3;
  let stressByMoment = 0;
  for (const s of strips)
    stressByMoment = Math.max(
      stressByMoment,
      (s.E * Math.max(Math.abs(s.top - axis), Math.abs(s.bottom - axis))) / EI,
    );
  // S_E(y), the stiffness-weighted first moment of all above y, is a parabola in each strip.
  const down = [...strips].sort((a, b) => b.top - a.top);
  let above = 0;
  let stressByShear = 0;
  let soft = 0;
  for (const s of down) {
    const [u, v] = [s.top - axis, s.bottom - axis];
    const half = (s.E * s.width) / 2;
    const at = (y: number): number => above + half * (u * u - y * y);
    // Shear is greatest where the strip comes nearest to the axis.
    const nearest = Math.min(Math.max(0, v), u);
    stressByShear = Math.max(stressByShear, at(nearest) / (EI * s.width));
    // Integral of (c - half y²)² from v to u, with c = above + half u².
    const c = above + half * u * u;
    const p = (y: number): number => c * c * y - (2 * c * half * y ** 3) / 3 + (half * half * y ** 5) / 5;
    soft += (p(u) - p(v)) / (s.G * s.width);
    above = at(v);
  }
  const width = Math.max(...strips.map((s) => s.width));
  // The lowest strip stands on zero.
  const depth = (down[0] as Strip).top;
  return {
    EI,
    GA: EI ** 2 / soft,
    stressByMoment,
    stressByShear,
    area,
    width,
    depth,
    axis,
  };
}

/** Pieces that sag alike, each about its own middle: they share the load by their stiffness. */
function alike(pieces: readonly Piece[], E: number, G: number, onAnother: boolean): SectionFacts {
  const EIs = pieces.map((p) => ((p.modulus ?? E) * p.width * p.depth ** 3) / 12);
  const EI = EIs.reduce((a, b) => a + b, 0);
  let GA = 0;
  let stressByMoment = 0;
  let stressByShear = 0;
  for (const [i, p] of pieces.entries()) {
    const part = (EIs[i] as number) / EI;
    GA += (5 / 6) * ownG(p, E, G) * p.width * p.depth;
    stressByMoment = Math.max(stressByMoment, (6 * part) / (p.width * p.depth ** 2));
    stressByShear = Math.max(stressByShear, (1.5 * part) / (p.width * p.depth));
  }
  const depths = pieces.map((p) => p.depth);
  const widths = pieces.map((p) => p.width);
  const sum = (list: number[]): number => list.reduce((a, b) => a + b, 0);
  const depth = onAnother ? sum(depths) : Math.max(...depths);
  return {
    EI,
    GA,
    stressByMoment,
    stressByShear,
    area: sum(pieces.map((p) => p.width * p.depth)),
    width: onAnother ? Math.max(...widths) : sum(widths),
    depth,
    axis: depth / 2,
  };
}

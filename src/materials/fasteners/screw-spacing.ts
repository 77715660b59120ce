import type { Citation } from '../../engine/source.js';
import { tableRows } from '../data-tables.js';

/** A least distance, in metres, with its source. */
export interface LeastDistance {
  readonly place: string;
  readonly least: number;
  readonly citation: Citation;
}

/**
 * Least spacings, end and edge distances of screws loaded sideways, metres: at an angle to the grain (radians), with or
 * without a drilled hole. Source: EN 1995-1-1 Table 8.2.
 */
export function lateralDistances(diameter: number, drilled: boolean, angle = 0): readonly LeastDistance[] {
  return tableRows('screw-spacings.en-1995-1-1')
    .filter((r) => (r.text('drilled') === 'yes') === drilled)
    .map((r) => {
      const part = (column: string): number => r.number(column) as number;
      const diameters =
        part('base') + part('along') * Math.abs(Math.cos(angle)) + part('across') * Math.abs(Math.sin(angle));
      return { place: r.text('place'), least: diameters * diameter, citation: r.citation };
    });
}

/** Least spacings, end and edge distances of screws pulled along their axis, metres. Source: EN 1995-1-1 Table 8.6. */
export function axialDistances(diameter: number): readonly LeastDistance[] {
  return tableRows('screw-axial-spacings.en-1995-1-1').map((r) => ({
    place: r.text('place'),
    least: (r.number('diameters') as number) * diameter,
    citation: r.citation,
  }));
}

/** Tensile strength of a kind of screw steel, pascals, where its maker declares none; a choice on the low side. */
export const screwSteels = ['mild steel', 'brass', 'hardened'] as const;
export type ScrewSteel = (typeof screwSteels)[number];
export const tensileOf = (steel: ScrewSteel): number =>
  (tableRows('screw-steels')
    .find((r) => r.text('steel') === steel)
    ?.number('tensile_mpa') as number) * 1e6;

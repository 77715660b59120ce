import type { ChartSpec } from './chart-spec.js';

/** A place in the picture, in the picture's own unit (mm unless you say otherwise), x to the right, y upward. */
export type Place = readonly [x: number, y: number];

/** What a shape is filled with; each has its own hatching or edge, so that it reads in grey too. */
export type Fill = 'wood' | 'woodDark' | 'waste' | 'accent' | 'ground' | 'none';

interface Looks {
  readonly fill?: Fill;
  /** Lines drawn over a rectangle: `grain` along x, `grainUp` along y, `waste` slanting. */
  readonly hatch?: 'grain' | 'grainUp' | 'waste';
  readonly dashed?: boolean;
  /** Line weight in px, default 1.2. */
  readonly weight?: number;
  /** Words in the middle of the shape; left out where they would not fit, kept in the tooltip. */
  readonly label?: string;
}

/** The shapes of a picture, all places and sizes in its unit. Later shapes lie over earlier ones of their kind. */
export type Shape =
  | ({
      readonly kind: 'rectangle';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    } & Looks)
  | ({ readonly kind: 'polygon'; readonly points: readonly Place[] } & Looks)
  | ({ readonly kind: 'polyline'; readonly points: readonly Place[]; readonly arrow?: boolean } & Omit<
      Looks,
      'fill' | 'hatch'
    >)
  | ({ readonly kind: 'circle'; readonly x: number; readonly y: number; readonly radius: number } & Looks)
  /** From angle to angle, degrees anticlockwise from the x direction. */
  | ({
      readonly kind: 'arc';
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    } & Omit<Looks, 'fill' | 'hatch'>)
  /** A dimension line with an arrow at each end and its text; `offset` moves it sideways off the two points, in px, to the left of the way from -> to. */
  | {
      readonly kind: 'dimension';
      readonly from: Place;
      readonly to: Place;
      readonly text: string;
      readonly offset?: number;
    }
  /** Words at a place; `dx`, `dy` in px (dy upward). */
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly align?: 'left' | 'center' | 'right';
      readonly dx?: number;
      readonly dy?: number;
      readonly bold?: boolean;
      readonly size?: number;
    };

export type Of<K extends Shape['kind']> = Extract<Shape, { kind: K }>;
export interface Channels {
  readonly x: ChartSpec;
  readonly y: ChartSpec;
}

export interface DrawingFrame {
  /** px for one unit along x */
  readonly scale: number;
  readonly stretch: number;
  readonly domainX: readonly number[];
  readonly domainY: readonly number[];
}

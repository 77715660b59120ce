import type { Place, Shape } from './drawing.js';

type Of<K extends Shape['kind']> = Extract<Shape, { readonly kind: K }>;
/** What may be added to a shape beyond its place. */
type Style<K extends Shape['kind'], Own extends PropertyKey> = Omit<Of<K>, 'kind' | Own>;

/** A rectangle by its lower left corner. */
export const rectangle = (
  x: number,
  y: number,
  width: number,
  height: number,
  style: Style<'rectangle', 'x' | 'y' | 'width' | 'height'> = {},
): Shape => ({ kind: 'rectangle', x, y, width, height, ...style });

/** A closed outline. */
export const polygon = (points: readonly Place[], style: Style<'polygon', 'points'> = {}): Shape => ({
  kind: 'polygon',
  points,
  ...style,
});

/** An open line through some points. */
export const polyline = (points: readonly Place[], style: Style<'polyline', 'points'> = {}): Shape => ({
  kind: 'polyline',
  points,
  ...style,
});

/** A straight line from one place to another. */
export const line = (from: Place, to: Place, style: Style<'polyline', 'points'> = {}): Shape =>
  polyline([from, to], style);

/** A heavy arrow that ends at the second place: a force, or a way to go. */
export const arrow = (from: Place, to: Place): Shape => line(from, to, { arrow: true, weight: 2.4 });

/** Words at a place. */
export const words = (
  x: number,
  y: number,
  text: string,
  style: Style<'text', 'x' | 'y' | 'text'> = {},
): Shape => ({ kind: 'text', x, y, text, ...style });

/** A dimension line, moved by `offset` px to the left of its direction. */
export const dimension = (from: Place, to: Place, text: string, offset: number): Shape => ({
  kind: 'dimension',
  from,
  to,
  text,
  offset,
});

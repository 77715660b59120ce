import { drawing, type Shape } from '../../charts/drawing.js';
import { dimension, line, rectangle, words } from '../../charts/shapes.js';
import { mm } from './salvage-caution.js';

/** The layers seen from the end of the slab, with what flattening and the spare take from either face hatched. */
export function layerDrawing(
  topThickness: number,
  answer: { readonly layers: number; readonly layerPlaned: number },
) {
  const glued = answer.layers * answer.layerPlaned * 1000;
  const wide = glued * 2.4;
  const off = (glued - topThickness * 1000) / 2;
  return drawing({
    title: 'The slab seen from its end',
    subtitle: off > 1e-6 ? `Hatched: planed off, ${mm(off / 1000)} from each face` : 'Nothing is planed off',
    maxHeight: 320,
    shapes: [
      ...boards(answer.layers, wide, glued),
      ...(off > 1e-6
        ? [0, glued - off].map((y) => rectangle(0, y, wide, off, { fill: 'waste', hatch: 'waste' }))
        : []),
      ...names(answer.layers, wide, glued, off),
      dimension([0, 0], [0, glued], `${answer.layers} × ${mm(answer.layerPlaned)} = ${mm(glued / 1000)}`, 14),
      dimension([wide, off], [wide, glued - off], `top ${mm(topThickness)}`, -14),
      ...middleLine(answer.layers, wide, glued / 2),
    ],
  });
}

/** Layers alternately light and dark; too many to tell apart are drawn as one. */
function boards(layers: number, wide: number, glued: number): Shape[] {
  if (layers > 60) return [rectangle(0, 0, wide, glued, { fill: 'wood', hatch: 'grain' })];
  const high = glued / layers;
  return Array.from({ length: layers }, (_, i) =>
    rectangle(0, i * high, wide, high, { fill: i % 2 === 0 ? 'wood' : 'woodDark' }),
  );
}

const isNamed = (layers: number): boolean => layers <= 12;

/** The name of a layer stands in what is left of it. */
function names(layers: number, wide: number, glued: number, off: number): Shape[] {
  if (!isNamed(layers)) return [];
  const l = glued / layers;
  return Array.from({ length: layers }, (_, i): Shape[] => {
    const [low, high] = [Math.max(off, i * l), Math.min(glued - off, (i + 1) * l)];
    return high > low ? [words(wide / 4, (low + high) / 2, `layer ${i + 1}`)] : [];
  }).flat();
}

/** The middle of the slab; of an odd number of layers its line is broken where the name of the middle one stands. */
function middleLine(layers: number, wide: number, y: number): Shape[] {
  const broken = isNamed(layers) && layers % 2 === 1;
  const parts = broken ? ([[-0.03, 0.16], [0.34, 1.03]] as const) : ([[-0.03, 1.03]] as const); // prettier-ignore
  return parts.map(([from, to]) => line([from * wide, y], [to * wide, y], { dashed: true }));
}

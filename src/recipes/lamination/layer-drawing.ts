import { drawing, type Shape } from '../../charts/drawing.js';
import { mm } from './salvage-caution.js';

/** The layers seen from the end of the slab, with what flattening and the spare take from either face hatched. */
export function layerDrawing(
  topThickness: number,
  answer: { readonly layers: number; readonly layerPlaned: number },
) {
  const l = answer.layerPlaned * 1000;
  const glued = answer.layers * l;
  const T = topThickness * 1000;
  const wide = glued * 2.4;
  const off = (glued - T) / 2;
  const boards: Shape[] =
    answer.layers > 60
      ? [{ kind: 'rectangle', x: 0, y: 0, width: wide, height: glued, fill: 'wood', hatch: 'grain' }]
      : Array.from({ length: answer.layers }, (_, i): Shape => ({
          kind: 'rectangle',
          x: 0,
          y: i * l,
          width: wide,
          height: l,
          fill: i % 2 === 0 ? 'wood' : 'woodDark',
        }));
  // The name of a layer stands in what is left of it.
  const named = answer.layers <= 12;
  const names = Array.from({ length: named ? answer.layers : 0 }, (_, i): Shape[] => {
    const [low, high] = [Math.max(off, i * l), Math.min(glued - off, (i + 1) * l)];
    return high > low ? [{ kind: 'text', x: wide / 4, y: (low + high) / 2, text: `layer ${i + 1}` }] : [];
  }).flat();
  // The middle of the slab; of an odd number of layers its line is broken where the name of the middle one stands.
  const broken = named && answer.layers % 2 === 1;
  const middle = (
    broken
      ? [
          [-0.03, 0.16],
          [0.34, 1.03],
        ]
      : [[-0.03, 1.03]]
  ).map(([from, to]): Shape => ({
    kind: 'polyline',
    points: [
      [(from as number) * wide, glued / 2],
      [(to as number) * wide, glued / 2],
    ],
    dashed: true,
  }));
  const waste: Shape[] =
    off > 1e-6
      ? [0, glued - off].map((y) => ({
          kind: 'rectangle',
          x: 0,
          y,
          width: wide,
          height: off,
          fill: 'waste',
          hatch: 'waste',
        }))
      : [];
  return drawing({
    title: 'The slab seen from its end',
    subtitle: off > 1e-6 ? `Hatched: planed off, ${mm(off / 1000)} from each face` : 'Nothing is planed off',
    maxHeight: 320,
    shapes: [
      ...boards,
      ...waste,
      ...names,
      {
        kind: 'dimension',
        from: [0, 0],
        to: [0, glued],
        text: `${answer.layers} × ${mm(answer.layerPlaned)} = ${mm(glued / 1000)}`,
        offset: 14,
      },
      {
        kind: 'dimension',
        from: [wide, off],
        to: [wide, glued - off],
        text: `top ${mm(topThickness)}`,
        offset: -14,
      },
      ...middle,
    ],
  });
}

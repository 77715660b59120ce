import { drawing, type Shape } from '../../charts/drawing.js';
import { mm } from './salvage-caution.js';

/** The top seen from its end: slabs by turns light and dark, and what the trim takes from either edge hatched. */
export function stripEndDrawing(
  topWidth: number,
  answer: {
    readonly stripFinished: number;
    readonly gluedWidth: number;
    readonly slabs: readonly { readonly strips: number; readonly width: number }[];
  },
) {
  const high = Math.max(40, topWidth * 1000 * 0.1);
  const s = answer.stripFinished * 1000;
  const G = answer.gluedWidth * 1000;
  const trimmed = (G - topWidth * 1000) / 2;
  const many = answer.slabs.reduce((n, slab) => n + slab.strips, 0) > 150;
  let x = 0;
  const shapes = answer.slabs.flatMap((slab, i): Shape[] => {
    const from = x;
    x += slab.width * 1000;
    const fill = i % 2 === 0 ? 'wood' : 'woodDark';
    // Hundreds of strips would be a grey smear: then the slab is drawn whole.
    const boards: Shape[] = many
      ? [{ kind: 'rectangle', x: from, y: 0, width: x - from, height: high, fill }]
      : Array.from({ length: slab.strips }, (_, k): Shape => ({
          kind: 'rectangle',
          x: from + k * s,
          y: 0,
          width: s,
          height: high,
          fill,
        }));
    const words = `${slab.strips} × ${mm(answer.stripFinished)} = ${mm(slab.width)}`;
    return [
      ...boards,
      ...(answer.slabs.length > 6
        ? []
        : [{ kind: 'dimension', from: [from, high], to: [x, high], text: words, offset: 14 } as const]),
    ];
  });
  const edges: Shape[] =
    trimmed > 0
      ? [0, G - trimmed].map((at) => ({
          kind: 'rectangle',
          x: at,
          y: 0,
          width: trimmed,
          height: high,
          fill: 'waste',
          hatch: 'waste',
        }))
      : [];
  return drawing({
    title: 'The top seen from its end',
    subtitle: `${answer.slabs.length === 1 ? 'One slab' : `${answer.slabs.length} slabs`}${trimmed > 0 ? `; hatched: trimmed off, ${mm(trimmed / 1000)} from each edge` : ''}`,
    shapes: [
      ...shapes,
      ...edges,
      {
        kind: 'dimension',
        from: [trimmed, 0],
        to: [G - trimmed, 0],
        text: `top ${mm(topWidth)}`,
        offset: -14,
      },
    ],
  });
}

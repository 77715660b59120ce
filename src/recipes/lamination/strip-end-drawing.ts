import { drawing, type Shape } from '../../charts/drawing.js';
import { dimension, rectangle } from '../../charts/shapes.js';
import { mm } from './salvage-caution.js';

interface Slab {
  readonly strips: number;
  readonly width: number;
}

/** The top seen from its end: slabs alternately light and dark, and what the trim takes from either edge hatched. */
export function stripEndDrawing(
  topWidth: number,
  answer: { readonly stripFinished: number; readonly gluedWidth: number; readonly slabs: readonly Slab[] },
) {
  const { slabs } = answer;
  const high = Math.max(40, topWidth * 1000 * 0.1);
  const glued = answer.gluedWidth * 1000;
  const trimmed = (glued - topWidth * 1000) / 2;
  // Hundreds of strips would be a grey smear: then each slab is drawn whole.
  const whole = slabs.reduce((n, slab) => n + slab.strips, 0) > 150;
  let x = 0;
  const shapes = slabs.flatMap((slab, i): Shape[] => {
    const from = x;
    x += slab.width * 1000;
    const text = `${slab.strips} × ${mm(answer.stripFinished)} = ${mm(slab.width)}`;
    return [
      ...(whole ? [slabShape(from, x, high, i)] : strips(slab.strips, from, answer.stripFinished, high, i)),
      ...(slabs.length > 6 ? [] : [dimension([from, high], [x, high], text, 14)]),
    ];
  });
  const edges =
    trimmed > 0
      ? [0, glued - trimmed].map((at) => rectangle(at, 0, trimmed, high, { fill: 'waste', hatch: 'waste' }))
      : [];
  return drawing({
    title: 'The top seen from its end',
    subtitle: `${slabs.length === 1 ? 'One slab' : `${slabs.length} slabs`}${trimmed > 0 ? `; hatched: trimmed off, ${mm(trimmed / 1000)} from each edge` : ''}`,
    shapes: [...shapes, ...edges, dimension([trimmed, 0], [glued - trimmed, 0], `top ${mm(topWidth)}`, -14)],
  });
}

const fillOf = (slab: number) => (slab % 2 === 0 ? 'wood' : 'woodDark');

const slabShape = (from: number, to: number, high: number, slab: number): Shape =>
  rectangle(from, 0, to - from, high, { fill: fillOf(slab) });

/** The strips of one slab, `finished` metres wide each. */
const strips = (count: number, from: number, finished: number, high: number, slab: number): Shape[] =>
  Array.from({ length: count }, (_, k) =>
    rectangle(from + k * finished * 1000, 0, finished * 1000, high, { fill: fillOf(slab) }),
  );

import { drawing, type Shape } from '../../charts/drawing.js';
import { arrow, dimension, line, rectangle, words } from '../../charts/shapes.js';
import { both, Quantity } from '../../units/quantity.js';

interface Given {
  readonly base: number;
  readonly overhang: number;
  readonly backOverhang: number;
  readonly edgeLoad: number;
  readonly push: number;
  readonly pushHeight: number;
  readonly factor: number;
}

interface Answer {
  readonly verdict: string;
  readonly margin: number;
  readonly worseSide: string;
  readonly mass: number;
  readonly centre: number;
}

/** Places along the piece in mm from its front feet; the top's edges, its upper face and its thickness. */
interface Sizes {
  readonly base: number;
  readonly front: number;
  readonly back: number;
  readonly top: number;
  readonly thick: number;
}

/** The piece from the side: its feet, its weight and what pushes it. */
export function tippingDrawing(given: Given, answer: Answer) {
  const top = given.pushHeight * 1000;
  const sizes: Sizes = {
    base: given.base * 1000,
    front: -given.overhang * 1000,
    back: (given.base + given.backOverhang) * 1000,
    top,
    thick: Math.max(20, top * 0.04),
  };
  const forward = answer.worseSide === 'forward';
  return drawing({
    title: 'Weights and feet, from the side, front at the left',
    subtitle:
      answer.verdict !== 'tips'
        ? `${answer.verdict === 'stands' ? 'Stands' : 'Not checked'}; the line of the weight falls ${both(new Quantity('length', answer.margin))} inside the feet.`
        : 'Tips in at least one of the situations checked.',
    shapes: [
      ...piece(sizes),
      ...weight(answer, sizes),
      dimension([0, 0], [sizes.base, 0], `${sizes.base.toFixed(0)} mm`, -52),
      ...(given.edgeLoad > 0 ? edgeLoad(given.edgeLoad, sizes, forward) : []),
      ...(given.push > 0 ? push(given.push, sizes, forward) : []),
      // Centre, feet and overhang each in a row of their own under the floor, where their words cross nothing.
      ...(given.overhang > 0
        ? [dimension([sizes.front, 0], [0, 0], `${(given.overhang * 1000).toFixed(0)} mm`, -82)]
        : []),
    ],
    maxHeight: 420,
  });
}

/** Top, legs and floor. */
const piece = ({ base, front, back, top, thick }: Sizes): Shape[] => [
  rectangle(front, top - thick, back - front, thick, { fill: 'wood', hatch: 'grain' }),
  line([0, 0], [0, top - thick], { weight: 4 }),
  line([base, 0], [base, top - thick], { weight: 4 }),
  line([front - 60, 0], [back + 60, 0]),
];

/** The weight at its centre, its words on the side away from the nearer legs. */
function weight(answer: Answer, { base, top }: Sizes): Shape[] {
  const centre = answer.centre * 1000;
  const onLeft = centre > base / 2;
  return [
    arrow([centre, top * 0.55], [centre, top * 0.08]),
    words(centre, top * 0.5, `${answer.mass.toFixed(1)} kg`, {
      align: onLeft ? 'right' : 'left',
      dx: onLeft ? -8 : 8,
      bold: true,
    }),
    dimension([0, 0], [centre, 0], `${centre.toFixed(0)} mm`, -22),
  ];
}

/** A load at the edge over which the piece tips the sooner. */
function edgeLoad(force: number, { front, back, top }: Sizes, forward: boolean): Shape[] {
  const x = forward ? front : back;
  return [
    arrow([x, top * 1.28], [x, top + 2]),
    words(x, top * 1.33, new Quantity('force', force).toString(), { bold: true }),
  ];
}

/** A push against the top toward the side over which the piece tips the sooner. */
function push(force: number, { front, back, top, thick }: Sizes, forward: boolean): Shape[] {
  const x = forward ? back : front;
  const from = x + (forward ? 1 : -1) * top * 0.3;
  const y = top - thick / 2;
  return [
    arrow([from, y], [x, y]),
    words(from, y, new Quantity('force', force).toString(), {
      align: forward ? 'left' : 'right',
      dx: forward ? 6 : -6,
      bold: true,
    }),
  ];
}

import { drawing, type Shape } from '../../charts/drawing.js';
import { both, Quantity } from '../../units/quantity.js';

/** The piece from the side: its feet, its weight and what pushes it. */
export function tippingDrawing(
  given: {
    readonly base: number;
    readonly overhang: number;
    readonly backOverhang: number;
    readonly edgeLoad: number;
    readonly push: number;
    readonly pushHeight: number;
    readonly factor: number;
  },
  answer: {
    readonly safe: boolean;
    readonly margin: number;
    readonly worseSide: string;
    readonly mass: number;
    readonly centre: number;
  },
) {
  const mm = (x: number): number => x * 1000;
  const [top, thick] = [mm(given.pushHeight), Math.max(20, mm(given.pushHeight) * 0.04)];
  const shapes: Shape[] = [
    {
      kind: 'rectangle',
      x: -mm(given.overhang),
      y: top - thick,
      width: mm(given.base + given.overhang + given.backOverhang),
      height: thick,
      fill: 'wood',
      hatch: 'grain',
    },
    {
      kind: 'polyline',
      points: [
        [0, 0],
        [0, top - thick],
      ],
      weight: 4,
    },
    {
      kind: 'polyline',
      points: [
        [mm(given.base), 0],
        [mm(given.base), top - thick],
      ],
      weight: 4,
    },
    {
      kind: 'polyline',
      points: [
        [-mm(given.overhang) - 60, 0],
        [mm(given.base + given.backOverhang) + 60, 0],
      ],
    },
    {
      kind: 'polyline',
      points: [
        [mm(answer.centre), top * 0.55],
        [mm(answer.centre), top * 0.08],
      ],
      arrow: true,
      weight: 2.4,
    },
    // Beside its arrow, on the side away from the nearer legs.
    {
      kind: 'text',
      x: mm(answer.centre),
      y: top * 0.5,
      text: `${answer.mass.toFixed(1)} kg`,
      align: answer.centre > given.base / 2 ? 'right' : 'left',
      dx: answer.centre > given.base / 2 ? -8 : 8,
      bold: true,
    },
    {
      kind: 'dimension',
      from: [0, 0],
      to: [mm(answer.centre), 0],
      text: `${mm(answer.centre).toFixed(0)} mm`,
      offset: -22,
    },
    {
      kind: 'dimension',
      from: [0, 0],
      to: [mm(given.base), 0],
      text: `${mm(given.base).toFixed(0)} mm`,
      offset: -52,
    },
  ];
  const front = answer.worseSide === 'forward';
  const edgeAt = front ? -mm(given.overhang) : mm(given.base + given.backOverhang);
  if (given.edgeLoad > 0)
    shapes.push(
      {
        kind: 'polyline',
        points: [
          [edgeAt, top * 1.28],
          [edgeAt, top + 2],
        ],
        arrow: true,
        weight: 2.4,
      },
      {
        kind: 'text',
        x: edgeAt,
        y: top * 1.33,
        text: new Quantity('force', given.edgeLoad).toString(),
        bold: true,
      },
    );
  if (given.push > 0) {
    const from = front ? mm(given.base + given.backOverhang) : -mm(given.overhang);
    const out_ = from + (front ? 1 : -1) * top * 0.3;
    shapes.push(
      {
        kind: 'polyline',
        points: [
          [out_, top - thick / 2],
          [from, top - thick / 2],
        ],
        arrow: true,
        weight: 2.4,
      },
      {
        kind: 'text',
        x: out_,
        y: top - thick / 2,
        text: new Quantity('force', given.push).toString(),
        align: front ? 'left' : 'right',
        dx: front ? 6 : -6,
        bold: true,
      },
    );
  }
  // Centre, feet and overhang each in a row of their own under the floor, where their words cross nothing.
  if (given.overhang > 0)
    shapes.push({
      kind: 'dimension',
      from: [-mm(given.overhang), 0],
      to: [0, 0],
      text: `${mm(given.overhang).toFixed(0)} mm`,
      offset: -82,
    });
  return drawing({
    title: 'Weights and feet, from the side, front at the left',
    subtitle: answer.safe
      ? `Stands; the weight bears ${both(new Quantity('length', answer.margin))} inside the feet.`
      : `Not safe to the factor of ${given.factor}.`,
    shapes,
    maxHeight: 420,
  });
}

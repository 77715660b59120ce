import { drawing, type Place, type Shape } from '../../charts/drawing.js';

/** The frame to scale, pushed along its top, its sway enlarged. */
export function rackingDrawing(
  given: {
    readonly height: number;
    readonly width: number;
    readonly joint: string;
    readonly jointStiffness: number | undefined;
    readonly push: number;
  },
  sway: number,
) {
  const [h, L] = [given.height * 1000, given.width * 1000];
  const shown = h * 0.12;
  const leg = (x: number): Place[] =>
    Array.from({ length: 13 }, (_, i) => {
      const t = i / 12;
      // A bracket's curve, held upright at neither end: enough to see which way it goes.
      return [x + shown * (1.5 * t - 0.5 * t ** 3), h * t];
    });
  const shapes: Shape[] = [
    {
      kind: 'polyline',
      points: [
        [0, 0],
        [0, h],
        [L, h],
        [L, 0],
      ],
      dashed: true,
      weight: 1.2,
    },
    { kind: 'polyline', points: leg(0), weight: 4 },
    { kind: 'polyline', points: leg(L), weight: 4 },
    {
      kind: 'polyline',
      points: Array.from({ length: 25 }, (_, i): Place => [
        shown + (L * i) / 24,
        h - (given.joint === 'braced' ? 0 : 0.18 * shown * Math.sin((2 * Math.PI * i) / 24)),
      ]),
      weight: 4,
    },
    ...(given.joint === 'braced'
      ? [
          {
            kind: 'polyline',
            points: [
              [0, 0],
              [L + shown, h],
            ] as Place[],
            weight: 3,
          } as Shape,
        ]
      : []),
    {
      kind: 'polyline',
      points: [
        [-60, 0],
        [L + 60, 0],
      ],
    },
    {
      kind: 'polyline',
      points: [
        [-h * 0.28, h],
        [-12, h],
      ],
      arrow: true,
      weight: 2.4,
    },
    {
      kind: 'text',
      x: -h * 0.28,
      y: h,
      text: `${given.push.toFixed(0)} N`,
      align: 'right',
      dx: -6,
      bold: true,
    },
    {
      kind: 'dimension',
      from: [L, h],
      to: [L + shown, h],
      text: `${(sway * 1000).toPrecision(3)} mm`,
      offset: 18,
    },
    { kind: 'dimension', from: [0, 0], to: [L, 0], text: `${L.toFixed(0)} mm`, offset: -24 },
  ];
  return drawing({
    title: `Sway of the frame, ${given.jointStiffness === undefined ? `${given.joint} corners` : 'corners as given'}`,
    subtitle: 'Frame to scale, sway enlarged.',
    shapes,
    maxHeight: 400,
  });
}

import { drawing, pxPerMm, type Drawing, type Place, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { field } from '../../engine/field.js';

/** Whether a picture is fitted to the page or drawn at full size, to be printed and pricked through. */
export const pictureField = field.choice(['fitted', 'full size'], {
  label: 'scale of drawing',
  help: 'Fitted to the page, or at full size as a template.',
  default: 'fitted',
});

/** A wider one takes more than eight sheets side by side, mm. */
const widest = 1500;

/** What a joint is drawn with. */
export type JointShape = Exclude<Shape, { readonly kind: 'circle' | 'arc' }>;

/** A picture in mm; at full size with a bar to check the print against. */
export function jointDrawing(
  picture: Drawing & { readonly shapes: readonly JointShape[] },
  size: 'fitted' | 'full size',
): ChartSpec {
  if (size === 'fitted') return drawing(picture);
  const places = picture.shapes.flatMap(placesOf);
  const left = Math.min(...places.map((p) => p[0]));
  const right = Math.max(...places.map((p) => p[0]));
  const bottom = Math.min(...places.map((p) => p[1]));
  if (right - left > widest)
    return drawing({
      ...picture,
      subtitle: `Too large to print at full size (${Math.round(right - left)} mm, at most ${widest}), so fitted.`,
    });
  const y = bottom - 22;
  const bar: JointShape[] = [
    {
      kind: 'polyline',
      points: [
        [left, y],
        [left + 50, y],
      ],
      weight: 1,
    },
    ...[0, 10, 20, 30, 40, 50].map((x): JointShape => ({
      kind: 'polyline',
      points: [
        [left + x, y - 2],
        [left + x, y + 2],
      ],
      weight: 1,
    })),
    { kind: 'text', x: left, y, text: '50 mm: check it with a rule before use', align: 'left', dy: -14 },
  ];
  return drawing({
    ...picture,
    subtitle: 'Full size: print at 100 %, without fitting to the page.',
    shapes: [...picture.shapes, ...bar],
    scale: pxPerMm,
  });
}

function placesOf(s: JointShape): Place[] {
  switch (s.kind) {
    case 'rectangle':
      return [
        [s.x, s.y],
        [s.x + s.width, s.y + s.height],
      ];
    case 'polygon':
    case 'polyline':
      return [...s.points];
    case 'dimension':
      return [s.from, s.to];
    case 'text':
      return [[s.x, s.y]];
  }
}

import { withHalo } from '../../charts/axis.js';
import { textWidth } from '../../charts/text-width.js';
import { colours } from '../../charts/theme.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { Quantity } from '../../units/quantity.js';
import type { Solved } from './beam-solver.js';
import type { Load } from './beam-loads.js';

const c = colours.light;

/** Width of the drawing and of the curves under it, px. */
export const beamWide = 560;

type Spread = Extract<Load, { kind: 'spread' }>;

interface Point {
  readonly x: number;
  readonly down: boolean;
  readonly label: string;
}
interface Label {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}
/** Encodings of the two axes, shared by every layer. */
interface Axes {
  readonly x: ChartSpec;
  readonly y: ChartSpec;
}

/** The beam with its loads over it and its supports and their reactions under it. */
export function beamDrawing(solved: Solved, x: ChartSpec): ChartSpec {
  const { beam } = solved;
  const y = { field: 'y', type: 'quantitative', scale: { domain: [-1.25, 2.1], nice: false }, axis: null };
  const axes: Axes = { x: { ...x, axis: null }, y };
  const points = pointsOf(beam.loads);
  const spread = beam.loads.filter((l) => l.kind === 'spread');
  const moments = momentsOf(beam.loads);
  const heightOf = spreadHeights(spread);
  const span = beam.length * 1000 * 1.06;
  const texts = [
    ...pointLabels(points, span),
    ...spreadLabels(
      spread,
      [...points, ...moments].map((p) => p.x),
      span,
      heightOf,
    ),
    ...moments,
    ...reactionLabels(solved),
  ];
  return {
    width: beamWide,
    height: 130,
    view: { stroke: null },
    layer: [
      ...spread.map((l) => spreadLayer(l, axes, heightOf)),
      ...beamLayers(solved, axes),
      ...arrowLayers(points, axes),
      {
        data: { values: moments },
        mark: { type: 'text', fontSize: 24, color: c.ink },
        encoding: { x: axes.x, y: { ...y, field: 'signY' }, text: { field: 'sign' } },
      },
      ...withHalo({
        data: { values: texts.map((t) => inside(t, x)) },
        mark: { type: 'text', color: c.ink, align: 'center', baseline: 'middle' },
        encoding: { x: axes.x, y, text: { field: 'label' } },
      }),
    ],
  };
}

const pointsOf = (loads: readonly Load[]): Point[] =>
  loads.flatMap((l) =>
    l.kind === 'point' && l.force !== 0
      ? [{ x: l.at * 1000, down: l.force > 0, label: new Quantity('force', Math.abs(l.force)).toString() }]
      : [],
  );

/** Moments: a turning arrow beside the beam at `signY`, its label above at `y`. */
const momentsOf = (loads: readonly Load[]) =>
  loads.flatMap((l) =>
    l.kind === 'moment'
      ? [
          {
            x: l.at * 1000,
            y: 1.22,
            signY: 0.32,
            sign: l.moment >= 0 ? '↻' : '↺',
            label: new Quantity('moment', Math.abs(l.moment)).toString(),
          },
        ]
      : [],
  );

/** Height at which a spread load of some intensity is drawn; the heaviest is the highest. */
function spreadHeights(spread: readonly Spread[]): (q: number) => number {
  const heaviest = Math.max(1e-12, ...spread.flatMap((s) => [Math.abs(s.q1), Math.abs(s.q2)]));
  return (q) => 0.08 + (0.5 * Math.abs(q)) / heaviest;
}

const spreadLayer = (l: Spread, { x, y }: Axes, heightOf: (q: number) => number): ChartSpec => ({
  data: {
    values: [
      { x: l.from * 1000, y: 0.05, top: heightOf(l.q1) },
      { x: l.to * 1000, y: 0.05, top: heightOf(l.q2) },
    ],
  },
  mark: { type: 'area', color: c.series[6], opacity: 0.3, line: { color: c.series[0], strokeWidth: 1 } },
  encoding: { x, y: { ...y, field: 'top' }, y2: { field: 'y' } },
});

/** The beam and its supports: a square holds it, a triangle lets it turn, a diamond gives. */
function beamLayers({ beam }: Solved, { x, y }: Axes): ChartSpec[] {
  const feet = beam.supports.map((s) => ({
    x: s.position * 1000,
    y: -0.37,
    shape: s.turn === Infinity ? 'square' : s.lift === Infinity ? 'triangle-up' : 'diamond',
  }));
  return [
    {
      data: { values: [{ x: 0, x2: beam.length * 1000, y: 0 }] },
      mark: { type: 'rule', color: c.woodDark, strokeWidth: 9 },
      encoding: { x, x2: { field: 'x2' }, y },
    },
    {
      data: { values: feet },
      mark: { type: 'point', filled: true, size: 190, color: c.soft, opacity: 1 },
      encoding: { x, y, shape: { field: 'shape', type: 'nominal', scale: null } },
    },
  ];
}

/** Arrows of the point loads: their lines, then their heads. */
const arrowLayers = (points: readonly Point[], { x, y }: Axes): ChartSpec[] => [
  {
    data: {
      values: points.map((p) => ({ x: p.x, y: p.down ? 1.45 : 0.08, y2: p.down ? 0.08 : 1.45 })),
    },
    mark: { type: 'rule', color: c.ink, strokeWidth: 1.8 },
    encoding: { x, y, y2: { field: 'y2' } },
  },
  {
    data: { values: points.map((p) => ({ x: p.x, y: p.down ? 0.2 : 1.36, turn: p.down ? 180 : 0 })) },
    mark: { type: 'point', shape: 'triangle-up', filled: true, size: 90, color: c.ink, opacity: 1 },
    encoding: { x, y, angle: { field: 'turn', type: 'quantitative', scale: null } },
  },
];

/** Half the width of a label on the beam's scale, mm. */
const halfWidth = (label: string, span: number): number => (textWidth(label, 12) / 2 / beamWide) * span;

/** Neighbouring labels stand at two heights when they would run into one another. */
function pointLabels(points: readonly Point[], span: number): Label[] {
  let before = -Infinity;
  let raised = false;
  return points
    .slice()
    .sort((p, q) => p.x - q.x)
    .map((p) => {
      const half = halfWidth(p.label, span) + 4;
      raised = p.x - half < before ? !raised : false;
      before = p.x + half;
      return { x: p.x, y: raised ? 1.95 : 1.62, label: p.label };
    });
}

/** The label of a spread load stands clear of the arrows within it, where there is such a place. */
function spreadLabels(
  spread: readonly Spread[],
  blocked: readonly number[],
  span: number,
  heightOf: (q: number) => number,
): Label[] {
  const text = (q: number): string => new Quantity('lineLoad', q).toString();
  return spread.map((l, i) => {
    const label = l.q1 === l.q2 ? text(l.q1) : `${text(l.q1)} to ${text(l.q2)}`;
    const half = halfWidth(label, span);
    const places = [0.5, 0.25, 0.75, 0.1, 0.9].map((t) => (l.from + (l.to - l.from) * t) * 1000);
    const x = places.find((at) => blocked.every((b) => Math.abs(b - at) > half));
    return {
      x: x ?? ((l.from + l.to) / 2) * 1000,
      y: heightOf(Math.max(Math.abs(l.q1), Math.abs(l.q2))) + 0.2 + 0.28 * (i % 2),
      label,
    };
  });
}

const reactionLabels = ({ reactions }: Solved): Label[] =>
  reactions.map((r) => ({
    x: r.position * 1000,
    y: -1.02,
    label:
      new Quantity('force', r.force).toString() +
      (r.moment === 0 ? '' : `, ${new Quantity('moment', r.moment).toString()}`),
  }));

/** Moves words that would run over the edge of the drawing. */
function inside(label: Label, x: ChartSpec): Label {
  const [from, to] = (x['scale'] as { domain: readonly [number, number] }).domain;
  const half = halfWidth(label.label, to - from);
  return { x: Math.min(Math.max(label.x, from + half), to - half), y: label.y, label: label.label };
}

import { haloed } from '../../charts/axis.js';
import { textWidth } from '../../charts/text-width.js';
import { colours } from '../../charts/theme.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { Quantity } from '../../units/quantity.js';
import type { Solved } from './beam-solver.js';

const c = colours.light;

/** Width of the picture and of the curves under it, px. */
export const beamWide = 560;

/** The beam with its loads over it and its supports and their reactions under it. */
export function beamDrawing(solved: Solved, x: ChartSpec): ChartSpec {
  const { beam, reactions } = solved;
  const y = { field: 'y', type: 'quantitative', scale: { domain: [-1.25, 2.1], nice: false }, axis: null };
  const along = { ...x, axis: null };
  const points = beam.loads.flatMap((l) =>
    l.kind === 'point' && l.force !== 0
      ? [{ x: l.at * 1000, down: l.force > 0, label: new Quantity('force', Math.abs(l.force)).toString() }]
      : [],
  );
  const spread = beam.loads.flatMap((l) =>
    l.kind === 'spread'
      ? [
          {
            l,
            label:
              l.q1 === l.q2
                ? new Quantity('lineLoad', l.q1).toString()
                : `${new Quantity('lineLoad', l.q1).toString()} to ${new Quantity('lineLoad', l.q2).toString()}`,
          },
        ]
      : [],
  );
  const moments = beam.loads.flatMap((l) =>
    l.kind === 'moment'
      ? [
          {
            x: l.at * 1000,
            y: 0.32,
            sign: l.moment >= 0 ? '↻' : '↺',
            label: new Quantity('moment', Math.abs(l.moment)).toString(),
          },
        ]
      : [],
  );
  const heaviest = Math.max(1e-12, ...spread.flatMap((s) => [Math.abs(s.l.q1), Math.abs(s.l.q2)]));
  const tall = (q: number): number => 0.08 + (0.5 * Math.abs(q)) / heaviest;
  const arrows = points.map((p) => ({ x: p.x, y: p.down ? 1.45 : 0.08, y2: p.down ? 0.08 : 1.45 }));
  const layers: ChartSpec[] = spread.map(({ l }) => ({
    data: {
      values: [
        { x: l.from * 1000, y: 0.05, top: tall(l.q1) },
        { x: l.to * 1000, y: 0.05, top: tall(l.q2) },
      ],
    },
    mark: { type: 'area', color: c.series[6], opacity: 0.3, line: { color: c.series[0], strokeWidth: 1 } },
    encoding: { x: along, y: { ...y, field: 'top' }, y2: { field: 'y' } },
  }));
  layers.push({
    data: { values: [{ x: 0, x2: beam.length * 1000, y: 0 }] },
    mark: { type: 'rule', color: c.woodDark, strokeWidth: 9 },
    encoding: { x: along, x2: { field: 'x2' }, y },
  });
  layers.push(
    {
      data: { values: arrows },
      mark: { type: 'rule', color: c.ink, strokeWidth: 1.8 },
      encoding: { x: along, y, y2: { field: 'y2' } },
    },
    {
      data: { values: points.map((p) => ({ x: p.x, y: p.down ? 0.2 : 1.36, turn: p.down ? 180 : 0 })) },
      mark: { type: 'point', shape: 'triangle-up', filled: true, size: 90, color: c.ink, opacity: 1 },
      encoding: { x: along, y, angle: { field: 'turn', type: 'quantitative', scale: null } },
    },
  );
  // Neighbouring labels stand at two heights when they would run into one another.
  const span = beam.length * 1000 * 1.06;
  let before = -Infinity;
  let raised = false;
  const labels = points
    .slice()
    .sort((p, q) => p.x - q.x)
    .map((p) => {
      const half = (textWidth(p.label, 12) / 2 / beamWide) * span + 4;
      raised = p.x - half < before ? !raised : false;
      before = p.x + half;
      return { x: p.x, y: raised ? 1.95 : 1.62, label: p.label };
    });
  // The words of a spread load keep out of the way of arrows that stand in it.
  const clear = (from: number, to: number, label: string): number => {
    const half = (textWidth(label, 12) / 2 / beamWide) * span;
    const blocked = [...points, ...moments].map((p) => p.x);
    return (
      [0.5, 0.25, 0.75, 0.1, 0.9]
        .map((t) => (from + (to - from) * t) * 1000)
        .find((at) => blocked.every((b) => Math.abs(b - at) > half)) ?? ((from + to) / 2) * 1000
    );
  };
  const words = [
    ...labels,
    ...spread.map((s, i) => ({
      x: clear(s.l.from, s.l.to, s.label),
      y: tall(Math.max(Math.abs(s.l.q1), Math.abs(s.l.q2))) + 0.2 + 0.28 * (i % 2),
      label: s.label,
    })),
    ...moments.map((m) => ({ ...m, y: 1.22 })),
    ...reactions.map((r) => ({
      x: r.position * 1000,
      y: -1.02,
      label:
        new Quantity('force', r.force).toString() +
        (r.moment === 0 ? '' : `, ${new Quantity('moment', r.moment).toString()}`),
    })),
  ];
  const feet = beam.supports.map((s) => ({
    x: s.position * 1000,
    y: -0.37,
    shape: s.turn === Infinity ? 'square' : s.lift === Infinity ? 'triangle-up' : 'diamond',
  }));
  layers.push(
    {
      data: { values: feet },
      mark: { type: 'point', filled: true, size: 190, color: c.soft, opacity: 1 },
      encoding: { x: along, y, shape: { field: 'shape', type: 'nominal', scale: null } },
    },
    {
      data: { values: moments },
      mark: { type: 'text', fontSize: 24, color: c.ink },
      encoding: { x: along, y, text: { field: 'sign' } },
    },
    ...haloed({
      data: { values: words.map((w) => inside(w, x)) },
      mark: { type: 'text', color: c.ink, align: 'center', baseline: 'middle' },
      encoding: { x: along, y, text: { field: 'label' } },
    }),
  );
  return { width: beamWide, height: 130, view: { stroke: null }, layer: layers };
}

/** Moves words that would run over the edge of the picture. */
function inside<W extends { x: number; y: number; label: string }>(
  w: W,
  x: ChartSpec,
): { x: number; y: number; label: string } {
  const [from, to] = (x['scale'] as { domain: readonly [number, number] }).domain;
  const half = (textWidth(w.label, 12) / 2 / beamWide) * (to - from);
  return { x: Math.min(Math.max(w.x, from + half), to - half), y: w.y, label: w.label };
}

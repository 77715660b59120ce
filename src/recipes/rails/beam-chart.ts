import { haloed } from '../../charts/axis.js';
import { colours } from '../../charts/theme.js';
import { textWidth } from '../../charts/textWidth.js';
import type { ChartSpec } from '../../charts/types.js';
import { Quantity } from '../../quantities/quantity.js';
import type { Solved } from './beam-solver.js';
import type { Worst, Worsts } from './beam-worst.js';

const c = colours.light;
const wide = 560;

/** Load picture, shear, moment and deflected shape, one over another on one scale of length. */
export function beamChart(solved: Solved, worst: Worsts, creep: number): ChartSpec {
  const L = solved.beam.length;
  const x = {
    field: 'x',
    type: 'quantitative',
    scale: { domain: [-0.03 * L * 1000, 1.03 * L * 1000], nice: false },
  };
  const stations = stationsOf(solved);
  const force = Math.abs(worst.V.value) >= 2000 ? { unit: 'kN', by: 1e-3 } : { unit: 'N', by: 1 };
  const moment = Math.abs(worst.M.value) >= 2000 ? { unit: 'kN·m', by: 1e-3 } : { unit: 'N·m', by: 1 };
  return {
    title: {
      text: 'Loads, shear, moment and deflected shape',
      subtitle: `Moments and sag drawn downward, as the beam bends${creep > 1 ? '; sag in the long run' : ''}.`,
    },
    spacing: 14,
    vconcat: [
      picture(solved, x),
      panel(
        stations,
        x,
        {
          take: 'V',
          by: force.by,
          title: `Shear (${force.unit})`,
          colour: c.series[0] as string,
          down: false,
        },
        mark(worst.V, force.by, force.unit),
      ),
      panel(
        stations,
        x,
        {
          take: 'M',
          by: moment.by,
          title: `Moment (${moment.unit})`,
          colour: c.series[1] as string,
          down: true,
        },
        mark(worst.M, moment.by, moment.unit),
      ),
      panel(
        stations,
        x,
        {
          take: 'sag',
          by: 1000 * creep,
          title: 'Sag (mm)',
          colour: c.series[2] as string,
          down: true,
          last: true,
        },
        mark(worst.sag, 1000 * creep, 'mm'),
      ),
    ],
  };
}

interface Station {
  readonly x: number;
  readonly V: number;
  readonly M: number;
  readonly sag: number;
}

function stationsOf(solved: Solved): Station[] {
  const list: Station[] = [];
  const add = (x: number, side: 'left' | 'right'): void => {
    const s = solved.at(x, side);
    list.push({ x: x * 1000, V: s.V, M: s.M, sag: s.sag });
  };
  const { breaks, beam } = solved;
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [a, b] = [breaks[i] as number, breaks[i + 1] as number];
    const steps = Math.max(4, Math.round((160 * (b - a)) / beam.length));
    add(a, 'right');
    for (let k = 1; k < steps; k++) add(a + ((b - a) * k) / steps, 'right');
    add(b, 'left');
  }
  return list;
}

const mark = (w: Worst, by: number, unit: string) => ({
  x: w.at * 1000,
  y: w.value * by,
  label: `${digits(w.value * by)} ${unit} at ${digits(w.at * 1000)} mm`,
});

function digits(n: number): string {
  const size = Math.abs(n);
  return String(Number(size >= 1000 ? n.toFixed(0) : n.toPrecision(4)));
}

interface Line {
  readonly take: 'V' | 'M' | 'sag';
  readonly by: number;
  readonly title: string;
  readonly colour: string;
  /** Drawn downward, as a beam bends. */
  readonly down: boolean;
  readonly last?: boolean;
}

function panel(
  stations: readonly Station[],
  x: ChartSpec,
  line: Line,
  worst: { x: number; y: number; label: string },
): ChartSpec {
  const values = stations.map((s, order) => ({ x: s.x, y: s[line.take] * line.by, zero: 0, order }));
  const most = Math.max(...values.map((v) => v.y), 0);
  const least = Math.min(...values.map((v) => v.y), 0);
  const room = (most - least || 1) * 0.36;
  const domain = [least < 0 ? least - room : least - room * 0.3, most > 0 ? most + room : most + room * 0.3];
  const y = {
    field: 'y',
    type: 'quantitative',
    title: line.title,
    scale: { domain, nice: false, reverse: line.down },
    axis: { tickCount: 4, titlePadding: 8 },
  };
  const along = {
    ...x,
    axis:
      line.last === true ? { title: 'From the left end (mm)' } : { title: null, labels: false, ticks: false },
  };
  const outward = line.down === worst.y >= 0;
  const range = x['scale'] as { domain: readonly [number, number] };
  const half = (textWidth(worst.label, 12, true) / 2 / wide) * (range.domain[1] - range.domain[0]);
  const middle = Math.min(Math.max(worst.x, range.domain[0] + half), range.domain[1] - half);
  return {
    width: wide,
    height: 96,
    layer: [
      {
        data: { values },
        mark: { type: 'area', color: line.colour, opacity: 0.22, interpolate: 'linear' },
        encoding: { x: along, y, y2: { field: 'zero' } },
      },
      {
        data: { values },
        mark: { type: 'line', color: line.colour, strokeWidth: 2.2, interpolate: 'linear' },
        encoding: { x: along, y, order: { field: 'order' } },
      },
      { data: { values: [{ y: 0 }] }, mark: { type: 'rule', color: c.ink, strokeWidth: 1 }, encoding: { y } },
      {
        data: { values: [worst] },
        mark: {
          type: 'point',
          filled: true,
          size: 90,
          color: c.ink,
          stroke: c.ground,
          strokeWidth: 1.5,
          opacity: 1,
        },
        encoding: { x: along, y },
      },
      ...haloed({
        data: { values: [{ ...worst, x: middle }] },
        mark: {
          type: 'text',
          align: 'center',
          baseline: outward ? 'top' : 'bottom',
          dy: outward ? 7 : -7,
          fontWeight: 'bold',
          color: c.ink,
        },
        encoding: { x: along, y, text: { field: 'label' } },
      }),
    ],
  };
}

/** The beam with its loads over it and its supports and their reactions under it. */
function picture(solved: Solved, x: ChartSpec): ChartSpec {
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
      const half = (textWidth(p.label, 12) / 2 / wide) * span + 4;
      raised = p.x - half < before ? !raised : false;
      before = p.x + half;
      return { x: p.x, y: raised ? 1.95 : 1.62, label: p.label };
    });
  // The words of a spread load keep out of the way of arrows that stand in it.
  const clear = (from: number, to: number, label: string): number => {
    const half = (textWidth(label, 12) / 2 / wide) * span;
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
  const kindOf = (position: number): string => {
    const s = beam.supports.find((p) => p.position === position);
    return s?.turn === Infinity ? 'fixed' : s?.lift === Infinity ? 'pinned' : 'spring';
  };
  const shape = { pinned: 'triangle-up', fixed: 'square', spring: 'diamond' } as Record<string, string>;
  const feet = reactions.map((r) => ({ x: r.position * 1000, y: -0.37, shape: shape[kindOf(r.position)] }));
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
  return { width: wide, height: 130, view: { stroke: null }, layer: layers };
}

/** Moves words that would run over the edge of the picture. */
function inside<W extends { x: number; y: number; label: string }>(
  w: W,
  x: ChartSpec,
): { x: number; y: number; label: string } {
  const [from, to] = (x['scale'] as { domain: readonly [number, number] }).domain;
  const half = (textWidth(w.label, 12) / 2 / wide) * (to - from);
  return { x: Math.min(Math.max(w.x, from + half), to - half), y: w.y, label: w.label };
}

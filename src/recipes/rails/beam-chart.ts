import { axisTitle, shownAxis, withHalo } from '../../charts/axis.js';
import { unitChange } from '../../units/unit-system.js';
import { colours } from '../../charts/theme.js';
import { textWidth } from '../../charts/text-width.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { beamDrawing, beamWide } from './beam-drawing.js';
import type { Solved } from './beam-solver.js';
import type { Worst, Worsts } from './beam-worst.js';

const c = colours.light;

/** Loads, shear, moment and deflected shape, one over another on one scale of length. */
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
      beamDrawing(solved, x),
      panel(
        stations,
        x,
        {
          take: 'V',
          by: force.by,
          title: 'Shear',
          unit: force.unit,
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
          title: 'Moment',
          unit: moment.unit,
          colour: c.series[1] as string,
          down: true,
        },
        mark(worst.M, moment.by, moment.unit),
      ),
      panel(stations, x, { ...sagLine, by: 1000 * creep }, mark(worst.sag, 1000 * creep, 'mm')),
    ],
  };
}

const sagLine = {
  take: 'sag',
  title: 'Sag',
  unit: 'mm',
  colour: c.series[2] as string,
  down: true,
  last: true,
} as const;

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
  return String(Number(size >= 100 ? n.toFixed(0) : n.toPrecision(3))).replace('-', '−');
}

interface Line {
  readonly take: 'V' | 'M' | 'sag';
  readonly by: number;
  readonly title: string;
  readonly unit: string;
  readonly colour: string;
  /** Drawn downward, as a beam bends. */
  readonly down: boolean;
  readonly last?: boolean;
}

/** One curve over the length of the beam, shaded down to zero, its greatest value marked. */
function panel(
  stations: readonly Station[],
  x: ChartSpec,
  line: Line,
  worst: { x: number; y: number; label: string },
): ChartSpec {
  const { axis: shown, of } = shownAxis({ title: line.title, unit: line.unit });
  const values = stations.map((s, order) => ({ x: s.x, y: of(s[line.take] * line.by), zero: 0, order }));
  const y = {
    field: 'y',
    type: 'quantitative',
    title: axisTitle(line.title, shown.unit),
    scale: { domain: domainOf(values.map((v) => v.y)), nice: false, reverse: line.down },
    axis: { tickCount: 4, titlePadding: 8 },
  };
  const along = {
    ...x,
    axis: line.last === true ? lengthAxis(x) : { title: null, labels: false, ticks: false },
  };
  return {
    width: beamWide,
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
      ...worstLayers({ ...worst, y: of(worst.y) }, line.down === worst.y >= 0, x, { x: along, y }),
    ],
  };
}

/** The axis along the beam: places are in millimetres, and in inches its ticks stand at whole ones. */
function lengthAxis(x: ChartSpec): ChartSpec {
  const change = unitChange('mm');
  if (!change) return { title: 'From the left end (mm)' };
  const [, end] = (x['scale'] as { domain: readonly [number, number] }).domain;
  const step = [2, 6, 12, 24, 48, 120, 240].find((s) => end * change.factor < 9 * s) ?? 480;
  const ticks = Array.from({ length: Math.floor((end * change.factor) / step) + 1 }, (_, i) => i * step);
  return {
    title: `From the left end (${change.unit})`,
    values: ticks.map((t) => t / change.factor),
    labelExpr: `format(datum.value * ${change.factor}, ".0f")`,
  };
}

/** From the least to the greatest value and zero, with room for a label on either side. */
function domainOf(values: readonly number[]): [number, number] {
  const most = Math.max(...values, 0);
  const least = Math.min(...values, 0);
  const room = (most - least || 1) * 0.36;
  return [least < 0 ? least - room : least - room * 0.3, most > 0 ? most + room : most + room * 0.3];
}

/** The greatest value as a dot with its label on the outer side of the curve, within the width of the chart. */
function worstLayers(
  worst: { x: number; y: number; label: string },
  below: boolean,
  x: ChartSpec,
  encoding: { x: ChartSpec; y: ChartSpec },
): ChartSpec[] {
  const [from, to] = (x['scale'] as { domain: readonly [number, number] }).domain;
  const half = (textWidth(worst.label, 12, true) / 2 / beamWide) * (to - from);
  const middle = Math.min(Math.max(worst.x, from + half), to - half);
  const dot = { filled: true, size: 90, color: c.ink, stroke: c.ground, strokeWidth: 1.5, opacity: 1 };
  return [
    { data: { values: [worst] }, mark: { type: 'point', ...dot }, encoding },
    ...withHalo({
      data: { values: [{ ...worst, x: middle }] },
      mark: {
        type: 'text',
        align: 'center',
        baseline: below ? 'top' : 'bottom',
        dy: below ? 7 : -7,
        fontWeight: 'bold',
        color: c.ink,
      },
      encoding: { ...encoding, text: { field: 'label' } },
    }),
  ];
}

// The rail between its uprights, and the outline of its recess at full size. Lengths in metres come in, mm go out.
import type { Place } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { jointDrawing, type JointShape } from './full-size-drawing.js';

interface Recess {
  readonly uprightWidth: number;
  readonly recessDepth: number;
  readonly angle: number;
  /** Height of the rail where it meets an upright. */
  readonly seat: number;
}
interface Rail extends Recess {
  /** From face to face of the uprights. */
  readonly run: number;
  readonly edgeLength: number;
}

function sizes(of: Recess) {
  const [seat, depth] = [of.seat * 1000, of.recessDepth * 1000];
  return {
    width: of.uprightWidth * 1000,
    seat,
    depth,
    /** How much the rail falls from the face to the bottom of the recess. */
    falls: depth * Math.tan(of.angle),
    /** How far the uprights run past the rail. */
    over: Math.max(60, seat * 0.6),
  };
}
type Sizes = ReturnType<typeof sizes>;

/** The recess in the lower upright, whose face is x = 0; nothing where the rail is butted. */
const recess = ({ depth, falls, seat }: Sizes, fill: 'waste' | 'none'): JointShape[] =>
  depth > 0
    ? [
        {
          kind: 'polygon',
          points: [
            [0, 0],
            [-depth, -falls],
            [-depth, seat - falls],
            [0, seat],
          ],
          fill,
          dashed: true,
        },
      ]
    : [];

/** Both uprights, the rail let into them, its slope and its lengths. */
export function railDrawing(of: Rail): ChartSpec {
  const s = sizes(of);
  const run = of.run * 1000;
  const rise = run * Math.tan(of.angle);
  const [low, high] = [-s.falls - s.over, rise + s.seat + s.falls + s.over];
  const upright = (x: number): JointShape => ({
    kind: 'rectangle',
    x,
    y: low,
    width: s.width,
    height: high - low,
    fill: 'wood',
    hatch: 'grainUp',
  });
  const upper: readonly [Place, Place] = [
    [run + s.depth, rise + s.seat + s.falls],
    [-s.depth, s.seat - s.falls],
  ];
  const shapes: JointShape[] = [
    upright(-s.width),
    upright(run),
    {
      kind: 'polygon',
      points: [[-s.depth, -s.falls], [run + s.depth, rise + s.falls], ...upper],
      fill: 'woodDark',
    },
    ...recess(s, 'none'),
    {
      kind: 'dimension',
      from: [-s.width, 0],
      to: [-s.width, s.seat],
      text: `${s.seat.toFixed(1)} mm`,
      offset: 14,
    },
    {
      kind: 'dimension',
      from: upper[1],
      to: upper[0],
      text: `${(of.edgeLength * 1000).toFixed(1)} mm along each edge`,
      offset: 14,
    },
    {
      kind: 'dimension',
      from: [0, low],
      to: [run, low],
      text: `${run.toFixed(1)} mm between faces`,
      offset: -20,
    },
    {
      kind: 'text',
      x: run / 2,
      y: rise / 2 + s.seat / 2,
      text: `${((of.angle * 180) / Math.PI).toFixed(2)}°`,
      bold: true,
    },
  ];
  return jointDrawing({ title: 'The rail between its uprights', shapes, maxHeight: 460 }, 'fitted');
}

/** The recess in the lower upright at full size; of a rail that is butted, the end that meets it. */
export function recessDrawing(of: Recess): ChartSpec {
  const s = sizes(of);
  const low = -s.falls - s.over;
  const rises = s.width * Math.tan(of.angle);
  const shapes: JointShape[] = [
    {
      kind: 'rectangle',
      x: -s.width,
      y: low,
      width: s.width,
      height: s.seat + s.over - low,
      fill: 'wood',
      hatch: 'grainUp',
    },
    ...recess(s, 'waste'),
    { kind: 'dimension', from: [0, 0], to: [0, s.seat], text: `${s.seat.toFixed(1)} mm`, offset: -18 },
    s.depth > 0
      ? {
          kind: 'dimension',
          from: [-s.depth, -s.falls],
          to: [0, -s.falls],
          text: `${s.depth.toFixed(1)} mm`,
          offset: -16,
        }
      : {
          kind: 'polygon',
          points: [
            [0, 0],
            [s.width, rises],
            [s.width, s.seat + rises],
            [0, s.seat],
          ],
          fill: 'woodDark',
        },
  ];
  return jointDrawing({ title: 'Recess in the lower upright, from the side', shapes }, 'full size');
}

import { drawing } from '../../charts/drawing.js';
import { dimension, line, polygon } from '../../charts/shapes.js';
import { danger, note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const angle = variable('angle', 'angle of the chamfer to the face', { unit: 'deg' });

const alongFace = formula({
  symbol: 'a',
  result: mm('taken off the face'),
  expression: 'f cos(A)',
  variables: { f: mm('width of the chamfer'), A: angle },
  basis: 'geometry',
});
const downEdge = formula({
  symbol: 'd',
  result: mm('taken off the edge: depth of the cutter'),
  expression: 'f sin(A)',
  variables: { f: mm('width of the chamfer'), A: angle },
  basis: 'geometry',
});
const faceWidth = formula({
  symbol: 'f',
  result: mm('width of the chamfer'),
  expression: 'd / sin(A)',
  variables: { d: mm('depth of the cutter'), A: angle },
  basis: 'geometry',
});
const flatLeft = formula({
  symbol: 'l',
  result: mm('flat left on the edge'),
  expression: 't - n d',
  variables: {
    t: mm('thickness at the edge'),
    n: variable('count', 'edges chamfered, one or both'),
    d: mm('depth of the cutter'),
  },
  basis: 'geometry',
});
// A billionth comes off before rounding up, so that an exact fit is not one pass too many.
const passesOf = formula({
  symbol: 'p',
  result: variable('count', 'passes'),
  expression: 'max(1, ceil(d / c - 10^(-9)))',
  variables: { d: mm('depth of the cutter'), c: mm('depth that one pass takes') },
  basis: 'definition',
});
const run = formula({
  symbol: 'L',
  result: variable('length', 'run of all chamfers', { unit: 'm' }),
  expression: 'N n l',
  variables: {
    N: variable('count', 'parts'),
    n: variable('count', 'chamfers on each'),
    l: variable('length', 'length of each', { unit: 'm' }),
  },
  basis: 'definition',
});
const timeOf = formula({
  symbol: 'T',
  result: variable('time', 'time at the cutter'),
  expression: 'L p / v',
  variables: {
    L: variable('length', 'run of all chamfers'),
    p: variable('count', 'passes'),
    v: variable('speed', 'feed'),
  },
  basis: 'definition',
});

/**
 * A chamfer both ways round: from its width or from the depth of the cutter, with the flat left on the edge, the passes,
 * and metres and time for a run of parts. Lengths, an angle and a feed in. Source: geometry.
 * @throws InputError without exactly one of width and depth, or where the chamfers leave no edge
 */
export const chamfer = recipe({
  name: 'chamfer',
  title: 'Chamfer',
  topic: 'machining',
  about:
    'Width of a chamfer from the depth of the cutter, or the depth for the width wanted; the flat left on the edge, the passes, and metres and time for a run of parts.',
  sources: [],
  inputs: {
    width: field.length({
      symbol: 'f',
      label: 'width',
      help: 'Width of the sloping face; or give the depth.',
      above: '0 mm',
      max: '200 mm',
      optional: true,
    }),
    depth: field.length({
      symbol: 'd',
      label: 'depth',
      help: 'Depth of the chamfer down the edge; or give the width.',
      above: '0 mm',
      max: '200 mm',
      optional: true,
    }),
    angle: field.angle({
      symbol: 'A',
      label: 'angle',
      help: 'Angle of the chamfer to the face.',
      min: '5 deg',
      max: '85 deg',
      default: '45 deg',
    }),
    thickness: field.length({ symbol: 't', label: 'thickness at the edge', above: '0 mm', max: '1 m' }),
    bothEdges: field.flag({
      label: 'both edges',
      help: 'Whether both edges of that side are chamfered.',
      default: false,
    }),
    passDepth: field.length({
      symbol: 'c',
      label: 'depth per pass',
      help: 'Depth that one pass takes.',
      above: '0 mm',
      max: '50 mm',
      default: '3 mm',
    }),
    length: field.length({ label: 'length of a chamfer', above: '0 mm', max: '50 m', default: '1 m' }),
    each: field.count({ label: 'chamfers on each part', min: 1, max: 100, default: 1 }),
    parts: field.count({ label: 'parts', min: 1, max: 100_000, default: 1 }),
    feed: field.speed({
      symbol: 'v',
      label: 'feed by hand',
      above: '0 m/min',
      max: '60 m/min',
      default: '2 m/min',
    }),
  },
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    width: out.length({ label: 'width of the chamfer' }),
    alongFace: out.length({ label: 'taken off the face' }),
    depth: out.length({ label: 'depth', help: 'Depth of the chamfer down the edge.' }),
    flat: out.length({ label: 'flat left', help: 'Flat left on the edge.' }),
    passes: out.count({ label: 'passes' }),
    run: out.length({ label: 'run of all chamfers', unit: 'm' }),
    time: out.time({ label: 'time at the cutter' }),
  },
  formulas: [alongFace, downEdge, faceWidth, flatLeft, passesOf, run, timeOf],
  solve: (given, trace) => {
    const A = given.angle;
    if ((given.width === undefined) === (given.depth === undefined))
      throw new InputError({
        field: 'width',
        message: `got ${given.width === undefined ? 'neither width nor depth' : 'both width and depth'}, takes one of them`,
      });
    const d = given.depth ?? trace.evaluate(downEdge, { f: given.width as number, A });
    const f = given.width ?? trace.evaluate(faceWidth, { d, A });
    const a = trace.evaluate(alongFace, { f, A });
    const n = given.bothEdges ? 2 : 1;
    const flat = trace.evaluate(flatLeft, { t: given.thickness, n, d });
    if (flat < 0)
      throw new InputError({
        field: given.depth === undefined ? 'width' : 'depth',
        message: `takes ${(n * d * 1000).toFixed(1)} mm off an edge of ${(given.thickness * 1000).toFixed(1)} mm; takes a smaller chamfer`,
      });
    const p = trace.evaluate(passesOf, { d, c: given.passDepth });
    const L = trace.evaluate(run, { N: given.parts, n: given.each, l: given.length });
    const T = trace.evaluate(timeOf, { L, p, v: given.feed });
    const mm1 = (m: number): string => `${(m * 1000).toFixed(1)} mm`;
    return {
      sentence: `A chamfer ${mm1(f)} wide: set the cutter ${mm1(d)} deep, ${p} pass${p === 1 ? '' : 'es'}; ${mm1(flat)} of the edge is left.`,
      width: f,
      alongFace: a,
      depth: d,
      flat,
      passes: p,
      run: L,
      time: T,
    };
  },
  cautions: (given, answer) => [
    danger(
      'feed against the turn of the cutter; clamp small parts in a holder; pull the plug before you change or set a cutter',
    ),
    note('end grain first, then the long edges: what breaks out at a corner is cut away'),
    ...(answer.flat < 0.002
      ? [note('less than 2 mm of edge is left for the bearing or the fence: use a fence on the other side')]
      : []),
    ...(given.feed * 60 > 6 ? [note('over 6 m/min by hand the cutter marks show (common practice)')] : []),
  ],
  chart: (given, answer) => {
    const t = given.thickness * 1000;
    const [a, d] = [answer.alongFace * 1000, answer.depth * 1000];
    const w = Math.max(2.5 * a, t);
    const low = given.bothEdges ? d : 0;
    return drawing({
      title: 'The edge in section',
      subtitle: answer.sentence,
      shapes: [
        polygon(
          [[0, 0], [given.bothEdges ? w - a : w, 0], [w, low], [w, t - d], [w - a, t], [0, t]], // prettier-ignore
          { fill: 'wood' },
        ),
        line([w - a, t], [w, t], { dashed: true, weight: 0.8 }),
        line([w, t], [w, t - d], { dashed: true, weight: 0.8 }),
        dimension([w - a, t], [w, t], `${a.toFixed(1)} mm`, 14),
        dimension([w, t], [w, t - d], `${d.toFixed(1)} mm`, 22),
        dimension([w, t - d], [w, low], `${(answer.flat * 1000).toFixed(1)} mm`, 22),
      ],
      maxHeight: 320,
    });
  },
  example: { width: '8 mm', thickness: '40 mm', bothEdges: true, length: '1950 mm', each: 4 },
});

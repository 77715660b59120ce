import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { InputError } from '../../units/input-error.js';
import { nanometres } from '../../engine/nanometres.js';
import { railDrawing, recessDrawing } from './angled-rail-drawing.js';
import { pictureField } from './full-size-drawing.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const a = variable('angle', 'slope of the rail', { unit: 'deg' });
const run = mm('clear distance between the uprights');
const r = mm('depth of each recess');
const slope = formula({
  symbol: 'a',
  result: a,
  expression: 'atan(V / R)',
  variables: { V: mm('rise from face to face'), R: run },
  basis: 'geometry',
});
const edge = formula({
  symbol: 'e',
  result: mm('along each edge, from cut to cut'),
  expression: '(R + 2 r) / cos(a)',
  variables: { R: run, r, a },
  basis: 'geometry',
});
const skew = formula({
  symbol: 'k',
  result: mm('how far a plumb cut runs along the rail'),
  expression: 'h tan(a)',
  variables: { h: mm('depth of the rail, square to its length'), a },
  basis: 'geometry',
});
const plumb = formula({
  symbol: 'p',
  result: mm('height of the rail where it meets an upright'),
  expression: 'h / cos(a)',
  variables: { h: mm('depth of the rail, square to its length'), a },
  basis: 'geometry',
});
const rises = formula({
  symbol: 'z',
  result: mm('how much the rail rises inside a recess'),
  expression: 'r tan(a)',
  variables: { r, a },
  basis: 'geometry',
});

/**
 * A rail that rises between two uprights and may be let into them: its slope, its plumb cuts from long point to short
 * point, and the outline of each recess. For braces, stretchers and handrails in one plane.
 */
export const angledRail = recipe({
  name: 'angledRail',
  title: 'A rail at an angle between two uprights',
  topic: 'joinery',
  about:
    'Slope, end cuts, length from point to point and recess outlines of a rail that rises from one upright to another, butted or let in.',
  sources: [],
  inputs: {
    run: field.length({
      symbol: 'R',
      label: 'run',
      help: 'Level distance between the uprights.',
      above: '0 mm',
      max: '20 m',
    }),
    rise: field.length({
      symbol: 'V',
      label: 'rise',
      help: 'How much the rail rises from face to face.',
      min: '0 mm',
      max: '20 m',
    }),
    section: field.group(
      {
        width: field.length({
          label: 'thickness',
          help: 'Thickness of the rail, across the frame.',
          above: '0 mm',
          max: '1 m',
        }),
        depth: field.length({
          label: 'depth',
          help: 'Depth of the rail, square to its length.',
          above: '0 mm',
          max: '1 m',
        }),
      },
      {
        label: 'section',
        help: 'Thickness and depth of the rail, such as { width: "35 mm", depth: "60 mm" }.',
      },
    ),
    recessDepth: field.length({
      symbol: 'r',
      label: 'housing depth',
      help: 'How deep the rail is let into each upright.',
      min: '0 mm',
      max: '500 mm',
      default: '0 mm',
    }),
    betweenFaces: field.flag({
      label: 'face to face',
      help: 'Yes where run and rise go from face to face, no from middle to middle of the uprights.',
      default: true,
    }),
    uprightWidth: field.length({
      label: 'upright width',
      help: 'Width of an upright in the plane of the frame; needed from middle to middle, and for the drawing.',
      above: '0 mm',
      max: '2 m',
      default: '70 mm',
    }),
    picture: pictureField,
  },
  outputs: {
    angle: out.angle({ label: 'slope', help: 'Slope of the rail, and of its end cuts off square.' }),
    longPoint: out.length({
      label: 'length over points',
      help: 'From long point to long point, the least blank.',
    }),
    shortPoint: out.length({
      label: 'length inside points',
      help: 'From short point to short point, along the rail.',
    }),
    edgeLength: out.length({ label: 'edge length', help: 'Along each edge, from cut to cut.' }),
    bevels: out.table(
      {
        end: out.text({ label: 'end' }),
        offSquare: out.angle({ label: 'off square' }),
        toEdge: out.angle({ label: 'to the edge' }),
        longPointOn: out.text({ label: 'long edge', help: 'The edge with the long point.' }),
      },
      { label: 'End cuts' },
    ),
    seat: out.length({ label: 'plumb height', help: 'Height of the rail where it meets an upright.' }),
    recess: out.table(
      {
        upright: out.text({ label: 'upright' }),
        point: out.count({ label: 'point' }),
        into: out.length({ label: 'depth', help: 'Into the upright from its face.' }),
        up: out.length({
          label: 'height',
          help: 'Up from the lower edge of the rail at the face of the lower upright.',
        }),
      },
      { label: 'Outline of each recess', help: 'Seen from the side.', optional: true },
    ),
    recessWidth: out.length({
      label: 'recess width',
      help: 'Width of each recess, which is the thickness of the rail.',
      optional: true,
    }),
  },
  formulas: [slope, edge, skew, plumb, rises],
  solve: (given, trace) => {
    const h = given.section.depth;
    const off = given.betweenFaces ? 0 : given.uprightWidth;
    const R = given.run - off;
    if (R <= 0)
      throw new InputError({
        field: 'run',
        message: `got ${(given.run * 1000).toFixed(1)} mm from middle to middle, takes more than the width of an upright, ${(given.uprightWidth * 1000).toFixed(1)} mm`,
      });
    if (given.recessDepth >= given.uprightWidth)
      throw new InputError({
        field: 'recessDepth',
        message: `got ${(given.recessDepth * 1000).toFixed(1)} mm, takes less than the width of the upright, ${(given.uprightWidth * 1000).toFixed(1)} mm`,
      });
    // From middle to middle the rise grows in the same proportion as the run.
    const V = (given.rise * R) / given.run;
    const angle = trace.evaluate(slope, { V, R });
    // To a millionth of a degree.
    if (Math.round(((angle * 180) / Math.PI) * 1e6) > 80e6)
      throw new InputError({
        field: 'rise',
        message: `gives a slope of ${((angle * 180) / Math.PI).toFixed(1)}°, takes one of 80° or less; measure from the other upright`,
      });
    const r_ = given.recessDepth;
    const e = trace.evaluate(edge, { R, r: r_, a: angle });
    const k = trace.evaluate(skew, { h, a: angle });
    const p = trace.evaluate(plumb, { h, a: angle });
    const z = trace.evaluate(rises, { r: r_, a: angle });
    if (nanometres(e - k) <= 0)
      throw new InputError({
        field: 'section',
        message: `the rail is so deep that its end cuts meet: takes a depth under ${((e / Math.tan(angle)) * 1000).toFixed(1)} mm`,
      });
    const lower = [
      [0, 0],
      [r_, -z],
      [r_, p - z],
      [0, p],
    ] as const;
    const upper = [
      [0, V],
      [r_, V + z],
      [r_, V + p + z],
      [0, V + p],
    ] as const;
    const rows = (upright: string, points: readonly (readonly [number, number])[]) =>
      points.map(([into, up], i) => ({ upright, point: i + 1, into, up }));
    const toEdge = Math.PI / 2 - angle;
    return {
      angle,
      longPoint: e + k,
      shortPoint: e - k,
      edgeLength: e,
      bevels: [
        { end: 'lower', offSquare: angle, toEdge, longPointOn: angle === 0 ? 'neither' : 'lower edge' },
        { end: 'upper', offSquare: angle, toEdge, longPointOn: angle === 0 ? 'neither' : 'upper edge' },
      ],
      seat: p,
      recess: r_ > 0 ? [...rows('lower', lower), ...rows('upper', upper)] : undefined,
      recessWidth: r_ > 0 ? given.section.width : undefined,
    };
  },
  cautions: (given) => [
    note(
      'lay the rail over the frame, clamped square and to its final size, and knife both cuts from it: the figures are for the blank and for checking',
    ),
    ...(nanometres(3 * given.recessDepth) > nanometres(given.uprightWidth)
      ? [note('a recess deeper than a third of the upright weakens it (common practice)')]
      : []),
    ...(given.recessDepth > 0
      ? [
          note(
            'with both recesses full depth the rail does not go in once the frame is glued: put it in as the frame goes together, or cut one recess through to an edge',
          ),
        ]
      : []),
  ],
  chart: (given, answer) => {
    const run = given.betweenFaces ? given.run : given.run - given.uprightWidth;
    return given.picture === 'full size'
      ? recessDrawing({ ...given, ...answer })
      : railDrawing({ ...given, ...answer, run });
  },
  sentence: 'Cut the rail {edgeLength} along its edge, with ends at {angle}.',
  example: {
    run: '1310 mm',
    rise: '620 mm',
    section: { width: '35 mm', depth: '60 mm' },
    recessDepth: '12 mm',
    uprightWidth: '70 mm',
  },
});

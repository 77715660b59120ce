import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { Refusal } from '../../quantities/refusal.js';
import { nanometres } from '../../recipe/nanometre.js';
import { railPicture, recessTemplate } from './rail-picture.js';
import { pictureField } from './template.js';

const mm = (says: string) => letter('length', says, { in: 'mm' });
const a = letter('angle', 'slope of the rail', { in: 'deg' });
const run = mm('clear distance between the uprights');
const r = mm('depth of each recess');

const slope = formula({
  symbol: 'a',
  gives: a,
  text: 'atan(V / R) * 180 / pi',
  where: { V: mm('rise from face to face'), R: run },
  basis: 'geometry',
});
const edge = formula({
  symbol: 'e',
  gives: mm('along each edge, from cut to cut'),
  text: '(R + 2 r) / cos(pi a / 180)',
  where: { R: run, r, a },
  basis: 'geometry',
});
const skew = formula({
  symbol: 'k',
  gives: mm('how far a plumb cut runs along the rail'),
  text: 'h tan(pi a / 180)',
  where: { h: mm('depth of the rail, square to its length'), a },
  basis: 'geometry',
});
const plumb = formula({
  symbol: 'p',
  gives: mm('height of the rail where it meets an upright'),
  text: 'h / cos(pi a / 180)',
  where: { h: mm('depth of the rail, square to its length'), a },
  basis: 'geometry',
});
const rises = formula({
  symbol: 'z',
  gives: mm('how much the rail rises inside a recess'),
  text: 'r tan(pi a / 180)',
  where: { r, a },
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
      says: 'level distance between the uprights',
      above: '0 mm',
      max: '20 m',
    }),
    rise: field.length({
      symbol: 'V',
      says: 'how much the rail rises from face to face',
      min: '0 mm',
      max: '20 m',
    }),
    section: field.group(
      {
        width: field.length({ says: 'thickness of the rail, across the frame', above: '0 mm', max: '1 m' }),
        depth: field.length({ says: 'depth of the rail, square to its length', above: '0 mm', max: '1 m' }),
      },
      { says: 'section of the rail, such as { width: "35 mm", depth: "60 mm" }' },
    ),
    recessDepth: field.length({
      symbol: 'r',
      says: 'how deep it is let into each upright',
      min: '0 mm',
      max: '500 mm',
      default: '0 mm',
    }),
    betweenFaces: field.flag({
      says: 'run and rise are measured from face to face (yes) or from middle to middle of the uprights (no)',
      default: true,
    }),
    uprightWidth: field.length({
      says: 'width of an upright in the plane of the frame; needed from middle to middle, and for the picture',
      above: '0 mm',
      max: '2 m',
      default: '70 mm',
    }),
    picture: pictureField,
  },
  outputs: {
    angle: out.angle({ says: 'slope of the rail, and of its end cuts off square' }),
    longPoint: out.length({ says: 'from long point to long point: the least blank' }),
    shortPoint: out.length({ says: 'from short point to short point, along the rail' }),
    edgeLength: out.length({ says: 'along each edge, from cut to cut' }),
    bevels: out.table(
      {
        end: out.text({ says: 'end' }),
        offSquare: out.angle({ says: 'off square' }),
        toEdge: out.angle({ says: 'to the edge' }),
        longPointOn: out.text({ says: 'edge with the long point' }),
      },
      { says: 'End cuts' },
    ),
    seat: out.length({ says: 'height of the rail where it meets an upright' }),
    recess: out.table(
      {
        upright: out.text({ says: 'upright' }),
        point: out.count({ says: 'point' }),
        into: out.length({ says: 'into the upright from its face' }),
        up: out.length({ says: 'up from the lower edge of the rail at the face of the lower upright' }),
      },
      { says: 'Outline of each recess, seen from the side', optional: true },
    ),
    recessWidth: out.length({ says: 'width of each recess: the thickness of the rail', optional: true }),
  },
  formulas: [slope, edge, skew, plumb, rises],
  solve: (given, work) => {
    const h = given.section.depth;
    const off = given.betweenFaces ? 0 : given.uprightWidth;
    const R = given.run - off;
    if (R <= 0)
      throw new Refusal({
        field: 'run',
        says: `got ${(given.run * 1000).toFixed(1)} mm from middle to middle, takes more than the width of an upright, ${(given.uprightWidth * 1000).toFixed(1)} mm`,
      });
    if (given.recessDepth >= given.uprightWidth)
      throw new Refusal({
        field: 'recessDepth',
        says: `got ${(given.recessDepth * 1000).toFixed(1)} mm, takes less than the width of the upright, ${(given.uprightWidth * 1000).toFixed(1)} mm`,
      });
    // From middle to middle the rise grows in the same proportion as the run.
    const V = (given.rise * R) / given.run;
    const angle = work.apply(slope, { V, R });
    // To a millionth of a degree.
    if (Math.round(((angle * 180) / Math.PI) * 1e6) > 80e6)
      throw new Refusal({
        field: 'rise',
        says: `gives a slope of ${((angle * 180) / Math.PI).toFixed(1)}°, takes one of 80° or less; measure from the other upright`,
      });
    const r_ = given.recessDepth;
    const e = work.apply(edge, { R, r: r_, a: angle });
    const k = work.apply(skew, { h, a: angle });
    const p = work.apply(plumb, { h, a: angle });
    const z = work.apply(rises, { r: r_, a: angle });
    if (nanometres(e - k) <= 0)
      throw new Refusal({
        field: 'section',
        says: `the rail is so deep that its end cuts meet: takes a depth under ${((e / Math.tan(angle)) * 1000).toFixed(1)} mm`,
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
      ? recessTemplate({ ...given, ...answer })
      : railPicture({ ...given, ...answer, run });
  },
  example: {
    run: '1310 mm',
    rise: '620 mm',
    section: { width: '35 mm', depth: '60 mm' },
    recessDepth: '12 mm',
    uprightWidth: '70 mm',
  },
});

import { danger, note } from '../../engine/caution.js';
import type { Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import type { Trace } from '../../engine/trace.js';
import { InputError } from '../../units/input-error.js';
import { postCasingDrawing } from './post-casing-drawing.js';
import { postCasingFields } from './post-casing-fields.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });

const inside = formula({
  symbol: 'i',
  result: mm('inside of the casing'),
  expression: 'a + u + 2 c',
  variables: { a: mm('post at its widest'), u: mm('lean, bow and twist'), c: mm('clearance') },
  basis: 'geometry',
});
const outside = formula({
  symbol: 'o',
  result: mm('outside of the casing'),
  expression: 'i + 2 t',
  variables: { i: mm('inside of the casing'), t: mm('thickness of the boards') },
  basis: 'geometry',
});
const sideWidth = formula({
  symbol: 's',
  result: mm('width of a side board'),
  expression: 'i + 2 r',
  variables: { i: mm('inside of the casing'), r: mm('depth of the rebate, 0 for a butt corner') },
  basis: 'geometry',
});
const showFace = formula({
  symbol: 'f',
  result: mm('flat face left between chamfers'),
  expression: 'o - 2 d',
  variables: { o: mm('outside of the casing'), d: mm('chamfer along the face') },
  basis: 'geometry',
});
const chamferFace = formula({
  symbol: 'w',
  result: mm('width of the chamfer'),
  expression: 'd sqrt(2)',
  variables: { d: mm('chamfer along the face') },
  basis: 'geometry',
});
const mitreLeft = formula({
  symbol: 'm',
  result: mm('mitre left for glue'),
  expression: 't sqrt(2) - d / sqrt(2)',
  variables: { t: mm('thickness of the boards'), d: mm('chamfer along the face') },
  basis: 'geometry',
});
const boardMovement = formula({
  symbol: 'm_w',
  result: mm('movement across the widest board'),
  expression: 'W C dM',
  variables: {
    W: mm('widest board'),
    C: variable('ratio', 'movement for each part of moisture, upper figure'),
    dM: variable('share', 'change of moisture', { unit: '%' }),
  },
  basis: 'definition',
});

type Given = Parsed<typeof postCasingFields>;

/**
 * Boxing in a post or a leg of a frame with boards: their widths for butt, mitred and rebated corners, what face a chamfer
 * leaves, the room that an uneven post and the movement of the boards take, and the boards to cut. For posts of four sides
 * at right angles. Lengths in; lengths and a cut list out. Source: geometry, and published movement of the timber.
 * @throws InputError for a rebate or chamfer that leaves nothing of the board
 */
export const postCasing = recipe({
  name: 'postCasing',
  title: 'Casing of a post',
  topic: 'joinery',
  about:
    'Boxing in a post or a leg with boards: widths for butt, mitred and rebated corners, the face that chamfers leave, room for an uneven post and for movement, and the boards to cut.',
  sources: [],
  inputs: postCasingFields,
  outputs: {
    sentence: out.text({ label: 'in one sentence' }),
    frontWidth: out.length({ label: 'front board width', help: 'Width of the front and back boards.' }),
    sideWidth: out.length({ label: 'side board width' }),
    outsideWidth: out.length({ label: 'outside width', help: 'Width of the whole casing from the front.' }),
    outsideDepth: out.length({ label: 'outside depth', help: 'Depth of the whole casing from the side.' }),
    frontFace: out.length({
      label: 'front face left',
      help: 'Flat face between the chamfers, from the front.',
    }),
    sideFace: out.length({ label: 'side face left', help: 'Flat face between the chamfers, from the side.' }),
    chamferFace: out.length({ label: 'chamfer width', optional: true }),
    mitreLeft: out.length({
      label: 'mitre left',
      help: 'Length of mitre that a chamfer leaves for glue.',
      optional: true,
    }),
    movement: out.length({
      label: 'movement',
      help: 'How far the widest board swells or shrinks across.',
      optional: true,
    }),
    clearanceLeft: out.length({
      label: 'clearance left',
      help: 'Room on each side once the boards have shrunk; below zero they press on the post.',
      optional: true,
    }),
    boards: out.table(
      {
        board: out.text({ label: 'board' }),
        count: out.count({ label: 'count' }),
        length: out.length({ label: 'length' }),
        width: out.length({ label: 'width' }),
        thickness: out.length({ label: 'thickness' }),
        edges: out.text({ label: 'long edges' }),
      },
      { label: 'Boards to cut', help: 'For all posts, with the trim.' },
    ),
    area: out.area({ label: 'area of boards', help: 'Of all boards, without waste.' }),
  },
  formulas: [inside, outside, sideWidth, showFace, chamferFace, mitreLeft, boardMovement],
  solve: (given, trace) => {
    const size = sizesOf(given, trace);
    const { frontWidth, side, outsideWidth, outsideDepth } = size;
    const room = roomLeft(given, Math.max(frontWidth, side), trace);
    const length = given.height - given.floorGap + given.trim;
    const boards = [
      { board: 'front and back', count: 2 * given.posts, length, width: frontWidth },
      { board: 'side', count: 2 * given.posts, length, width: side },
    ].map((b) => ({ ...b, thickness: given.thickness, edges: edgesOf(given, b.board === 'side') }));
    const [front, flank] = [outsideWidth, outsideDepth].map((o, i) =>
      trace.evaluate(showFace, { o, d: given.chamfer }, `flat face left, ${i === 0 ? 'front' : 'side'}`),
    ) as [number, number];
    if (Math.min(front, flank) <= 0) throw tooLarge(given, Math.min(outsideWidth, outsideDepth) / 2);
    return {
      sentence: `Four boards to a post: two of ${inMm(frontWidth)} and two of ${inMm(side)}, ${inMm(length)} long${given.posts === 1 ? '' : `, for ${given.posts} posts`}.`,
      frontWidth,
      sideWidth: side,
      outsideWidth,
      outsideDepth,
      frontFace: front,
      sideFace: flank,
      ...(given.chamfer > 0 ? { chamferFace: trace.evaluate(chamferFace, { d: given.chamfer }) } : {}),
      ...(given.corner === 'mitred'
        ? { mitreLeft: trace.evaluate(mitreLeft, { t: given.thickness, d: given.chamfer }) }
        : {}),
      ...room,
      boards,
      area: boards.reduce((sum, b) => sum + b.count * b.length * b.width, 0),
    };
  },
  cautions: (given, answer) => [
    danger(
      'look the post over for rot, nails, wires and pipes before a casing hides it; never cut what carries a building or people to suit a casing: local codes and licensed practice decide',
    ),
    ...(answer.clearanceLeft !== undefined && answer.clearanceLeft < 0
      ? [
          note(
            'the boards would shrink onto the post and split: more clearance, narrower boards, or one corner left without glue',
          ),
        ]
      : []),
    ...(given.corner !== 'mitred' && given.chamfer > lip(given)
      ? [note('the chamfer cuts through the line of the joint: it shows in the slope, so keep it smaller')]
      : []),
    note(
      'glue long grain to long grain round the post, but hold the box to the post on blocks in one line only, so that it can move',
    ),
    note('measure the post at the foot, the middle and the top, both ways: the widest place counts'),
  ],
  chart: (given, answer) => postCasingDrawing({ ...given, ...answer, rebateDepth: rebateOf(given) }),
  example: {
    width: '95 mm',
    depth: '95 mm',
    height: '840 mm',
    thickness: '19 mm',
    corner: 'mitred',
    chamfer: '5 mm',
    uneven: '4 mm',
    posts: 4,
    timber: 'Douglas-fir',
  },
});

const inMm = (m: number): string => `${Number((m * 1000).toFixed(1))} mm`;

const rebateOf = (given: Given): number =>
  given.corner === 'rebated' ? (given.rebate ?? given.thickness / 2) : 0;

/** Thickness of the front board that shows on the side. */
const lip = (given: Given): number => given.thickness - rebateOf(given);

const tooLarge = (given: Given, most: number): InputError =>
  new InputError({ field: 'chamfer', message: `got ${inMm(given.chamfer)}, takes less than ${inMm(most)}` });

function sizesOf(given: Given, trace: Trace) {
  const r = rebateOf(given);
  if (given.corner !== 'rebated' && given.rebate !== undefined)
    throw new InputError({
      field: 'rebate',
      message: `got ${inMm(given.rebate)} with ${given.corner} corners, takes it only with corner "rebated"`,
    });
  if (r >= given.thickness)
    throw new InputError({
      field: 'rebate',
      message: `got ${inMm(r)}, takes less than the thickness of the boards, ${inMm(given.thickness)}`,
    });
  if (given.floorGap >= given.height)
    throw new InputError({
      field: 'floorGap',
      message: `got ${inMm(given.floorGap)}, takes less than the height of ${inMm(given.height)}`,
    });
  // Two chamfer legs meet inside the board where each is as long as it is thick twice over.
  if (given.chamfer >= 2 * given.thickness) throw tooLarge(given, 2 * given.thickness);
  const { uneven: u, clearance: c, thickness: t } = given;
  const i_w = trace.evaluate(inside, { a: given.width, u, c }, 'inside of the casing, width');
  const i_d = trace.evaluate(inside, { a: given.depth, u, c }, 'inside of the casing, depth');
  const outsideWidth = trace.evaluate(outside, { i: i_w, t }, 'outside of the casing, width');
  const outsideDepth = trace.evaluate(outside, { i: i_d, t }, 'outside of the casing, depth');
  const side = given.corner === 'mitred' ? outsideDepth : trace.evaluate(sideWidth, { i: i_d, r });
  return { frontWidth: outsideWidth, side, outsideWidth, outsideDepth };
}

/** How far the widest board moves, and the clearance that is left on each side once it has shrunk. */
function roomLeft(given: Given, widest: number, trace: Trace) {
  const movement = given.timber?.movement();
  const along = movement?.tangential ?? movement?.radial;
  if (given.timber === undefined || movement === undefined || along === undefined) return {};
  for (const row of movement.rows) if (!given.timber.isGroup) trace.source(row.citation);
  const moved = trace.evaluate(boardMovement, { W: widest, C: along.high, dM: given.moistureChange });
  return { movement: moved, clearanceLeft: given.clearance - moved / 2 };
}

function edgesOf(given: Given, isSide: boolean): string {
  if (given.corner === 'mitred') return 'both bevelled to 45 degrees';
  if (given.corner === 'butt') return 'both square';
  return isSide ? 'both square' : `both rebated ${inMm(given.thickness)} wide, ${inMm(rebateOf(given))} deep`;
}

// Bench cards of a piece: one operation a card, in the order of the work.
import {
  benchCards,
  type BenchCard,
  type BenchCardOptions,
  type BenchCards,
} from '../../notes/bench-cards.js';
import { runsOf } from '../../notes/cut-sheet.js';
import { InputError } from '../../units/input-error.js';
import { gluingStagesNode } from '../gluing-stages.js';
import { facesOf } from '../joint-places.js';
import { jointHeightNode } from '../lay-up.js';
import type { PieceNode } from '../piece-graph.js';
import { dangerLines } from '../piece-text.js';
import type { PieceView } from '../piece-view.js';
import { piecePictures } from '../pictures/piece-pictures.js';
import { halfMm, hoursMinutes, inWords, mm } from '../question.js';
import { clampsNode, glueNode } from '../gluing-needs.js';
import { finishesNode } from '../questions/finish-questions.js';
import { jointsNode } from '../framed-laps.js';
import { planingNode } from '../questions/machining-questions.js';
import { slotsNode } from '../questions/movement-questions.js';
import { topFixingsNode } from '../top-fixings.js';
import { gluedLengthNode, mitresNode } from '../top-length.js';

const salvage = 'Go over every board with a metal detector and pull the metal before it meets a blade.';
const planing = 'Nothing shorter than the machine takes; hands off the table at the block; extraction on.';
const rags = 'Rags with oil heat by themselves and burn: lay them flat outdoors or under water.';

type Maker = (piece: PieceView) => readonly BenchCard[];

/** What a node gives; nothing while its question is open. */
function known<T>(piece: PieceView, node: PieceNode<T>): T | undefined {
  try {
    return piece.graph.of(node);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

const dock: Maker = (piece) => {
  const result = piece.plans.top?.result as
    { readonly cuts?: readonly Readonly<Record<string, string>>[] } | undefined;
  const cuts = result?.cuts ?? [];
  if (cuts.length === 0) return [];
  return [
    {
      title: 'Dock and rip the boards',
      numbers: [{ label: 'kerf', value: mm(piece.description.shop.kerf) }],
      steps: cuts.map(
        (c) => `${c['board'] ?? ''}: dock ${c['dock'] ?? ''}; rip ${c['rip'] ?? ''}; ${c['cuts'] ?? ''}`,
      ),
      cautions: [salvage],
    },
  ];
};

const cutFrame: Maker = (piece) => {
  const plan = piece.plans.frame;
  if (!plan) return [];
  const runs = runsOf(plan.plan.map((b) => ({ ...b, keep: false })));
  return [
    {
      title: 'Cut the frame',
      numbers: [
        { label: 'battens', value: String(plan.boardsUsed) },
        { label: 'trim each end', value: mm(piece.description.shop.trimEachEnd) },
      ],
      steps: runs.map(
        (r) => `stop ${mm(r.length)}: ${r.names.map((n) => `${n.name} × ${n.count}`).join(', ')}`,
      ),
      cautions: [salvage],
    },
  ];
};

const glueUp: Maker = (piece) => {
  const stages = known(piece, gluingStagesNode) ?? [];
  const clamps = known(piece, clampsNode) ?? [];
  const glue = known(piece, glueNode);
  const { gluing } = piece.description;
  return stages.map((s): BenchCard => {
    const plan = clamps.find((c) => c.stage.name === s.name)?.asked.out;
    return {
      title: `Glue: ${s.name}`,
      numbers: [
        { label: 'joints', value: String(s.joints) },
        { label: 'width', value: mm(s.width) },
        ...(glue ? [{ label: 'glue', value: inWords('mass', glue.out.massPerJoint * s.joints) }] : []),
        { label: 'closed within', value: hoursMinutes(gluing.openTime) },
        ...(plan
          ? [
              { label: 'clamps', value: String(plan.clamps) },
              { label: 'force each', value: inWords('force', plan.forceEach) },
            ]
          : []),
      ],
      steps: [
        'Dry run with every clamp and caul.',
        ...(plan
          ? [
              `Clamps at ${plan.positions.map((p) => mm(p.position).replace(' mm', '')).join(', ')} mm, alternately below and above.`,
            ]
          : []),
        `Leave it ${hoursMinutes(gluing.hold)} in the clamps.`,
      ],
      cautions: ['Gloves and eye protection; glue off the skin at once.'],
    };
  });
};

const flatten: Maker = (piece) => {
  const passes = known(piece, planingNode);
  const rough = known(piece, jointHeightNode);
  if (!passes || rough === undefined) return [];
  const { top, shop } = piece.description;
  return [
    {
      title: 'Flatten the slabs',
      numbers: [
        { label: 'from', value: mm(rough) },
        { label: 'down to', value: mm(top.thickness) },
        { label: 'a pass', value: halfMm(shop.depthPerPass) },
        { label: 'passes', value: String(passes.out.passes) },
      ],
      steps: ['Measure each slab out of the clamps.', 'Flat face first, then thickness.'],
      cautions: [planing],
    },
  ];
};

const square: Maker = (piece) => {
  const { top } = piece.description;
  const mitres = known(piece, mitresNode);
  const long = known(piece, gluedLengthNode);
  return [
    {
      title: mitres ? 'Cut the mitres' : 'Cut the top to size',
      numbers: [
        ...(long === undefined ? [] : [{ label: 'as glued', value: mm(long) }]),
        { label: 'length', value: mm(top.length) },
        { label: 'width', value: mm(top.width) },
        ...(mitres
          ? [{ label: 'blade tilt', value: `${((mitres.out.bevel * 180) / Math.PI).toFixed(1)}°` }]
          : []),
      ],
      steps: mitres
        ? mitres.out.cutPositions.map((c) => `cut ${c.order} at ${mm(c.position)}: ${c.makes}`)
        : ['Square one end, then the length.', 'Rip to width, both edges.'],
      picture: piecePictures(piece.graph, 'plan'),
      cautions: ['Guard on, push stick at hand.'],
    },
  ];
};

const joints: Maker = (piece) =>
  (known(piece, jointsNode) ?? []).map(({ place, count }): BenchCard => {
    return {
      title: `Joint: ${place.name}`,
      numbers: [
        { label: 'how many', value: String(count) },
        ...(place.depth > 0
          ? [
              { label: place.tenoned ? 'tenon, long' : 'depth', value: halfMm(place.depth) },
              { label: `in ${place.a.part}, wide`, value: mm(place.widthInA) },
              ...(place.tenoned ? [] : [{ label: `in ${place.b.part}, wide`, value: mm(place.widthInB) }]),
            ]
          : [{ label: 'screws in each', value: String(place.joint.screws) }]),
      ],
      steps: [
        place.depth > 0 && !place.tenoned
          ? `Knife the shoulders from the other part; cut from ${facesOf(place)}.`
          : 'Mark from the other part.',
        'Try it dry.',
      ],
      picture: piecePictures(piece.graph, 'joint', place.name),
      cautions: ['Work held in a vice; both hands behind the edge.'],
    };
  });

const slots: Maker = (piece) => {
  const places = known(piece, topFixingsNode) ?? [];
  if (places.length === 0) return [];
  const found = known(piece, slotsNode);
  return [
    {
      title: 'Holes and slots for the top',
      numbers: [
        { label: 'screws', value: String(places.reduce((s, p) => s + p.count, 0)) },
        ...(found?.out.slots.map((s) => ({
          label: `slot at ${mm(s.position)}`,
          value: halfMm(s.slotLength),
        })) ?? []),
      ],
      steps: [
        ...new Set(
          places.map(
            (p) =>
              `${p.part}: ${p.kind === 'slotted' ? 'slot' : 'round hole'} at ${mm(p.x)} along, ${mm(p.y)} across`,
          ),
        ),
      ],
      cautions: [],
    },
  ];
};

const assemble: Maker = (piece) => {
  const square = piece.questions.find((a) => a.name === 'squareness');
  return [
    {
      title: 'Put the frame together',
      numbers: [{ label: 'height of the top', value: mm(piece.description.height) }],
      steps: [
        'Dry first, then glue; no glue between frame and top.',
        ...(square ? [square.answer] : []),
        'Screw the top down: round holes first, then the slots.',
      ],
      picture: piecePictures(piece.graph, 'front'),
      cautions: [piece.questions.find((a) => a.name === 'lifting')?.answer ?? ''].filter(Boolean),
    },
  ];
};

const finish: Maker = (piece) =>
  (known(piece, finishesNode) ?? []).map((f): BenchCard => ({
    title: `Finish: ${f.name}`,
    numbers: [
      { label: 'in all', value: inWords('liquid', f.amount.out.volume) },
      { label: 'coats', value: String(f.finish.coats) },
      ...(f.mix?.out.pour.map((p) => ({
        label: `pour ${p.part}`,
        value: inWords('liquid', p.add.value),
      })) ?? []),
    ],
    steps: Array.from({ length: f.finish.coats }, (_, i) => `coat ${i + 1}`),
    cautions: [rags],
  }));

/** The cards, in the order of the work; a failing safety question heads each. */
export function pieceCards(piece: PieceView, options: BenchCardOptions = {}): BenchCards {
  const makers: readonly Maker[] = [dock, glueUp, flatten, square, cutFrame, joints, slots, assemble, finish];
  const cards = makers.flatMap((make) => make(piece));
  return benchCards(piece.name, cards, {
    ...options,
    warnings: [...dangerLines(piece), ...(options.warnings ?? [])],
  });
}

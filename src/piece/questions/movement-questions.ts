// How the top moves over the year, and whether the frame lets it.
import { fixingSlots } from '../../recipes/moisture/fixing-slots.js';
import { restraintStress } from '../../recipes/moisture/restraint-stress.js';
import { seasonalMovement } from '../../recipes/moisture/seasonal-movement.js';
import { need } from '../open-question.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  halfMm,
  marginOf,
  perCent,
  verdictOfMargin,
  type Finding,
  type Question,
} from '../question.js';
import { ask, type Asked } from '../recipe-ask.js';
import { speciesOf } from '../species-of.js';
import { distinct, slotRoom, topFixingsNode, type FixingPlace } from '../top-fixings.js';

/** The direction in which the top moves: across its grain. */
const movesAlong = (m: Model): 'x' | 'y' => (m.get('top', 'grain') === 'along' ? 'y' : 'x');
const acrossGrain = (m: Model): number =>
  movesAlong(m) === 'y' ? m.get('top', 'width') : m.get('top', 'length');

/** The year in the top. */
export const yearNode: PieceNode<Asked<typeof seasonalMovement.outputs>> = {
  name: 'the year in the top',
  compute: (m) =>
    ask(m, seasonalMovement, {
      width: () => acrossGrain(m),
      thickness: () => m.get('top', 'thickness'),
      timber: () => speciesOf(m.get('top', 'timber')),
      cut: () => m.get('top', 'cut'),
      climate: () => need(m.get('use', 'climate'), 'use.climate'),
      madeAt: () => m.get('use', 'moisture'),
      sealing: () =>
        Object.values(m.all('finishes') ?? {}).some((f) => f.surface !== 'frame') ? 'oiled' : 'bare',
    }),
};

function year(m: Model): Finding {
  const { ask: asked, out } = m.of(yearNode);
  return {
    verdict: 'ok',
    answer: `The top swings ${halfMm(out.swing)} over the year, up to ${halfMm(out.swingHigh)}: widest in ${out.widestIn}, narrowest in ${out.narrowestIn}.`,
    asks: [asked],
  };
}

/** Lines along which the top is held fast, across its grain. */
const heldLines = (m: Model, places: readonly FixingPlace[]): number[] =>
  distinct(places.filter((p) => p.kind === 'fixed').map((p) => p[movesAlong(m)]));

function frame(m: Model): Finding | undefined {
  const places = m.of(topFixingsNode);
  if (places.length === 0)
    return {
      verdict: 'open',
      answer: 'Give fixings: how the top is held to its frame.',
      missing: 'fixings',
    };
  const held = heldLines(m, places);
  const first = held[0];
  const last = held.at(-1);
  const year = m.of(yearNode);
  if (first === undefined || last === undefined || last - first < 1e-6)
    return { verdict: 'ok', answer: 'The top is held along one line and free to move from it.' };
  const stress = ask(m, restraintStress, {
    width: () => last - first,
    timber: () => speciesOf(m.get('top', 'timber')),
    cut: () => m.get('top', 'cut'),
    from: () => year.out.wettest,
    to: () => year.out.driest,
  });
  const margin = marginOf(1, stress.out.used);
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `The top is held fast along ${counted(held.length, 'line')}, ${halfMm(last - first)} apart: in the driest month that takes ${perCent(stress.out.used)} of its strength across the grain.`,
    asks: [stress.ask],
  };
}

/** Slots for the places where the top may move; undefined where none is slotted. */
export const slotsNode: PieceNode<Asked<typeof fixingSlots.outputs> | undefined> = {
  name: 'slots',
  compute: (m) => {
    const places = m.of(topFixingsNode);
    const slotted = places.filter((p) => p.kind === 'slotted');
    if (slotted.length === 0) return undefined;
    const held = heldLines(m, places);
    const width = acrossGrain(m);
    return ask(m, fixingSlots, {
      width: () => width,
      positions: () => distinct(slotted.map((p) => p[movesAlong(m)])),
      fixedAt: () => (held.length === 0 ? width / 2 : held.reduce((a, b) => a + b, 0) / held.length),
      movement: () => m.of(yearNode).out.swingHigh,
      fastenerDiameter: () => Math.max(...slotted.map((p) => p.screw)),
    });
  },
};

function slots(m: Model): Finding | undefined {
  const found = m.of(slotsNode);
  if (!found) return undefined;
  const axis = movesAlong(m);
  const places = m.of(topFixingsNode).filter((p) => p.kind === 'slotted');
  const room = places.map((p) => {
    const slot = found.out.slots.find((s) => Math.abs(s.position - p[axis]) < 1e-5);
    return { place: p, margin: marginOf(slotRoom(p, axis), slot?.slotLength ?? found.out.longest) };
  });
  const worst = room.reduce((a, b) => (b.margin < a.margin ? b : a));
  const lines = found.out.slots.length;
  return {
    verdict: worst.margin < -1e-6 ? 'fails' : 'ok',
    margin: worst.margin,
    answer:
      worst.margin < -1e-6
        ? `Slots of ${halfMm(found.out.longest)} do not fit into ${worst.place.part}: use buttons or brackets there, or hold the top nearer to it.`
        : `Slots of up to ${halfMm(found.out.longest)} on ${counted(lines, 'line')}; ${counted(places.length, 'screw')} in slots.`,
    asks: [found.ask],
  };
}

export const movementQuestions: readonly Question[] = [
  { name: 'movement', title: 'How does the top move over the year?', topic: 'movement', answer: year },
  {
    name: 'movementFrame',
    title: 'Does the frame let the top move?',
    topic: 'movement',
    levers: [{ path: 'fixings.*.kind', way: { set: 'slotted' }, words: 'slotted holes' }],
    answer: frame,
  },
  {
    name: 'slots',
    title: 'How long are the slots, and do they fit?',
    topic: 'movement',
    levers: [{ path: 'parts.*.section', side: 'smaller', way: 'more', words: 'a thicker rail' }],
    answer: slots,
  },
];

import { InputError } from '../../units/input-error.js';
import { estimate, note } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { nanometres } from '../../engine/nanometres.js';
import { nullTrace, type Trace } from '../../engine/trace.js';
import type { Timber } from '../../materials/timber.js';
import {
  atEnd,
  moveAcross,
  movementFormulas,
  ruleFor,
  rulesOf,
  saturationOf,
  type Ruled,
} from './movement-model.js';
import { heldAt, placesOf } from './fixing-places.js';
import { slotsDrawing } from './slots-drawing.js';
import { moistureOf, type Cut, type WoodState } from './wood-state.js';
import { fixingSlotsFields } from './fixing-slots-fields.js';

const shareRule = formula({
  symbol: 'x',
  result: variable('length', 'travel at a fixing', { unit: 'mm' }),
  basis: 'geometry',
  expression: 'm a / w',
  variables: {
    m: variable('length', 'movement of the whole width', { unit: 'mm' }),
    a: variable('length', 'distance from the line that is held', { unit: 'mm' }),
    w: variable('length', 'width of the top', { unit: 'mm' }),
  },
});
const slotRule = formula({
  symbol: 's',
  result: variable('length', 'length of the slot', { unit: 'mm' }),
  basis: 'geometry',
  expression: 'x + d + 2 e',
  variables: {
    x: variable('length', 'travel', { unit: 'mm' }),
    d: variable('length', 'diameter of the fastener', { unit: 'mm' }),
    e: variable('length', 'spare at each end', { unit: 'mm' }),
  },
});

interface Asked {
  readonly width: number;
  readonly movement: number | undefined;
  readonly timber: Timber | undefined;
  readonly cut: Cut;
  readonly from: WoodState | undefined;
  readonly to: WoodState | undefined;
  readonly allowFor: 'middle' | 'most';
}

/** Movement of the whole width: given, or calculated as movementAcross does. */
function wholeMovement(trace: Trace, g: Asked): number {
  if (g.movement !== undefined) return Math.abs(g.movement);
  const missing = (['timber', 'from', 'to'] as const).filter((k) => g[k] === undefined);
  if (missing.length > 0) {
    throw new InputError(
      missing.length === 3
        ? {
            field: 'movement',
            message: 'missing; takes a length such as "12 mm", or give timber, from and to',
          }
        : missing.map((k) => ({
            field: k,
            message: `missing; takes ${k === 'timber' ? 'a timber by name such as "white oak"' : 'a moisture such as "8 %" or air'}, or give movement`,
          })),
    );
  }
  const timber = g.timber as Timber;
  const from = moistureOf(trace, g.from as WoodState, 'from');
  const to = moistureOf(trace, g.to as WoodState, 'to');
  const f = saturationOf(timber);
  const piece = { width: g.width, timber, cut: g.cut };
  const atMost = (rule: Ruled): Ruled => (g.allowFor === 'middle' ? rule : atEnd(rule, timber, 1));
  const own = ruleFor(timber, g.cut, Math.min(from, f), Math.min(to, f));
  // Where coefficient and shrinkage disagree, the larger movement decides the slots.
  const { outside } = rulesOf(timber, g.cut);
  const size = (rule: Ruled): number => Math.abs(moveAcross(nullTrace, piece, from, to, atMost(rule)).change);
  const rule = outside.rule === 'green shrinkage' && size(outside) > size(own) ? outside : own;
  if (rule !== own)
    trace.note(
      'The shrinkage from green gives more movement than the coefficient, and slots take the larger.',
    );
  if (g.allowFor === 'most')
    trace.note('Calculated with the upper end of what the timber is expected to move.');
  return Math.abs(moveAcross(trace, piece, from, to, atMost(rule)).change);
}

/** Slots for screws or bolts that hold a top down and let it move: how far each travels and how long its slot is. */
export const fixingSlots = recipe({
  name: 'fixingSlots',
  title: 'Slotted fixings for a solid top',
  topic: 'moisture',
  about:
    'Travel and slot length at each fixing across a solid top: the top is held along one line, and a fixing travels in proportion to its distance from it. Calculate from the driest to the wettest state it will see.',
  sources: [],
  inputs: fixingSlotsFields,
  outputs: {
    movement: out.length({ label: 'movement', help: 'Movement of the whole width.' }),
    longest: out.length({ label: 'longest slot' }),
    slots: out.table(
      {
        position: out.length({ label: 'from the edge' }),
        travel: out.length({ label: 'travel' }),
        slotLength: out.length({ label: 'slot length' }),
      },
      { label: 'Fixings across the top' },
    ),
  },
  formulas: [shareRule, slotRule, ...movementFormulas],
  solve: (given, trace) => {
    const fixed = heldAt(given);
    if (nanometres(fixed) > nanometres(given.width))
      throw new InputError({
        field: 'fixedAt',
        message: `got ${(fixed * 1000).toFixed(1)} mm, takes a distance within the width of ${(given.width * 1000).toFixed(1)} mm`,
      });
    const places = placesOf(given, fixed);
    if (places.length === 0)
      throw new InputError({
        field: 'edgeDistance',
        message: `got ${(given.edgeDistance * 1000).toFixed(1)} mm, which leaves no place for a fixing across ${(given.width * 1000).toFixed(1)} mm`,
      });
    const m = wholeMovement(trace, given);
    const farthest = Math.max(...places.map((p) => Math.abs(p - fixed)));
    const x = trace.evaluate(
      shareRule,
      { m, a: farthest, w: given.width },
      'travel at the fixing farthest from the held line',
    );
    trace.evaluate(slotRule, { x, d: given.fastenerDiameter, e: given.margin }, 'length of its slot');
    const slots = places.map((position) => {
      const travel = shareRule.evaluate({ m, a: Math.abs(position - fixed), w: given.width });
      // On the held line itself the top is fixed: a round hole.
      return {
        position,
        travel,
        slotLength:
          nanometres(position - fixed) === 0
            ? given.fastenerDiameter
            : slotRule.evaluate({ x: travel, d: given.fastenerDiameter, e: given.margin }),
      };
    });
    return { movement: m, longest: Math.max(...slots.map((s) => s.slotLength)), slots };
  },
  cautions: (given) => [
    note(
      'cut the slots along the width, across the grain; set the screw in the middle of its slot at middling moisture, or at the end that leaves the coming travel free',
    ),
    ...(given.movement === undefined && given.allowFor === 'middle'
      ? [
          estimate(
            'a board in ten moves more than the middle figure by a fifth or more: allowFor "most" makes the slots for it',
          ),
        ]
      : []),
  ],
  chart: (given, answer) =>
    slotsDrawing({
      width: given.width,
      fixed: heldAt(given),
      diameter: given.fastenerDiameter,
      slots: answer.slots,
    }),
  sentence: 'Allow {movement} of movement: the longest slot is {longest} long.',
  example: {
    width: '640 mm',
    positions: ['60 mm', '320 mm', '580 mm'],
    timber: 'white oak',
    from: '8 %',
    to: '13 %',
    fastenerDiameter: '5 mm',
  },
});

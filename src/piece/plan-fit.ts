// Whether a plan that a search found earlier still fits the piece as it is described now.
import type { CutPart, CutStock, FrameAsked, TopAsked } from './kept-plan.js';
import { membersNode, sidesOf } from './member.js';
import { OpenQuestion } from './open-question.js';
import type { Model, PieceNode } from './piece-graph.js';
import { gluedLengthOfTop } from './top-length.js';

/** How a kept plan stands to the piece: made for it, still fitting, or not; and why. */
export interface PlanFit {
  readonly state: 'none' | 'current' | 'still fits' | 'no longer fits';
  readonly fits: boolean;
  readonly why: string;
}

const none: PlanFit = { state: 'none', fits: false, why: 'no search has run' };
const current: PlanFit = { state: 'current', fits: true, why: 'made for this piece' };
const still = (why: string): PlanFit => ({ state: 'still fits', fits: true, why });
const not = (why: string): PlanFit => ({ state: 'no longer fits', fits: false, why });
const close = (a: number, b: number): boolean => Math.abs(a - b) < 5e-7;

/** What the search for the top is asked. @throws OpenQuestion where no pile is surveyed */
export const topAskedNode: PieceNode<TopAsked> = {
  name: 'what the search for the top is asked',
  compute: (m) => {
    const boards = m.get('pile', 'survey');
    if (boards === undefined)
      throw new OpenQuestion('pile.survey', 'Give pile.survey, a table or CSV of the boards there are.');
    return {
      boards,
      topLength: gluedLengthOfTop(m),
      width: m.get('top', 'width') + m.get('top', 'trim'),
      thickness: m.get('top', 'thickness'),
      lay: m.get('top', 'lay'),
      spare: m.get('top', 'spareEnds'),
      plane: m.get('pile', 'plane'),
      jointing: m.get('pile', 'jointing'),
      kerf: m.get('shop', 'kerf'),
      widestSlab: m.get('shop', 'thicknesser'),
      leastPiece: m.get('pile', 'leastPiece'),
      stagger: m.get('pile', 'stagger'),
    };
  },
};

export const topPlanFits: PieceNode<PlanFit> = {
  name: 'whether the plan of the top fits',
  compute: (m) => {
    const plan = m.plan('top');
    if (!plan) return none;
    const now = m.of(topAskedNode);
    const then = plan.asked;
    const names = Object.keys(now) as (keyof TopAsked)[];
    if (names.every((n) => same(now[n], then[n]))) return current;
    if (!same(now.boards, then.boards)) return not('the pile was surveyed anew');
    if (now.topLength > then.topLength + 5e-7) return not('the top is longer than the plan');
    if (!close(now.thickness, plan.thickness)) return not('the top has another thickness');
    if (plan.foundWidth < now.width - 5e-7) return not('the plan is not wide enough');
    if (now.stagger > (plan.worstStagger ?? Infinity) + 5e-7)
      return not('its end joints stand too close together');
    const harder = (['plane', 'jointing', 'kerf', 'spare', 'leastPiece'] as const).find(
      (n) => now[n] > then[n] + 5e-7,
    );
    if (harder) return not(`${harder} is more than the plan allows for`);
    if (now.lay !== 'either' && now.lay !== plan.lay) return not('the strips lie the other way');
    return still('the pieces planned are enough');
  },
};

const same = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? close(a, b)
    : Object.is(a, b) || JSON.stringify(a) === JSON.stringify(b);

/** Parts of the frame to cut, those alike together. */
export const cutPartsNode: PieceNode<readonly CutPart[]> = {
  name: 'parts to cut',
  compute: (m) => {
    const parts = m.all('parts');
    const found = new Map<string, CutPart>();
    for (const member of m.of(membersNode)) {
      const part = parts[member.part];
      if (!part) continue;
      const { upright, level } = sidesOf(part);
      const [thickness, width] = [Math.min(upright, level), Math.max(upright, level)];
      // To a tenth of a millimetre, as it is marked out.
      const length = Math.round(member.length * 1e4) / 1e4;
      const key = `${member.part}|${length}`;
      const had = found.get(key);
      found.set(key, { name: member.part, length, count: (had?.count ?? 0) + 1, width, thickness });
    }
    return [...found.values()];
  },
};

/** What the cutting plan is asked. @throws OpenQuestion where no stock is given */
export const frameAskedNode: PieceNode<FrameAsked> = {
  name: 'what the cutting plan is asked',
  compute: (m) => {
    const stock = m.get('pile', 'battens') as readonly CutStock[] | undefined;
    if (stock === undefined)
      throw new OpenQuestion('pile.battens', 'Give pile.battens, a table of the battens there are.');
    return {
      parts: m.of(cutPartsNode),
      stock,
      kerf: m.get('shop', 'kerf'),
      trimEachEnd: m.get('shop', 'trimEachEnd'),
    };
  },
};

export const framePlanFits: PieceNode<PlanFit> = {
  name: 'whether the cutting plan fits',
  compute: (m) => {
    const plan = m.plan('frame');
    if (!plan) return none;
    const now = m.of(frameAskedNode);
    const then = plan.asked;
    if (same(now, then)) return current;
    if (now.kerf > then.kerf + 5e-7 || now.trimEachEnd > then.trimEachEnd + 5e-7)
      return not('the saw takes more than the plan allows for');
    if (!sameSections(now, then)) return not('a part has another section');
    const missing = partsLacking(now, planned(m));
    if (missing) return not(missing);
    return stockLacking(now, plan.plan) ?? still('every part is among the pieces planned');
  },
};

const planned = (m: Model) =>
  (m.plan('frame')?.plan ?? []).flatMap((b) => b.pieces.map((p) => ({ name: p.name, length: p.length })));

const sameSections = (now: FrameAsked, then: FrameAsked): boolean =>
  now.parts.every((p) => {
    const before = then.parts.find((q) => q.name === p.name);
    return before !== undefined && close(before.width, p.width) && close(before.thickness, p.thickness);
  });

/** A part that the planned pieces do not give; a longer piece may be cut down. */
function partsLacking(
  now: FrameAsked,
  pieces: readonly { readonly name: string; readonly length: number }[],
): string | undefined {
  const free = [...pieces].sort((a, b) => a.length - b.length);
  for (const p of [...now.parts].sort((a, b) => b.length - a.length))
    for (let i = 0; i < p.count; i++) {
      const at = free.findIndex((f) => f.name === p.name && f.length >= p.length - 5e-7);
      if (at < 0) return `${p.name} of ${Math.round(p.length * 1000)} mm is not among the pieces planned`;
      free.splice(at, 1);
    }
  return undefined;
}

function stockLacking(
  now: FrameAsked,
  boards: readonly { readonly stock: string; readonly stockLength: number }[],
): PlanFit | undefined {
  const used = new Map<string, number>();
  for (const b of boards) {
    const key = `${b.stock}|${b.stockLength}`;
    used.set(key, (used.get(key) ?? 0) + 1);
  }
  for (const [key, count] of used) {
    const length = Number(key.slice(key.lastIndexOf('|') + 1));
    const there = now.stock
      .filter((s) => close(s.length, length))
      .reduce((sum, s) => sum + (s.count ?? Infinity), 0);
    if (there < count) return not(`the stock no longer holds ${count} of ${Math.round(length * 1000)} mm`);
  }
  return undefined;
}

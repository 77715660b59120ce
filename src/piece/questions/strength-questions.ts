// Sag and strength of the top and its rails, notches included.
import { railSpan } from '../../recipes/rails/rail-span.js';
import { topSag } from '../../recipes/rails/top-sag.js';
import { jointsInPlaceNode } from '../joint-places.js';
import { sidesOf } from '../member.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  marginOf,
  mm,
  perCent,
  verdictOfMargin,
  type Finding,
  type Lever,
  type Question,
} from '../question.js';
import { ask, placed, type Asked } from '../recipe-ask.js';
import { carriedRailsNode, topSupportsNode, type CarriedRail } from '../supports.js';
import { netSections } from '../net-section.js';

/** The top between its rails. */
export const topSagNode: PieceNode<Asked<typeof topSag.outputs>> = {
  name: 'sag of the top',
  compute: (m) => {
    const supports = m.of(topSupportsNode);
    const across = supports.spans === 'across';
    return ask(m, topSag, {
      length: () => m.get('top', across ? 'width' : 'length'),
      width: () => m.get('top', across ? 'length' : 'width'),
      thickness: () => m.get('top', 'thickness'),
      supports: () => placed('(what carries the top)', supports.at),
      load: () => m.get('use', 'goods'),
      edgeLoad: () => m.get('use', 'person'),
      grain: () => ((m.get('top', 'grain') === 'along') === across ? 'across' : 'along'),
      limit: () => m.get('use', 'sagLimit'),
      category: () => m.get('use', 'category'),
      place: () => m.get('use', 'place'),
      timber: () => m.get('top', 'timber'),
      examined: () => m.get('top', 'examined'),
    });
  },
};

/** The share of the allowed sag at the place that is nearest to it, as the recipe words it. */
function sagShare(verdict: string): number | undefined {
  const share = /sag is (\d+) % of/.exec(verdict)?.[1];
  if (share !== undefined) return Number(share) / 100;
  const [, sag, allowed] = /sags too far[^:]*: ([\d.]+) mm where .* allows ([\d.]+) mm/.exec(verdict) ?? [];
  return sag === undefined || allowed === undefined ? undefined : Number(sag) / Number(allowed);
}

function sagTop(m: Model): Finding {
  const { ask: asked, out } = m.of(topSagNode);
  const share = sagShare(out.verdict) ?? out.sag / out.allowed;
  const margin = marginOf(1, share);
  const n = m.of(topSupportsNode).at.length;
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `On ${counted(n, 'line')} of rails the top sags up to ${(out.sag * 1000).toFixed(1)} mm in the long run, ${perCent(share)} of what is allowed.`,
    asks: [asked],
  };
}

function topStrength(m: Model): Finding {
  const { ask: asked, out } = m.of(topSagNode);
  const used = /bending stress is (\d+) %/.exec(out.verdict)?.[1];
  if (used === undefined)
    return {
      verdict: 'open',
      answer: 'The bending stress of the top was not checked: its strength is not known.',
      missing: 'top.timber',
      asks: [asked],
    };
  const margin = marginOf(100, Number(used));
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `With the goods on it and somebody sitting on it the top carries ${used} % of the stress allowed.`,
    asks: [asked],
  };
}

/** Load by length that a rail takes: the goods, or somebody in the middle of a bay as the spread load of the same moment. */
const imposedOn = (m: Model, rail: CarriedRail): number =>
  Math.max(rail.imposed, (2 * m.get('use', 'person')) / Math.max(rail.span, 0.1), 1e-3);

/** Spans of every rail under the top, those of a group alike once. */
export const railSpansNode: PieceNode<
  readonly { readonly rail: CarriedRail; readonly asked: Asked<typeof railSpan.outputs> }[]
> = {
  name: 'spans of the rails',
  compute: (m) => {
    const parts = m.all('parts');
    return m
      .of(carriedRailsNode)
      .filter((r) => Number.isFinite(r.span))
      .flatMap((rail) => {
        const name = rail.member.part;
        const part = parts[name];
        if (!part) return [];
        const { upright, level } = sidesOf(part);
        const asked = ask(
          m,
          railSpan,
          {
            section: () => placed(`parts.${name}.section`, { shape: 'solid', width: level, depth: upright }),
            load: () => imposedOn(m, rail),
            permanent: () => placed('(rails under the top)', rail.permanent),
            limit: () => m.get('use', 'sagLimit'),
            category: () => m.get('use', 'category'),
            place: () => m.get('use', 'place'),
            timber: () => placed(`parts.${name}.timber`, part.timber),
            examined: () => placed(`parts.${name}.examined`, part.examined),
          },
          name,
        );
        return [{ rail, asked }];
      });
  },
};

function rails(m: Model, by: 'sag' | 'strength'): Finding {
  const found = m.of(railSpansNode).map((r) => {
    const { spanByDeflection, spanByBending, spanByShear } = r.asked.out;
    const allowed =
      by === 'sag' ? spanByDeflection : Math.min(spanByBending ?? Infinity, spanByShear ?? Infinity);
    return { ...r, allowed, margin: marginOf(allowed, r.rail.span) };
  });
  if (found.length === 0) return { verdict: 'fails', answer: 'No rail under the top stands on a leg.' };
  const worst = found.reduce((a, b) => (b.margin < a.margin ? b : a));
  const name = worst.rail.member.part;
  // The same rails on two sides are shown once.
  const worstFirst = [...found].sort((a, b) => a.margin - b.margin);
  const asks = [...new Map(worstFirst.map((f) => [JSON.stringify(f.asked.ask.given), f.asked.ask])).values()];
  if (!Number.isFinite(worst.allowed))
    return {
      verdict: 'open',
      answer: `The strength of ${name} is not known: give parts.${name}.timber a timber with published strength.`,
      missing: `parts.${name}.timber`,
      asks,
    };
  return {
    verdict: verdictOfMargin(worst.margin),
    margin: worst.margin,
    answer: `${name} spans ${mm(worst.rail.span)}; for ${by === 'sag' ? 'its sag' : 'its strength'} it may span ${mm(worst.allowed)}.`,
    asks,
  };
}

function notches(m: Model): Finding | undefined {
  const found = netSections(m.of(railSpansNode), m.of(jointsInPlaceNode));
  const first = found[0];
  if (!first) return undefined;
  const worst = found.reduce((a, b) => (b.use > a.use ? b : a), first);
  const margin = marginOf(1, worst.use);
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `${worst.part}, cut ${mm(worst.cut)} deep at ${mm(worst.at)} for ${worst.joint}, carries ${perCent(worst.use)} of what its net section allows (${worst.by}).`,
  };
}

const railLevers: readonly Lever[] = [
  { path: 'parts.*.section', side: 'larger', way: 'more', words: 'a deeper rail' },
  { path: 'parts.*.section', side: 'smaller', way: 'more', words: 'a thicker rail' },
  {
    path: 'parts.*.examined',
    way: { set: true },
    words: 'rails looked over for knots, grain, holes and rot',
  },
  { path: 'use.goods', way: 'less', words: 'less goods on the top' },
];
const topLevers: readonly Lever[] = [
  { path: 'top.thickness', way: 'more', words: 'a thicker top' },
  { path: 'top.examined', way: { set: true }, words: 'a top looked over for knots, grain, holes and rot' },
  { path: 'use.goods', way: 'less', words: 'less goods on the top' },
];

export const strengthQuestions: readonly Question[] = [
  {
    name: 'sagTop',
    title: 'How far does the top sag?',
    topic: 'strength',
    levers: topLevers,
    answer: sagTop,
  },
  {
    name: 'topStrength',
    title: 'Does the top carry people and goods?',
    topic: 'strength',
    safety: true,
    levers: topLevers,
    answer: topStrength,
  },
  {
    name: 'sagRails',
    title: 'How far do the rails sag?',
    topic: 'strength',
    levers: railLevers,
    answer: (m) => rails(m, 'sag'),
  },
  {
    name: 'railStrength',
    title: 'Do the rails carry people and goods?',
    topic: 'strength',
    safety: true,
    levers: railLevers,
    answer: (m) => rails(m, 'strength'),
  },
  {
    name: 'notchedSection',
    title: 'Are the rails strong enough where joints are cut?',
    topic: 'strength',
    safety: true,
    levers: railLevers,
    answer: notches,
  },
];

// Joints of the frame, mitred ends and splines, squareness, parts at an angle, screws.
import { angledRail } from '../../recipes/joinery/angled-rail.js';
import { screwHold } from '../../recipes/joinery/screw-hold.js';
import { splineSlot } from '../../recipes/joinery/spline-slot.js';
import { squareness } from '../../recipes/joinery/squareness.js';
import { g0 } from '../../recipes/rails/loads-and-creep.js';
import { jointsNode, lapUse } from '../framed-laps.js';
import { facesOf, thicknessAt } from '../joint-places.js';
import { massesNode } from '../masses.js';
import { membersNode, sizeAlong } from '../member.js';
import { feetNode } from '../footing.js';
import type { Model } from '../piece-graph.js';
import {
  counted,
  inWords,
  marginOf,
  mm,
  newtons,
  perCent,
  verdictOfMargin,
  worstVerdict,
  type Finding,
  type PieceVerdict,
  type Question,
} from '../question.js';
import { ask, type Ask } from '../recipe-ask.js';
import { speciesOf } from '../species-of.js';
import { topFixingsNode } from '../top-fixings.js';
import { mitresNode } from '../top-length.js';

function joints(m: Model): Finding | undefined {
  if (Object.keys(m.all('joints') ?? {}).length === 0) return undefined;
  const found = m.of(jointsNode);
  if (found.length === 0)
    return { verdict: 'fails', answer: 'None of the joints described lies where two parts meet.' };
  const verdicts = found.map(({ place }): PieceVerdict => {
    const least = thicknessAt(place);
    return place.depth >= least - 1e-6 ? 'fails' : place.depth > 0.67 * least ? 'tight' : 'ok';
  });
  const laps = found.flatMap((f) => (f.lap ? [{ name: f.place.name, ...lapUse(f) }] : []));
  const unknown = laps.find((l) => l.unknown !== undefined);
  const asks = found.flatMap((f) => (f.lap ? [f.lap.ask] : []));
  if (unknown?.unknown !== undefined)
    return {
      verdict: 'open',
      answer: `The strength of ${unknown.name} is not known: give ${unknown.unknown} a timber with published strength.`,
      missing: unknown.unknown,
      asks,
    };
  const [weakest] = laps
    .flatMap(({ name, use }) => (use === undefined ? [] : [{ name, use }]))
    .sort((a, b) => b.use - a.use);
  const margin = weakest && marginOf(1, weakest.use);
  return {
    verdict: worstVerdict([...verdicts, ...(margin === undefined ? [] : [verdictOfMargin(margin)])]),
    ...(margin === undefined ? {} : { margin }),
    answer: `${found
      .map(
        ({ place, count }) =>
          `${place.name}: ${count} × ${place.joint.kind}${place.depth > 0 ? ` ${mm(place.depth)} ${place.tenoned ? 'long' : `deep, cut from ${facesOf(place)}`}` : ''}`,
      )
      .join(
        '; ',
      )}.${weakest ? ` Pushed with ${newtons(m.get('use', 'push'))}, ${weakest.name} carries ${perCent(weakest.use)} of what it holds${weakest.use > 1 ? ': too weak' : ''}.` : ''}`,
    asks,
  };
}

function mitres(m: Model): Finding | undefined {
  const found = m.of(mitresNode);
  if (!found) return undefined;
  return {
    verdict: 'ok',
    answer: `Glue the strips up ${mm(found.out.stripLength)} long; each fold takes ${mm(found.out.grainBreak)} of grain.`,
    asks: [found.ask],
  };
}

function spline(m: Model): Finding | undefined {
  const given = m.get('top', 'spline');
  if (m.get('top', 'ends') === 'square' || given === undefined) return undefined;
  const { ask: asked, out } = ask(m, splineSlot, {
    thickness: () => m.get('top', 'thickness'),
    splineThickness: () => given.thickness,
    splineWidth: () => given.width,
    fromInside: () => given.fromInside,
  });
  return {
    verdict: out.ok ? 'ok' : 'fails',
    answer: out.ok
      ? `Slot ${mm(out.depth)} deep: ${mm(out.wallInside)} of wood inside it, ${mm(out.wallOutside)} outside.`
      : `The slot leaves too little wood; it may be ${mm(Math.max(0, out.deepest))} deep.`,
    asks: [asked],
  };
}

function square(m: Model): Finding {
  const feet = m.of(feetNode);
  const { ask: asked, out } = ask(m, squareness, {
    width: () => feet.right - feet.left,
    height: () => feet.back - feet.front,
    cornerOffset: () => 0,
    readingError: () => m.get('shop', 'tape'),
  });
  return {
    verdict: 'ok',
    answer: `The frame is square when both diagonals over its feet measure ${mm(out.trueDiagonal)}; read to ${inWords('length', m.get('shop', 'tape'))}.`,
    asks: [asked],
  };
}

function angled(m: Model): Finding | undefined {
  const parts = m.all('parts');
  const rising = Object.entries(parts).filter(([, p]) => p.rise > 0);
  if (rising.length === 0) return undefined;
  const asks: Ask[] = [];
  const words = rising.flatMap(([name, part]) => {
    const member = m.of(membersNode).find((x) => x.part === name);
    if (!member) return [];
    const axis = member.runs === 'y' ? 'y' : 'x';
    const leg = m.of(membersNode).find((x) => x.role === 'leg');
    const { ask: asked, out } = ask(
      m,
      angledRail,
      {
        run: () => sizeAlong(member, axis),
        rise: () => part.rise,
        section: () => ({
          width: Math.min(part.section.width, part.section.depth),
          depth: Math.max(part.section.width, part.section.depth),
        }),
        recessDepth: () => part.recess,
        uprightWidth: () => (leg ? sizeAlong(leg, axis) : undefined),
      },
      name,
    );
    asks.push(asked);
    return [
      `${name}: ${mm(out.longPoint)} from point to point, ends ${((out.angle * 180) / Math.PI).toFixed(1)}° off square`,
    ];
  });
  return { verdict: 'ok', answer: `${words.join('; ')}.`, asks };
}

/** Lifting by the top jerks: twice the weight (common practice). */
const jerk = 2;

function screws(m: Model): Finding | undefined {
  const places = m.of(topFixingsNode);
  if (places.length === 0) return undefined;
  const fixings = m.all('fixings') ?? {};
  const masses = m.of(massesNode);
  const frame = (masses.most - masses.top.most) * g0 * jerk;
  const names = [...new Set(places.map((p) => p.name))];
  const held = names.flatMap((name) => {
    const f = fixings[name];
    if (!f) return [];
    const asked = ask(
      m,
      screwHold,
      {
        timber: () => speciesOf(f.into ?? m.get('top', 'timber')),
        diameter: () => f.screw,
        penetration: () => Math.max(0.001, f.length - f.through),
        count: () => places.filter((p) => p.name === name).reduce((s, p) => s + p.count, 0),
      },
      name,
    );
    return [asked];
  });
  const allowed = held.reduce((s, h) => s + h.out.allowable, 0);
  const margin = marginOf(allowed, frame);
  const n = places.reduce((s, p) => s + p.count, 0);
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `${counted(n, 'screw')} hold ${newtons(allowed)}; lifting the piece by its top takes ${newtons(frame)}.`,
    asks: held.map((h) => h.ask),
  };
}

function screwEdges(m: Model): Finding | undefined {
  const places = m.of(topFixingsNode).filter((p) => p.on);
  const first = places[0];
  if (!first) return undefined;
  const checked = places.flatMap((p) => {
    if (!p.on) return [];
    const across = p.on.runs === 'y' ? ('x' as const) : ('y' as const);
    const { out, ask: asked } = ask(m, screwHold, {
      timber: () => speciesOf(p.on?.timber ?? 'unknown softwood'),
      diameter: () => p.screw,
      penetration: () => Math.max(0.01, 4 * p.screw),
    });
    const edge = out.distances.find((d) => /edge/.test(d.place));
    const needed = edge?.pulled ?? edge?.sideways;
    return needed === undefined ? [] : [{ place: p, asked, needed, have: sizeAlong(p.on, across) / 2 }];
  });
  const worst = checked.reduce<(typeof checked)[number] | undefined>(
    (a, b) => (a && a.have / a.needed <= b.have / b.needed ? a : b),
    undefined,
  );
  if (!worst) return undefined;
  const margin = marginOf(worst.have, worst.needed);
  return {
    verdict: margin < -1e-6 ? 'fails' : 'ok',
    margin,
    answer: `A screw in ${worst.place.part} stands ${mm(worst.have)} from its edges; ${mm(worst.needed)} is needed.`,
    asks: [worst.asked],
  };
}

export const jointQuestions: readonly Question[] = [
  {
    name: 'joints',
    title: 'How are the joints of the frame cut?',
    topic: 'joints',
    safety: true,
    levers: [
      { path: 'parts.*.section', side: 'larger', way: 'more', words: 'wider parts at the laps' },
      { path: 'parts.*.section', side: 'smaller', way: 'more', words: 'thicker parts at the laps' },
      {
        path: 'parts.*.examined',
        way: { set: true },
        words: 'parts looked over for knots, grain, holes and rot',
      },
    ],
    answer: joints,
  },
  { name: 'mitredEnds', title: 'Where are the mitred ends cut?', topic: 'joints', answer: mitres },
  { name: 'spline', title: 'Does the spline leave wood enough?', topic: 'joints', answer: spline },
  { name: 'squareness', title: 'When is the frame square?', topic: 'joints', answer: square },
  { name: 'angledParts', title: 'How are parts at an angle cut?', topic: 'joints', answer: angled },
  {
    name: 'screws',
    title: 'Do the screws hold the top?',
    topic: 'joints',
    safety: true,
    levers: [
      { path: 'fixings.*.count', way: 'more', words: 'more screws' },
      { path: 'fixings.*.length', way: 'more', words: 'longer screws' },
    ],
    answer: screws,
  },
  { name: 'screwEdges', title: 'Are the screws far enough from edges?', topic: 'joints', answer: screwEdges },
];

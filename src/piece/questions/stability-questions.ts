// Does it stand: tipping, fixing to the floor, and sway.
import { screwHold } from '../../recipes/joinery/screw-hold.js';
import { rackingFrame } from '../../recipes/rails/racking-frame.js';
import { tipping } from '../../recipes/rails/tipping.js';
import { InputError } from '../../units/input-error.js';
import { anchorPull, feetNode, swayFramesNode, type Feet } from '../footing.js';
import { massesNode } from '../masses.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  marginOf,
  mm,
  newtons,
  verdictOfMargin,
  type Finding,
  type Lever,
  type Question,
} from '../question.js';
import { ask, type Asked } from '../recipe-ask.js';
import { speciesOf } from '../species-of.js';

/** Whether it tips when it stands free, on the least it may weigh. */
export const tippingNode: PieceNode<Asked<typeof tipping.outputs>> = {
  name: 'tipping',
  compute: (m) => {
    const feet = m.of(feetNode);
    const masses = m.of(massesNode);
    return ask(m, tipping, {
      parts: () =>
        [masses.top, ...masses.parts].map((p) => ({
          name: p.name,
          mass: p.least,
          position: p.y - feet.front,
          height: p.z,
        })),
      base: () => feet.back - feet.front,
      overhang: () => Math.max(0, feet.front),
      backOverhang: () => Math.max(0, m.get('top', 'width') - feet.back),
      edgeLoad: () => m.get('use', 'leaning'),
      push: () => 0,
      pushHeight: () => m.all('height'),
      piece: () => m.all('kind'),
      topHeight: () => m.all('height'),
      endBase: () => feet.right - feet.left,
      endOverhang: () => Math.max(0, feet.left, m.get('top', 'length') - feet.right),
    });
  },
};

/** The forces of the description are held one and a half times (common practice), those of furniture tests once. */
const ownForces = 'the forces given';
const factorOfPeople = 1.5;

/** The least factor over every situation, as a margin over the factor wanted. */
function tippingFinding(m: Model): Finding {
  let asked: Asked<typeof tipping.outputs>;
  try {
    asked = m.of(tippingNode);
  } catch (error) {
    if (!(error instanceof InputError) || !/does not stand by itself/.test(error.message)) throw error;
    return { verdict: 'fails', margin: -1, answer: 'Its weight falls outside its feet: it does not stand.' };
  }
  const { out } = asked;
  const rows = (out.checks ?? []).flatMap((r) =>
    r.factor === undefined
      ? []
      : [{ ...r, margin: marginOf(r.factor, r.situation === ownForces ? factorOfPeople : 1) }],
  );
  const worst = rows.reduce<(typeof rows)[number] | undefined>(
    (a, b) => (a && a.margin <= b.margin ? a : b),
    undefined,
  );
  const margin = worst?.margin ?? 10;
  return {
    verdict: out.verdict === 'stands' ? verdictOfMargin(margin) : 'fails',
    margin,
    answer: `${out.verdict === 'stands' ? '' : 'It tips: '}${out.answer}`,
    asks: [asked.ask],
  };
}

function tippingAnswer(m: Model): Finding {
  if (m.get('use', 'standsFree')) return tippingFinding(m);
  const free = tippingFinding(m);
  const anchors = Object.entries(m.all('fixings') ?? {}).filter(
    ([, f]) => f.to === 'floor' || f.to === 'wall',
  );
  if (anchors.length === 0)
    return {
      verdict: 'open',
      answer: 'It is said to be fixed, but no fixing goes to the floor or the wall: describe one.',
      missing: 'fixings',
      asks: free.asks ?? [],
    };
  return anchored(m, free);
}

/** Screws that hold the far feet down against the worst situation. */
function anchored(m: Model, free: Finding): Finding {
  const feet = m.of(feetNode);
  const anchors = Object.values(m.all('fixings') ?? {}).filter((f) => f.to === 'floor' || f.to === 'wall');
  const pull = anchorPull(m.of(massesNode), feet, {
    kind: m.all('kind'),
    height: m.all('height'),
    width: m.get('top', 'width'),
    leaning: m.get('use', 'leaning'),
  });
  const asks = anchors.map((f) => {
    const places = f.at?.length ?? feetOf(feet, f.holds);
    return {
      // Half of the places stand on the side that lifts.
      screws: Math.floor(places / 2) * f.count,
      asked: ask(m, screwHold, {
        timber: () => speciesOf(f.into ?? 'unknown softwood'),
        diameter: () => f.screw,
        penetration: () => Math.max(0.001, f.length - f.through),
      }),
    };
  });
  const holds = asks.reduce((s, a) => s + a.screws * a.asked.out.allowable, 0);
  const margin = marginOf(holds, pull);
  const alone = free.verdict === 'fails' ? ' Until it is fixed it tips.' : '';
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `Fixed down: the far feet pull up with ${newtons(pull)} at most, their screws hold ${newtons(holds)}.${alone}`,
    asks: [...asks.map((a) => a.asked.ask), ...(free.asks ?? [])],
  };
}

const feetOf = (feet: Feet, part: string): number => feet.contacts.filter((c) => c.part === part).length;

function racking(m: Model): Finding {
  const frames = m.of(swayFramesNode);
  const bare = frames.filter((f) => f.frames === 0);
  if (bare.length > 0)
    return {
      verdict: 'fails',
      margin: -1,
      answer: `Nothing stiffens it ${bare.map((f) => f.direction).join(' and ')}: no rail is jointed to the legs that way.`,
    };
  const limit = m.get('use', 'swayLimit');
  const asked = frames.map((f) => ({
    f,
    asked: ask(
      m,
      rackingFrame,
      {
        height: () => f.height,
        width: () => f.width,
        section: () => ({ shape: 'solid', width: f.legWidth, depth: f.legDepth }),
        joint: () => f.joint,
        screws: () => (f.screws > 0 ? f.screws : undefined),
        brace: () => f.brace,
        frames: () => f.frames,
        push: () => Math.max(1, m.get('use', 'push')),
        timber: () => f.timber,
      },
      f.direction,
    ),
  }));
  const worst = asked.reduce((a, b) => (b.asked.out.sway > a.asked.out.sway ? b : a));
  const margin = marginOf(limit, worst.asked.out.sway);
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `Pushed with ${newtons(m.get('use', 'push'))} it sways ${(worst.asked.out.sway * 1000).toFixed(1)} mm ${worst.f.direction}; ${mm(limit)} is allowed, over ${counted(worst.f.frames, 'frame')}.`,
    asks: asked.map((a) => a.asked.ask),
  };
}

const tippingLevers: readonly Lever[] = [
  { path: 'use.standsFree', way: { set: false }, words: 'fixed to the floor or the wall' },
  { path: 'parts.*.across[1]', way: 'less', by: 0.4, words: 'the front feet brought out' },
  { path: 'parts.*.across[2]', way: 'more', by: 0.4, words: 'the back feet set back' },
  { path: 'parts.*.from', way: 'less', by: 0.4, words: 'feet longer to the front' },
  { path: 'parts.*.to', way: 'more', by: 0.4, words: 'feet longer to the back' },
];

export const stabilityQuestions: readonly Question[] = [
  {
    name: 'tipping',
    title: 'Does it tip with people at it?',
    topic: 'strength',
    safety: true,
    levers: tippingLevers,
    answer: tippingAnswer,
  },
  {
    name: 'racking',
    title: 'How far does the frame sway?',
    topic: 'strength',
    safety: true,
    levers: [
      { path: 'parts.*.section', side: 'larger', way: 'more', words: 'wider legs' },
      { path: 'parts.*.section', side: 'smaller', way: 'more', words: 'thicker legs' },
    ],
    answer: racking,
  },
];

// Strips, slabs, glue, clamps and cauls.
import { caulCamber } from '../../recipes/lamination/caul-camber.js';
import { glueTiming } from '../../recipes/lamination/glue-timing.js';
import { clampsNode, glueNode } from '../gluing-needs.js';
import { gluingStagesNode } from '../gluing-stages.js';
import { layUpNode, stripsNode } from '../lay-up.js';
import type { Model } from '../piece-graph.js';
import {
  counted,
  hoursMinutes,
  inWords,
  marginOf,
  mm,
  newtons,
  verdictOfMargin,
  worstVerdict,
  type Finding,
  type Question,
} from '../question.js';
import { ask } from '../recipe-ask.js';

function strips(m: Model): Finding {
  const layUp = m.of(layUpNode);
  const needed = m.get('top', 'width') + m.get('top', 'trim');
  const spare = layUp.gluedWidth - needed;
  const asked = m.of(stripsNode);
  return {
    verdict: spare < -5e-7 ? 'fails' : 'ok',
    margin: marginOf(layUp.gluedWidth, needed),
    answer:
      spare < -5e-7
        ? `${counted(layUp.rows.length, 'strip')} glue up to ${mm(layUp.gluedWidth)}; ${mm(needed)} is needed.`
        : `${counted(layUp.rows.length, 'strip')} across, ${mm(layUp.gluedWidth)} as glued, ${mm(spare)} to spare.`,
    ...(asked && layUp.basis === 'strips' ? { asks: [asked.ask] } : {}),
  };
}

function slabs(m: Model): Finding {
  const layUp = m.of(layUpNode);
  const machine = m.get('shop', 'thicknesser');
  const widest = Math.max(...layUp.slabs.map((s) => s.width));
  const margin = marginOf(machine, widest);
  return {
    verdict: margin < -1e-6 ? 'fails' : 'ok',
    margin,
    answer: `${counted(layUp.slabs.length, 'slab')} of ${layUp.slabs.map((s) => mm(s.width)).join(', ')}; the thicknesser takes ${mm(machine)}.`,
  };
}

function glue(m: Model): Finding {
  const { ask: asked, out } = m.of(glueNode);
  return {
    verdict: 'ok',
    answer: `Have ${inWords('mass', out.mass)} of glue, ${inWords('liquid', out.volume)}.`,
    asks: [asked],
  };
}

function glueTime(m: Model): Finding {
  const stages = m.of(gluingStagesNode);
  const timings = stages
    .filter((s) => s.joints > 0)
    .map((s) => ({
      stage: s,
      asked: ask(
        m,
        glueTiming,
        {
          joints: () => s.joints,
          perJoint: () => m.get('gluing', 'perJoint'),
          openTime: () => m.get('gluing', 'openTime'),
          temperature: () => m.get('gluing', 'temperature'),
          clampsUp: () => m.get('gluing', 'clampsUp'),
          hold: () => m.get('gluing', 'hold'),
        },
        s.name,
      ),
    }));
  const first = timings[0];
  if (!first) return { verdict: 'ok', answer: 'There is no joint to glue.' };
  const batches = timings.filter((t) => t.asked.out.batches > 1);
  const worst = timings.reduce((a, b) => (b.asked.out.spare < a.asked.out.spare ? b : a));
  const spare = worst.asked.out.spare;
  const margin = spare / worst.asked.out.openHere;
  const total = timings.reduce((s, t) => s + t.asked.out.total, 0);
  const asks = timings.map((t) => t.asked.ask);
  if (batches.length > 0)
    return {
      verdict: 'fails',
      margin: -0.01,
      answer: `${batches.map((t) => t.stage.name).join(', ')}: the glue skins before the clamps are on; it takes ${batches[0]?.asked.out.batches} batches.`,
      asks,
    };
  return {
    verdict: verdictOfMargin(margin),
    margin,
    answer: `Each stage is closed in time, ${worst.stage.name} with ${hoursMinutes(spare)} to spare; ${hoursMinutes(total)} in all.`,
    asks,
  };
}

function clamps(m: Model): Finding {
  const plans = m.of(clampsNode);
  const most = Math.max(0, ...plans.map((p) => p.asked.out.clamps));
  const asks = plans.map((p) => p.asked.ask);
  const there = m.get('gluing', 'clamps');
  if (there === undefined)
    return {
      verdict: 'open',
      answer: `${counted(most, 'clamp')} are needed at once; give gluing.clamps, how many there are.`,
      asks,
      missing: 'gluing.clamps',
    };
  const margin = marginOf(there, most);
  return {
    verdict: there < most ? 'fails' : there === most ? 'tight' : 'ok',
    margin,
    answer: `${counted(most, 'clamp')} are needed at once, ${there} are there.`,
    asks,
  };
}

function stages(m: Model): Finding {
  const all = m.of(gluingStagesNode);
  const reach = m.get('gluing', 'reach');
  const words = all.map((s) => `${s.name} (${mm(s.width)})`).join(', ');
  if (reach === undefined)
    return {
      verdict: 'open',
      answer: `${counted(all.length, 'stage')}: ${words}; give gluing.reach, how far the clamps open.`,
      missing: 'gluing.reach',
    };
  const widest = Math.max(...all.map((s) => s.width)) + 2 * m.get('gluing', 'pad');
  const margin = marginOf(reach, widest);
  return {
    verdict: margin < -1e-6 ? 'fails' : 'ok',
    margin,
    answer: `${counted(all.length, 'stage')}: ${words}; the clamps open to ${mm(reach)}, ${mm(widest)} is needed.`,
  };
}

function cauls(m: Model): Finding | undefined {
  const section = m.get('gluing', 'caul');
  if (section === undefined) return undefined;
  const found = m.of(gluingStagesNode).map((s) =>
    ask(
      m,
      caulCamber,
      {
        length: () => s.width,
        width: () => Math.min(section.width, section.depth),
        depth: () => Math.max(section.width, section.depth),
        timber: () => m.get('gluing', 'caulTimber'),
        examined: () => true,
        clampForceEach: () => m.get('gluing', 'clampForce') / 2,
      },
      s.name,
    ),
  );
  const verdict = worstVerdict(found.map((f) => (f.out.ok ? 'ok' : 'fails')));
  const most = Math.max(...found.map((f) => f.out.camber));
  return {
    verdict,
    answer:
      verdict === 'ok'
        ? `Plane a crown of up to ${(most * 1000).toFixed(1)} mm on the cauls; ${newtons(m.get('gluing', 'clampForce') / 2)} at each end.`
        : 'The cauls bend past what their timber carries: take a deeper section.',
    asks: found.map((f) => f.ask),
  };
}

const slabLevers = [{ path: 'shop.thicknesser', way: 'more', words: 'a wider thicknesser' }] as const;

export const gluingQuestions: readonly Question[] = [
  { name: 'strips', title: 'How many strips across?', topic: 'gluing', answer: strips },
  { name: 'slabs', title: 'In which slabs is it glued?', topic: 'gluing', levers: slabLevers, answer: slabs },
  { name: 'glue', title: 'How much glue?', topic: 'gluing', answer: glue },
  {
    name: 'glueTime',
    title: 'Does the glue stay open long enough?',
    topic: 'gluing',
    levers: [
      { path: 'gluing.openTime', way: 'more', words: 'a slower glue' },
      { path: 'gluing.perJoint', way: 'less', words: 'a second pair of hands: less time for a joint' },
    ],
    answer: glueTime,
  },
  {
    name: 'clamps',
    title: 'Are there clamps enough?',
    topic: 'gluing',
    levers: [
      { path: 'gluing.clamps', way: 'more', words: 'more clamps' },
      { path: 'gluing.clampForce', way: 'more', words: 'stronger clamps' },
    ],
    answer: clamps,
  },
  {
    name: 'stages',
    title: 'In which stages, and do the clamps reach?',
    topic: 'gluing',
    levers: [{ path: 'gluing.reach', way: 'more', words: 'longer clamps' }],
    answer: stages,
  },
  {
    name: 'cauls',
    title: 'Do the cauls hold?',
    topic: 'gluing',
    levers: [{ path: 'gluing.caul', side: 'larger', way: 'more', words: 'deeper cauls' }],
    answer: cauls,
  },
];

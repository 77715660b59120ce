// Flattening, passes, knife marks and shavings.
import { chipVolume } from '../../recipes/machining/chip-volume.js';
import { cutterMarks } from '../../recipes/machining/cutter-marks.js';
import { planingTime } from '../../recipes/machining/planing-time.js';
import { woodDensity } from '../../recipes/moisture/wood-density.js';
import { matchSlabs } from '../../recipes/lamination/match-slabs.js';
import { jointHeightNode, layUpNode } from '../lay-up.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  halfMm,
  hoursMinutes,
  inWords,
  marginOf,
  mm,
  type Finding,
  type Question,
} from '../question.js';
import { ask, type Asked } from '../recipe-ask.js';
import { speciesOf } from '../species-of.js';
import { gluedLengthNode } from '../top-length.js';

function flattening(m: Model): Finding {
  const rough = m.of(jointHeightNode);
  const wanted = m.get('top', 'thickness');
  const measured = m.get('top', 'slabThicknesses');
  if (measured === undefined)
    return {
      verdict: 'ok',
      answer: `Glue the slabs up ${mm(rough)} thick: flattening takes ${mm(rough - wanted)} and leaves ${mm(wanted)}. Measure them out of the clamps.`,
    };
  const thinnest = Math.min(...measured);
  const spare = thinnest - wanted;
  if (spare < -1e-6)
    return {
      verdict: 'fails',
      margin: marginOf(thinnest, wanted),
      answer: `The thinnest slab came out ${halfMm(thinnest)}; the top is to be ${mm(wanted)}.`,
    };
  const slabs = m.of(layUpNode).slabs;
  const { ask: asked, out } = ask(m, matchSlabs, {
    slabs: () =>
      measured.map((thickness, i) => ({
        name: slabs[i]?.name ?? `slab ${i + 1}`,
        thickness,
        width: slabs[i]?.width,
        length: m.of(gluedLengthNode),
      })),
    minimum: () => wanted,
  });
  return {
    verdict: spare < 1e-3 - 1e-9 ? 'tight' : 'ok',
    margin: marginOf(thinnest, wanted),
    answer: `The slabs plane to ${halfMm(out.planeAllTo)}, ${halfMm(spare)} more than the top needs.`,
    asks: [asked],
  };
}

/** Passes of the slabs through the thicknesser. */
export const planingNode: PieceNode<Asked<typeof planingTime.outputs>> = {
  name: 'planing',
  compute: (m) => {
    const slabs = m.of(layUpNode).slabs.length;
    return ask(m, planingTime, {
      totalLength: () => slabs * m.of(gluedLengthNode),
      pieces: () => slabs,
      removal: () => Math.max(1e-4, m.get('top', 'flattening')),
      depthPerPass: () => m.get('shop', 'depthPerPass'),
      feed: () => m.get('shop', 'feed'),
      handling: () => m.get('shop', 'handling'),
    });
  },
};

function passes(m: Model): Finding {
  const { ask: asked, out } = m.of(planingNode);
  return {
    verdict: 'ok',
    answer: `${counted(out.passes, 'pass', 'passes')} of each slab, ${hoursMinutes(out.time)} at the thicknesser.`,
    asks: [asked],
  };
}

function knifeMarks(m: Model): Finding | undefined {
  const speed = m.get('shop', 'spindleSpeed');
  if (speed === undefined) return undefined;
  const { ask: asked, out } = ask(m, cutterMarks, {
    spindleSpeed: () => speed,
    knives: () => m.get('shop', 'knives'),
    feed: () => m.get('shop', 'feed'),
  });
  const coarse = m.get('shop', 'feed') > out.feedForWanted * (1 + 1e-9);
  return {
    verdict: coarse ? 'tight' : 'ok',
    answer: `The knife marks stand ${(out.pitch * 1000).toFixed(1)} mm apart${coarse ? `; feed at ${inWords('speed', out.feedForWanted)} for a finer face` : ''}.`,
    asks: [asked],
  };
}

function waste(m: Model): Finding {
  const density = ask(m, woodDensity, {
    timber: () => speciesOf(m.get('top', 'timber')),
    moisture: () => m.get('use', 'moisture'),
  });
  const { ask: asked, out } = ask(m, chipVolume, {
    area: () => m.of(gluedLengthNode) * m.of(layUpNode).gluedWidth,
    depth: () => m.get('top', 'flattening'),
    density: () => density.out.density,
    bagSize: () => m.get('shop', 'bagSize'),
  });
  return {
    verdict: 'ok',
    answer: `Flattening makes ${inWords('liquid', out.volume)} of shavings: ${counted(out.bags, 'bag')}.`,
    asks: [asked],
  };
}

export const machiningQuestions: readonly Question[] = [
  {
    name: 'flattening',
    title: 'Is the slab thick enough to flatten?',
    topic: 'machining',
    answer: flattening,
  },
  { name: 'passes', title: 'How many passes, and how long?', topic: 'machining', answer: passes },
  { name: 'knifeMarks', title: 'How close are the knife marks?', topic: 'machining', answer: knifeMarks },
  { name: 'waste', title: 'How much waste and dust?', topic: 'machining', answer: waste },
];

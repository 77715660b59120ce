// How much finish, how it is mixed, how thick its film gets, and what is in its vapour.
import { filmBuild } from '../../recipes/finish/film-build.js';
import { finishQuantity } from '../../recipes/finish/finish-quantity.js';
import { thinnedVoc } from '../../recipes/finish/thinned-voc.js';
import { thinningRatio } from '../../recipes/finish/thinning-ratio.js';
import { membersNode, sidesOf } from '../member.js';
import type { Model, PieceNode } from '../piece-graph.js';
import {
  counted,
  inWords,
  marginOf,
  verdictOfMargin,
  worstVerdict,
  type Finding,
  type Question,
} from '../question.js';
import { ask, placed, type Asked } from '../recipe-ask.js';
import type { Finish } from '../workshop-fields.js';

interface Coated {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly faces: 'all';
  readonly count: number;
}

/** What a finish covers, piece by piece. */
function coatedBy(m: Model, surface: Finish['surface']): Coated[] {
  const top: Coated = {
    length: m.get('top', 'length'),
    width: m.get('top', 'width'),
    thickness: m.get('top', 'thickness'),
    faces: 'all',
    count: 1,
  };
  if (surface === 'top') return [top];
  const members = m.of(membersNode);
  const frame = Object.entries(m.all('parts')).flatMap(([name, part]): Coated[] => {
    const own = members.filter((x) => x.part === name);
    const first = own[0];
    if (!first) return [];
    const { upright, level } = sidesOf(part);
    return [{ length: first.length, width: upright, thickness: level, faces: 'all', count: own.length }];
  });
  return surface === 'frame' ? frame : [top, ...frame];
}

interface FinishNeed {
  readonly name: string;
  readonly finish: Finish;
  readonly amount: Asked<typeof finishQuantity.outputs>;
  readonly mix: Asked<typeof thinningRatio.outputs> | undefined;
}

/** What each finish takes. */
export const finishesNode: PieceNode<readonly FinishNeed[]> = {
  name: 'finishes',
  compute: (m) =>
    Object.entries(m.all('finishes') ?? {}).map(([name, finish]) => {
      const amount = ask(
        m,
        finishQuantity,
        {
          surfaces: () => coatedBy(m, finish.surface),
          coats: () => placed(`finishes.${name}.coats`, finish.coats),
          coverage: () => placed(`finishes.${name}.coverage`, finish.coverage),
          loss: () => placed(`finishes.${name}.loss`, finish.loss),
          thinnerParts: () => placed(`finishes.${name}.thinner`, finish.thinner),
          finish: () => name,
        },
        name,
      );
      const mix =
        finish.mix &&
        ask(
          m,
          thinningRatio,
          {
            parts: () => placed(`finishes.${name}.mix`, finish.mix),
            batch: () => placed('(finishes)', litres(amount.out.volume)),
          },
          name,
        );
      return { name, finish, amount, mix };
    }),
};

/** A batch as text, which the recipe reads as a volume and not as a mass. */
const litres = (volume: number): string => `${Number((volume * 1000).toPrecision(12))} L`;

function amounts(m: Model): Finding | undefined {
  const all = m.of(finishesNode);
  if (all.length === 0) return undefined;
  return {
    verdict: 'ok',
    answer: `${all
      .map(
        (f) =>
          `${f.name} on ${f.finish.surface === 'all' ? 'everything' : `the ${f.finish.surface}`}: ${inWords('liquid', f.amount.out.volume)} for ${inWords('area', f.amount.out.area)} in ${counted(f.finish.coats, 'coat')}`,
      )
      .join('; ')}.`,
    asks: all.map((f) => f.amount.ask),
  };
}

function mixes(m: Model): Finding | undefined {
  const all = m.of(finishesNode).filter((f) => f.mix);
  if (all.length === 0) return undefined;
  return {
    verdict: 'ok',
    answer: `${all
      .map((f) => `${f.name}: ${f.mix?.out.pour.map((p) => p.part).join(', ')}, poured in that order`)
      .join('; ')}.`,
    asks: all.flatMap((f) => (f.mix ? [f.mix.ask] : [])),
  };
}

function film(m: Model): Finding | undefined {
  const all = m.of(finishesNode).flatMap((f) => {
    if (f.finish.solids === undefined) return [];
    const asked = ask(
      m,
      filmBuild,
      {
        volumeSolids: () => f.finish.solids,
        spreadingRate: () => f.finish.coverage,
        coats: () => f.finish.coats,
      },
      f.name,
    );
    const margin = f.finish.film === undefined ? undefined : marginOf(asked.out.dryFilm, f.finish.film);
    return [{ ...f, asked, margin }];
  });
  if (all.length === 0) return undefined;
  const margins = all.flatMap((f) => (f.margin === undefined ? [] : [f.margin]));
  return {
    verdict: worstVerdict(margins.map(verdictOfMargin)),
    ...(margins.length > 0 ? { margin: Math.min(...margins) } : {}),
    answer: `${all
      .map(
        (f) =>
          `${f.name} dries to ${inWords('thickness', f.asked.out.dryFilm)}${f.finish.film === undefined ? '' : `, ${inWords('thickness', f.finish.film)} is wanted`}`,
      )
      .join('; ')}.`,
    asks: all.map((f) => f.asked.ask),
  };
}

function voc(m: Model): Finding | undefined {
  const all = m.of(finishesNode).flatMap((f) => {
    if (f.finish.voc === undefined) return [];
    const asked = ask(
      m,
      thinnedVoc,
      { voc: () => f.finish.voc, thinnerParts: () => f.finish.thinner },
      f.name,
    );
    const limit = f.finish.vocLimit;
    return [{ ...f, asked, margin: limit === undefined ? undefined : marginOf(limit, asked.out.voc) }];
  });
  if (all.length === 0) return undefined;
  const margins = all.flatMap((f) => (f.margin === undefined ? [] : [f.margin]));
  return {
    verdict: worstVerdict(margins.map((x) => (x < -1e-6 ? 'fails' : 'ok'))),
    ...(margins.length > 0 ? { margin: Math.min(...margins) } : {}),
    answer: `${all
      .map(
        (f) =>
          `${f.name} as it is used has ${inWords('concentration', f.asked.out.voc)} of VOC${f.finish.vocLimit === undefined ? '' : `; the limit is ${inWords('concentration', f.finish.vocLimit)}`}`,
      )
      .join('; ')}.`,
    asks: all.map((f) => f.asked.ask),
  };
}

export const finishQuestions: readonly Question[] = [
  { name: 'finish', title: 'How much finish, on which surface?', topic: 'finish', answer: amounts },
  { name: 'mix', title: 'How is the finish mixed?', topic: 'finish', answer: mixes },
  {
    name: 'film',
    title: 'How thick is the film?',
    topic: 'finish',
    levers: [{ path: 'finishes.*.coats', way: 'more', words: 'another coat' }],
    answer: film,
  },
  {
    name: 'voc',
    title: 'Is the finish within its limit of VOC?',
    topic: 'finish',
    safety: true,
    levers: [{ path: 'finishes.*.thinner', way: 'less', words: 'less thinner' }],
    answer: voc,
  },
];

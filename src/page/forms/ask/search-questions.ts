import type { GlossaryWord } from '../model/glossary-word.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { commonest } from '../worker/questions.js';

/** One thing that a search can find. */
export interface Found {
  readonly kind: 'question' | 'notebook' | 'word';
  readonly title: string;
  readonly detail: string;
  /** Recipe of a question, address of a notebook, the word itself. */
  readonly target: string;
  readonly score: number;
}

/** What is searched, with the weight of each of its texts. */
export interface Searched extends Omit<Found, 'score'> {
  readonly texts: readonly (readonly [number, string])[];
}

const common = new Set(
  'a an and are as at be by can do does for from how i in is it many me much my of on or should so that the there this to what when which will with would you your long have need get'.split(
    ' ',
  ),
);

/** Words spelt or said in another way, as one. */
const same: Readonly<Record<string, string>> = {
  miter: 'mitre',
  color: 'colour',
  cramp: 'clamp',
  plane: 'planer',
  thicknesser: 'planer',
  jointer: 'planer',
  adhesive: 'glue',
  mass: 'weight',
  heavy: 'weight',
  weigh: 'weight',
  swell: 'shrink',
  grow: 'shrink',
  expand: 'shrink',
  move: 'movement',
  bend: 'sag',
  droop: 'sag',
  topple: 'tip',
  fall: 'tip',
  varnish: 'finish',
  lacquer: 'finish',
  paint: 'finish',
  price: 'cost',
  money: 'cost',
  lumber: 'timber',
  wood: 'timber',
  reclaimed: 'salvaged',
};

/** The words of a text that carry meaning, shortened to their stems; numbers and units are left out. */
export function stems(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/[\d.,]+\s*(mm|cm|m|in|ft|kg|g|%|l|ml)?\b/g, ' ')
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 1 && !common.has(word))
    .map(stem);
}

function stem(word: string): string {
  const known = same[word];
  if (known !== undefined) return known;
  const short = word.replace(/(ings?|ed|es|s)$/, '');
  const root = short.length >= 3 ? short : word;
  return same[root] ?? same[`${root}e`] ?? root;
}

type Stemmed = readonly (readonly [number, readonly string[]])[];
const known = new WeakMap<Searched, { readonly thing: Omit<Found, 'score'>; readonly texts: Stemmed }>();

/** A thing with the stems of its texts, worked out once and not at every letter that is typed. */
function stemmed(searched: Searched): { readonly thing: Omit<Found, 'score'>; readonly texts: Stemmed } {
  const { texts, ...thing } = searched;
  const ready = known.get(searched) ?? {
    thing,
    texts: texts.map(([weight, text]) => [weight, stems(text)] as const),
  };
  known.set(searched, ready);
  return ready;
}

/** Things that fit the words, best first; those far behind the best are left out. */
export function search(words: string, all: readonly Searched[], most = 6): Found[] {
  const wanted = stems(words);
  if (wanted.length === 0) return [];
  const ready = all.map(stemmed);
  const places = wanted.map((word) => ready.map(({ texts }) => bestOf(word, texts)));
  // A word that few things have says more than one that many have.
  const rarity = places.map((scores) => Math.log(1 + all.length / (1 + scores.filter((s) => s > 0).length)));
  const asks = [...new Set(wanted)].sort().join(' ');
  const scored = ready
    .map(({ thing }, i): Found => {
      const score = places.reduce((sum, scores, j) => sum + (scores[i] ?? 0) * (rarity[j] ?? 1), 0);
      // The question itself, in whatever order, comes before a title that has one of its words.
      const same = [...new Set(stems(thing.title))].sort().join(' ') === asks;
      return { ...thing, score: same ? 2 * score : score };
    })
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
  const least = (scored[0]?.score ?? 0) * 0.3;
  return scored.filter(({ score }) => score >= least).slice(0, most);
}

/** The best place of a word, and a little for each other text that has it too. */
function bestOf(word: string, texts: Stemmed): number {
  const scores = texts.map(
    ([weight, words]) => weight * Math.max(0, ...words.map((other) => likeness(word, other))),
  );
  const best = Math.max(0, ...scores);
  return best + 0.1 * (scores.reduce((sum, score) => sum + score, 0) - best);
}

/** 1 for the same word, less for its first letters or one letter wrong. */
function likeness(word: string, other: string): number {
  if (other === word) return 1;
  if (word.length >= 3 && other.startsWith(word)) return 0.6;
  return word.length >= 5 && isNear(word, other) ? 0.5 : 0;
}

/** One letter changed, left out, put in or swapped with the next. */
function isNear(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let at = 0;
  while (at < a.length && a[at] === b[at]) at += 1;
  const [restA, restB] = [a.slice(at), b.slice(at)];
  return (
    restA.slice(1) === restB.slice(1) ||
    restA.slice(1) === restB ||
    restA === restB.slice(1) ||
    (restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2))
  );
}

/** The recipes as things to be found by their questions. */
export function searchedQuestions(models: Iterable<RecipeModel>): Searched[] {
  // Where two fit alike, the one that is asked more often comes first.
  const rank = ({ name }: RecipeModel): number => (commonest.indexOf(name) + 100) % 100;
  return [...models]
    .sort((a, b) => rank(a) - rank(b))
    .map((model) => ({
      kind: 'question',
      title: model.question,
      detail: model.title,
      target: model.name,
      texts: [
        [8, model.title],
        [7, model.question],
        [6, model.words],
        [2, model.about],
        [1, model.inputs.map(({ label, help }) => `${label} ${help}`).join(' ')],
        [1, model.outputs.map(({ label }) => label).join(' ')],
      ],
    }));
}

/** The glossary's words. A question that fits as well comes first: it is what most people are after. */
export const searchedWords = (words: readonly GlossaryWord[]): Searched[] =>
  words.map(({ term, meaning, also }) => ({
    kind: 'word',
    title: term,
    detail: meaning,
    target: term,
    texts: [
      [4, term],
      [3, also.join(' ')],
      [0.5, meaning],
    ],
  }));

// The build note of a piece: what is not safe first, then every answer, the pictures, and the results behind them.
import { buildNotes, type BuildNotes, type NoteOptions } from '../../notes/note.js';
import type { Answer } from '../answers.js';
import { dangerLines, openLines, pieceSentence, questionsMarkdown } from '../piece-text.js';
import type { PieceView } from '../piece-view.js';
import { pictureNames, piecePictures } from '../pictures/piece-pictures.js';
import { resultOf } from '../recipe-ask.js';

/** Questions whose results stand in the note in full; the others are in its table. */
const inFull: readonly string[] = [
  'strips',
  'glue',
  'glueTime',
  'clamps',
  'cauls',
  'flattening',
  'movement',
  'slots',
  'sagTop',
  'railStrength',
  'tipping',
  'racking',
  'joints',
  'mitredEnds',
  'spline',
  'angledParts',
  'screws',
  'finish',
  'mix',
  'voc',
  'cost',
];

const list = (lines: readonly string[]): string => lines.map((l) => `- ${l}`).join('\n');

/** What stands at the head of everything: failing safety questions, then open ones. */
export function headMarkdown(piece: PieceView): string {
  const dangers = dangerLines(piece);
  const open = openLines(piece);
  return [
    ...(dangers.length > 0 ? ['# Not safe as described', '', list(dangers), ''] : []),
    pieceSentence(piece),
    ...(open.length > 0 ? ['', '## Open', '', list(open)] : []),
  ].join('\n');
}

/** The note. */
export function pieceNote(piece: PieceView, options: NoteOptions = {}): BuildNotes {
  const note = buildNotes(piece.name, options).addText(headMarkdown(piece));
  note.addText(`## Every question\n\n${questionsMarkdown(piece)}`);
  for (const name of pictureNames.filter((n) => n !== 'joint')) note.add(piecePictures(piece.graph, name));
  const { top, frame } = piece.plans;
  if (top) note.add(top.result, answerText(piece, 'pileEnough'));
  for (const answer of inOrder(piece)) {
    for (const asked of distinctAsks(answer)) note.add(resultOf(asked), `${answer.title} ${answer.answer}`);
  }
  if (frame) note.add(frame.result, answerText(piece, 'battens'));
  const assumed = piece.assumed.map((a) => `${a.label} (${a.path}): ${a.value}`);
  if (assumed.length > 0) note.addText(`## Assumed\n\n${list(assumed)}`);
  return note;
}

const inOrder = (piece: PieceView): Answer[] =>
  inFull.flatMap((name) => piece.questions.find((a) => a.name === name) ?? []);

/** Uses of a recipe, those with equal inputs once. */
function distinctAsks(answer: Answer) {
  const seen = new Map((answer.asks ?? []).map((a) => [JSON.stringify([a.recipe.name, a.given]), a]));
  return [...seen.values()];
}

function answerText(piece: PieceView, name: string): string | undefined {
  const answer = piece.questions.find((a) => a.name === name);
  return answer && `${answer.title} ${answer.answer}`;
}

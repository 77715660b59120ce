import { openPiece } from '../piece/piece-file.js';
import type { Piece } from '../piece/piece.js';
import { interruptSignal } from './recipe-arguments.js';
import { progressOnTerminal } from './terminal-progress.js';
import { UsageError, type Words } from './usage.js';

const actions = ['check', 'show', 'note', 'cards', 'bill', 'handout', 'cuts', 'templates'] as const;
type Action = (typeof actions)[number];

/** `reckoner piece check|show|note|cards|bill|handout|cuts|templates FILE.piece.json [-o FILE] [--quick] [--json]`; exit 1 where a safety question fails. */
export async function pieceCommand(words: Words): Promise<number> {
  const [action, file, more] = words.plain;
  if (!isAction(action) || file === undefined || more !== undefined)
    throw new UsageError(
      `piece: got ${JSON.stringify(words.plain.join(' ').slice(0, 80))}, takes ${actions.join('|')} FILE.piece.json`,
    );
  progressOnTerminal(process.stderr);
  const described = openPiece(file);
  const piece = words.flags.has('quick') ? described : await described.search({ signal: interruptSignal() });
  const output = words.values.get('output');
  if (action === 'check' || action === 'show') process.stdout.write(`${checked(piece, action, words)}\n`);
  else await write(piece, action, output ?? defaultName(file, action));
  for (const danger of piece.dangers)
    process.stderr.write(`reckoner: not safe as described: ${danger.title} ${danger.answer}\n`);
  return piece.dangers.length > 0 ? 1 : 0;
}

const isAction = (text: string | undefined): text is Action => actions.some((a) => a === text);

function checked(piece: Piece, action: 'check' | 'show', words: Words): string {
  const { questions, assumed, contradictions } = piece;
  if (words.flags.has('json'))
    return JSON.stringify(
      {
        name: piece.name,
        safe: piece.dangers.length === 0,
        questions: questions.map((a) => ({
          name: a.name,
          title: a.title,
          topic: a.topic,
          safety: a.safety,
          verdict: a.verdict,
          margin: a.margin ?? null,
          answer: a.answer,
        })),
        contradictions,
        assumed,
      },
      null,
      2,
    );
  if (action === 'show') return piece.toText();
  const notOk = questions.filter((a) => a.verdict !== 'ok');
  const remedies = piece
    .remedies()
    .slice(0, 8)
    .map((r) => `  ${r.question}: ${r.words}, ${r.path} from ${r.from} to ${r.to}`);
  return [
    ...piece.toText().split('\n').slice(0, 1),
    ...notOk.map((a) => `  ${a.verdict.padEnd(5)} ${a.title} ${a.answer}`),
    ...(remedies.length > 0 ? ['What would make it pass:', ...remedies] : []),
  ].join('\n');
}

/** `tea-counter.piece.json` gives `tea-counter-note.html`. */
const defaultName = (file: string, action: Action): string =>
  file.replace(/\.piece\.json$/i, `-${action}.html`);

async function write(piece: Piece, action: Exclude<Action, 'check' | 'show'>, output: string): Promise<void> {
  const made = {
    note: () => piece.note(),
    cards: () => piece.cards(),
    bill: () => piece.bill(),
    handout: () => piece.handout(),
    cuts: () => piece.cutList(),
    templates: () => piece.templates(),
  }[action]();
  await made.save(output);
  process.stdout.write(`${piece.name}: written to ${output}\n`);
}

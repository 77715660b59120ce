// The same piece with one thing changed, side by side.
import { escapeHtml } from '../engine/escape-html.js';
import type { Answer } from './answers.js';
import { allQuestions } from './answers.js';
import type { PieceChanges, PieceView } from './piece-view.js';
import type { PieceVerdict } from './question.js';

export interface AlternativeRow {
  readonly question: string;
  readonly title: string;
  readonly safety: boolean;
  /** The piece as it is, then each alternative; undefined where the question does not apply. */
  readonly answers: readonly (Answer | undefined)[];
}

/** Alternatives over all questions. */
export class Alternatives {
  constructor(
    readonly names: readonly string[],
    readonly pieces: readonly PieceView[],
    readonly rows: readonly AlternativeRow[],
  ) {}

  /** Questions whose answer differs from that of the piece as it is. */
  get differing(): readonly AlternativeRow[] {
    return this.rows.filter((r) => r.answers.some((a) => a?.answer !== r.answers[0]?.answer));
  }

  toMarkdown(): string {
    const head = ['Question', ...this.names];
    const rows = this.differing.map((r) => [
      r.title,
      ...r.answers.map((a) => (a ? `**${a.verdict}** ${a.answer}` : 'does not apply')),
    ]);
    const cell = (s: string): string => escapeHtml(s).replace(/\|/g, '\\|');
    const lines = [head, head.map(() => '---'), ...rows.map((r) => r.map(cell))];
    const same = this.rows.length - this.differing.length;
    return `${lines.map((r) => `| ${r.join(' | ')} |`).join('\n')}\n\n${same} other questions have the same answer in all.\n`;
  }

  toText(): string {
    return this.differing
      .map((r) =>
        [
          r.title,
          ...r.answers.map(
            (a, i) => `  ${this.names[i] ?? ''}: ${a ? `${a.verdict}; ${a.answer}` : 'does not apply'}`,
          ),
        ].join('\n'),
      )
      .join('\n');
  }

  /** How many questions come out each way, one row an alternative. */
  get counts(): readonly ({ readonly name: string } & Readonly<Record<PieceVerdict, number>>)[] {
    return this.names.map((name, i) => {
      const verdicts = this.rows.flatMap((r) => r.answers[i]?.verdict ?? []);
      const of = (v: PieceVerdict): number => verdicts.filter((x) => x === v).length;
      return { name, fails: of('fails'), open: of('open'), tight: of('tight'), ok: of('ok') };
    });
  }

  [Symbol.for('Jupyter.display')](): Readonly<Record<string, string>> {
    return { 'text/plain': this.toText(), 'text/markdown': this.toMarkdown() };
  }
}

/** Puts a piece beside its alternatives. @throws InputError naming every wrong path */
export function compareAlternatives(
  piece: PieceView,
  changes: Readonly<Record<string, PieceChanges>>,
): Alternatives {
  const pieces = [piece, ...Object.values(changes).map((c) => piece.with(c))];
  const found = pieces.map((p) => new Map(p.questions.map((a) => [a.name, a])));
  const rows = allQuestions.flatMap((q): AlternativeRow[] => {
    const answers = found.map((f) => f.get(q.name));
    return answers.every((a) => a === undefined)
      ? []
      : [{ question: q.name, title: q.title, safety: q.safety === true, answers }];
  });
  return new Alternatives(['as it is', ...Object.keys(changes)], pieces, rows);
}

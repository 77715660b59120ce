// Bench cards: one sheet an operation, to be read at arm's length; large numbers, a picture, boxes to tick.
import { renderSvg } from '../charts/svg.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { writeFileAtomically } from './atomic-write.js';
import { fileEnding } from './file-ending.js';
import { benchCardsHtml, type PrintedCard } from './bench-cards-html.js';

/** One operation at the bench. */
export interface BenchCard {
  readonly title: string;
  /** Numbers to set a fence or a stop by. */
  readonly numbers: readonly { readonly label: string; readonly value: string }[];
  /** What to do, each with a box to tick, in running order. */
  readonly steps: readonly string[];
  readonly picture?: ChartSpec;
  /** Cautions of this operation alone. */
  readonly cautions: readonly string[];
}

export const paperSizes = ['A5', 'A4', 'Letter'] as const;
export type PaperSize = (typeof paperSizes)[number];

export interface BenchCardOptions {
  readonly paper?: PaperSize;
  /** Stands at the head of every card, such as what makes the piece unsafe. */
  readonly warnings?: readonly string[];
}

/** Cards ready to print. */
export interface BenchCards {
  readonly title: string;
  readonly cards: readonly BenchCard[];
  /** One self-contained page, a sheet for each card. */
  toHtml(): Promise<string>;
  /** Writes the page whole or not at all. @throws InputError for a name that does not end in .html, FileError */
  save(file: string): Promise<void>;
}

/** Lines of 20 pt that a sheet holds under its title, and letters in a line: measured in print. */
const room: Readonly<Record<PaperSize, { readonly lines: number; readonly letters: number }>> = {
  A5: { lines: 13, letters: 24 },
  A4: { lines: 22, letters: 40 },
  Letter: { lines: 20, letters: 41 },
};

/** Makes bench cards. A long list of steps goes over several cards. @throws InputError */
export function benchCards(
  title: string,
  cards: readonly BenchCard[],
  options: BenchCardOptions = {},
): BenchCards {
  if (typeof title !== 'string' || title.trim() === '')
    throw new InputError({
      field: 'title',
      message: `got ${inspectValue(title)}, takes the name of the build`,
    });
  const paper = options.paper ?? 'A4';
  if (!paperSizes.includes(paper))
    throw new InputError({
      field: 'paper',
      message: `got ${inspectValue(paper)}, takes ${paperSizes.map((p) => inspectValue(p)).join(', ')}`,
    });
  const split = cards.flatMap((c) => overSheets(c, paper, options.warnings ?? []));
  const made: BenchCards = {
    title: title.trim(),
    cards: split,
    toHtml: async () =>
      benchCardsHtml(title.trim(), await Promise.all(split.map(drawn)), options.warnings ?? [], paper),
    async save(file) {
      fileEnding(file, ['html']);
      await writeFileAtomically(file, await made.toHtml());
    },
  };
  return Object.freeze(made);
}

async function drawn({ picture, ...card }: BenchCard): Promise<PrintedCard> {
  if (!picture) return card;
  // Its letters would be too small to read at a metre: the numbers stand in the list beside it.
  return { ...card, svg: (await renderSvg(picture)).replace(/<text\b[\s\S]*?<\/text>/g, '') };
}

/** A card with more steps than a sheet holds, as several; the picture and the numbers stand on the first. */
function overSheets(card: BenchCard, paper: PaperSize, warnings: readonly string[]): BenchCard[] {
  const { lines, letters } = room[paper];
  const linesOf = (text: string): number => Math.ceil((text.length + 4) / letters);
  const sum = (texts: readonly string[]): number => texts.reduce((n, t) => n + linesOf(t), 0);
  const always = sum(card.cautions) + sum(warnings);
  const first = always + Math.ceil(1.35 * card.numbers.length) + (card.picture ? Math.ceil(lines * 0.42) : 0);
  const sheets: string[][] = [[]];
  let left = Math.max(2, lines - first);
  for (const step of card.steps) {
    const needed = linesOf(step);
    if (needed > left && (sheets.at(-1) ?? []).length > 0) {
      sheets.push([]);
      left = Math.max(2, lines - always);
    }
    sheets.at(-1)?.push(step);
    left -= needed;
  }
  if (sheets.length === 1) return [card];
  return sheets.map((steps, i): BenchCard => {
    const title = `${card.title} (${i + 1} of ${sheets.length})`;
    if (i === 0) return { ...card, title, steps };
    return { title, steps, numbers: [], cautions: card.cautions };
  });
}

// Bench cards: one sheet an operation, to be read at arm's length; large numbers, a picture, boxes to tick.
import { renderSvg } from '../charts/svg.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { writeFileAtomically } from './atomic-write.js';
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

/** The most steps that one sheet holds at a size that is read at a metre. */
export const stepsOnCard: Readonly<Record<PaperSize, number>> = { A5: 6, A4: 10, Letter: 9 };

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
  const split = cards.flatMap((c) => overSheets(c, stepsOnCard[paper]));
  const made: BenchCards = {
    title: title.trim(),
    cards: split,
    toHtml: async () =>
      benchCardsHtml(title.trim(), await Promise.all(split.map(drawn)), options.warnings ?? [], paper),
    async save(file) {
      if (typeof file !== 'string' || !/\.html?$/i.test(file))
        throw new InputError({
          field: 'file',
          message: `got ${inspectValue(file)}, takes a name that ends in .html`,
        });
      await writeFileAtomically(file, await made.toHtml());
    },
  };
  return Object.freeze(made);
}

async function drawn({ picture, ...card }: BenchCard): Promise<PrintedCard> {
  return picture ? { ...card, svg: await renderSvg(picture) } : card;
}

/** A card with more steps than a sheet holds, as several; the picture and the numbers stand on the first. */
function overSheets(card: BenchCard, most: number): BenchCard[] {
  if (card.steps.length <= most) return [card];
  const sheets = Math.ceil(card.steps.length / most);
  return Array.from({ length: sheets }, (_, i): BenchCard => {
    const title = `${card.title} (${i + 1} of ${sheets})`;
    const steps = card.steps.slice(i * most, (i + 1) * most);
    if (i === 0) return { ...card, title, steps };
    return { title, steps, numbers: [], cautions: card.cautions };
  });
}

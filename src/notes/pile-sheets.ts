// A top's plan on paper: the pile as surveyed with docks and cuts marked, the rows to scale, the order of work, and labels to
// stick on the pieces.
import { InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml as e } from '../engine/escape-html.js';
import { resultInternals } from '../engine/result.js';
import { boardsOf } from '../recipes/stock/pile-top/pile-survey.js';
import { topFromPile } from '../recipes/stock/top-from-pile.js';
import { writeFileAtomically } from './atomic-write.js';
import { fileEnding } from './file-ending.js';
import { pageHtml } from './html-page.js';
import { paperOf, printable, sheetStyle, type Paper } from './paper.js';
import { pilePictures, rowsPicture, type DrawnBoard, type DrawnPiece } from './pile-pictures.js';

export interface PileSheets {
  /** Pages to print: pictures, order of work, labels. */
  toHtml(paper?: Paper): string;
  /** The labels alone. */
  labelsHtml(paper?: Paper): string;
  /** Writes the pages whole or not at all, to a name that ends in .html. @throws InputError, FileError */
  save(file: string, paper?: Paper): Promise<void>;
}

/** What the sheets are made from, of a result of topFromPile. Metres. */
interface Plan {
  readonly sentence: string;
  readonly pieces: readonly DrawnPiece[];
  readonly slabs: readonly { readonly slab: number; readonly rows: string }[];
  readonly setups: readonly {
    readonly step: number;
    readonly machine: string;
    readonly setting: number;
    readonly what: string;
  }[];
  readonly glueUps: readonly {
    readonly stage: number;
    readonly what: string;
    readonly opening: number;
    readonly clamps: number;
  }[];
  readonly boards: readonly DrawnBoard[];
  readonly topLength: number;
  readonly spare: number;
  readonly cautions: readonly string[];
}

const metres = (um: number): number => um / 1e6;

function planOf(result: unknown): Plan {
  const answer = resultInternals(result);
  if (answer?.name !== 'topFromPile')
    throw new InputError({
      field: 'result',
      message: `got ${answer ? `a result of ${answer.name}` : inspectValue(result)}, takes the result of topFromPile (await it first)`,
    });
  const raw = answer.raw as unknown as Plan;
  const given = topFromPile.read(answer.rawInputs as Parameters<typeof topFromPile.read>[0]);
  const boards = boardsOf(given.boards, { leastPiece: given.leastPiece, backHidden: false }).map(
    (b): DrawnBoard => ({
      name: b.name,
      count: b.count,
      length: metres(b.length),
      width: metres(b.width),
      endLeft: metres(b.endLeft),
      endRight: metres(b.endRight),
      faults: [...b.faults, ...b.edgeFaults.map((f): [number, number] => [f.from, f.to])].map(
        ([from, to]) => [metres(from), metres(to)] as const,
      ),
    }),
  );
  return {
    ...raw,
    boards,
    topLength: given.topLength,
    spare: given.spare,
    cautions: answer.cautions().map((c) => c.text),
  };
}

const mm = (m: number): string => `${Number((m * 1000).toFixed(1))}`;

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  `<table><thead><tr>${head.map((h) => `<th>${e(h)}</th>`).join('')}</tr></thead><tbody>${rows
    .map((r) => `<tr>${r.map((c) => `<td>${e(c)}</td>`).join('')}</tr>`)
    .join('')}</tbody></table>`;

/** A label for each piece: its number, its row and place, its length; to cut out or print on sticky paper. */
function labels({ pieces }: Plan): string {
  const places = new Map<number, number>();
  const cells = pieces.map((p) => {
    const place = (places.get(p.row) ?? 0) + 1;
    places.set(p.row, place);
    return `<div class="label"><b>${e(p.piece)}</b><span>row ${p.row}, place ${place}</span><span>${mm(p.length)} mm</span></div>`;
  });
  return `<h2>Labels</h2><p class="screen">Print, cut, and stick each on its piece as it comes off the saw, at its left end.</p><div class="labels">${cells.join('')}</div>`;
}

function body(plan: Plan, paper: Paper): string {
  const sheet = printable[paper];
  const pile = pilePictures(plan.boards, plan.pieces, sheet);
  const slabEnds = plan.slabs.map((s) => Number(s.rows.split(' ').at(-1)));
  const rows =
    plan.pieces.length > 0
      ? rowsPicture(plan.pieces, { length: plan.topLength, spare: plan.spare, slabEnds }, sheet)
      : '<p>No row can be laid.</p>';
  return [
    '<h1>A top from the pile</h1>',
    `<p>${e(plan.sentence)}</p><ul>${plan.cautions.map((c) => `<li>${e(c)}</li>`).join('')}</ul>`,
    '<h2>The pile, cut</h2><p>Hatched: docked. Darker: pieces with their number, length and row (r).</p>',
    ...pile.map((picture, i) => `<figure${i > 0 ? ' class="new"' : ''}>${picture}</figure>`),
    '<h2 class="new">The rows</h2><p>Thick lines: where slabs meet. Dashed: where the ends are squared.</p>',
    `<figure>${rows}</figure>`,
    '<h2 class="new">Stops and fences, each set once</h2>',
    table(
      ['Step', 'Cut', 'Setting (mm)', 'What'],
      plan.setups.map((s) => [String(s.step), s.machine, mm(s.setting), s.what]),
    ),
    '<h2>Glue-ups</h2>',
    table(
      ['Stage', 'What', 'Clamps open to (mm)', 'Clamps'],
      plan.glueUps.map((g) => [String(g.stage), g.what, mm(g.opening), String(g.clamps)]),
    ),
    `<div class="new">${labels(plan)}</div>`,
  ].join('\n');
}

const style = `
.labels{display:flex;flex-wrap:wrap;gap:0}
.label{width:48mm;height:21mm;border:.2mm dashed #000;padding:2mm;display:flex;flex-direction:column;justify-content:center;break-inside:avoid;line-height:1.25;font-size:9pt}
.label b{font-size:15pt}
figure svg{max-width:100%;height:auto;background:#fff}
@media print{figure svg,figure rect,figure pattern{print-color-adjust:exact;-webkit-print-color-adjust:exact}}`;

/** The sheets of a top's plan, for A4 or A3. @throws InputError for anything but a result of topFromPile */
export function pileSheets(result: unknown): PileSheets {
  const plan = planOf(result);
  const page = (title: string, inner: string, paper: Paper): string =>
    pageHtml({ title, body: inner, style: sheetStyle(paper) + style });
  const sheets: PileSheets = {
    toHtml: (paper) => page('A top from the pile', body(plan, paperOf(paper)), paperOf(paper)),
    labelsHtml: (paper) => page('Labels', labels(plan), paperOf(paper)),
    async save(file, paper) {
      fileEnding(file, ['html'], 'top.html');
      await writeFileAtomically(file, sheets.toHtml(paper));
    },
  };
  Object.defineProperty(sheets, Symbol.for('Jupyter.display'), {
    value: () => ({
      'text/plain': plan.sentence,
      'text/html': `<style>${style}</style>${body(plan, 'A4')}`,
    }),
  });
  return Object.freeze(sheets);
}

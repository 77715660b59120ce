// The cutting plan on paper: which board, which cuts, and in which order so that each stop is set once. It stands here and
// not beside the recipe because it writes files, as notes do.
import Papa from 'papaparse';
import { InputError, inspectValue } from '../units/input-error.js';
import { asSentence, cautionWord } from '../engine/caution.js';
import { escapeHtml } from '../engine/result-display.js';
import { resultInternals } from '../engine/result.js';
import { cutListHtml } from './cut-list-html.js';
import {
  fromText,
  inchText,
  millimetres,
  numbersText,
  pieceText,
  rowsOf,
  runsOf,
  takeText,
  type CutBoard,
  type CutSheet,
} from './cut-sheet.js';
import { writeFileAtomically } from './atomic-write.js';
import { fileEnding } from './file-ending.js';

export interface CutList {
  readonly sheet: CutSheet;
  toMarkdown(): string;
  /** A whole page for printing, with every board drawn to scale. */
  toHtml(): string;
  /** One line a piece, in the order of the runs; lengths in mm and inches. */
  toCsv(): string;
  /** Writes the list whole or not at all; the ending of the name (.md, .html, .csv) tells the form. @throws InputError, FileError */
  save(file: string): Promise<void>;
}

/** A cut list for the workshop from the result of `cuttingPlan`. @throws InputError for anything else */
export function cutList(result: unknown): CutList {
  const answer = resultInternals(result);
  if (answer?.name !== 'cuttingPlan')
    throw new InputError({
      field: 'result',
      message: `got ${answer ? `a result of ${answer.name}` : inspectValue(result)}, takes the result of cuttingPlan (await it first)`,
    });
  const raw = answer.raw as {
    plan: readonly CutBoard[];
    boardsUsed: number;
    waste: number;
    optimal: boolean;
    missing?: CutSheet['missing'];
  };
  const bound = (
    answer.outputs['lowerBound'] as { format(raw: unknown, c?: string): { metric: string } }
  ).format(answer.raw['lowerBound'], answer.currency).metric;
  const sheet: CutSheet = {
    summary: `${raw.boardsUsed} board${raw.boardsUsed === 1 ? '' : 's'}, ${Number((raw.waste * 100).toFixed(1))} % waste. ${raw.optimal ? 'Proved: no plan does better.' : `No plan can go below ${bound}.`}`,
    rows: rowsOf(raw.plan),
    runs: runsOf(raw.plan),
    missing: raw.missing ?? [],
    cautions: answer.cautions().map((c) => `${cautionWord[c.level]}: ${asSentence(c.text)}`),
  };
  const list: CutList = {
    sheet,
    toMarkdown: () => markdown(sheet),
    toHtml: () => cutListHtml(sheet),
    toCsv: () => csv(raw.plan, sheet),
    async save(file) {
      const ending = fileEnding(file, ['md', 'html', 'csv']);
      await writeFileAtomically(
        file,
        ending === 'md' ? list.toMarkdown() : ending === 'csv' ? list.toCsv() : list.toHtml(),
      );
    },
  };
  Object.defineProperty(list, Symbol.for('Jupyter.display'), {
    value: () => ({
      'text/plain': list.toMarkdown(),
      'text/markdown': list.toMarkdown(),
      'text/html': cutListHtml(sheet, true),
    }),
  });
  return Object.freeze(list);
}

const cell = (s: string): string =>
  escapeHtml(s)
    .replace(/([\\|`*_[\]])/g, '\\$1')
    .replace(/\s+/g, ' ');

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] => [
  `| ${head.join(' | ')} |`,
  `|${head.map(() => '---').join('|')}|`,
  ...rows.map((r) => `| ${r.join(' | ')} |`),
  '',
];

function markdown(sheet: CutSheet): string {
  return [
    '# Cut list',
    '',
    sheet.summary,
    '',
    '## Running order',
    '',
    'Longest stop first; what is left of a board waits for the next stop. Mark each piece as it comes off.',
    '',
    ...runsTable(sheet),
    '## Boards',
    '',
    ...boardsTable(sheet),
    ...missingTable(sheet),
    '## Cautions',
    '',
    ...sheet.cautions.map((c) => `- ${cell(c)}`),
    '',
  ].join('\n');
}

/** A column for the section, where the stock has several. */
const sectionCell = (sheet: CutSheet, section: string | undefined): string[] =>
  sheet.rows.some((r) => r.section !== undefined) ? [cell(section ?? '')] : [];

function runsTable(sheet: CutSheet): string[] {
  const section = sectionCell(sheet, 'Section');
  return table(
    ['', 'Run', ...section, 'Stop (mm)', 'Stop (in)', 'Pieces', 'Parts', 'Boards'],
    sheet.runs.map((r) => [
      '☐',
      `${r.run}`,
      ...sectionCell(sheet, r.section),
      millimetres(r.length),
      inchText(r.length),
      `${r.pieces}`,
      r.names.map((n) => `${cell(n.name)} × ${n.count}`).join(', '),
      fromText(r.from),
    ]),
  );
}

function boardsTable(sheet: CutSheet): string[] {
  const section = sectionCell(sheet, 'Section');
  return table(
    ['', 'Board', ...section, 'Take', 'Cuts in order (mm)', 'Left over (mm)'],
    sheet.rows.map((r) => [
      '☐',
      numbersText(r.numbers),
      ...sectionCell(sheet, r.section),
      cell(takeText(r)),
      r.pieces.map((p) => cell(pieceText(p))).join(' + '),
      `${millimetres(r.offcut)}${r.keep ? ', keep' : ''}`,
    ]),
  );
}

function missingTable({ missing }: CutSheet): string[] {
  if (missing.length === 0) return [];
  const rows = missing.map((m) => [cell(m.name), millimetres(m.length), `${m.count}`]);
  return ['## Not in the stock', '', ...table(['Part', 'Length (mm)', 'Count'], rows)];
}

function csv(plan: readonly CutBoard[], sheet: CutSheet): string {
  const runOf = (section: string | undefined, length: number): number =>
    sheet.runs.find((r) => r.section === section && Math.abs(r.length - length) < 1e-9)?.run ?? 0;
  const rows = plan.flatMap((b) =>
    b.pieces.map((p, i) => ({
      run: runOf(b.section, p.length),
      board: b.board,
      piece: i + 1,
      part: p.name,
      length_mm: millimetres(p.length),
      length_in: inchText(p.length).replace(' in', ''),
      from_mm: millimetres(p.from),
      stock: b.stock,
      stock_length_mm: millimetres(b.stockLength),
      section: b.section ?? '',
      left_over_mm: i === b.pieces.length - 1 ? millimetres(b.offcut) : '',
    })),
  );
  rows.sort((a, b) => a.run - b.run || a.board - b.board || a.piece - b.piece);
  // A name that a spreadsheet would take for a formula is made plain text.
  return `${Papa.unparse(rows, { escapeFormulae: true, newline: '\n' })}\n`;
}

import { readCsv } from '../../../engine/csv.js';
import { NumberStyle } from '../../../engine/csv-numbers.js';
import { csvText } from '../../../engine/result-table.js';
import { pileYield } from '../../../recipes/stock/pile-yield.js';
import { InputError } from '../../../units/input-error.js';
import type { SurveyChoices, SurveyDoubt, SurveyHeading, SurveyReading } from '../model/survey-reading.js';
import { guessColumn, headingParts, isLengthColumn, neededColumns, surveyColumns } from './survey-columns.js';
import { doubtsOf, grouped } from './survey-doubts.js';
import type { SurveyTable } from './survey-table.js';

const mostDoubts = 8;

/** Reads a survey that was pasted or dropped, by its headings and the choices made so far. */
export function readSurvey({ text, choices }: { text: string; choices: SurveyChoices }): SurveyReading {
  const fields = pileYield.inputs.boards.fields ?? {};
  const columns = surveyColumns.map((name) => ({ name, label: fields[name]?.label ?? name }));
  const empty: SurveyReading = {
    headings: [],
    rows: 0,
    boards: 0,
    doubts: [],
    moreDoubts: 0,
    ignored: [],
    missing: [],
    picture: undefined,
    csv: undefined,
    columns,
  };
  let table: SurveyTable;
  try {
    table = tableOf(text, choices);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...empty, doubts: [doubt(error.message)] };
  }
  const known = new Set(table.headings.map(({ column }) => column));
  const missing = neededColumns.filter((column) => !known.has(column));
  const reading = {
    ...empty,
    headings: table.headings,
    rows: table.rows.length,
    ignored: table.headings.filter(({ column }) => column === '').map(({ heading }) => heading),
    missing,
  };
  if (missing.length > 0 || table.rows.length === 0) return reading;
  return { ...reading, ...checked(table, choices) };
}

const doubt = (message: string): SurveyDoubt => ({
  message,
  cell: undefined,
  repair: undefined,
  row: undefined,
});

function tableOf(text: string, choices: SurveyChoices): SurveyTable {
  const { rows, badQuote, delimiter } = readCsv(text);
  if (badQuote !== undefined)
    throw new InputError(`A quotation mark in line ${badQuote} is not closed. Close it, or take it out.`);
  const [head, ...body] = rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  if (head === undefined || body.length === 0)
    throw new InputError('There are no rows under a line of headings. Paste the headings too.');
  const style = NumberStyle.of(
    body
      .flatMap(({ line, cells }) => cells.map((cell) => ({ line, text: cell })))
      .filter(({ text: t }) => /^[\d.,\s]+$/.test(t)),
    delimiter,
  );
  const cells = body.map((row, at) =>
    head.cells.map((heading, i) => {
      const written = choices.repairs[`${at}:${heading.trim()}`];
      return written ?? style.plain((row.cells[i] ?? '').trim());
    }),
  );
  return { headings: headingsOf(head.cells, cells, choices), rows: cells };
}

function headingsOf(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  choices: SurveyChoices,
): SurveyHeading[] {
  const taken = new Set(Object.values(choices.columns));
  return heads.map((raw, i) => {
    const heading = raw.trim();
    const column = choices.columns[heading] ?? guessColumn(heading, taken);
    taken.add(column);
    const { unit } = headingParts(heading);
    const values = rows.map((row) => row[i] ?? '').filter((cell) => cell !== '');
    const isBare = isLengthColumn(column) && values.some((cell) => /^[\d.\s/-]+$/.test(cell));
    return {
      heading,
      column,
      unit: choices.units[heading] ?? (unit === '' ? 'mm' : unit),
      needsUnit: isBare && unit === '',
      sample: values[0] ?? '',
    };
  });
}

/** The rows as a recipe takes them; those left out are undefined. */
function records(table: SurveyTable, left: readonly number[]): (Record<string, unknown> | undefined)[] {
  return table.rows.map((cells, at) => {
    if (left.includes(at)) return undefined;
    const record: Record<string, unknown> = {};
    for (const [i, { column, unit }] of table.headings.entries()) {
      const cell = cells[i] ?? '';
      if (column === '' || cell === '') continue;
      if (isLengthColumn(column)) record[column] = /[a-z"']/i.test(cell) ? cell : `${cell} ${unit}`;
      else
        record[column] =
          /^\d+$/.test(cell) && (column === 'count' || column === 'faults') ? Number(cell) : cell;
    }
    return record;
  });
}

function checked(table: SurveyTable, choices: SurveyChoices): Partial<SurveyReading> {
  const rows = records(table, choices.left);
  const kept = rows.filter((row) => row !== undefined);
  const boards = kept.reduce((sum, row) => sum + (typeof row['count'] === 'number' ? row['count'] : 1), 0);
  const doubts = grouped(doubtsOf(table, rows));
  const listed = {
    doubts: doubts.slice(0, mostDoubts),
    moreDoubts: Math.max(0, doubts.length - mostDoubts),
    boards,
  };
  if (doubts.length > 0 || kept.length === 0) return listed;
  return { ...listed, csv: csvOf(kept), picture: pileYield({ boards: kept as never }).chart };
}

/** The survey with the recipes' own headings; every length carries its unit. */
function csvOf(rows: readonly Readonly<Record<string, unknown>>[]): string {
  const used = surveyColumns.filter((column) => rows.some((row) => row[column] !== undefined));
  const cell = (value: unknown): string | number =>
    typeof value === 'number' ? value : typeof value === 'string' ? value : '';
  return csvText([[...used], ...rows.map((row) => used.map((column) => cell(row[column])))]);
}

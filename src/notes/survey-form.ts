// A blank form to survey a pile with, on paper or as a CSV file with the same columns as topFromPile takes.
import Papa from 'papaparse';
import { escapeHtml as e } from '../engine/escape-html.js';
import { columnGuide } from '../recipes/stock/pile-top/pile-columns.js';
import { writeFileAtomically } from './atomic-write.js';
import { fileEnding } from './file-ending.js';
import { pageHtml } from './html-page.js';
import { paperOf, sheetStyle, type Paper } from './paper.js';

export interface SurveyForm {
  /** A page to print, with ruled lines and how each column is measured. */
  toHtml(paper?: Paper): string;
  /** The same columns, empty. */
  toCsv(): string;
  /** Writes the form whole or not at all; the ending (.html, .csv) tells which. @throws InputError, FileError */
  save(file: string, paper?: Paper): Promise<void>;
}

const columns = Object.values(columnGuide).filter((c) => c.onForm);

/** Lines that fit below the guide on one sheet. */
const lines: Record<Paper, number> = { A4: 14, A3: 26 };

function formHtml(paper: Paper): string {
  const head = columns.map((c) => `<th>${e(c.head)}</th>`).join('');
  const line = `<tr>${columns.map(() => '<td>&nbsp;</td>').join('')}</tr>`;
  const guide = columns.map((c) => `<li><b>${e(c.head)}</b> ${e(c.how)}</li>`).join('');
  return [
    '<h1>Survey of a pile</h1>',
    '<p class="line">Pile: ____________________ &emsp; Measured by: ____________________ &emsp; Date: ______________</p>',
    '<p><b>First go over every board, both faces, with a metal detector.</b> Millimetres. Lay the board with its hollow face up and measure everything from the chalked end.</p>',
    `<table class="form"><thead><tr>${head}</tr></thead><tbody>${line.repeat(lines[paper])}</tbody></table>`,
    `<ul class="guide">${guide}</ul>`,
  ].join('\n');
}

const style = `
table.form{display:table;width:100%;table-layout:fixed;border-collapse:collapse}
table.form th,table.form td{border:.3mm solid #000;padding:.6mm 1mm;height:7mm;font-size:8.5pt}
table.form th:nth-child(11){width:22%}
ul.guide{columns:2;font-size:8.5pt;line-height:1.3;padding-left:1.2em}ul.guide li{break-inside:avoid;margin-bottom:.6mm}
p.line{white-space:nowrap}`;

/** The blank survey of a pile. */
export function surveyForm(): SurveyForm {
  const form: SurveyForm = {
    toHtml: (paper) => {
      const on = paperOf(paper);
      return pageHtml({ title: 'Survey of a pile', body: formHtml(on), style: sheetStyle(on) + style });
    },
    toCsv: () => `${Papa.unparse([columns.map((c) => c.head)], { newline: '\n' })}\n`,
    async save(file, paper) {
      const ending = fileEnding(file, ['html', 'csv'], 'pile.csv');
      await writeFileAtomically(file, ending === 'csv' ? form.toCsv() : form.toHtml(paper));
    },
  };
  Object.defineProperty(form, Symbol.for('Jupyter.display'), {
    value: () => ({
      'text/plain': form.toCsv(),
      'text/html': `<style>${style}</style>${formHtml('A4')}`,
    }),
  });
  return Object.freeze(form);
}

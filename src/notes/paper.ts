// Sheets of paper that pictures and forms are printed on.
import { InputError, inspectValue } from '../units/input-error.js';

export type Paper = 'A4' | 'A3';

/** Inside the margins of a sheet laid on its side, mm. */
export const printable: Record<Paper, { readonly width: number; readonly height: number }> = {
  A4: { width: 297 - 24, height: 210 - 24 },
  A3: { width: 420 - 24, height: 297 - 24 },
};

/** The paper asked for; A4 where none is. @throws InputError */
export function paperOf(paper: unknown): Paper {
  if (paper === undefined || paper === 'A4' || paper === 'A3') return paper ?? 'A4';
  throw new InputError({ field: 'paper', message: `got ${inspectValue(paper)}, takes "A4" or "A3"` });
}

/** Style of a page printed on sheets laid on their side. */
export const sheetStyle = (paper: Paper): string => `
@page{size:${paper} landscape;margin:12mm}
body{max-width:none}
@media print{h1{font-size:15pt;margin:0 0 2mm}h2{font-size:12pt;margin:4mm 0 2mm}.new{break-before:page}figure svg{max-height:none;width:auto}}`;

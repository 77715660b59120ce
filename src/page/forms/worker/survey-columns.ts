/** Headings that makers write for the columns of a survey. */
const synonyms: Readonly<Record<string, readonly string[]>> = {
  name: ['name', 'mark', 'id', 'no', 'nr', 'number', 'board', 'piece', 'label', 'ref', 'item'],
  group: ['group', 'kind', 'type', 'what', 'sort', 'source', 'species', 'class', 'description'],
  count: ['count', 'qty', 'quantity', 'pcs', 'pieces', 'boards', 'howmany', 'amount', 'off', 'nos'],
  length: ['length', 'len', 'l', 'long', 'lengthasfound'],
  width: ['width', 'w', 'wide', 'breadth', 'b'],
  thickness: ['thickness', 'thick', 't', 'th', 'height', 'h', 'depth'],
  endLoss: ['endloss', 'ends', 'docked', 'trim', 'endtrim'],
  faultLength: ['faultlength', 'faultsmm', 'cutout', 'defects', 'defectlength', 'waste'],
  faults: ['faults', 'knots', 'defectcount', 'nails'],
  cup: ['cup', 'cupping'],
  bow: ['bow', 'bend', 'warp'],
};

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, '');

/** A heading as its words and the unit in brackets or after a comma. */
export function headingParts(heading: string): { readonly words: string; readonly unit: string } {
  const found =
    /^(.*?)[\s,]*[([]\s*([^)\]]{1,12}?)\s*[)\]]\s*$/.exec(heading) ??
    /^(.*?)[\s,_]+(mm|cm|m|in|ft|inch|inches)$/i.exec(heading);
  const unit = (found?.[2] ?? '').toLowerCase().replace(/^inch(es)?$|^"$/, 'in');
  return { words: (found?.[1] ?? heading).trim(), unit };
}

/** The column that a heading is likely to mean; '' where none is. Each column is taken once. */
export function guessColumn(heading: string, taken: ReadonlySet<string>): string {
  const word = plain(headingParts(heading).words);
  const found = Object.entries(synonyms).find(
    ([column, words]) => !taken.has(column) && (plain(column) === word || words.includes(word)),
  );
  return found?.[0] ?? '';
}

/** Columns that a survey must have. */
export const neededColumns = ['length', 'width', 'thickness'] as const;

export const surveyColumns: readonly string[] = Object.keys(synonyms);

/** Columns of words and of plain numbers; all others are lengths. */
export const isLengthColumn = (column: string): boolean =>
  column !== '' && !['name', 'group', 'count', 'faults'].includes(column);

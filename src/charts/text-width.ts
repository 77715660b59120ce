/**
 * How wide a line of text will stand, without a screen to measure it on. Vega guesses 0.8 em a letter when
 * it has no canvas, which pushes axis titles far from their axis. The advance widths below are those of DejaVu Sans
 * (thousandths of an em, read from the font's own tables); Verdana is as wide and every other fallback in our
 * font list is narrower, so a label that fits by this table fits.
 */
const ascii = [
  318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636,
  636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295,
  295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838,
  500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521,
  392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];
const narrow = new Map<string, number>([
  ['°', 500],
  ['²', 401],
  ['³', 401],
  ['·', 318],
  ['–', 500],
  ['′', 227],
  ['″', 374],
  ['‘', 318],
  ['’', 318],
  ['“', 518],
  ['”', 518],
  ['\u2009', 200],
  ['\u202f', 200],
  ['\u00a0', 318],
]);
const boldRatio = 1.13;

/** Width in px of one line of `text` at `fontSize` px; `bold` adds what DejaVu's bold adds (about 13 %). */
export function textWidth(text: string, fontSize: number, bold = false): number {
  let thousandths = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    // Anything outside the table is counted as a wide letter: too much room is better than a cut label.
    thousandths +=
      code >= 32 && code < 127
        ? (ascii[code - 32] ?? 1000)
        : (narrow.get(letter) ?? (code < 0x250 ? 700 : 1000));
  }
  return (thousandths / 1000) * fontSize * (bold ? boldRatio : 1);
}

/** `text` broken at spaces into lines no wider than `width` px; a single longer word stays whole. */
export function wrapText(text: string, width: number, fontSize: number, bold = false): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, fontSize, bold) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  return lines;
}

import { expect, it } from 'vitest';
import { textWidth, wrapText } from '../../src/charts/text-width.js';

// Measured with measureText in Chromium, font DejaVu Sans 2.37, in px.
const measured = [
  ['Moisture content (%)', 13, false, 136.481],
  ['1950 mm (76 3/4 in)', 12, false, 124.061],
  ['bow over the whole of a long board', 12, false, 212.877],
  ['21 °C at 50 % – 60 %', 12, false, 127.752],
  ['Where the thickness goes', 15, true, 219.368],
] as const;

it.each(measured)('%s at %d px stands as wide as in a browser', (text, size, bold, width) => {
  const got = textWidth(text, size, bold);
  // Kerning may bring a pair closer by a fraction; bold is estimated by a ratio.
  expect(got / width).toBeGreaterThan(bold ? 0.97 : 0.995);
  expect(got / width).toBeLessThan(bold ? 1.06 : 1.01);
});

it('breaks lines at spaces, within the width, losing no word', () => {
  const text = 'Width of a counter top as its moisture content changes through the year';
  const lines = wrapText(text, 200, 15);
  expect(lines.join(' ')).toBe(text);
  for (const line of lines) expect(textWidth(line, 15)).toBeLessThanOrEqual(200);
  expect(wrapText('indivisible', 10, 15)).toEqual(['indivisible']);
});

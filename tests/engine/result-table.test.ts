import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { clean } from '../../src/units/clean-number.js';
import { csvText, tabText } from '../../src/engine/result-table.js';
import { boardMeasure, fixingSlots, sweep } from '../../src/index.js';

describe('a number for people', () => {
  it.each([
    [8.000000000000002, 8],
    [0.1 + 0.2, 0.3],
    [77 / 6, 12.8333333333333],
    [-25.400000000000002, -25.4],
    [123456.789012345, 123456.789012345],
    [0, 0],
  ])('%d is written %d', (x, written) => expect(clean(x)).toBe(written));
});

describe('a result for a spreadsheet', () => {
  const result = boardMeasure({ thickness: '1 in', width: '11 in', length: '14 ft' });

  it('is CSV with one line a value, which other programs read', () => {
    const { data } = Papa.parse<Record<string, string>>(result.toCSV(), {
      header: true,
      skipEmptyLines: true,
    });
    const feet = data.find((row) => row['name'] === 'boardFeet');
    // 1 in x 11 in x 14 ft is 12 5/6 board feet (Noyes, Handwork in Wood).
    expect(Number(feet?.['value'])).toBeCloseTo(77 / 6, 9);
    expect(feet?.['unit']).toBe('bf');
    expect(result.toCSV()).toMatch(/^name,meaning,value,unit\r\n/);
  });

  it('goes onto the clipboard with tabs', () => {
    const rows = result.toClipboard().split('\n');
    expect(rows[0]).toBe('name\tmeaning\tvalue\tunit');
    expect(new Set(rows.map((r) => r.split('\t').length))).toEqual(new Set([4]));
  });

  it('names the values of a table by row', () => {
    const slots = fixingSlots(fixingSlots.example);
    expect(slots.toCSV()).toMatch(/^slots\[1\]\.\w+,/m);
  });

  it('carries no formula, and quotes what needs it', () => {
    expect(csvText([['=1+1', 'a,"b"', 3]])).toBe('\'=1+1,"a,""b""",3\r\n');
    expect(tabText([['@x', 'a\tb']])).toBe("'@x\ta b");
  });

  it('of a sweep has one column an input or output, its unit in the head', async () => {
    const swept = await sweep(
      boardMeasure,
      { thickness: '1 in', length: '12 ft', width: '4 .. 12 in' },
      { steps: 3 },
    );
    const { data } = Papa.parse<Record<string, number>>(swept.toCSV(), {
      header: true,
      skipEmptyLines: true,
      dynamicTyping: true,
    });
    expect(data.map((row) => row['boardFeet (bf)'])).toEqual([4, 8, 12]);
  });
});

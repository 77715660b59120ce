import { expect, it } from 'vitest';
import { flatRows } from '../../src/explore/frame.js';
import { frame, movementAcross, range, sweep } from '../../src/index.js';

it('a frame of results has what was given beside the outputs, one unit a column', () => {
  const way = (width: string) => movementAcross({ width, timber: 'red oak', from: '8 %', to: '12 %' });
  const [first, second] = flatRows([way('900 mm'), way('35 in')]);
  expect(first).toMatchObject({ 'width (mm)': 900, rule: 'timber', 'fromMoisture (%)': 8 });
  expect(first!['timber']).toContain('red oak');
  // By hand: 900 mm x 0.00369 x 4 is 13.284 mm, and 35 in is 889 mm.
  expect(first!['change (mm)']).toBeCloseTo(13.284, 9);
  expect(second!['width (mm)']).toBeCloseTo(889, 9);
  expect(second!['change (mm)']).toBeCloseTo(13.12164, 9);
});

it('a frame of a sweep has what varies beside the outputs, numbers and words as such', async () => {
  const swept = await sweep(movementAcross, {
    width: range('600 mm', '900 mm', 3),
    timber: ['red oak', 'teak'],
    from: '8 %',
    to: '12 %',
  });
  const table = await frame(swept);
  expect(table.shape[0]).toBe(6);
  expect(table.columns.slice(0, 3)).toEqual(['width (mm)', 'timber', 'change (mm)']);
  // By hand: 0.00369 and 0.00186 of the width for each of 4 per cent.
  expect(table.column('change (mm)').values).toEqual([8.856, 4.464, 11.07, 5.58, 13.284, 6.696]);
  expect(table.column('timber').values.slice(0, 2)).toEqual(['red oak', 'teak']);
  expect(table.toCSV().split('\n')[1]).toMatch(/^600,red oak,8\.856,/);
  expect(table.toJSON()[5]).toMatchObject({ 'width (mm)': 900, timber: 'teak' });
  // eslint-disable-next-line @typescript-eslint/no-deprecated -- that it draws nothing here is what is tested
  expect(() => table.plot('x')).toThrow(/Not supported/);
});

import { expect, it } from 'vitest';
import { flatRows } from '../../src/explore/frame.js';
import { movementAcross } from '../../src/index.js';

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

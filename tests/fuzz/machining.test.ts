import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { cutterMarks } from '../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../src/recipes/machining/planing-time.js';
import { chipVolume } from '../../src/recipes/machining/chip-volume.js';

describe('machining refuses', () => {
  const marks = { spindleSpeed: '6000 rpm', knives: 4, feed: '6 m/min' };
  const time = { totalLength: '30 m', passes: 4, feed: '6 m/min' };
  const dust = { volumeRemoved: '0.01 m3', density: '500 kg/m3' };
  it.each([
    ['a standing block', () => cutterMarks({ ...marks, spindleSpeed: '0 rpm' }), 'spindleSpeed'],
    ['a block turning backwards', () => cutterMarks({ ...marks, spindleSpeed: '-6000 rpm' }), 'spindleSpeed'],
    ['no knives', () => cutterMarks({ ...marks, knives: 0 }), 'knives'],
    ['two and a half knives', () => cutterMarks({ ...marks, knives: 2.5 }), 'knives'],
    ['no feed', () => cutterMarks({ ...marks, feed: '0 m/min' }), 'feed'],
    ['a feed as a length', () => cutterMarks({ ...marks, feed: '6 m' }), 'feed'],
    ['no cutting circle', () => cutterMarks({ ...marks, cutterDiameter: '0 mm' }), 'cutterDiameter'],
    ['no passes and no removal', () => planingTime({ totalLength: '30 m', feed: '6 m/min' }), 'passes'],
    ['half a pass', () => planingTime({ ...time, passes: 0.5 }), 'passes'],
    [
      'more passes than a life holds',
      () =>
        planingTime({ totalLength: '30 m', feed: '6 m/min', removal: '500 mm', depthPerPass: '0.001 mm' }),
      'depthPerPass',
    ],
    ['a length of nothing', () => planingTime({ ...time, totalLength: '0 m' }), 'totalLength'],
    ['handling below nothing', () => planingTime({ ...time, handling: '-1 s' }), 'handling'],
    ['no volume and half an area', () => chipVolume({ area: '1 m2', density: '500 kg/m3' }), 'volumeRemoved'],
    ['a volume and an area', () => chipVolume({ ...dust, area: '1 m2', depth: '1 mm' }), 'volumeRemoved'],
    ['timber as heavy as stone', () => chipVolume({ ...dust, density: '2600 kg/m3' }), 'density'],
    ['waste nobody knows', () => chipVolume({ ...dust, waste: 'chips' as never }), 'waste'],
    ['a bag of nothing', () => chipVolume({ ...dust, bagSize: '0 L' }), 'bagSize'],
  ])('%s', (_what, run, field) => {
    let caught: unknown;
    try {
      run();
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(InputError);
    const r = caught as InputError;
    expect(
      r.issues.map((t) => t.field),
      r.message,
    ).toContain(field);
    expect(r.message).toMatch(/takes/);
    expect(r.message.split('\n')).toHaveLength(1);
  });
});

import { describe, expect, it } from 'vitest';
import { out } from '../../src/engine/output.js';
import { saidValue } from '../../src/engine/spoken.js';

describe('figures as a workshop says them', () => {
  const length = out.length({ label: 'length' });
  const mass = out.mass({ label: 'mass' });
  const time = out.time({ label: 'time' });
  it.each([
    [length, 1.2345, '1235 mm'],
    [length, -0.0133, '13.5 mm'],
    [length, 12.9, '12 900 mm'],
    [length, 49.66, '49.7 m'],
    [length, 0.00664, '6.5 mm'],
    [length, 0.0396, '39.5 mm'],
    [length, 0.00037, '0.35 mm'],
    [mass, 32.25, '32 kg'],
    [mass, 7.8, '7.8 kg'],
    [mass, 0.2464, '246 g'],
    [time, 19.71, '20 s'],
    [time, 0, '0 s'],
    [time, 454.7, '7 min 35 s'],
    [time, 5670, '1 h 35 min'],
    [time, 7200, '2 h'],
    [time, 135_000, '37 h 30 min'],
    [time, 3.24, '3.2 s'],
    [time, 30.19 * 86_400, '30 days'],
    [out.share({ label: 'share' }), 0.743, '74 %'],
    [out.share({ label: 'share' }), 0.0169, '1.7 %'],
    [out.moisture({ label: 'moisture' }), 0.0925, '9.3 %'],
    [out.angle({ label: 'angle' }), Math.PI / 4, '45°'],
    [out.count({ label: 'count' }), 16, '16'],
    [out.text({ label: 'why' }), 'deflection', 'deflection'],
  ])('%#: %j', (output, raw, said) => {
    expect(
      saidValue(output as never, raw)
        .replaceAll('\u202f', ' ')
        .replaceAll('\u00a0', ' '),
    ).toBe(said);
  });
  it('keep a unit that the recipe chose', () => {
    expect(saidValue(out.length({ label: 'film', unit: 'um' }), 0.00008333)).toMatch(/^83\.3 µm$/);
  });
});

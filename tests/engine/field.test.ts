import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { field } from '../../src/engine/field.js';

describe('a record written as text', () => {
  const parts = field.record(field.ratio({ label: 'parts of it' }), { label: 'the parts' });
  it('reads name:value pairs', () => {
    expect(parts.read('oil:2, varnish:1;spirit=1.5')).toEqual({ oil: 2, varnish: 1, spirit: 1.5 });
  });
  it.each(['2:1:1', 'oil', 'oil:', 'oil:1,oil:2', ':1', '__proto__:1'])('refuses %j', (text) => {
    expect(() => parts.read(text)).toThrow(InputError);
  });
});

describe('an either', () => {
  const place = field.either(
    [
      field.group({ width: field.length({ label: 'width' }) }, { label: 'a piece' }),
      field.list(field.area({ label: 'an area' }), { label: 'areas' }),
    ],
    { label: 'a piece or areas' },
  );
  it('shows what was read by the alternative that read it', () => {
    expect(place.format(place.read(['1.5 m2', '0.5 m2']))).toContain('1.5 m²');
    expect(place.format(place.read({ width: '300 mm' }))).toContain('300 mm');
  });
});

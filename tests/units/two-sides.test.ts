import { describe, expect, it } from 'vitest';
import { twoSides } from '../../src/units/written-forms.js';
import { railSpan } from '../../src/index.js';

describe('the two sides of a section', () => {
  it.each([
    ['45 x 95 mm', '45 mm', '95 mm'],
    ['45mm x 95mm', '45mm', '95mm'],
    ['4.5 cm by 95 mm', '4.5 cm', '95 mm'],
    ['1 1/2 × 3 1/2 in', '1 1/2 in', '3 1/2 in'],
  ])('%s', (text, first, second) => {
    expect(twoSides(text, 'a section')).toEqual({ first, second });
  });

  it.each([
    ['40x70', '"40x70" has no unit; write "40 x 70 mm"'],
    [' 40 by 70', '"40 by 70" has no unit; write "40 x 70 mm"'],
    ['40 mm', 'got "40 mm", takes a section'],
    ['1 x 2 x 3 mm', 'got "1 x 2 x 3 mm", takes a section'],
  ])('%s is refused', (text, message) => {
    expect(() => twoSides(text, 'a section')).toThrow(message);
  });

  it('in a recipe name the field', () => {
    expect(() => railSpan({ ...railSpan.example, section: '40x70' })).toThrow(
      'railSpan: section: "40x70" has no unit; write "40 x 70 mm"',
    );
  });
});

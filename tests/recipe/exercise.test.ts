import { describe, expect, it } from 'vitest';
import { length, moisture } from '../../src/quantities/make.js';
import { exercise } from '../../src/recipe/exercise.js';

const gap = exercise({
  question: 'How wide?',
  answer: () => length('13.284 mm'),
  hint: 'width times coefficient times change',
});

describe('an exercise', () => {
  it.each(['13.284 mm', '13.3 mm', '1.33 cm', '0.0133 m', '0.523 in', '17/32 in', '33/64"', '13.2 mm'])(
    'takes %s',
    (answer) => {
      expect(gap.check(answer)).toMatchObject({ right: true });
    },
  );
  it.each([
    ['', /^No answer yet/],
    ['?', /^No answer yet/],
    [undefined, /^No answer yet/],
    ['13.3', /with no unit/],
    [13.3, /with no unit/],
    ['13.3 kg', /is a mass; a length is asked for/],
    ['-13.3 mm', /sign is not/],
    ['26.57 mm', /twice too much/],
    ['6.64 mm', /half/],
    ['0.523 mm', /25\.4 times too little/],
    ['1328 mm', /hundred times too much/],
    ['13.9 mm', /more than rounding/],
    ['90 mm', /too much/],
    ['1 mm', /too little/],
    ['dreizehn', /cannot be read/],
    [{ a: 1 }, /write the answer as text/],
    ['\u0000'.repeat(999), /cannot be read/],
    [NaN, /no unit/],
    [Symbol('x'), /write the answer as text/],
  ])('tells what is wrong with %s', (answer, says) => {
    const v = gap.check(answer);
    expect(v.right).toBe(false);
    expect(v.says).toMatch(says);
    // A wrong answer does not give the right one away.
    expect(v.says).not.toContain('13.284');
  });
  it('hints from the second wrong answer on, and reveals when asked', () => {
    const e = exercise({ question: 'q', answer: () => moisture('9.2 %'), hint: 'look at the curve' });
    expect(e.check('20 %').says).not.toContain('look at the curve');
    expect(e.check('30 %').says).toContain('look at the curve');
    expect(e.reveal()).toBe('9.2 %');
  });
  it('takes plain numbers and words where they are the answer', () => {
    const n = exercise({ question: 'how many', answer: () => 14 });
    expect(n.check(14).right && n.check('14').right).toBe(true);
    expect(n.check('14 mm').says).toMatch(/without a unit/);
    const w = exercise({ question: 'which month', answer: () => 'August', alsoRight: ['Aug'] });
    expect(w.check('august').right && w.check(' AUG. ').right).toBe(true);
    expect(w.check('July').right).toBe(false);
  });
  it('reckons its answer only when asked, once', () => {
    let n = 0;
    const e = exercise({ question: 'q', answer: () => (n++, 1) });
    expect(n).toBe(0);
    e.check('1');
    e.check('2');
    expect(n).toBe(1);
  });
});

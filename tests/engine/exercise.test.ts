import { describe, expect, it } from 'vitest';
import { length, moisture, money } from '../../src/units/constructors.js';
import {
  exercise,
  exerciseFrom,
  exerciseType,
  type Exercise,
  type ExerciseData,
} from '../../src/engine/exercise.js';

const gap = exercise({
  question: 'How wide?',
  answer: () => length('13.284 mm'),
  hint: 'width times coefficient times change',
});

/** What a page gets of an exercise. */
const dataOf = (e: Exercise): ExerciseData =>
  (e as unknown as Record<symbol, () => Record<string, ExerciseData>>)[Symbol.for('Jupyter.display')]!()[
    exerciseType
  ]!;

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
    ['26.57 mm', /not recognised/],
    ['6.64 mm', /not recognised/],
    ['0.523 mm', /inches and millimetres mixed/],
    ['1328 mm', /unit does not/],
    ['13.5 mm', /a digit more/],
    ['13.9 mm', /not recognised/],
    ['90 mm', /not recognised/],
    ['dreizehn', /cannot be read/],
    [{ a: 1 }, /write the answer as text/],
    ['\u0000'.repeat(999), /cannot be read/],
    [NaN, /no unit/],
    [Symbol('x'), /write the answer as text/],
  ])('tells what is wrong with %s', (answer, label) => {
    const v = gap.check(answer);
    expect(v.right).toBe(false);
    expect(v.message).toMatch(label);
    // A wrong answer does not give the right one away.
    expect(v.message).not.toContain('13.284');
  });
  it('hints from the second wrong answer on, and reveals when asked', () => {
    const e = exercise({ question: 'q', answer: () => moisture('9.2 %'), hint: 'look at the curve' });
    expect(e.check('20 %').message).not.toContain('look at the curve');
    expect(e.check('30 %').message).toContain('look at the curve');
    expect(e.reveal()).toBe('9.2 %');
  });
  it('takes plain numbers and words where they are the answer', () => {
    const n = exercise({ question: 'how many', answer: () => 14 });
    expect(n.check(14).right && n.check('14').right).toBe(true);
    expect(n.check('14 strips').right && n.check('14 pieces of wood').right).toBe(true);
    expect(n.check('14 mm').message).toMatch(/without a unit/);
    expect(n.check('15 strips').right).toBe(false);
    expect(exercise({ question: 'how many', answer: () => 1400 }).check('1\u202f400').right).toBe(true);
    const w = exercise({ question: 'which month', answer: () => 'August', alsoRight: ['Aug'] });
    expect(w.check('august').right && w.check(' AUG. ').right).toBe(true);
    expect(w.check('July').right).toBe(false);
  });
  it('takes a quantity, and tells a quantity of another kind', () => {
    expect(gap.check(length('13.3 mm')).right).toBe(true);
    expect(gap.check(moisture('13 %')).message).toMatch(/a moisture content; a length is asked for/);
  });
  it('takes a plain number only as one', () => {
    const n = exercise({ question: 'how many', answer: () => 14 });
    for (const wrong of [true, ' ', [], NaN]) expect(n.check(wrong).message).toMatch(/without a unit/);
    expect(n.check(14.14).right).toBe(true);
    expect(n.check(14.15).right).toBe(false);
  });
  // Tolerance a thousandth: 0.0127 mm of half an inch, 0.254 mm of ten. A rule is read to 1/64 in below an inch, to 1/32 in above.
  it.each([
    ['12.7 mm', '33/64 in', true],
    ['12.7 mm', '17/32 in', false],
    ['25.4 mm', '1 1/32 in', true],
    ['254 mm', '10 1/32 in', true],
    ['254 mm', '10 1/16 in', false],
    ['254 mm', '10.03 in', false],
  ])('takes an inch fraction as fine as a rule shows: %s as %s: %s', (right, given, passes) => {
    const e = exercise({ question: 'q', answer: () => length(right), tolerance: 0.001 });
    expect(e.check(given).right).toBe(passes);
  });
  it('takes 0 for 0 and nothing else', () => {
    const none = exercise({ question: 'how much does it move', answer: () => length('0 mm') });
    expect(none.check('0 mm').right).toBe(true);
    expect(none.check('0.0001 um').right).toBe(true);
    expect(none.check('0.1 mm').right || none.check('-0.1 mm').right).toBe(false);
  });
  it('keeps the sign of a price, as data and when made again', () => {
    const cost = exercise({ question: 'what does it cost', answer: () => money('$12.50') });
    const data = dataOf(cost);
    expect(data.answer).toEqual({ kind: 'money', value: 12.5, currency: '$' });
    expect(exerciseFrom(data).reveal()).toBe('$12.50');
    expect(exerciseFrom(data).check('$12.50').right).toBe(true);
    expect(exerciseFrom({ question: 'q', answer: 3 }).check(3).right).toBe(true);
    const plain = money('12.50');
    expect(dataOf(exercise({ question: 'q', answer: () => plain })).answer).toEqual({
      kind: 'money',
      value: 12.5,
    });
  });
  it('is the same exercise when made again from its data', () => {
    const spec = { question: 'which month', tolerance: 0.02, hint: 'after the solstice', alsoRight: ['Aug'] };
    const data = dataOf(exercise({ ...spec, answer: () => 'August' }));
    expect(data).toEqual({ ...spec, answer: 'August' });
    expect(dataOf(exerciseFrom(data))).toEqual(data);
  });
  it('names a known mistake, and both where two give the same answer', () => {
    const e = exercise({
      question: 'What is the moisture content of 60 g, 50 g when dry?',
      answer: () => moisture('20 %'),
      wrong: [
        { answer: () => moisture('16.667 %'), says: 'Over which mass did you divide?' },
        { answer: () => moisture('83.3 %'), says: 'What share is asked for?' },
        { answer: () => moisture('83.6 %'), says: 'Is that water or wood?' },
      ],
    });
    expect(e.check('16.7 %').message).toBe('Over which mass did you divide?');
    expect(e.check('0.167').right).toBe(false);
    expect(e.check('83.4 %').message).toMatch(/More than one way.*What share.*water or wood/);
    // Neither the slip of a unit nor rounding is said of a known mistake.
    expect(e.check('1.667 %').message).toMatch(/not recognised/);
    expect(e.check('16.95 %').message).toMatch(/not recognised/);
    expect(exerciseFrom(dataOf(e)).check('16.7 %').message).toBe('Over which mass did you divide?');
  });
  it('counts no try for what cannot be read', () => {
    const e = exercise({ question: 'q', answer: () => moisture('9.2 %'), hint: 'look at the curve' });
    for (const unread of ['20', 'x', 20, '20 kg']) expect(e.check(unread).message).not.toContain('curve');
    expect(e.check('20 %').message).not.toContain('look at the curve');
  });
  it('calculates its answer only when asked, once', () => {
    let n = 0;
    const e = exercise({ question: 'q', answer: () => (n++, 1) });
    expect(n).toBe(0);
    e.check('1');
    e.check('2');
    expect(n).toBe(1);
  });
});

import { describe, expect, it, vi } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { field } from '../../src/engine/field.js';
import { assertFinite } from '../../src/engine/assert-finite.js';
import { formula, variable } from '../../src/engine/formula.js';
import { compileFunction } from '../../src/engine/compile-function.js';
import { out } from '../../src/engine/output.js';
import { asyncRecipe, recipe } from '../../src/engine/recipe.js';

const common = { topic: 'stock', about: 'Made for a test of how recipes are run.', sources: [] } as const;

const area = formula({
  symbol: 'A',
  result: variable('area', 'area'),
  expression: 'w * l',
  variables: { w: variable('length', 'width'), l: variable('length', 'length') },
  basis: 'geometry',
});
const weight = formula({
  symbol: 'm',
  result: variable('mass', 'mass'),
  expression: 'A * t * rho',
  variables: {
    A: variable('area', 'area'),
    t: variable('length', 'thickness'),
    rho: variable('density', 'density'),
  },
  basis: 'geometry',
});
/** A row of formulas with a limited letter, an open one, a default and a field that is no letter. */
const board = recipe({
  ...common,
  name: 'board',
  title: 'Weight of a board',
  inputs: {
    name: field.text({ label: 'name', optional: true }),
    width: field.length({ label: 'width', symbol: 'w', above: '0 mm', max: '1 m' }),
    length: field.length({ label: 'length', symbol: 'l' }),
    thickness: field.length({ label: 'thickness', symbol: 't', default: '20 mm' }),
    density: field.density({ label: 'density', symbol: 'rho', min: '1 kg/m3' }),
  },
  outputs: {
    area: out.area({ label: 'area', symbol: 'A' }),
    mass: out.mass({ label: 'mass', symbol: 'm' }),
  },
  steps: [area, weight],
  example: { width: '500 mm', length: '2 m', density: '500 kg/m3' },
});
const numbers = { width: 0.5, length: 2, density: 500 };

/** The same calculated in one go, with a choice and a list. */
const shelf = recipe({
  ...common,
  name: 'shelf',
  title: 'Load on shelves',
  inputs: {
    kind: field.choice(['open', 'closed'], { label: 'kind', default: 'open' }),
    widths: field.list(field.length({ label: 'a width' }), { label: 'widths', optional: true }),
    load: field.mass({ label: 'load', above: '0 kg', max: '100 kg' }),
  },
  outputs: { load: out.mass({ label: 'load' }), kind: out.text({ label: 'kind' }) },
  solve: (given) => ({ load: given.load * (given.widths?.length ?? 1), kind: given.kind }),
  example: { load: '5 kg' },
});

function refusalOf(run: () => unknown): InputError {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return error as InputError;
  }
  throw new Error('nothing was refused');
}

describe('a recipe on numbers', () => {
  it('calculates by hand: 0.5 m by 2 m by 20 mm at 500 kg/m3 weighs 10 kg', () => {
    const got = board.evaluate(numbers);
    expect(got.area).toBe(1);
    expect(got.mass).toBeCloseTo(10, 12);
    expect(board.evaluate({ ...numbers, thickness: 0.04 }).mass).toBeCloseTo(20, 12);
    expect(board({ width: '500 mm', length: '2 m', density: '500 kg/m3' }).mass.value).toBeCloseTo(10, 12);
  });

  it('says which number is missing', () => {
    expect(refusalOf(() => board.evaluate({ width: 0.5, density: 500 })).message).toMatch(
      /^board: length: missing; takes a length/,
    );
    expect(refusalOf(() => shelf.evaluate({})).message).toMatch(/^shelf: load: missing; takes a mass/);
  });

  it('says which number is outside its limits, and shows what is no number', () => {
    expect(board.evaluate({ ...numbers, width: 1 }).area).toBe(2);
    expect(refusalOf(() => board.evaluate({ ...numbers, width: 1.001 })).message).toContain(
      'board: width: got 1001 mm',
    );
    for (const [wrong, got] of [
      [NaN, 'got NaN'],
      [Infinity, 'got Infinity'],
      ['1 m', 'got "1 m"'],
    ] as const) {
      expect(refusalOf(() => board.evaluate({ ...numbers, length: wrong as number })).message).toContain(
        `board: length: ${got}`,
      );
      expect(refusalOf(() => shelf.evaluate({ load: wrong as number })).message).toContain(`load: ${got}`);
    }
    expect(shelf.evaluate({ load: 100 }).load).toBe(100);
    expect(refusalOf(() => shelf.evaluate({ load: 100.1 })).message).toContain('shelf: load: got 100.1 kg');
  });

  it('reads text as a person writes it, and names the field and the place of a fault', () => {
    expect(shelf.evaluate({ load: 5 })).toEqual({ load: 5, kind: 'open' });
    expect(shelf.evaluate({ load: 5, kind: 'closed', widths: '1 m, 2 m' as never })).toEqual({
      load: 10,
      kind: 'closed',
    });
    expect(refusalOf(() => shelf.evaluate({ load: 5, kind: 'ajar' as never })).message).toMatch(
      /^shelf: kind: got "ajar", takes one of "open", "closed"$/,
    );
    expect(refusalOf(() => shelf.evaluate({ load: 5, widths: '1 m, far' as never })).message).toMatch(
      /^shelf: widths\[2\]: got "far"/,
    );
  });

  it('names the output that has no finite answer, not an input that is sound', () => {
    const huge = refusalOf(() => board.evaluate({ width: 1, length: 1e300, density: 1e100 }));
    expect(huge.issues.map((t) => t.field)).toEqual(['mass']);
    expect(huge.message).toContain('these inputs give no finite answer');
  });

  it('answers where only the sum of the answers is too large for a number', () => {
    const got = board.evaluate({ width: 1, length: 1.2e308, thickness: 1, density: 1.2 });
    expect(got).toEqual({ area: 1.2e308, mass: expect.closeTo(1.44e308, -300) as number });
  });

  it('answers the same where no code may be made at run time', () => {
    vi.stubGlobal('Function', function forbidden(): never {
      throw new EvalError('not allowed here');
    });
    try {
      const again = recipe({
        ...common,
        name: 'again',
        title: 'The same',
        inputs: board.inputs,
        outputs: board.outputs,
        steps: [area, weight],
        example: board.example,
      });
      expect(again.evaluate(numbers).mass).toBeCloseTo(10, 12);
      expect(refusalOf(() => again.evaluate({ ...numbers, width: 2 })).message).toContain('again: width');
    } finally {
      vi.unstubAllGlobals();
    }
  });
});

describe('a fault of whoever wrote a recipe', () => {
  it('is said when a formula uses a letter that has no value yet', () => {
    const wrong = () => recipe({ ...common, ...board, name: 'wrong', title: 'x', steps: [weight, area] });
    expect(wrong).toThrow('wrong: the letter A has no value yet');
  });

  it('is said when an output has a name that every result has', () => {
    const make = () =>
      recipe({
        ...common,
        name: 'bad',
        title: 'x',
        inputs: {},
        outputs: { sources: out.count({ label: 'n' }) },
        solve: () => ({ sources: 1 }),
        example: {},
      });
    expect(make).toThrow('bad: an output may not be called sources');
  });

  it('is not hidden as wrong input, whether found in reading, in calculating or in a search', async () => {
    const broken = {
      ...board.inputs.width,
      read: (): never => {
        throw new TypeError('in reading');
      },
    };
    const shape = { ...common, title: 'x', outputs: { n: out.count({ label: 'n' }) }, example: {} } as const;
    const reading = recipe({
      ...shape,
      name: 'r',
      inputs: { w: broken },
      solve: () => ({ n: 1 }),
      example: { w: '1 m' },
    });
    expect(() => reading({ w: '1 m' })).toThrow(TypeError);
    const calculating = recipe({
      ...shape,
      name: 'r',
      inputs: {},
      solve: (): { n: number } => {
        throw new TypeError('in calculating');
      },
    });
    expect(() => calculating({})).toThrow(TypeError);
    const search = asyncRecipe({
      ...shape,
      name: 'r',
      inputs: {},
      search: () => Promise.reject<{ n: number }>(new TypeError('in a search')),
    });
    await expect(search({})).rejects.toThrow(TypeError);
  });

  it('is distinguished from a policy that forbids made code', () => {
    expect(() => compileFunction(['a'], 'return (')).toThrow(SyntaxError);
    const made = compileFunction(['a'], 'return a + 1') as (a: number) => number;
    expect(made(2)).toBe(3);
  });
});

describe('a refusal that only the calculation finds', () => {
  const shape = {
    ...common,
    title: 'x',
    inputs: {},
    outputs: { n: out.count({ label: 'n' }) },
    example: {},
  } as const;
  const refuse = (during: string) => (): never => {
    throw new InputError({ field: 'width', message: 'does not go with length' }, during);
  };
  it('is given the name of the recipe, unless another recipe has given its own', async () => {
    const plain = recipe({ ...shape, name: 'outer', solve: refuse('') });
    expect(refusalOf(() => plain({})).message).toBe('outer: width: does not go with length');
    const nested = recipe({ ...shape, name: 'outer', solve: refuse('inner') });
    expect(refusalOf(() => nested({})).message).toBe('inner: width: does not go with length');
    for (const [during, message] of [
      ['', 'outer: width: does not go with length'],
      ['inner', 'inner: width: does not go with length'],
    ] as const) {
      const long = asyncRecipe({
        ...shape,
        name: 'outer',
        search: (): Promise<{ n: number }> => new Promise(() => refuse(during)()),
      });
      await expect(long({})).rejects.toThrow(message);
    }
  });
});

describe('a long recipe', () => {
  const search = asyncRecipe({
    ...common,
    name: 'search',
    title: 'A search',
    inputs: { start: field.count({ label: 'start', min: 0 }) },
    outputs: { n: out.count({ label: 'n' }) },
    search: async (given, trace) => {
      trace.progress({ message: 'begun', done: 0 });
      return Promise.resolve({ n: given.start + (trace.signal?.aborted ? 0 : 1) });
    },
    example: { start: 1 },
  });
  it('runs on numbers, watched or not, stopped or not', async () => {
    expect(await search.evaluate({ start: 4 })).toEqual({ n: 5 });
    const label: string[] = [];
    await search.evaluate({ start: 4 }, { onProgress: (p) => label.push(p.message) });
    expect(label).toEqual(['begun']);
    expect(await search.evaluate({ start: 4 }, { signal: AbortSignal.abort() })).toEqual({ n: 4 });
    expect((await search({ start: 4 })).n).toBe(5);
    expect(search.formulas).toEqual([]);
    expect(search.isAsync).toBe(true);
  });
});

describe('an answer', () => {
  it('with a number that is not finite is refused by its place', () => {
    const at = (value: unknown): string =>
      refusalOf(() => assertFinite('test', value)).issues[0]?.field ?? '';
    expect(at({ rows: [{ a: 1 }, { a: { b: NaN } }] })).toBe('rows[2].a.b');
    expect(at({ list: [1, Infinity] })).toBe('list[2]');
    expect(at([[1], [2, -Infinity]])).toBe('[2][2]');
    expect(() => assertFinite('test', { a: null, b: 'NaN', c: undefined, d: 1 })).not.toThrow();
  });

  it('lends its members to nothing else', () => {
    const shared = Object.getPrototypeOf(board(board.example)) as { readonly title: string };
    expect(() => shared.title).toThrow('not a result of a recipe');
  });

  it('lists its outputs alone', () => {
    expect(Object.keys(board(board.example))).toEqual(['area', 'mass']);
  });
});

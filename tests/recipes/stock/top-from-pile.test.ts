import { describe, expect, it } from 'vitest';
import { topFromPile } from '../../../src/recipes/stock/top-from-pile.js';
import { mulberry32 } from '../../../src/engine/random.js';
import { InputError } from '../../../src/units/input-error.js';
import { faultsOf, type CheckedRules, type SurveyBoard } from './lay-up-checker.js';

const rules: CheckedRules = {
  topLength: 1800,
  spare: 40,
  kerf: 3,
  plane: 1,
  jointing: 3,
  slabJointing: 2,
  widestSlab: 300,
  leastPiece: 250,
  stagger: 150,
  maxJoints: 3,
};

/** A pile of boards by seed, whole millimetres. */
function pile(count: number, seed: number): SurveyBoard[] {
  const random = mulberry32(seed);
  const between = (low: number, high: number): number => Math.round(low + random() * (high - low));
  return Array.from({ length: count }, (_, i): SurveyBoard => {
    const length = between(700, 2600);
    const fault = between(150, length - 200);
    return {
      name: `B${i + 1}`,
      count: random() < 0.2 ? 2 : 1,
      length,
      width: between(70, 150),
      thickness: between(28, 50),
      endLeft: between(20, 60),
      endRight: between(20, 60),
      faults: random() < 0.4 ? [[fault, fault + between(20, 70)]] : [],
    };
  });
}

const survey = (boards: readonly SurveyBoard[]) =>
  boards.map((b) => ({
    name: b.name,
    count: b.count,
    length: `${b.length} mm`,
    width: `${b.width} mm`,
    thickness: `${b.thickness} mm`,
    endLeft: `${b.endLeft} mm`,
    endRight: `${b.endRight} mm`,
    ...(b.faults.length > 0 ? { faultsAt: `${b.faults.map(([f, t]) => `${f}-${t}`).join('; ')} mm` } : {}),
  }));

const asked = {
  topLength: '1800 mm',
  spare: '40 mm',
  kerf: '3 mm',
  plane: '1 mm',
  jointing: '3 mm',
  slabJointing: '2 mm',
  widestSlab: '300 mm',
  leastRow: '20 mm',
  leastPiece: '250 mm',
  stagger: '150 mm',
  maxJoints: 3,
  rounds: 1500,
  curves: false,
  whatIfs: false,
} as const;

async function plan(boards: readonly SurveyBoard[], more: object) {
  const r = await topFromPile({ ...asked, width: '5 m', boards: survey(boards), ...more });
  return {
    r,
    checked: {
      lay: r.lay,
      thickness: r.thickness.in('mm'),
      width: r.foundWidth.in('mm'),
      rows: r.rows.map((row) => ({ width: row.width.in('mm'), pieces: row.pieces, slab: row.slab })),
      cuts: r.cuts.map(({ board, cuts }) => ({ board, cuts })),
    },
  };
}

describe('a plan of topFromPile', () => {
  it.each([
    ['flat', 12, 1],
    ['flat', 40, 2],
    ['on edge', 20, 3],
    ['flat', 25, 4],
    ['on edge', 35, 5],
  ] as const)(
    'laid %s from %i boards keeps every rule, by a checker of its own (seed %i)',
    async (lay, count, seed) => {
      const boards = pile(count, seed);
      const { r, checked } = await plan(boards, { lay, thickness: '30 mm' });
      expect(faultsOf(boards, rules, checked)).toEqual([]);
      expect(r.rowCount).toBeGreaterThan(0);
      expect(r.foundWidth.in('mm')).toBeLessThanOrEqual(r.widthBound.in('mm') + 1e-6);
    },
  );

  it('comes within 3 % of the bound on 40 boards, slabs and all', async () => {
    const { r } = await plan(pile(40, 9), { lay: 'flat', thickness: '28 mm', rounds: 3000 });
    expect(r.foundWidth.value / r.widthBound.value).toBeGreaterThan(0.97);
  });
});

describe('the checker', () => {
  it('notices a piece moved, a row widened and a board used twice', async () => {
    const boards = pile(12, 1);
    const { checked } = await plan(boards, { lay: 'flat', thickness: '30 mm' });
    const [first, ...rest] = checked.cuts;
    if (!first) throw new Error('no cut');
    const moved = first.cuts.replace(/ ([\d.]+) to /, ' 0 to ');
    expect(faultsOf(boards, rules, { ...checked, cuts: [{ ...first, cuts: moved }, ...rest] })).not.toEqual(
      [],
    );
    const wide = checked.rows.map((row, i) => (i === 0 ? { ...row, width: row.width + 5 } : row));
    expect(faultsOf(boards, rules, { ...checked, rows: wide })).toContain(
      'row 1: wider than its narrowest piece',
    );
    expect(faultsOf(boards, rules, { ...checked, cuts: [first, first, ...rest] })).toContain(
      `${first.board} is cut twice`,
    );
  });
});

describe('is the pile enough', () => {
  const board = (length: string, width: string, count: number) => ({
    length,
    width,
    thickness: '40 mm',
    count,
  });
  // Worked by hand: six boards 100 wide and as long as the row give six rows of 97, less 2 for each of two slabs of 3.
  const six = { ...asked, boards: [board('1840 mm', '100 mm', 6)], lay: 'flat', thickness: '38 mm' } as const;

  it('says enough with the width to spare', async () => {
    const r = await topFromPile({ ...six, width: '570 mm' });
    expect(r.verdict).toBe('enough');
    expect(r.foundWidth.in('mm')).toBeCloseTo(6 * 97 - 2 * 2, 6);
    expect(r.rows.every((row) => row.joints === 'none')).toBe(true);
    expect(r.sentence).toMatch(/^Enough: a top 38 mm thick and 578 mm wide, 8 mm to spare/);
  });
  it('says not enough where no lay-up can give the width, and what is missing', async () => {
    const r = await topFromPile({ ...six, width: '700 mm' });
    expect(r.verdict).toBe('not enough');
    expect(r.sentence).toMatch(
      /^Not enough: at 38 mm no lay-up of this pile is wider than 578 mm; 700 mm is asked\. About \d/,
    );
  });
  it('finds the greatest thickness: two millimetres of planing off the thinnest board that is needed', async () => {
    const boards = [
      { length: '1840 mm', width: '100 mm', thickness: '45 mm', count: 3 },
      { length: '1840 mm', width: '100 mm', thickness: '38 mm', count: 3 },
      { length: '1840 mm', width: '100 mm', thickness: '30 mm', count: 3 },
    ];
    const r = await topFromPile({ ...asked, boards, width: '500 mm', lay: 'flat' });
    expect(r.thickness.in('mm')).toBeCloseTo(36, 6);
    expect(r.verdict).toBe('enough');
    expect(r.leftOver.filter((l) => l.whole).reduce((n, l) => n + l.count, 0)).toBe(3);
  });
  it('takes a row without a count as one board', async () => {
    const r = await topFromPile({
      ...six,
      boards: [{ length: '1840 mm', width: '100 mm', thickness: '40 mm' }],
      width: '570 mm',
    });
    expect(r.rowCount).toBe(1);
  });
  it('names boards that give nothing with the reason', async () => {
    const boards = [
      board('1840 mm', '100 mm', 6),
      { name: 'thin', length: '2 m', width: '90 mm', thickness: '20 mm' },
      { name: 'stub', length: '200 mm', width: '90 mm', thickness: '45 mm' },
    ];
    const r = await topFromPile({ ...six, boards, width: '570 mm' });
    expect(r.useless?.map((u) => [u.board, u.reason])).toEqual([
      ['thin', '20 mm once flat, 40 mm needed'],
      ['stub', 'longest clear length 200 mm, 250 mm needed'],
    ]);
  });
});

describe('rules that cannot be met', () => {
  const boards = [{ length: '2 m', width: '100 mm', thickness: '40 mm' }];
  const refused = async (more: object): Promise<string> => {
    try {
      await topFromPile({ ...asked, boards, width: '500 mm', ...more });
    } catch (error) {
      if (error instanceof InputError) return error.message;
      throw error;
    }
    return 'answered';
  };
  it.each([
    [{ stagger: '1 m' }, /stagger: got 1000 mm, more than half/],
    [
      { boards: [{ ...boards[0], faultsAt: '300-200' }] },
      /boards\[1\]\.faultsAt: got "300-200" on a board of 2000 mm; takes a place that begins before it ends/,
    ],
    [
      { boards: [{ ...boards[0], faultsAt: '300-400 mm', faultLength: '20 mm' }] },
      /faultLength: given together with faultsAt/,
    ],
    [{ boards: [{ ...boards[0], endLoss: '3 m' }] }, /endLoss: got 3000 mm docked/],
  ] as const)('%j', async (more, message) => {
    expect(await refused(more)).toMatch(message);
  });
});

it('stops when asked to, with the best it has, and gives the same plan for the same seed', async () => {
  const boards = survey(pile(60, 11));
  const control = new AbortController();
  const started = performance.now();
  const run = topFromPile(
    { ...asked, boards, width: '5 m', lay: 'flat', thickness: '28 mm', rounds: 100_000_000 } as never,
    {
      signal: control.signal,
      onProgress: () => control.abort(),
    },
  );
  const r = await run;
  expect(performance.now() - started).toBeLessThan(20_000);
  expect(r.rowCount).toBeGreaterThan(0);
  const once = await topFromPile({
    ...asked,
    boards,
    width: '300 mm',
    lay: 'flat',
    thickness: '28 mm',
  } as never);
  const again = await topFromPile({
    ...asked,
    boards,
    width: '300 mm',
    lay: 'flat',
    thickness: '28 mm',
  } as never);
  expect(again.rows).toEqual(once.rows);
});

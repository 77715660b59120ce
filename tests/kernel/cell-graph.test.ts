import { tmpdir } from 'node:os';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CellGraph } from '../../src/kernel/execution/cell-graph.js';
import { KernelSession } from '../../src/kernel/session.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

describe('the graph of cells', () => {
  it('marks users of a changed name, and their users, in the order they ran', () => {
    const graph = new CellGraph();
    graph.record('a', { sets: ['width'], uses: [] });
    graph.record('b', { sets: ['area'], uses: ['width'] });
    graph.record('c', { sets: [], uses: ['area'] });
    graph.record('d', { sets: ['other'], uses: [] });
    expect(graph.stale()).toEqual([]);
    graph.record('a', { sets: ['width'], uses: [] });
    expect(graph.stale()).toEqual(['b', 'c']);
    expect(graph.usersOf('a')).toEqual(['b']);
    graph.record('b', { sets: ['area'], uses: ['width'] });
    expect(graph.stale()).toEqual(['c']);
    graph.record('c', { sets: [], uses: ['area'] });
    expect(graph.stale()).toEqual([]);
  });
  it('a cell that changes a name it reads is not stale by its own change, but others are', () => {
    const graph = new CellGraph();
    graph.record('a', { sets: ['n'], uses: [] });
    graph.record('b', { sets: ['n'], uses: ['n'] });
    expect(graph.stale()).toEqual([]);
    graph.record('c', { sets: [], uses: ['n'] });
    graph.record('b', { sets: ['n'], uses: ['n'] });
    expect(graph.stale()).toEqual(['c']);
  });
  it('counts names set by a cell without an id, and forgets a removed cell', () => {
    const graph = new CellGraph();
    graph.record('a', { sets: [], uses: ['x'] });
    graph.record(undefined, { sets: ['x'], uses: [] });
    expect(graph.report()['a']).toEqual({ sets: [], uses: ['x'], usedBy: [], stale: true, usesDeleted: [] });
    graph.remove('a');
    expect(graph.stale()).toEqual([]);
  });
  it('says which names of a deleted cell others use, until another cell sets them', () => {
    const graph = new CellGraph();
    graph.record('a', { sets: ['width', 'depth', 'colour'], uses: [] });
    graph.record('b', { sets: [], uses: ['width'] });
    graph.record('c', { sets: [], uses: ['depth', 'width'] });
    expect(graph.remove('a')).toEqual({ id: 'a', names: ['width', 'depth'], usedBy: ['b', 'c'] });
    expect(graph.report()['c']).toMatchObject({ usesDeleted: ['depth', 'width'], stale: false });
    graph.record('d', { sets: ['width'], uses: [] });
    expect(graph.report()['b']).toMatchObject({ usesDeleted: [], stale: true });
    expect(graph.report()['c']!.usesDeleted).toEqual(['depth']);
    // Put back and run again.
    graph.record('a', { sets: ['width', 'depth'], uses: [] });
    expect(graph.report()['c']!.usesDeleted).toEqual([]);
    expect(graph.remove('b')).toEqual({ id: 'b', names: [], usedBy: [] });
  });
  it('running all stale cells in notebook order leaves none, where each name is set by one cell', () => {
    // Cell i sets name i and uses names of earlier cells.
    const books = fc.array(fc.array(fc.nat(11)), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(books, fc.array(fc.nat(11), { maxLength: 20 }), (uses, again) => {
        const graph = new CellGraph();
        const work = (i: number): void =>
          graph.record(`${i}`, { sets: [`n${i}`], uses: uses[i]!.filter((j) => j < i).map((j) => `n${j}`) });
        uses.forEach((_, i) => work(i));
        for (const i of again) if (i < uses.length) work(i);
        const stale = graph
          .stale()
          .map(Number)
          .sort((a, b) => a - b);
        for (const i of stale) work(i);
        expect(graph.stale()).toEqual([]);
      }),
    );
  });
});

describe('the cells of a session', () => {
  let session: KernelSession;
  beforeAll(() => (session = new KernelSession({ cwd: tmpdir() })));
  afterAll(() => session.dispose());
  const run = async (cellId: string, code: string): Promise<void> => {
    const { error } = await session.run(code, () => undefined, { cellId });
    expect(error?.evalue).toBeUndefined();
  };

  it('are known by declarations, reads inside functions, assignments and loops', async () => {
    await run('1', 'let width = 600; const list: number[] = []');
    await run('2', 'const area = () => width * 2');
    await run('3', 'area()');
    await run('4', 'for (const x of [1]) list.push(x); { const width = 3; void width }');
    await run('5', "'unrelated'");
    expect(session.graph.report()['4']).toMatchObject({ uses: ['list'] });
    await run('1', 'let width = 700; const list: number[] = []');
    expect(session.graph.stale()).toEqual(['2', '3', '4']);
    await run('6', 'width += 50; ({ width } = { width: width + 1 })');
    expect(session.graph.report()['6']).toMatchObject({ sets: ['width'], uses: ['width'], stale: false });
    await run('2', 'const area = () => width * 2');
    await run('3', 'area()');
    expect(session.graph.stale()).toEqual(['4']);
    expect(session.graph.usersOf('2')).toEqual(['3']);
  });
});

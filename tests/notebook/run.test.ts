import { describe, expect, it } from 'vitest';
import type { CellSession, NbOutput } from '../../src/kernel/session.js';
import { notebookText, parseNotebook } from '../../src/notebook/format/notebook-json.js';
import type { CodeCell, Notebook } from '../../src/notebook/format/notebook.js';
import { OutputCollector } from '../../src/notebook/run/outputs.js';
import { RunError, runNotebook, type RunProgress } from '../../src/notebook/run/run-notebook.js';
import { schemaFaults } from './nbformat-schema.js';

function notebookOf(...sources: (string | { source: string; tags: string[] })[]): Notebook {
  return {
    nbformat: 4,
    nbformat_minor: 5,
    metadata: {},
    cells: [
      { cell_type: 'markdown', id: 'words', metadata: {}, source: '# Words' },
      ...sources.map((s, i) => ({
        cell_type: 'code' as const,
        id: `code-${i}`,
        metadata: { ...(typeof s === 'string' ? {} : { tags: s.tags }) },
        source: typeof s === 'string' ? s : s.source,
        execution_count: 77,
        outputs: [{ output_type: 'stream' as const, name: 'stdout', text: 'from an earlier run' }],
      })),
    ],
  };
}
const code = (nb: Notebook, i: number): CodeCell => nb.cells[i] as CodeCell;

describe('in the kernel’s own session', () => {
  it(
    'runs from top to bottom; cells see each other; outputs are those of this run',
    { timeout: 60_000 },
    async () => {
      const seen: RunProgress[] = [];
      const nb = await runNotebook(
        notebookOf('const width = 640;', 'console.log("w"); console.log("idth")\nwidth * 2'),
        { onProgress: (p) => seen.push(p) },
      );
      expect(code(nb, 1).outputs).toEqual([]);
      expect(code(nb, 2).outputs).toMatchObject([
        { output_type: 'stream', name: 'stdout', text: 'w\nidth\n' },
        { output_type: 'execute_result', data: { 'text/plain': '1280' } },
      ]);
      expect(seen.map((p) => [p.cell, p.codeCell, p.codeCells, p.state])).toEqual([
        [2, 1, 2, 'running'],
        [2, 1, 2, 'done'],
        [3, 2, 2, 'running'],
        [3, 2, 2, 'done'],
      ]);
      expect(schemaFaults(JSON.parse(notebookText(nb)))).toEqual([]);
    },
  );
  it(
    'stops at the cell that fails and names cell and line; what ran is kept, what follows is not run',
    { timeout: 60_000 },
    async () => {
      const error: unknown = await runNotebook(
        notebookOf(
          'const a = 1;',
          'const b = a;\n\nthrow new RangeError("no such board")',
          'console.log("never")',
        ),
        { name: 'shelf.ipynb' },
      ).catch((e: unknown) => e);
      expect(error).toBeInstanceOf(RunError);
      const e = error as RunError;
      expect(e.message).toBe('shelf.ipynb, cell 3, line 3: RangeError: no such board');
      expect(e).toMatchObject({ cell: 3, line: 3, interrupted: false });
      expect(code(e.notebook, 2).outputs).toMatchObject([{ output_type: 'error', ename: 'RangeError' }]);
      expect(code(e.notebook, 3).outputs).toEqual([]);
      expect(schemaFaults(JSON.parse(notebookText(e.notebook)))).toEqual([]);
    },
  );
  it('a type error stops before anything of the cell has run', { timeout: 60_000 }, async () => {
    const error = (await runNotebook(
      notebookOf('console.log("shown?");\nconst n: number = "text";'),
      {},
    ).catch((e: unknown) => e)) as RunError;
    expect(error).toMatchObject({ cell: 2, line: 2 });
    expect(code(error.notebook, 1).outputs.filter((o) => o.output_type === 'stream')).toEqual([]);
  });
  it('a cell tagged raises-exception may fail', { timeout: 60_000 }, async () => {
    const nb = await runNotebook(
      notebookOf({ source: 'throw new Error("as shown")', tags: ['raises-exception'] }, '1 + 1'),
    );
    expect(code(nb, 1).outputs[0]).toMatchObject({ output_type: 'error', evalue: 'as shown' });
    expect(code(nb, 2).outputs[0]).toMatchObject({ data: { 'text/plain': '2' } });
  });
  it('is interrupted between awaits, and says where', { timeout: 60_000 }, async () => {
    const stop = new AbortController();
    const run = runNotebook(notebookOf('1', 'await new Promise((done) => setTimeout(done, 30_000))', '3'), {
      signal: stop.signal,
      onProgress: (p) => p.cell === 3 && p.state === 'running' && setTimeout(() => stop.abort(), 200),
    });
    const error = (await run.catch((e: unknown) => e)) as RunError;
    expect(error).toBeInstanceOf(RunError);
    expect(error.message).toBe('notebook, cell 3: interrupted; the cells before it are done');
    expect(error).toMatchObject({ cell: 3, interrupted: true });
    expect(code(error.notebook, 1).outputs[0]).toMatchObject({ data: { 'text/plain': '1' } });
  });
});

describe('what is gathered', () => {
  function gathered(...steps: [cell: number, output: NbOutput][]): Record<number, unknown> {
    const cells: Record<number, unknown> = {};
    const collector = new OutputCollector((cell, outputs) => (cells[cell] = outputs));
    for (const [cell, output] of steps) collector.take(cell, output);
    for (const cell of new Set(steps.map((s) => s[0]))) collector.endCell(cell);
    return cells;
  }
  const show = (text: string, id?: string): NbOutput => ({
    output_type: 'display_data',
    data: { 'text/plain': text },
    metadata: {},
    ...(id ? { transient: { display_id: id } } : {}),
  });
  const print = (text: string, name: 'stdout' | 'stderr' = 'stdout'): NbOutput => ({
    output_type: 'stream',
    name,
    text,
  });

  it('joins prints of one stream that follow each other, and no others', () => {
    expect(gathered([0, print('a')], [0, print('b')], [0, print('c', 'stderr')], [0, print('d')])).toEqual({
      0: [
        { output_type: 'stream', name: 'stdout', text: 'ab' },
        { output_type: 'stream', name: 'stderr', text: 'c' },
        { output_type: 'stream', name: 'stdout', text: 'd' },
      ],
    });
  });
  it('updates a display where it stands, in an earlier cell too, and keeps no transient ids', () => {
    const cells = gathered(
      [0, show('10 %', 'bar')],
      [0, print('x')],
      [
        1,
        {
          output_type: 'update_display_data',
          data: { 'text/plain': '90 %' },
          metadata: {},
          transient: { display_id: 'bar' },
        },
      ],
    );
    expect(cells).toEqual({
      0: [
        { output_type: 'display_data', data: { 'text/plain': '90 %' }, metadata: {} },
        { output_type: 'stream', name: 'stdout', text: 'x' },
      ],
    });
  });
  it('clears at once, or when the next output comes', () => {
    expect(gathered([0, print('a')], [0, { output_type: 'clear_output', wait: false }])).toEqual({ 0: [] });
    expect(
      gathered([0, print('a')], [0, { output_type: 'clear_output', wait: true }], [0, print('b')]),
    ).toEqual({ 0: [{ output_type: 'stream', name: 'stdout', text: 'b' }] });
  });
});

it('refuses a notebook in another language by name', async () => {
  const nb = parseNotebook(
    JSON.stringify({
      nbformat: 4,
      nbformat_minor: 5,
      metadata: { language_info: { name: 'python' } },
      cells: [],
    }),
  );
  await expect(runNotebook(nb, { name: 'p.ipynb' })).rejects.toThrow(
    'p.ipynb: is written in python; takes a notebook in TypeScript or JavaScript',
  );
});

it('passes on what a session says even when it gives no line', async () => {
  const session: CellSession = {
    run: () =>
      Promise.resolve({
        status: 'error',
        executionCount: 1,
        error: { ename: 'Oops', evalue: 'x', traceback: [] },
      }),
    interrupt: () => undefined,
    dispose: () => Promise.resolve(),
  };
  await expect(runNotebook(notebookOf('a'), { session, name: 'n' })).rejects.toThrow('n, cell 2: Oops: x');
});

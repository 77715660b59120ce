// A cell's outputs: complete and in order before the cell is over, whatever has to be awaited to make them.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CellOutput } from '../../src/kernel/display/cell-output.js';
import type { NbOutput } from '../../src/kernel/session.js';
import { openNotebook, type Ran } from './sample-cells.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'outputs-'));
let run: (code: string) => Promise<Ran>;
let book: Awaited<ReturnType<typeof openNotebook>>;
beforeAll(async () => {
  book = await openNotebook(folder);
  run = book.run;
});
afterAll(async () => {
  await book.session.dispose();
  rmSync(folder, { recursive: true });
});

const dataOf = (output: NbOutput): Record<string, unknown> => ('data' in output ? output.data : {});
const texts = (ran: Ran): unknown[] =>
  ran.outputs.map((o) => (o.output_type === 'stream' ? o.text : dataOf(o)['text/plain']));

/** A value whose bundle takes a while, the longer the smaller `n`. */
const slow = `const slow = (n: number) => ({ [Symbol.for('Jupyter.display')]: async () => {
  await new Promise((done) => setTimeout(done, 60 / n)); return { 'text/plain': 'slow ' + n } } });`;

describe('outputs that are awaited', () => {
  it('keep their place among others and are sent before the cell is over', async () => {
    const ran = await run(
      `${slow} display(slow(1)); console.log('a'); display(slow(9)); display(2); slow(3)`,
    );
    expect(texts(ran)).toEqual(['slow 1', 'a\n', 'slow 9', '2', 'slow 3']);
    expect(ran.outputs.at(-1)!.output_type).toBe('execute_result');
  });
  it('come before the error of a cell that fails', async () => {
    const ran = await run("display(slow(2)); console.log('b'); throw new Error('no glue')");
    expect(ran.outputs.map((o) => o.output_type)).toEqual(['display_data', 'stream', 'error']);
  });
  it('are all there after a loop of 200 displays with awaits between', async () => {
    const ran = await run(
      'for (let i = 1; i <= 200; i++) { display(slow(i)); if (i % 10 === 0) await null; }',
    );
    expect(texts(ran)).toEqual(Array.from({ length: 200 }, (_, i) => `slow ${i + 1}`));
  });
  it('are not left to the next cell', async () => {
    const first = run('display(slow(1))');
    const second = run("'next'");
    expect(texts(await first)).toEqual(['slow 1']);
    expect(texts(await second)).toEqual(["'next'"]);
  });
  it('do not hold up an interrupt', async () => {
    const cell = run("display({ [Symbol.for('Jupyter.display')]: () => new Promise(() => {}) }); display(5)");
    setTimeout(() => book.session.interrupt(), 200);
    const ran = await cell;
    expect(ran.error?.ename).toBe('Interrupted');
    expect(texts(ran)[0]).toBe('5');
    expect((await run('1 + 1')).result).toBe('2');
  });
  it('say so when they cannot be made', async () => {
    const ran = await run(
      "display({ [Symbol.for('Jupyter.display')]: async () => { throw new Error('dry') } }); display({ [Symbol.for('Jupyter.display')]: () => { throw new Error('wet') } })",
    );
    expect(texts(ran)).toEqual(['cannot be shown: dry', 'cannot be shown: wet']);
  });
  it('leave nothing waiting once abandoned', () => {
    const sent: NbOutput[] = [];
    const output = new CellOutput((o) => sent.push(o));
    output.pushPending(new Promise(() => undefined));
    output.push({ output_type: 'clear_output', wait: false });
    let over = false;
    output.whenSent(() => (over = true));
    expect([sent.length, over]).toEqual([0, false]);
    output.abandonPending();
    expect([sent.length, over]).toEqual([1, false]);
    output.whenSent(() => (over = true));
    expect(over).toBe(true);
  });
});

describe('what a value shows', () => {
  it('a cell that ends in display(..) shows the value once and no handle', async () => {
    const ran = await run('display(3)');
    expect(texts(ran)).toEqual(['3']);
    expect(
      texts(await run('const handle = display(1, { display_id: "d" }); handle.update(2); handle')),
    ).toEqual(['1', '2']);
  });
  it('html, svg and md are what they say; inserted text is escaped', async () => {
    const shown = dataOf((await run("html`<b>${'<i>'}</b>${[html`<u>1</u>`, 2]}`")).outputs[0]!);
    expect(shown['text/html']).toBe('<b>&lt;i&gt;</b><u>1</u>2');
    expect(dataOf((await run('md`**${1 + 1}**`')).outputs[0]!)['text/markdown']).toBe('**2**');
    expect(dataOf((await run('svg`<svg><text>${"a & b"}</text></svg>`')).outputs[0]!)['image/svg+xml']).toBe(
      '<svg><text>a &amp; b</text></svg>',
    );
  });
  it('a plain object with the $schema of Vega-Lite is a chart', async () => {
    const ran = await run(
      "({ $schema: 'https://vega.github.io/schema/vega-lite/v5.json', data: { values: [{ a: 1, b: 2 }] }, mark: 'bar', encoding: { x: { field: 'a', type: 'nominal' }, y: { field: 'b', type: 'quantitative' } } })",
    );
    const data = dataOf(ran.outputs[0]!);
    expect(data['image/svg+xml']).toContain('<svg');
    expect(data['application/vnd.vegalite.v5+json']).toMatchObject({ mark: 'bar' });
    expect((await run("({ $schema: 'https://json-schema.org/draft/2020-12/schema' })")).result).toContain(
      '$schema',
    );
  });
  it('_ is the last value that was shown, until a cell names something else so', async () => {
    await run('6 * 7');
    await run('void 0');
    expect((await run('_ + 1')).result).toBe('43');
    await run("display('x')");
    expect((await run('_')).result).toBe('43');
  });
  it('tslab displays into the cell, typed, and updates in place', async () => {
    const ran = await run(
      "import * as tslab from 'tslab'; tslab.display.html('<b>hi</b>'); const d = tslab.newDisplay(); d.text('one'); d.text('two')",
    );
    expect(ran.error).toBeUndefined();
    expect(ran.outputs.map((o) => o.output_type)).toEqual([
      'display_data',
      'display_data',
      'update_display_data',
    ]);
    expect(dataOf(ran.outputs[0]!)).toEqual({ 'text/html': '<b>hi</b>' });
    expect((await run('tslab.display.html(5)')).error!.ename).toBe('TypeScriptError');
  });
  it("a recipe's bare name shows its card", async () => {
    const data = dataOf((await run('movementAcross')).outputs[0]!);
    expect(data['text/markdown']).toContain('- `width`');
    expect(data['text/plain']).toContain('Example');
  });
});

import { mkdtemp, readFile, readdir, rm, symlink, writeFile, lstat, chmod, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { kernelMetadata } from '../../src/kernel/kernel-identity.js';
import { readNotebook, writeNotebook } from '../../src/notebook/format/notebook-file.js';
import { notebookText, parseNotebook } from '../../src/notebook/format/notebook-json.js';
import { NotebookError, type Fault } from '../../src/notebook/format/notebook.js';
import { schemaFaults } from './nbformat-schema.js';
import { full, older } from './samples.js';

let folder: string;
beforeAll(async () => (folder = await mkdtemp(join(tmpdir(), 'reckoner-file-'))));
afterAll(() => rm(folder, { recursive: true }));

const text = (value: unknown): string => JSON.stringify(value, null, 1);
/** Puts `value` at a path such as `cells[1].outputs[0].name`. */
function setAt(target: object, path: string, value: unknown): void {
  const names = path.split(/[.[\]]+/).filter(Boolean);
  const last = names.pop() ?? '';
  let spot = target as Record<string, unknown>;
  for (const name of names) spot = spot[name] as Record<string, unknown>;
  spot[last] = value;
}

function faultOf(source: string): Fault & { message: string } {
  try {
    parseNotebook(source, 'shelf.ipynb');
  } catch (error) {
    if (error instanceof NotebookError) return { ...error.fault, message: error.message };
    throw error;
  }
  throw new Error('was read without complaint');
}

describe('reading', () => {
  it('joins lines, keeps ids, metadata, attachments and outputs', () => {
    const nb = parseNotebook(text(full));
    expect(nb.cells.map((c) => c.source)).toEqual([
      '# A shelf\n\nHow wide?',
      'const width = 300;\nwidth * 2',
      '',
      'as it is',
    ]);
    expect(nb.cells.map((c) => c.id)).toEqual(['top-1', 'b_2', 'c3', 'd4']);
    expect(nb.metadata).toEqual(full.metadata);
    const code = nb.cells[1];
    expect(code?.cell_type === 'code' && code.outputs[0]).toEqual({
      output_type: 'stream',
      name: 'stdout',
      text: 'one\ntwo\n',
    });
    expect(code?.cell_type === 'code' && code.outputs[1]).toMatchObject({
      data: { 'text/plain': '600', 'application/json': { a: [1, null] } },
    });
  });
  it.each([0, 1, 2, 3, 4])(
    'reads format 4.%d, which has no cell ids, and numbers the cells the same each time',
    (minor) => {
      const nb = parseNotebook(text(older(minor)));
      expect(nb.nbformat_minor).toBe(5);
      expect(new Set(nb.cells.map((c) => c.id)).size).toBe(4);
      expect(parseNotebook(text(older(minor)))).toEqual(nb);
    },
  );
  it('reads a file with a byte order mark and CRLF', () => {
    expect(parseNotebook(`\uFEFF${text(full).replaceAll('\n', '\r\n')}`).cells).toHaveLength(4);
  });
});

describe('writing', () => {
  it('is valid by the schema of nbformat 4.5, from every minor version', () => {
    expect(schemaFaults(full)).toEqual([]); // the sample itself, so that the schema is seen to work
    expect(schemaFaults({ ...full, nbformat_minor: 4 })).not.toEqual([]);
    for (const source of [full, ...[0, 1, 2, 3, 4].map(older)])
      expect(schemaFaults(JSON.parse(notebookText(parseNotebook(text(source)))))).toEqual([]);
  });
  it('sorts the keys at every depth, as Jupyter does, and keeps text as lines', () => {
    const spec = { mark: 'bar', data: { values: [{ b: 1, a: 2 }] } };
    const cell = {
      source: 'a\nb',
      outputs: [
        {
          output_type: 'display_data',
          metadata: { b: 1, a: 1 },
          data: { 'text/plain': 'x\ny', 'application/vnd.vegalite.v5+json': spec, 'image/png': 'aa\nbb' },
        },
      ],
      metadata: { tags: [], collapsed: true },
      id: 'one',
      execution_count: null,
      cell_type: 'code',
    };
    const file = {
      nbformat_minor: 5,
      nbformat: 4,
      metadata: { title: 't', kernelspec: { name: 'n', display_name: 'd' } },
      cells: [cell],
    };
    expect(notebookText(parseNotebook(text(file)))).toBe(
      `${text({
        cells: [
          {
            cell_type: 'code',
            execution_count: null,
            id: 'one',
            metadata: { collapsed: true, tags: [] },
            outputs: [
              {
                data: {
                  'application/vnd.vegalite.v5+json': { data: { values: [{ a: 2, b: 1 }] }, mark: 'bar' },
                  'image/png': 'aa\nbb',
                  'text/plain': ['x\n', 'y'],
                },
                metadata: { a: 1, b: 1 },
                output_type: 'display_data',
              },
            ],
            source: ['a\n', 'b'],
          },
        ],
        metadata: { kernelspec: { display_name: 'd', name: 'n' }, title: 't' },
        nbformat: 4,
        nbformat_minor: 5,
      })}\n`,
    );
  });
  it('changes no line of a notebook that comes with the package, whose kernel is this one', async () => {
    const shipped = fileURLToPath(new URL('../../notebooks', import.meta.url));
    const names = (await readdir(shipped)).filter((name) => name.endsWith('.ipynb'));
    expect(names.length).toBeGreaterThan(10);
    for (const name of names) {
      const kept = await readFile(join(shipped, name), 'utf8');
      const notebook = parseNotebook(kept, name);
      expect(notebookText(notebook), name).toBe(kept);
      expect(notebook.metadata, name).toMatchObject(kernelMetadata);
    }
  });
  it('reads back as it was written', () => {
    const nb = parseNotebook(text(full));
    expect(parseNotebook(notebookText(nb))).toEqual(nb);
  });
  it('keeps a link a link and the mode of the file, and leaves no part behind', async () => {
    const real = join(folder, 'real.ipynb');
    const link = join(folder, 'link.ipynb');
    await writeFile(real, 'old');
    await chmod(real, 0o600);
    await symlink(real, link);
    await writeNotebook(link, parseNotebook(text(full)));
    expect((await lstat(link)).isSymbolicLink()).toBe(true);
    expect((await stat(real)).mode & 0o777).toBe(0o600);
    expect((await readNotebook(real)).cells).toHaveLength(4);
    expect((await readdir(folder)).filter((f) => f.endsWith('.part'))).toEqual([]);
  });
  it('writes nothing that could not be read again: the old file stays', async () => {
    const file = join(folder, 'kept.ipynb');
    await writeFile(file, 'old');
    const nb = parseNotebook(text(full));
    const twice = { ...nb, cells: [nb.cells[0], nb.cells[0]] } as typeof nb;
    await expect(writeNotebook(file, twice)).rejects.toThrow(
      'cells[1].id: "top-1" is the id of an earlier cell too',
    );
    expect(await readFile(file, 'utf8')).toBe('old');
  });
  it('says what to do when the folder is missing', async () => {
    await expect(writeNotebook(join(folder, 'no', 'x.ipynb'), parseNotebook(text(full)))).rejects.toThrow(
      'there is no such folder; make it first',
    );
    await expect(readNotebook(join(folder, 'none.ipynb'))).rejects.toThrow('there is no such file');
    await expect(readNotebook(folder)).rejects.toThrow('it is a folder');
  });
  it('two writers at once leave one whole notebook', async () => {
    const file = join(folder, 'both.ipynb');
    const nb = parseNotebook(text(full));
    await Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        writeNotebook(file, { ...nb, metadata: { title: `number ${i}` } }),
      ),
    );
    expect((await readNotebook(file)).cells).toHaveLength(4);
  });
});

describe('a broken file', () => {
  const lineOf = (needle: string): number =>
    text(full).slice(0, text(full).indexOf(needle)).split('\n').length;

  it('cut short: says so, with line and column of the end and the cell', () => {
    const cut = text(full).slice(0, text(full).indexOf('width * 2'));
    const fault = faultOf(cut);
    expect(fault).toMatchObject({ file: 'shelf.ipynb', cell: 2, line: cut.split('\n').length });
    expect(fault.message).toContain('cut short');
  });
  it('a missing comma: line and column', () => {
    const broken = text(full).replace('"execution_count": 1,', '"execution_count": 1');
    expect(faultOf(broken)).toMatchObject({ line: lineOf('"execution_count": 1,') + 1, cell: 2 });
  });
  it.each([
    ['cells[1].outputs[0].name', 2, 5, 'got 5; takes text'],
    ['cells[3].source', 4, { a: 1 }, 'takes text or a list of lines'],
    ['cells[2].cell_type', 3, 'heading', 'got "heading"; takes "code", "markdown" or "raw"'],
    ['cells[0].id', 1, 'has space', 'takes 1 to 64 letters'],
    ['cells[1].execution_count', 2, -1, 'takes a whole number from 0'],
    ['cells[1].prompt_number', 2, 1, 'is not a field here'],
    ['cells[0].metadata.tags', 1, ['a', 'a'], 'different words'],
    ['cells[2].outputs[1].traceback[0]', 3, null, 'takes text'],
  ] as const)(
    '%s wrong: names cell %d, the field, what it got and what it takes',
    (field, cell, value, label) => {
      const copy = structuredClone(full);
      setAt(copy, field, value);
      expect(schemaFaults(copy)).not.toEqual([]); // Jupyter's own schema agrees that this is wrong
      const fault = faultOf(text(copy));
      expect(fault).toMatchObject({ field, cell });
      expect(fault.line).toBeGreaterThan(1);
      expect(fault.message).toContain(label);
    },
  );
  it('a missing field points at the cell that lacks it', () => {
    const [first, { outputs: _gone, ...second }, ...rest] = structuredClone(full).cells as [
      object,
      { outputs: unknown },
    ];
    const copy = { ...full, cells: [first, second, ...rest] };
    expect(faultOf(text(copy))).toMatchObject({ field: 'cells[1].outputs', cell: 2 });
  });
  it.each([
    ['', 'is empty'],
    ['   \n', 'is empty'],
    ['null', 'got null; takes an object'],
    ['[]', 'takes an object'],
    ['{}', 'nbformat: got nothing; takes 4'],
    ['{"nbformat":3,"worksheets":[]}', 'nbformat 3; open the notebook in Jupyter and save it'],
    ['<html>', 'is not JSON'],
    ['['.repeat(100_000), 'nested more than 500 deep'],
  ])('%j', (source, label) => {
    expect(faultOf(source).message).toContain(label);
  });
  it('not text at all: says where', async () => {
    const file = join(folder, 'bytes.ipynb');
    await writeFile(file, Buffer.concat([Buffer.from('{\n "cells": '), Buffer.from([0xc3, 0x28])]));
    await expect(readNotebook(file)).rejects.toThrow(/line 2, column 11: a byte here is not UTF-8/);
    await writeFile(file, Buffer.from(`\uFEFF{}`, 'utf16le'));
    await expect(readNotebook(file)).rejects.toThrow('UTF-16');
  });
});

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { frameRows } from '../../src/explore/frame-rows.js';
import { frame } from '../../src/explore/frame.js';

let folder = '';
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'reckoner-frame-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function fileOf(content: string | Buffer): string {
  const file = join(folder, 'survey.csv');
  writeFileSync(file, content);
  return file;
}

describe('numbers of a CSV file in a frame', () => {
  it.each([
    ['semicolons', 'name;length\nr;2.400\ns;1.250\n', 2400],
    ['semicolons and decimal commas', 'name;length\nr;2.400,5\n', 2400.5],
    ['semicolons and a decimal comma', 'name;length\nr;2,4\n', 2.4],
    ['commas', 'name,length\nr,2.400\n', 2.4],
    ['a first line sep=', 'sep=;\nname;length\nr;2,4\n', 2.4],
    ['spaces between thousands', 'name;length\nr;2 400\n', 2400],
    ['a tab', 'name\tlength\nr\t2.5\n', 2.5],
  ])('are read as the file writes them: %s', (_name, text, wanted) => {
    expect(frameRows(fileOf(text)).rows[0]).toMatchObject({ name: 'r', length: wanted });
  });

  it('read otherwise than they stand there are told of in one line, also by frame', async () => {
    const file = fileOf('name;length\nr;2.400\n');
    expect(frameRows(file).note).toBe('2.400 read as 2400: thousands');
    const warned = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    expect((await frame(file)).values).toEqual([['r', 2400]]);
    expect(warned.mock.calls).toEqual([[`${file}: 2.400 read as 2400: thousands`]]);
    warned.mockRestore();
  });

  it('of which it stays open what they are, are refused with both readings', () => {
    expect(() => frameRows(fileOf('name\tlength\nr\t2.400\n'))).toThrow(/2\.4 or 2400/);
  });

  it('stay words where a column holds other words or dates, and marks in words are no evidence', () => {
    const { rows, note } = frameRows(fileOf('day,remark,length\n2026.11.30,"1,5 m of bark",2.4\n'));
    expect(rows).toEqual([{ day: '2026.11.30', remark: '1,5 m of bark', length: 2.4 }]);
    expect(note).toBeUndefined();
  });

  it('are read from UTF-16 too, and a spreadsheet is named as one', () => {
    const text = Buffer.from('\ufeffname;length\r\nr;2,4\r\n', 'utf16le');
    expect(frameRows(fileOf(text)).rows).toEqual([{ name: 'r', length: 2.4 }]);
    expect(() => frameRows(fileOf(Buffer.from('PK\u0003\u0004')))).toThrow(
      /zipped spreadsheet; open it and save the sheet as CSV/,
    );
  });
});

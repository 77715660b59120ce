import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { openNotebook, type Ran } from './sample-cells.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'cells-'));
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

/** Cells run in turn; the last one's result. */
async function last(...cells: string[]): Promise<string | undefined> {
  let ran: Ran | undefined;
  for (const cell of cells) {
    ran = await run(cell);
    expect(ran.status, `${cell}: ${ran.error?.evalue}`).toBe('ok');
  }
  return ran!.result;
}

describe('names are bound, not copied', () => {
  it('a function sees a variable that a later cell sets', async () => {
    expect(await last('let a = 18; const f = () => a * 2', 'a = 25; f()')).toBe('50');
  });
  it('a function sees a variable that a later cell declares anew, whether declared beside it or before it', async () => {
    expect(await last('let b1 = 1', 'const g = () => b1 + 1', 'let b1 = 10; g()')).toBe('11');
    expect(await last('let b2 = 1; const h = () => b2 + 1', 'let b2 = 10; h()')).toBe('11');
  });
  it('compound writes, destructuring writes and loop heads reach the variable', async () => {
    expect(await last('let n = 1, m = 2', 'n += 4; n++; [n, m] = [m, n]; n')).toBe('2');
    expect(await last('m')).toBe('6');
    expect(await last('let k = 0; const seen: number[] = []', 'for (k of [7, 8]) seen.push(k); k')).toBe('8');
    expect(await last('({ n, q: m } = { n: 3, q: 4 }); [n, m]')).toBe('[ 3, 4 ]');
    expect(await last('let short = 5', '({ short, other: { short } })')).toBe(
      '{ short: 5, other: { short: 5 } }',
    );
    expect(await last('({ short = 9 } = {} as { short?: number }); short')).toBe('9');
  });
  it('inner names shadow outer ones', async () => {
    expect(
      await last('const s = 1; const inner = (s: number) => s * 2', '{ const s = 5; inner(s) }; inner(4)'),
    ).toBe('8');
    expect(await last('function p(s = 3) { { let s = 4; void s } return s } [p(), s]')).toBe('[ 3, 1 ]');
  });
  it('functions call one another by their newest definition and keep their names', async () => {
    expect(
      await last(
        'function one() { return two() }\nfunction two() { return 2 }',
        'function two() { return 22 } one()',
      ),
    ).toBe('22');
    expect(
      await last(
        'const named = () => 1; class C {} const anon = class {}; [named.name, one.name, C.name, anon.name]',
      ),
    ).toBe("[ 'named', 'one', 'C', 'anon' ]");
  });
  it('a call is a plain call', async () => {
    expect(await last('function self(this: unknown) { return this === undefined } self()')).toBe('true');
  });
});

describe('all of the language', () => {
  it('patterns with defaults, rests, computed keys and holes', async () => {
    expect(
      await last(
        "const key = 'x'; const { [key]: px, y: [, py = 3, ...pr] = [0], ...po } = { x: 1, y: [9, undefined, 5], z: 6 } as { x: number; y?: (number | undefined)[]; z: number }",
        '[px, py, pr, po]',
      ),
    ).toBe('[ 1, 3, [ 5 ], { z: 6 } ]');
  });
  it('classes, private members, accessors, static blocks, inheritance across cells', async () => {
    expect(
      await last(
        'class Board { static made = 0; #l = 1; static { Board.made = 5 } constructor(readonly l: number) { Board.made++ } get twice() { return this.#l * this.l * 2 } static of(l: number) { return new Board(l) } }',
        'class Thick extends Board { override get twice() { return super.twice + 1 } }',
        '[Board.of(2).twice, new Thick(3).twice, Board.made]',
      ),
    ).toBe('[ 4, 7, 7 ]');
  });
  it('enums, const enums, namespaces, generics, abstract classes, satisfies, decorators', async () => {
    expect(
      await last(
        'enum Side { Left, Right = 5 }',
        'const enum Cut { Rip = 3 }',
        'namespace Bench { export const height = 850; export function half() { return height / 2 } }',
        '[Side[5], Cut.Rip, Bench.half()]',
      ),
    ).toBe("[ 'Right', 3, 425 ]");
    expect(
      await last('function first<T>(xs: T[]): T { return xs[0]! }', "first(['a', 'b']).toUpperCase()"),
    ).toBe("'A'");
    expect(
      await last(
        "function loud(value: (this: unknown) => string, _: ClassMethodDecoratorContext) { return function (this: unknown) { return value.call(this) + '!' } }\nclass Horn { @loud toot() { return 'toot' } }\nnew Horn().toot()",
      ),
    ).toBe("'toot!'");
    expect(await last('const conf = { a: 1 } satisfies Record<string, number>; conf.a')).toBe('1');
  });
  it('types, interfaces and aliases reach later cells, beside values of the same name', async () => {
    expect(
      await last(
        'interface Plank { l: number }',
        'type Planks = Plank[]',
        'const planks: Planks = [{ l: 2 }]; planks[0]!.l',
      ),
    ).toBe('2');
    expect(await last('const Unit = 3', 'type Unit = string', "const u: Unit = 'mm'; [u, Unit]")).toBe(
      "[ 'mm', 3 ]",
    );
    expect((await run('const wrong: Plank = { l: "x" }')).error!.ename).toBe('TypeScriptError');
  });
  it('var in blocks and loops, labels, switch, closures in loops, tagged templates, optional calls', async () => {
    expect(await last('for (var i = 0; i < 3; i++) { var inBlock = i }', '[i, inBlock]')).toBe('[ 3, 2 ]');
    expect(await last('for (var p1 in { a: 1 }) {} for (var [q1] of [[4]]) {}', '[p1, q1]')).toBe(
      "[ 'a', 4 ]",
    );
    expect(
      await last(
        'const fs: (() => number)[] = []; for (let j = 0; j < 3; j++) fs.push(() => j); fs.map((x) => x())',
      ),
    ).toBe('[ 0, 1, 2 ]');
    expect(
      await last(
        'const tag = (parts: TemplateStringsArray, ...v: number[]) => parts.raw.join("|") + v.join()',
        'tag`a${1}b`',
      ),
    ).toBe("'a|b1'");
    expect(await last('let maybe: (() => number) | undefined', 'maybe?.()')).toBe(undefined);
  });
  it('generators, async generators, for await, top-level await of both kinds', async () => {
    expect(
      await last(
        'async function* steps() { yield 1; await null; yield 2 }',
        'const got: number[] = []; for await (const s of steps()) got.push(s); got',
      ),
    ).toBe('[ 1, 2 ]');
    expect(await last('const both = await Promise.all([1, Promise.resolve(2)]); both')).toBe('[ 1, 2 ]');
    expect(await last('const lazy = async () => 5', 'lazy()')).toBe('5');
  });
  it('an object literal alone is an object, a block is a block', async () => {
    expect(await last('{ a: 1, b: [2] }')).toBe('{ a: 1, b: [ 2 ] }');
    expect(await last('{ const hidden = 4; console.log(hidden) }')).toBe(undefined);
  });
  it('export words are allowed and harmless', async () => {
    expect(
      await last('export const outward = 4; export function outFn() { return 5 }', '[outward, outFn()]'),
    ).toBe('[ 4, 5 ]');
    expect(await last('export default 7')).toBe(undefined);
  });
  it('comments, emptiness and Unicode names', async () => {
    expect(await last('// nothing')).toBe(undefined);
    expect(await last('')).toBe(undefined);
    expect(await last('const größe = 3; const $ = 1; const _ = 2', '[größe, $, _]')).toBe('[ 3, 1, 2 ]');
  });
});

describe('imports', () => {
  it("a recipe's schema has zod's own types once a cell uses it", async () => {
    // Before that the package's declarations see a stand-in, so that no start loads zod's.
    expect(await last("equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' }).moisture")).toMatch(
      /%/,
    );
    const read = await last(
      "const read = equilibriumMoisture.schema.safeParse({ humidity: '60 %' }); read.success",
    );
    expect(read).toBe('false');
    expect((await run('const issue: number = read.error!.issues[0]!.message')).error!.evalue).toContain(
      "Type 'string' is not assignable to type 'number'",
    );
    expect(
      await last("import * as z from 'zod/mini'; z.safeParse(equilibriumMoisture.schema, {}).success"),
    ).toBe('false');
  });
  it('named, default, namespace and side-effect imports; a later cell uses them', async () => {
    expect(
      await last(
        "import path, { join as j } from 'node:path'; import * as os from 'node:os'; import 'node:url'",
        "[j('a', 'b'), path.sep, typeof os.cpus]",
      ),
    ).toBe("[ 'a/b', '/', 'function' ]");
  });
  it('a type-only import loads nothing', async () => {
    expect(
      await last("import type { Stats } from 'node:fs'", 'const none: Stats | undefined = undefined; none'),
    ).toBe(undefined);
  });
  it('a package that comes only as ESM, a path inside a package, and a package in CommonJS', async () => {
    expect(await last("import { tex } from '@mdit/plugin-tex'; typeof tex")).toBe("'function'");
    expect(await last("import colours from 'highlight.js/lib/core'; colours.listLanguages()")).toBe('[]');
    expect(await last("import Papa from 'papaparse'; Papa.parse('a,b').data")).toBe("[ [ 'a', 'b' ] ]");
  });
  it('a file beside the notebook, JSON too, and an edited file anew', async () => {
    writeFileSync(join(folder, 'width.ts'), 'export const width: number = 600;');
    writeFileSync(join(folder, 'list.json'), '{"boards": 7}');
    expect(
      await last("import { width } from './width.ts'; import list from './list.json'; [width, list.boards]"),
    ).toBe('[ 600, 7 ]');
    expect((await run("import { nothing } from './width.ts'")).error!.evalue).toContain('nothing');
    expect((await run("import './absent.ts'")).status).toBe('error');
  });
});

describe('errors', () => {
  it('a type error names line and column and nothing runs', async () => {
    const ran = await run("console.log('ran')\nconst bad: number = 'x'");
    expect(ran).toMatchObject({
      status: 'error',
      text: '',
      error: { ename: 'TypeScriptError', line: 2, column: 7 },
    });
  });
  it('a syntax error names its place', async () => {
    expect((await run('let a = 1;\nlet = ;')).error).toMatchObject({ ename: 'SyntaxError', line: 2 });
  });
  it('strictness: an untyped parameter and a missing null check are refused', async () => {
    expect((await run('function loose(x) { return x }')).error!.evalue).toContain(
      "implicitly has an 'any' type",
    );
    expect((await run('const found = [1].find((x) => x > 1); found.toFixed()')).error!.evalue).toContain(
      "possibly 'undefined'",
    );
  });
  it('a runtime error has its place, after awaits and in earlier cells too', async () => {
    const ran = await run('type T = number\nconst z1: T = 1\n\nawait null\nnull!.x');
    expect(ran.error).toMatchObject({ line: 5 });
    await run(
      'const boom = (deep: number): never => {\n  if (deep > 0) return boom(deep - 1)\n  throw new TypeError("deep")\n}',
    );
    const second = await run('\n\nboom(2)');
    expect(second.error).toMatchObject({ ename: 'TypeError', evalue: 'deep', line: 3, column: 9 });
    expect(second.error!.traceback.join('\n')).toMatch(/line 3, column 1\b/);
  });
  it('names in messages are those that the cell uses', async () => {
    expect((await run('const notFn = 3 as unknown as () => void; notFn()')).error!.evalue).toBe(
      'notFn is not a function',
    );
    expect(
      (await run('const holder = { a: undefined as unknown as { b: number } }; holder.a.b')).error!.evalue,
    ).toContain("reading 'b'");
  });
  it('anything may be thrown', async () => {
    expect((await run("throw 'a string'")).error).toMatchObject({ ename: 'Thrown', evalue: "'a string'" });
    expect((await run('throw null')).error!.evalue).toBe('null');
    expect((await run('throw { message: "like an error", stack: "x" }')).error!.evalue).toBe('like an error');
    expect(
      (
        await run('throw Object.assign(new Error("outer", { cause: new Error("inner") }))')
      ).error!.traceback.join('\n'),
    ).toContain('caused by Error: inner');
  });
  it('a failing cell keeps the names it reached; others fall back', async () => {
    await run('const keep = "old"');
    await run(
      'const reached = 1; const { x: [deepName] } = { x: [2] }; throw new Error("x"); const keep = "new"; let lost = 1',
    );
    expect(await last('[reached, deepName, keep]')).toBe("[ 1, 2, 'old' ]");
    expect((await run('lost')).error!.evalue).toContain("Cannot find name 'lost'");
  });
  it('a name is not readable before its line', async () => {
    expect((await run('const peek = () => soon; peek(); const soon = 1')).error).toMatchObject({
      ename: 'ReferenceError',
      evalue: "Cannot access 'soon' before initialization",
    });
  });
  it('a stack overflow is an error like any other', async () => {
    expect((await run('const down = (): number => down() + 1; down()')).error!.ename).toBe('RangeError');
    expect(await last('1 + 1')).toBe('2');
  });
});

describe('outputs', () => {
  it('printed text keeps its order around displays', async () => {
    const { outputs } = await run("console.log('a'); display(1); console.error('b'); 2");
    expect(outputs.map((o) => o.output_type)).toEqual(['stream', 'display_data', 'stream', 'execute_result']);
  });
  it('the console formats and indents', async () => {
    expect(
      (
        await run(
          "console.log('%d boards', 3, { a: 1 }); console.group('g'); console.info('in'); console.groupEnd(); console.table([{ a: 1 }])",
        )
      ).text,
    ).toContain('3 boards { a: 1 }\ng\n  in\n');
  });
  it('a prompt fails in a run from start to end', async () => {
    expect((await run("prompt('x')")).error!.evalue).toContain('nobody can answer');
  });
  it('the console is given back when the cell ends', async () => {
    const before = globalThis.console;
    await run("console.log('x')");
    expect(globalThis.console).toBe(before);
  });
  it('counts cells and runs them in turn even if started at once', async () => {
    const first = run('await new Promise((r) => setTimeout(r, 20)); let order = 1');
    const second = run('order + 1');
    expect((await second).result).toBe('2');
    expect((await second).executionCount).toBe((await first).executionCount + 1);
  });
  it('an interrupt ends a waiting cell', async () => {
    const waiting = run('await new Promise(() => {})');
    setTimeout(() => book.session.interrupt(), 50);
    expect(await waiting).toMatchObject({ status: 'error', error: { ename: 'Interrupted' } });
    expect(await last('2 * 2')).toBe('4');
  });
});

describe('a long session', () => {
  it('stays right over several hundred cells and a renewed checker', async () => {
    await run('let total = 0; interface Row { v: number } const rows: Row[] = []; class Tally { n = 0 }');
    for (let i = 0; i < 300; i++)
      await run(`total += ${i}; rows.push({ v: ${i} }); const t${i % 7} = new Tally()`);
    expect(await last('[total, rows.length, t3.n]')).toBe('[ 44850, 300, 0 ]');
    expect((await run('rows.push({ w: 1 })')).status).toBe('error');
  }, 60_000);
});

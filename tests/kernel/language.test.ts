// What cells can use of today's TypeScript and ECMAScript, on every Node the project supports.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { missingModule } from '../../src/kernel/optional-packages.js';
import { openNotebook, type Ran } from './sample-cells.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'language-'));
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

async function result(code: string): Promise<string | undefined> {
  const ran = await run(code);
  expect(ran.error?.evalue, code).toBeUndefined();
  return ran.result;
}

describe('current language', () => {
  it('copying array methods, groupBy and withResolvers', async () => {
    expect(await result('[3, 1, 2].toSorted().toReversed().with(0, 9)')).toBe('[ 9, 2, 1 ]');
    expect(
      await result(
        "const cuts = [{ kind: 'rail', mm: 40 }, { kind: 'leg', mm: 60 }, { kind: 'rail', mm: 45 }]; Object.groupBy(cuts, (c) => c.kind).rail!.map((c) => c.mm)",
      ),
    ).toBe('[ 40, 45 ]');
    expect(await result('[...Map.groupBy([1, 2, 3], (n) => n % 2 === 0).get(false)!]')).toBe('[ 1, 3 ]');
    expect(
      await result('const { promise, resolve } = Promise.withResolvers<number>(); resolve(4); await promise'),
    ).toBe('4');
  });
  it('a filter narrows by the condition of its function', async () => {
    expect(
      await result('const some: number[] = [1, undefined, 2].filter((x) => x !== undefined); some'),
    ).toBe('[ 1, 2 ]');
  });
  it('using disposes when the cell ends, await using too; later cells keep the name', async () => {
    await result(
      'const log: string[] = []; class Clamp { open = true; constructor(readonly name: string) {} [Symbol.dispose]() { this.open = false; log.push("released " + this.name) } async [Symbol.asyncDispose]() { this[Symbol.dispose]() } }',
    );
    expect(await result('using first = new Clamp("one"); using second = new Clamp("two"); first.open')).toBe(
      'true',
    );
    expect(await result('[...log, first.open]')).toBe("[ 'released two', 'released one', false ]");
    expect(await result('await using third = new Clamp("three"); log.length')).toBe('2');
    expect(await result('log.at(-1)')).toBe("'released three'");
    expect(await result('{ using inner = new Clamp("inner"); void inner } log.at(-1)')).toBe(
      "'released inner'",
    );
  });
  it('import attributes, bare and prefixed Node modules', async () => {
    writeFileSync(join(folder, 'sizes.json'), '{ "depth": 640 }');
    expect(await result("import sizes from './sizes.json' with { type: 'json' }; sizes.depth")).toBe('640');
    expect(
      await result("import fs from 'fs'; import { join } from 'path'; fs.existsSync(join('/', 'none'))"),
    ).toBe('false');
    expect(await result("import * as os from 'node:os'; typeof os.EOL")).toBe("'string'");
    expect((await run("import fs2 from 'fs'; fs2.writeFileSync(true)")).error!.ename).toBe('TypeScriptError');
  });
  it('what a cell imported keeps its types when later cells import more', async () => {
    await result("import { basename } from 'node:path'; basename('/a/b')");
    await result("import { z } from 'zod'; typeof z");
    expect((await run('basename(5)')).error!.evalue).toContain('not assignable');
    expect(await result("basename('/a/b')")).toBe("'b'");
  });
  it('const type parameters, satisfies, accessors of different types, enums of every kind', async () => {
    expect(
      await result('const pair = <const T>(t: T) => t; const p: readonly [1, 2] = pair([1, 2]); p'),
    ).toBe('[ 1, 2 ]');
    expect(
      await result(
        'class Box { #n = 1; get size(): number { return this.#n } set size(v: string) { this.#n = Number(v) } } const b = new Box(); b.size = "5"; b.size',
      ),
    ).toBe('5');
  });
});

describe("a recipe's own sentence comes before the compiler's", () => {
  it('a number without a unit says how to write it, at its field', async () => {
    const { error } = await run(
      "movementAcross({\n  width: 600, timber: 'white oak', from: '12 %', to: '8 %' })",
    );
    expect(error).toMatchObject({ ename: 'InputError', line: 2, column: 3 });
    expect(error!.evalue).toMatch(/movementAcross: width: got 600 with no unit.*write "600 mm"/);
    expect(error!.traceback.at(-1)).toMatch(/TypeScript: .*\(TS\d+\)/);
    expect(error!.traceback[0]).toContain('width: got 600');
  });
  it('a wrong name, a missing field and an unknown choice, several at once', async () => {
    const { error } = await run("movementAcross({ widht: '600 mm', timber: 'white oka', from: '12 %' })");
    expect(error!.evalue).toContain('did you mean "width"');
    expect(error!.traceback.join('\n')).toContain('to: missing');
  });
  it('values of earlier cells count; what only a run could tell does not', async () => {
    await run('const wide = 0.6; const half = () => "8 %"');
    expect(
      (await run("movementAcross({ width: wide, timber: 'white oak', from: '12 %', to: half() })")).error!
        .evalue,
    ).toMatch(/width: got 0\.6 with no unit/);
  });
  it('nothing of the cell has run', async () => {
    const ran = await run("console.log('ran'); movementAcross({ width: 600 })");
    expect([ran.status, ran.text]).toEqual(['error', '']);
  });
  it('an import of what is not there says how to get it', async () => {
    const missing = await run("import wood from 'no-such-package/part'");
    expect(missing.error).toMatchObject({
      ename: 'TypeScriptError',
      evalue:
        "line 1, column 18: import 'no-such-package/part': no-such-package is not installed here; in the notebook's folder: npm install no-such-package",
    });
    expect((await run("import * as own from './no-such-file'")).error!.evalue).toContain(
      "import './no-such-file': there is no such file beside the notebook",
    );
    // A package that an install of this one leaves out is named with its version.
    expect(missingModule('tslab')).toMatch(
      /^import 'tslab': tslab is not installed here; .*: npm install tslab@1\.\d/,
    );
    expect(missingModule('@tensorflow/tfjs-core/dist/x')).toMatch(/npm install @tensorflow\/tfjs-core@3\./);
  });
  it('other errors are as they were', async () => {
    expect((await run("Math.max({ a: 'x' })")).error!.ename).toBe('TypeScriptError');
  });
});

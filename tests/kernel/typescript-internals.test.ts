// The compiler's unpublished members that the kernel uses: if a new version moves or changes one, this fails by its name.
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { loadCompiler, nodeTypesFolder } from '../../src/kernel/compiler/compiler-loader.js';
import { createNodeProgram } from '../../src/kernel/compiler/node-host.js';
import type { IncrementalProgram } from '../../src/kernel/compiler/incremental-program.js';
import {
  createScope,
  declaredSymbols,
  internalMembers,
  parseErrors,
  parseModule,
  type Compiler,
} from '../../src/kernel/compiler/typescript-internals.js';
import libraries from '../../src/kernel/compiler/cell-libraries.json' with { type: 'json' };

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

let ts: Compiler;
let program: IncrementalProgram;
beforeAll(() => {
  ts = loadCompiler();
  program = createNodeProgram(process.cwd());
}, 60_000);

/** What the checker says of a cell that sees the names published so far. */
const errorsOf = (text: string): number[] => program.diagnose(program.add(text)).map((d) => d.code);

describe('the compiler', () => {
  it('is pinned to the installed version, 5.9.3 or newer', () => {
    const manifest = JSON.parse(
      readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
    ) as Record<
      'dependencies' | 'devDependencies' | 'peerDependencies' | 'optionalDependencies',
      Record<string, string> | undefined
    >;
    const installed = createRequire(import.meta.url)('typescript/package.json') as { version: string };
    const named = {
      ...manifest.peerDependencies,
      ...manifest.devDependencies,
      ...manifest.optionalDependencies,
      ...manifest.dependencies,
    };
    expect(named['typescript']).toBe(installed.version);
    expect(ts.version).toBe(installed.version);
    const [major = 0, minor = 0, patch = 0] = ts.version.split('.').map(Number);
    expect(major * 1e6 + minor * 1e3 + patch).toBeGreaterThanOrEqual(5_009_003);
  });

  it.each(internalMembers)('has %s', (path) => {
    const member = path.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], ts);
    expect(typeof member, path).toBe('function');
  });

  it('keeps syntax errors, top-level names and export symbols on a source file', () => {
    expect(parseErrors(ts, 'let a = ;').map((d) => d.code)).toEqual([1109]);
    const file = parseModule(ts, '/a.ts', 'const a = 1; export const b = 2; type C = 1');
    ts.bindSourceFile(file, {});
    expect([...declaredSymbols(file).keys()]).toEqual(['a', 'b', 'C']);
    expect(declaredSymbols(file).get('b')).toBe(file.symbol?.exports?.get('b' as never));
  });

  it("searches a file's parent for names the file lacks", () => {
    const cell = program.add(
      'let width = 600; type Side = "left" | "right"; interface Board { length: number }',
    );
    program.publish(cell, program.namesOf(cell));
    expect(
      errorsOf('const side: Side = "left"; const board: Board = { length: width }; void [side, board]'),
    ).toEqual([]);
    expect(errorsOf('const side: Side = "top"; void side')).toEqual([2322]);
    expect(errorsOf('notThere')).toEqual([2304]);
    expect(createScope(ts, {}, '/s.ts', undefined).locals.size).toBe(0);
  });

  it('resolves the imports of a file that is not in the program', () => {
    expect(errorsOf("import { dirname, join } from 'node:path'; join('a', 1)")).toEqual([2345]);
    expect(errorsOf("import { join } from 'path'; join('a', 'b')")).toEqual([]);
    expect(errorsOf("import { z } from 'zod'; z.string().parse(1)")).toEqual([]);
    expect(errorsOf("import { z } from 'no-such-package'; z")).toEqual([2307]);
  });

  it('emits, completes and describes a file that is not in the program', () => {
    const file = program.add('const planks: string[] = []; planks.ma');
    const names = program.completions(file, 'const planks: string[] = []; planks.ma'.length)?.entries;
    expect(names?.map((entry) => entry.name)).toContain('map');
    expect(program.describe(file, 6)).toBe('const planks: string[]');
    expect(program.emit(file, () => (node) => node).code).toContain('const planks = [];');
    const told = program.add('/** Sum of two.\n * @param a first */\nfunction sum(a: number) { return a }');
    expect(program.describe(told, 46)).toMatch(
      /^function sum\(a: number\): number\n\nSum of two\.\n@param a first$/,
    );
  });

  it('has the library and Node typings', () => {
    const folder = dirname(createRequire(import.meta.url).resolve('typescript'));
    for (const name of libraries) expect(existsSync(join(folder, name)), name).toBe(true);
    expect(existsSync(join(nodeTypesFolder, 'node', 'index.d.ts'))).toBe(true);
  });
});

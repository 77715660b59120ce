// The deep imports into tslab: if a new version moves or reshapes anything the kernel reaches for, this fails by name.
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import {
  isCompleteCode,
  libFolder,
  loadCompiler,
  nodeTypesFolder,
  printQuickInfo,
} from '../../src/kernel/compiler/tslab.js';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  dependencies: Record<string, string>;
};

describe('what the kernel takes from tslab', () => {
  it('is pinned to the very version that is installed', () => {
    const installed = createRequire(import.meta.url)('tslab/package.json') as { version: string };
    expect(manifest.dependencies['tslab']).toBe(installed.version);
  });

  it('bundles a compiler with the inner doors the compiler room uses', () => {
    const ts = loadCompiler();
    expect(ts.version).toBe('5.0.4');
    for (const name of [
      'createProgram',
      'createSourceFile',
      'bindSourceFile',
      'isExpressionNode',
      'getQuickInfoAtPosition',
      'preProcessFile',
      'resolveModuleName',
      'createModuleResolutionCache',
    ] as const) {
      expect(typeof ts[name], name).toBe('function');
    }
    expect(typeof ts.Completions.getCompletionsAtPositionForTslab).toBe('function');
    expect(ts.ModuleResolutionKind.Bundler).toBe(100);
  });

  it('hangs a file the way the room hangs its cells: a parent scope is searched, locals are a map', () => {
    const ts = loadCompiler();
    const options = {
      setExternalModuleIndicator: (file: object) =>
        ((file as { externalModuleIndicator: unknown }).externalModuleIndicator = true),
      languageVersion: ts.ScriptTarget.ES2022,
    };
    const file = ts.createSourceFile('a.ts', 'const a = 1; export const b = 2', options, true) as never as {
      locals: Map<string, { exportSymbol?: unknown }>;
    };
    ts.bindSourceFile(file as never, {});
    expect([...file.locals.keys()]).toEqual(['a', 'b']);
    expect(file.locals.get('b')!.exportSymbol).toBeDefined();
  });

  it('tells finished from unfinished code, and prints type information', () => {
    expect(isCompleteCode('1 + 1').completed).toBe(true);
    expect(isCompleteCode('if (a) {')).toEqual({ completed: false, indent: '  ' });
    expect(
      printQuickInfo({
        displayParts: [{ text: 'const a: 1', kind: 'text' }],
        documentation: [{ text: 'told', kind: 'text' }],
      } as never),
    ).toContain('told');
  });

  it('brings the library types and those of Node', () => {
    expect(existsSync(join(libFolder, 'lib.es2023.d.ts'))).toBe(true);
    expect(existsSync(join(nodeTypesFolder, 'node', 'index.d.ts'))).toBe(true);
  });
});

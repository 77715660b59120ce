import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const src = join(root, 'src');

/** Layers from the bottom up: a file imports from its own layer and from those before it in this list. */
const layers = [
  'units',
  'charts',
  'engine',
  'materials',
  'recipes',
  'sketches',
  'explore',
  'shop',
  'notes',
  'piece',
  'kernel',
  'notebook',
  'server',
  'site',
  'page',
  'cli',
];

/** `index.ts` and `browser.ts` stand above the piece and below the kernel, the command's entry above everything. */
function layerOf(path: string): number {
  if (path === 'index.ts' || path === 'browser.ts') return layers.indexOf('piece') + 0.5;
  if (path === 'cli/cli.ts') return layers.length;
  return layers.indexOf(path.split('/')[0]!);
}

const filesBelow = (folder: string, wanted: RegExp): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'node_modules' ? [] : filesBelow(path, wanted);
    return wanted.test(entry.name) ? [path] : [];
  });

/** Source text by path relative to src/; `launch` is plain JavaScript that runs before anything is compiled. */
const sources = new Map(
  filesBelow(src, /\.ts$/)
    .filter((file) => !file.endsWith('.d.ts') && !file.startsWith(join(src, 'launch')))
    .map((file) => [relative(src, file), readFileSync(file, 'utf8')]),
);
const topics = readdirSync(join(src, 'recipes'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

/** Imports of each file within src/, types included. */
const imports = new Map(
  [...sources].map(([path, text]) => {
    const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
    const found = [...code.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'/g)].map((match) =>
      relative(src, resolve(src, dirname(path), match[1]!.replace(/\.js$/, '.ts'))),
    );
    return [path, found.filter((to) => sources.has(to))];
  }),
);
const arrows = [...imports].flatMap(([from, all]) => all.map((to) => ({ from, to })));

/** Cycles among the imports, each as `a -> b -> a`. */
function cycles(): string[] {
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const visit = (file: string, path: readonly string[]): void => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      found.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      return;
    }
    state.set(file, 'open');
    for (const to of imports.get(file) ?? []) visit(to, [...path, file]);
    state.set(file, 'done');
  };
  for (const file of imports.keys()) visit(file, []);
  return found;
}

describe('imports', () => {
  it('are found', () => {
    expect(sources.size).toBeGreaterThan(200);
    expect(arrows.length).toBeGreaterThan(sources.size);
    expect(topics).toContain('moisture');
  });

  it('come from folders that stand in the list of layers', () => {
    const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map((f) => f.name).filter((name) => name !== 'launch' && !layers.includes(name))).toEqual(
      [],
    );
  });

  it('go down the layers only', () => {
    const upward = arrows.filter(({ from, to }) => layerOf(to) > layerOf(from));
    expect(upward.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it('never go from one topic of recipes to another', () => {
    const topicOf = (path: string): string | undefined =>
      topics.find((t) => path.startsWith(`recipes/${t}/`));
    const sideways = arrows.filter(
      ({ from, to }) =>
        topicOf(from) !== undefined && topicOf(to) !== undefined && topicOf(from) !== topicOf(to),
    );
    expect(sideways.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
  });

  it('form no cycle, not even of types', () => {
    expect(cycles()).toEqual([]);
  });

  it.each([
    ['mathjs', ['units/algebra.ts']],
    ['danfojs-node', ['explore/danfo.ts']],
    ['vega-lite', ['charts/svg.ts', 'charts/mount-interactive-chart.ts', 'notebook/', 'page/']],
    ['tslab', ['kernel/']],
    ['zeromq', ['kernel/']],
    ['zod', ['engine/field-set.ts']],
  ])('of %s stand in one place', (library, places) => {
    const use = new RegExp(`(?:from|import\\(|require\\()\\s*'(?:@)?${library}(?:/[^']*)?'`);
    const users = [...sources].filter(([, text]) => use.test(text)).map(([path]) => path);
    expect(users.filter((user) => !places.some((place) => user.startsWith(place)))).toEqual([]);
  });
});

describe('the session core of the kernel', () => {
  /** All that a file imports, at any depth; an `import()` in a function too. */
  const closure = (entry: string): Set<string> => {
    const found = new Set([entry]);
    for (const file of found) for (const to of imports.get(file) ?? []) found.add(to);
    return found;
  };

  it('imports nothing of Node: it runs in a browser too', () => {
    const files = closure('kernel/browser-host/cell-worker.ts');
    expect(files).toContain('kernel/core-session.ts');
    const builtIn = new Set(builtinModules);
    const users = [...files].filter((file) =>
      [...(sources.get(file) ?? '').matchAll(/(?:from|import\(|require\()\s*'([^'.][^']*)'/g)].some(
        ([, name = '']) => name.startsWith('node:') || builtIn.has(name),
      ),
    );
    // data-folder.ts is replaced where there is no data folder: the tables come with the page.
    expect(users.filter((file) => file !== 'engine/data-folder.ts')).toEqual([]);
  });
});

describe('files', () => {
  it('have names of their own: no two of one basename but index', () => {
    const first = new Map<string, string>();
    const shared: string[] = [];
    for (const path of sources.keys()) {
      const name = basename(path);
      const other = first.get(name);
      if (other !== undefined && name !== 'index.ts') shared.push(`${other} and ${path}`);
      else first.set(name, path);
    }
    expect(shared).toEqual([]);
  });

  it('and folders have names in kebab-case', () => {
    const odd = [...sources.keys()].filter(
      (path) => !/^(?:[a-z0-9]+(?:-[a-z0-9]+)*\/)*[a-z0-9]+(?:-[a-z0-9]+)*\.ts$/.test(path),
    );
    expect(odd).toEqual([]);
  });

  it('say what they hold: none is a place for leftovers', () => {
    const odd = [...sources.keys()].filter((path) =>
      /(?:^|[/-])(?:utils?|helpers?|common|misc)\.ts$/.test(path),
    );
    expect(odd).toEqual([]);
  });

  it('have at most 250 lines', () => {
    const long = [...sources]
      // The catalogue and the interfaces are generated.
      .filter(([path]) => !['recipes/catalogue.ts', 'recipes/interfaces.ts'].includes(path))
      .map(([path, text]) => `${path}: ${text.trimEnd().split('\n').length}`)
      .filter((line) => Number(line.split(': ')[1]) > 250);
    expect(long).toEqual([]);
  });

  it('name no host of a registry and no path of a machine', () => {
    // Built from parts so that this file does not hold what it looks for.
    const bad = new RegExp(
      [
        ['registry', 'npmjs', 'org'].join('\\.'),
        ['deb', 'debian', 'org'].join('\\.'),
        ['', 'work', '(?:main|shared|helpers)'].join('/'),
        ['', 'root', ''].join('/'),
      ].join('|'),
    );
    const kinds = /\.(?:ts|mjs|js|json|csv|md|ipynb|sh|py|css|html)$/;
    const texts = ['src', 'tests', 'notebooks', 'data']
      .flatMap((folder) => filesBelow(join(root, folder), kinds))
      .concat(
        ['README.md', 'DEVELOPERS.md', 'CAUTIONS.md', 'package.json', 'package-lock.json'].map((file) =>
          join(root, file),
        ),
      );
    expect(texts.filter((f) => bad.test(readFileSync(f, 'utf8'))).map((f) => relative(root, f))).toEqual([]);
  });
});

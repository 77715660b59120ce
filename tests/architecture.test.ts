import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const src = join(root, 'src');

/** Rooms from the ground up: a file may import its own room and those above it in this list. */
const rooms = [
  'units',
  'charts',
  'engine',
  'materials',
  'recipes',
  'explore',
  'notes',
  'kernel',
  'notebook',
  'server',
  'page',
  'cli',
];
const topics = ['moisture', 'stock', 'lamination', 'joinery', 'rails', 'finish', 'machining', 'bill'];
/** The public face and the command's entry stand beside the rooms: the face above notes, the entry above all. */
const floor = (file: string): number => {
  const path = relative(src, file);
  if (path === 'index.ts') return rooms.indexOf('notes') + 0.5;
  if (path === 'cli/cli.ts') return rooms.length;
  return rooms.indexOf(path.split('/')[0] as string);
};

const files = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((e) =>
    e.isDirectory()
      ? e.name === 'launch'
        ? []
        : files(join(folder, e.name))
      : e.name.endsWith('.ts') && !e.name.endsWith('.d.ts')
        ? [join(folder, e.name)]
        : [],
  );
const all = files(src);

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '');
  return [...text.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'/g)].map((m) =>
    resolve(dirname(file), (m[1] as string).replace(/\.js$/, '.ts')),
  );
}

describe('architecture', () => {
  it('imports go down the rooms only', () => {
    const upward = all.flatMap((file) =>
      importsOf(file)
        .filter((to) => to.startsWith(src) && floor(to) > floor(file))
        .map((to) => `${relative(src, file)} -> ${relative(src, to)}`),
    );
    expect(upward).toEqual([]);
  });

  it('no topic of recipes imports another', () => {
    const topic = (file: string): string | undefined => topics.find((t) => file.includes(`/recipes/${t}/`));
    const sideways = all.flatMap((file) =>
      importsOf(file)
        .filter((to) => topic(file) !== undefined && topic(to) !== undefined && topic(to) !== topic(file))
        .map((to) => `${relative(src, file)} -> ${relative(src, to)}`),
    );
    expect(sideways).toEqual([]);
  });

  it('has no cycle of imports', () => {
    const state = new Map<string, 'open' | 'done'>();
    const cycles: string[] = [];
    const visit = (file: string, path: string[]): void => {
      if (state.get(file) === 'done') return;
      if (state.get(file) === 'open') {
        cycles.push([...path.slice(path.indexOf(file)), file].map((f) => relative(src, f)).join(' -> '));
        return;
      }
      state.set(file, 'open');
      // Types alone are erased and make no cycle at run time.
      const text = readFileSync(file, 'utf8');
      for (const m of text.matchAll(/^(?:import|export)\s+(?!type\b)[^;]*?from\s+'(\.[^']+)'/gm)) {
        const to = resolve(dirname(file), (m[1] as string).replace(/\.js$/, '.ts'));
        if (all.includes(to)) visit(to, [...path, file]);
      }
      state.set(file, 'done');
    };
    for (const file of all) visit(file, []);
    expect(cycles).toEqual([]);
  });

  it.each([
    ['mathjs', ['units/algebra.ts']],
    ['danfojs-node', ['explore/frame.ts']],
    ['vega-lite', ['charts/svg.ts', 'charts/mount-interactive-chart.ts', 'notebook/', 'page/']],
    ['tslab', ['kernel/']],
    ['zeromq', ['kernel/']],
    ['zod', ['engine/field-set.ts']],
  ])('%s is touched in one place', (library, places) => {
    const users = all
      .filter((f) =>
        new RegExp(`(?:from|import\\(|require\\()\\s*'(?:@)?${library}(?:/[^']*)?'`).test(
          readFileSync(f, 'utf8'),
        ),
      )
      .map((f) => relative(src, f));
    expect(users.filter((u) => !places.some((p) => u.startsWith(p)))).toEqual([]);
  });

  it('has no file of leftovers and none of thousands of lines', () => {
    for (const file of all) {
      expect(relative(src, file)).not.toMatch(/(?:utils?|helpers?|common|misc)\.ts$/);
      expect(readFileSync(file, 'utf8').split('\n').length, relative(src, file)).toBeLessThan(600);
    }
  });

  it('names no host of a registry and no path of a machine', () => {
    // Built from parts so that this file does not hold what it looks for.
    const bad = new RegExp(
      [
        ['registry', 'npmjs', 'org'].join('\\.'),
        ['deb', 'debian', 'org'].join('\\.'),
        `/work/(?:main|shared)`,
        `/root/`,
      ].join('|'),
    );
    const texts = ['src', 'tests', 'notebooks', 'data']
      .flatMap((f) => filesOf(join(root, f)))
      .concat(
        ['README.md', 'DEVELOPERS.md', 'CAUTIONS.md', 'package.json', 'package-lock.json'].map((f) =>
          join(root, f),
        ),
      );
    expect(texts.filter((f) => bad.test(readFileSync(f, 'utf8'))).map((f) => relative(root, f))).toEqual([]);
  });
});

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((e) =>
    e.isDirectory()
      ? filesOf(join(folder, e.name))
      : /\.(ts|mjs|js|json|csv|md|ipynb|sh|py|css|html)$/.test(e.name)
        ? [join(folder, e.name)]
        : [],
  );
}

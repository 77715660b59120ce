import { describe, expect, it } from 'vitest';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import type { Field } from '../../src/engine/field.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { layOut } from '../../src/sketches/model/sketch-layout.js';
import { fieldsLettered, lettersOf, namedAt } from '../../src/sketches/model/lettering.js';
import { boxesOf, sheetWidth, shareInside, type Box, type Sheet } from '../../src/sketches/model/sheet.js';
import type { SketchDefinition } from '../../src/sketches/model/sketch-definition.js';
import { sketchPicture } from '../../src/sketches/model/sketch-text.js';
import { recipeSketch, sketchLines, sketchMarkdown } from '../../src/sketches/recipe-sketch.js';
import { sketches } from '../../src/sketches/sketch-list.js';

const definitions: Readonly<Record<string, SketchDefinition | undefined>> = sketches;

function definitionOf({ name }: AnyRecipe): SketchDefinition {
  const definition = definitions[name];
  if (definition === undefined) throw new Error(`${name} has no sketch: add one to src/sketches/`);
  return definition;
}

/** Kinds of fields that have a place on the piece. */
const geometric = new Set([
  'length',
  'angle',
  'area',
  'force',
  'dimensions',
  'section',
  'lineLoad',
  'areaLoad',
  'thickness',
  'volume',
]);

/** Paths of the geometric inputs of a recipe: of plain fields, and of the parts and columns of groups and tables. */
function geometricPaths(fields: Readonly<Record<string, Field>>, before = ''): string[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const path = `${before}${name}`;
    if (geometric.has(field.kind)) return [path];
    const isList = field.items?.some(({ kind }) => kind === 'length' || kind === 'angle') === true;
    return isList ? [path] : geometricPaths(field.fields ?? {}, `${path}.`);
  });
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
const isOff = (box: Box, height: number): boolean =>
  box.left < 0 || box.top < 0 || box.right > sheetWidth || box.bottom > height;

/** Lines and arrow heads that run into a box; a line may touch the frame of a letter. */
function linesThrough({ strokes, heads }: Sheet, name: string, box: Box): string[] {
  const inside = { left: box.left + 1, right: box.right - 1, top: box.top + 1, bottom: box.bottom - 1 };
  return [
    ...strokes
      .map(({ points, closed }) => (closed ? [...points, points[0]!] : points))
      .filter((points) => points.slice(1).some((to, k) => shareInside(points[k]!, to, inside) !== undefined))
      .map((points) => `a line runs through ${name} from ${String(points[0])} to ${String(points.at(-1))}`),
    ...heads
      .filter(({ tip }) => shareInside(tip, [tip[0] + 0.01, tip[1]], inside))
      .map(() => `an arrow head lies on ${name}`),
  ];
}

/** What lies on a letter or word, or over the sheet's edge. */
function faultsOf(sheet: Sheet): string[] {
  const boxes = boxesOf(sheet);
  return [
    ...boxes.flatMap(({ name, box }, i) => [
      ...(isOff(box, sheet.height) ? [`${name} stands over the edge of the sheet`] : []),
      ...boxes
        .slice(i + 1)
        .filter((other) => overlap(box, other.box))
        .map((other) => `${name} lies on ${other.name}`),
      ...linesThrough(sheet, name, box),
    ]),
    ...sheet.strokes
      .filter(({ points }) =>
        points.some(([x, y]) => !(x >= 0 && y >= 0 && x <= sheetWidth && y <= sheet.height)),
      )
      .map(({ weight }) => `a line (${weight}) runs over the edge of the sheet`),
  ];
}

/** The first fault of a text as XML without declaration, entities checked; undefined where it is well formed. */
function xmlFault(text: string): string | undefined {
  const open: string[] = [];
  let at = 0;
  for (const match of text.matchAll(/<(\/?)([a-z]+)((?: [a-zA-Z:-]+="[^"<]*")*)(\/?)>/g)) {
    const between = text.slice(at, match.index);
    if (/[<>]|&(?!(?:amp|lt|gt|quot|#39);)/.test(between)) return `"${between}"`;
    if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(match[3] ?? '')) return match[0];
    const names = [...(match[3] ?? '').matchAll(/ ([a-zA-Z:-]+)=/g)].map(([, name]) => name);
    if (new Set(names).size < names.length) return `${match[0]} has an attribute twice`;
    if (match[1] === '/' && open.pop() !== match[2]) return `${match[0]} closes another`;
    if (match[1] !== '/' && match[4] !== '/') open.push(match[2] ?? '');
    at = match.index + match[0].length;
  }
  return at === text.length && open.length === 0
    ? undefined
    : `ends within ${open.join(', ') || text.slice(at)}`;
}

describe('the check of boxes', () => {
  const sheet = (marks: SketchDefinition['marks']): Sheet => layOut({ shows: '', height: 100, marks });
  const note = (at: readonly [number, number]) =>
    ({ mark: 'note', field: 'width', at, tip: undefined }) as const;

  it('finds a letter on another, over the edge, and a line through one', () => {
    expect(faultsOf(sheet([note([50, 50]), note([100, 50])]))).toEqual([]);
    expect(faultsOf(sheet([note([50, 50]), note([60, 55])]))).toEqual(['width lies on width']);
    expect(faultsOf(sheet([note([5, 50])]))).toEqual(['width stands over the edge of the sheet']);
    const points = [
      [10, 48],
      [90, 52],
    ] as const;
    const path = { mark: 'path', points, closed: false, weight: 'edge', fill: 'none' } as const;
    expect(faultsOf(sheet([note([50, 50]), path]))).toHaveLength(1);
    // Figure of the grain gives way to a letter.
    expect(faultsOf(sheet([note([50, 50]), { ...path, weight: 'grain' }]))).toEqual([]);
  });

  it('finds XML that is not well formed', () => {
    expect(xmlFault('<a b="1"><c/>x &amp; y</a>')).toBeUndefined();
    for (const text of ['<a>', '<a></b>', '<a b=1/>', '<a>&</a>', '<a b="1" b="2"/>', '<a/>x'])
      expect(xmlFault(text), text).toBeDefined();
  });
});

describe.each(catalogue.map((recipe) => [recipe.name, recipe] as const))('the sketch of %s', (_, recipe) => {
  const definition = definitionOf(recipe);
  const letters = lettersOf(recipe, definition);
  const sheet = layOut(definition);

  it('letters fields that the recipe has, each with one letter', () => {
    const lettered = fieldsLettered(definition.marks.flat());
    expect(lettered.filter((path) => namedAt(recipe, path) === undefined)).toEqual([]);
    expect(letters.length).toBeGreaterThan(1);
    expect(letters.map(({ letter }) => letter).join('')).toBe(
      'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.slice(0, letters.length),
    );
  });

  it('has a letter for every length, angle, area and force that is given, or a reason', () => {
    const lettered = new Set(letters.map(({ field }) => field));
    const excepted = Object.keys(definition.unlettered ?? {});
    const isCovered = (path: string): boolean =>
      lettered.has(path) || excepted.some((name) => path === name || path.startsWith(`${name}.`));
    expect(geometricPaths(recipe.inputs).filter((path) => !isCovered(path))).toEqual([]);
    expect(excepted.filter((name) => lettered.has(name) || namedAt(recipe, name) === undefined)).toEqual([]);
    expect(
      Object.keys(definition.measures ?? {}).filter((name) => !lettered.has(name)),
      'words for what has no letter',
    ).toEqual([]);
  });

  it('keeps its letters, words and lines apart and on the sheet', () => {
    expect(faultsOf(sheet)).toEqual([]);
  });

  it('is well-formed SVG in the colour of its text, whose alternative text names each letter', () => {
    const svg = recipeSketch(recipe)?.svg ?? '';
    expect(xmlFault(svg)).toBeUndefined();
    expect(svg).not.toMatch(/#[0-9a-f]{3,6}\b|NaN|undefined|\bid=/);
    const alternative = /aria-label="([^"]*)"/.exec(svg)?.[1] ?? '';
    for (const { letter, field } of letters) {
      expect(alternative).toMatch(new RegExp(`(?:\\. |; )${letter} `));
      expect(svg).toContain(`data-measures="${field}" data-letter="${letter}"`);
    }
    expect(sketchMarkdown(recipe)[0]).toMatch(/^!\[[^\]]+\]\(data:image\/svg\+xml;base64,[A-Za-z0-9+/=]+\)$/);
  });

  it('is a picture in characters too, with each letter, at most 64 wide', () => {
    const picture = sketchPicture(sheet, letters);
    expect(Math.max(...picture.map((row) => row.length))).toBeLessThanOrEqual(64);
    for (const { letter, isOutput, field } of letters) {
      const framed = isOutput ? `[${letter}]` : `(${letter})`;
      expect(picture.join('\n'), `${framed} for ${field}`).toContain(framed);
      expect(sketchLines(recipe).some((row) => row.startsWith(`${framed} ${field}: `))).toBe(true);
    }
  });

  it('says what it shows in one sentence', () => {
    expect(definition.shows).toMatch(/^[A-Z][^.]+\.$/);
    for (const text of Object.values(definition.measures ?? {})) expect(text).toMatch(/^[A-Z][^.]+\.$/);
  });
});

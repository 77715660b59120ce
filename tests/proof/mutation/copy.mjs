// A copy of the sources in which every fault is written down but sleeps until its number is called: Stryker's instrumenter
// makes it. The faults that are counted are those of the calculation; words, lists and whole blocks are left aside.
import {
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

import { pictureLines, switchFormulas, withFormulaFaults } from './formulas.mjs';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../../..');
const tool = join(root, 'node_modules/.cache/mutation');
const version = '9.6.1';
/** What is counted. BooleanLiteral only where it drops a `!`. */
export const counted = [
  'ArithmeticOperator',
  'AssignmentOperator',
  'BooleanLiteral',
  'ConditionalExpression',
  'EqualityOperator',
  'LogicalOperator',
  'UnaryOperator',
  'UpdateOperator',
];
const leftAside = [
  'ArrayDeclaration',
  'ArrowFunction',
  'BlockStatement',
  'MethodExpression',
  'ObjectLiteral',
  'OptionalChaining',
  'Regex',
  'StringLiteral',
];

/** Stryker's instrumenter, fetched when first wanted: it is no dependency of the package. */
async function instrumenter() {
  const home = join(tool, 'node_modules/@stryker-mutator/instrumenter');
  if (!existsSync(join(home, 'package.json'))) {
    mkdirSync(tool, { recursive: true });
    writeFileSync(join(tool, 'package.json'), '{ "private": true }\n');
    const got = spawnSync(
      'npm',
      ['install', '--no-audit', '--no-fund', `@stryker-mutator/instrumenter@${version}`],
      { cwd: tool, stdio: 'inherit' },
    );
    if (got.status !== 0) throw new Error('the instrumenter could not be fetched');
  }
  const { createInstrumenter } = await import(pathToFileURL(join(home, 'dist/src/index.js')).href);
  const silent = () => undefined;
  const logger = { debug: silent, info: silent, warn: console.warn, isDebugEnabled: () => false };
  // The instrumenter asks to be put together by an injector; three values and itself are all it wants.
  const given = [];
  const injector = {
    provideValue: (token, value) => (given.push([token, value]), injector),
    injectClass: (Class) => {
      const by = Object.fromEntries(given);
      return new Class(logger, ...Class.inject.slice(1).map((token) => by[token]));
    },
  };
  return createInstrumenter(injector);
}

/**
 * Copies into `folder` what the tests need: as last committed, so that no half-done edit is tried, or as it stands.
 */
export function copyTree(folder, committed) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const own = ['src', 'tests', 'data', 'package.json', 'tsconfig.json'];
  const archive = committed
    ? spawnSync('git', ['archive', 'HEAD', ...own], { cwd: root, maxBuffer: 2 ** 28 })
    : {};
  const unpacked =
    archive.status === 0 && spawnSync('tar', ['-x'], { cwd: folder, input: archive.stdout }).status === 0;
  for (const name of readdirSync(root)) {
    if (name.startsWith('.') || name === 'coverage') continue;
    if (!own.includes(name)) symlinkSync(join(root, name), join(folder, name));
    else if (!unpacked) cpSync(join(root, name), join(folder, name), { recursive: true });
  }
}

/**
 * Puts faults into `files` of the copy in `folder` and gives them: { id, file, line, column, text, was, becomes, kind, picture },
 * where `text` is the whole source line.
 */
export async function putFaults(folder, files) {
  const lines = new Map(files.map((f) => [f, readFileSync(join(folder, f), 'utf8').split('\n')]));
  shortenProperties(join(folder, 'tests'));
  const maker = await instrumenter();
  const faults = [];
  const sources = files.map((name) => {
    const right = readFileSync(join(folder, name), 'utf8');
    const { content, faults: own } = withFormulaFaults(name, right, faults.length);
    faults.push(...own);
    return { name, mutate: true, content };
  });
  const made = await maker.instrument(sources, {
    plugins: null,
    excludedMutations: leftAside,
    ignorers: [],
    noHeader: false,
  });
  for (const { name, content } of made.files) writeFileSync(join(folder, name), content);
  for (const room of new Set(files.map(dirname)))
    for (const name of readdirSync(join(folder, room)))
      if (name.endsWith('.ts')) makeForgetful(join(folder, room, name));
  switchFormulas(folder);
  let aside = 0;
  for (const m of made.mutants) {
    const text = lines.get(m.fileName)[m.location.start.line];
    const negation = text.slice(m.location.start.column).startsWith('!');
    if (!counted.includes(m.mutatorName) || (m.mutatorName === 'BooleanLiteral' && !negation)) {
      aside++;
      continue;
    }
    faults.push({
      id: m.id,
      file: m.fileName,
      line: m.location.start.line + 1,
      column: m.location.start.column + 1,
      text: text.trim(),
      was: pieceOf(lines.get(m.fileName), m.location),
      becomes: m.replacement.replace(/\s+/g, ' '),
      kind: m.mutatorName,
    });
  }
  const pictures = new Map([...lines].map(([name, text]) => [name, pictureLines(name, text.join('\n'))]));
  for (const f of faults)
    f.picture = pictures.get(f.file).some(([from, to]) => f.line >= from && f.line <= to);
  return { faults, aside };
}

/** Properties over hundreds of random cases are run over a tenth of them: a fault that this misses counts as not noticed. */
function shortenProperties(folder) {
  for (const name of readdirSync(folder, { recursive: true })) {
    if (!name.endsWith('.test.ts')) continue;
    const file = join(folder, name);
    const text = readFileSync(file, 'utf8');
    const shorter = text.replace(/\bnumRuns: ([\d_]+)/g, (_, n) => {
      const runs = Number(n.replaceAll('_', ''));
      return `numRuns: ${Math.max(Math.min(runs, 15), Math.round(runs / 10))}`;
    });
    if (shorter !== text) writeFileSync(file, shorter);
  }
}

/** What the fault stands in place of, on one line. */
function pieceOf(lines, { start, end }) {
  const piece = lines.slice(start.line, end.line + 1);
  piece[piece.length - 1] = piece.at(-1).slice(0, end.column);
  piece[0] = piece[0].slice(start.column);
  return piece.join(' ').replace(/\s+/g, ' ');
}

/** What a file keeps for later calls is dropped before each test, so that a fault acts on whoever calls. */
function makeForgetful(file) {
  const text = readFileSync(file, 'utf8');
  const drop = [
    ...[...text.matchAll(/^const (\w+) = new Map(?:<.*>)?\(\);$/gm)].map(([, name]) => `${name}.clear();`),
    ...[...text.matchAll(/^let (\w+): [^=]*\| undefined;$/gm)].map(([, name]) => `${name} = undefined;`),
  ];
  if (drop.length > 0)
    writeFileSync(
      file,
      `${text}\n((globalThis.__stryker__ ??= {}).forget ??= []).push(() => { ${drop.join(' ')} });\n`,
    );
}

// Faults in the texts of formulas, such as 'M / W', which no fault in the code around them reaches: an operator exchanged, a number
// one more, the least taken for the greatest. The copy's `formula` holds the corrupted texts beside the right one and takes the
// one that is awake each time it is asked.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

const exchanged = { '+': '-', '-': '+', '*': '/', '/': '*', min: 'max', max: 'min' };
const token = /[A-Za-z_]\w*|\d+(?:\.\d+)?(?:e[-+]?\d+)?|\s+|./g;

/** Every way to spoil the text once, as the corrupted text. */
export function spoiltTexts(text) {
  const pieces = text.match(token);
  const corrupted = new Set();
  const put = (i, piece) => corrupted.add([...pieces.slice(0, i), piece, ...pieces.slice(i + 1)].join(''));
  pieces.forEach((piece, i) => {
    if (Object.hasOwn(exchanged, piece)) put(i, exchanged[piece]);
    else if (/^\d/.test(piece))
      put(i, piece.includes('.') ? String(Number(piece) * 2) : String(Number(piece) + 1));
    // A product written without a sign: `b h`, `2 (a + c)`.
    else if (/^\s+$/.test(piece) && /[\w)]$/.test(pieces[i - 1] ?? '') && /^[\w(]/.test(pieces[i + 1] ?? ''))
      put(i, ' / ');
  });
  return [...corrupted];
}

/** First and last line of every picture of a recipe: what is drawn there is distinguished from what is calculated. */
export function pictureLines(name, content) {
  const file = ts.createSourceFile(name, content, ts.ScriptTarget.Latest, true);
  const found = [];
  const visit = (node) => {
    if (ts.isPropertyAssignment(node) && node.name.getText(file) === 'chart')
      found.push(
        [node.getStart(file), node.getEnd()].map((at) => file.getLineAndCharacterOfPosition(at).line + 1),
      );
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** Writes the corrupted texts into the source beside the right one; the faults are reported as copy.mjs tells its own. */
export function withFormulaFaults(name, content, number) {
  const file = ts.createSourceFile(name, content, ts.ScriptTarget.Latest, true);
  const faults = [];
  const inserts = [];
  const visit = (node) => {
    if (ts.isCallExpression(node) && node.expression.getText(file) === 'formula') {
      const [spec] = node.arguments;
      const text = spec?.properties?.find((p) => p.name?.getText(file) === 'text')?.initializer;
      if (text && ts.isStringLiteralLike(text)) {
        const { line, character } = file.getLineAndCharacterOfPosition(text.getStart(file));
        const own = Object.fromEntries(spoiltTexts(text.text).map((s) => [`F${number++}`, s]));
        for (const [id, becomes] of Object.entries(own))
          faults.push({
            id,
            file: name,
            line: line + 1,
            column: character + 1,
            text: content.split('\n')[line].trim(),
            was: text.text,
            becomes,
            kind: 'FormulaOperator',
          });
        inserts.push([text.getEnd(), `, faults: ${JSON.stringify(own)}`]);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  let made = content;
  for (const [at, what] of inserts.reverse()) made = made.slice(0, at) + what + made.slice(at);
  return { content: made, faults };
}

/** Lets the copy's `formula`, and what is compiled from a row of formulas, take the text that is awake. */
export function switchFormulas(folder) {
  for (const [name, what, added] of [
    ['src/engine/formula.ts', 'formula', switching],
    ['src/engine/compile-steps.ts', 'compileSteps', switchingSteps],
  ]) {
    const file = join(folder, name);
    const text = readFileSync(file, 'utf8');
    const renamed = text.replace(`export function ${what}<`, `function ${what}AsWritten<`);
    if (renamed === text) throw new Error(`${name}: no ${what}() to be switched`);
    writeFileSync(file, `${renamed}\n${added}`);
  }
}

const switching = `
export function formula(spec) {
  const { faults = {}, ...own } = spec;
  const right = formulaAsWritten(own);
  const ids = Object.keys(faults);
  if (ids.length === 0) return right;
  const ns = (globalThis.__stryker__ ??= {});
  const made = new Map();
  const steady = new Set(['symbol', 'gives', 'where', 'basis', 'source']);
  const now = () => {
    const passed = (ns.mutantCoverage ??= { static: {}, perTest: {} });
    const by = ns.currentTestId ? (passed.perTest[ns.currentTestId] ??= {}) : passed.static;
    for (const id of ids) by[id] = (by[id] ?? 0) + 1;
    const awake = ns.activeMutant;
    if (awake === undefined || !Object.hasOwn(faults, awake)) return right;
    if (ns.hitCount !== undefined && ++ns.hitCount > ns.hitLimit) throw new Error('out of turns');
    if (!made.has(awake)) made.set(awake, formulaAsWritten({ ...own, text: faults[awake] }));
    return made.get(awake);
  };
  return new Proxy(right, { get: (_, key) => (key === 'corrupted' ? ids : (steady.has(key) ? right : now())[key]) });
}
`;

const switchingSteps = `
export function compileSteps(recipe, fields, steps, outputs) {
  const made = new Map();
  return (numbers) => {
    for (const f of steps) void f.source_;
    const awake = globalThis.__stryker__?.activeMutant;
    const key = steps.some((f) => f.corrupted?.includes(awake)) ? awake : undefined;
    if (!made.has(key)) made.set(key, compileStepsAsWritten(recipe, fields, steps, outputs));
    return made.get(key)(numbers);
  };
}
`;

// Every word that a recipe shows a person: titles, labels, help, cautions of its own example.
import { describe, expect, it } from 'vitest';
import type { Fields } from '../../src/engine/field.js';
import type { Outputs } from '../../src/engine/output.js';
import { catalogue } from '../../src/recipes/catalogue.js';

interface Labelled {
  readonly where: string;
  readonly label: string;
  readonly help: string | undefined;
}

function ofFields(where: string, fields: Fields): Labelled[] {
  return Object.entries(fields).flatMap(([name, f]) => [
    { where: `${where}.${name}`, label: f.label, help: f.help },
    ...(f.fields ? ofFields(`${where}.${name}`, f.fields) : []),
  ]);
}

function ofOutputs(where: string, outputs: Outputs): Labelled[] {
  return Object.entries(outputs).flatMap(([name, o]) => [
    { where: `${where}.${name}`, label: o.label, help: o.help },
    ...(o.columns ? ofOutputs(`${where}.${name}`, o.columns) : []),
  ]);
}

const labels = catalogue.flatMap((r) => [...ofFields(r.name, r.inputs), ...ofOutputs(r.name, r.outputs)]);
const sentences = catalogue.flatMap((r) => [
  { where: `${r.name}, title`, text: r.title },
  { where: `${r.name}, about`, text: r.about },
]);

/** Words of no modern joiner, and words of the code. */
const forbidden =
  /\breckon|\bnought\b|\bshall\b|by turns|unless said|from memory|degC|\bovendry\b|\bmoney\b|10\^|e-9|\bits own sake\b/i;

describe('the words of the recipes', () => {
  it('are all there', () => {
    expect(labels.length).toBeGreaterThan(700);
    expect(labels.filter((l) => l.label.trim() === '').map((l) => l.where)).toEqual([]);
  });
  it('hold no archaic word, no placeholder and no unit of the code', () => {
    const words = [
      ...labels.map((l) => ({ where: l.where, text: `${l.label} ${l.help ?? ''}` })),
      ...sentences,
    ];
    expect(words.filter((w) => forbidden.test(w.text)).map((w) => `${w.where}: ${w.text}`)).toEqual([]);
  });
  it('name a thing in one to four words, tables and charts aside', () => {
    const long = labels.filter((l) => l.label.split(/\s+/).length > 4);
    expect(long.map((l) => `${l.where}: ${l.label}`)).toEqual([]);
  });
  it('explain it in one sentence', () => {
    const odd = labels.filter(
      (l) => l.help !== undefined && (!/^[A-Z0-9].*\.$/.test(l.help) || /[.!?] [A-Z]/.test(l.help)),
    );
    expect(odd.map((l) => `${l.where}: ${l.help ?? ''}`)).toEqual([]);
  });
  it('repeat neither the label as help nor a default', () => {
    expect(
      labels.filter((l) => l.help?.toLowerCase() === `${l.label.toLowerCase()}.`).map((l) => l.where),
    ).toEqual([]);
    expect(labels.filter((l) => /\bdefault\b/.test(l.label)).map((l) => l.where)).toEqual([]);
  });
});

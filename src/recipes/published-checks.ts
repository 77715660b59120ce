// The published checks of every topic, and what answers them: recipes, and a few procedures for figures no recipe gives alone.
import { toQuantity } from '../units/parse-quantity.js';
import type { Kind } from '../units/kind.js';
import { field, makeParser } from '../engine/field.js';
import { readDataFile } from '../engine/data-folder.js';
import { runChecks, type Answering, type CheckOutcome, type CheckRow } from '../engine/validation.js';
import { validationTable, type ValidationTable } from '../engine/validation-table.js';
import { strengthGroup } from '../materials/strength.js';
import { catalogue } from './catalogue.js';

export const checkTopics = [
  'moisture',
  'stock',
  'lamination',
  'joinery',
  'rails',
  'finish',
  'machining',
  'delivery',
  'people',
] as const;
export type CheckTopic = (typeof checkTopics)[number];

/** Rows of a topic. */
export function checkRows(topic: CheckTopic): readonly CheckRow[] {
  return JSON.parse(readDataFile(`checks/${topic}.json`)) as CheckRow[];
}

const procedures: Readonly<Record<string, Answering>> = {
  /** A quantity of a kind, to be read in the printed unit. */
  unit: (g) => ({ value: toQuantity(g['value'], g['kind'] as Kind) }),
  /** The minimum mean modulus of an Australian strength group. */
  strengthGroup: (g) => ({
    modulus: toQuantity(`${strengthGroup(String(g['group']))?.text('moe_mpa')} MPa`, 'modulus'),
  }),
};

/** What answers a row: a recipe of the catalogue, or a procedure. */
export function answering(name: string): Answering | undefined {
  if (Object.hasOwn(procedures, name)) return procedures[name];
  return catalogue.find((r) => r.name === name);
}

const readAsked = makeParser({
  topic: field.choice(checkTopics, { label: 'topic whose checks are wanted', optional: true }),
});

/**
 * Calculates the published checks again, of one topic or of all: a table of the book's value, ours, the difference and
 * the source. @throws InputError on a topic that has none
 */
export async function publishedChecks(topic?: CheckTopic): Promise<ValidationTable> {
  const asked = readAsked({ topic });
  const all: CheckOutcome[] = [];
  for (const t of asked.topic ? [asked.topic] : checkTopics)
    all.push(...(await runChecks(checkRows(t), answering)));
  return validationTable(all);
}

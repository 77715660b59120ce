import type { FieldModel, RecipeModel } from '../model/recipe-model.js';

/** Values that a typed question holds, by field. */
export type Understood = Readonly<Record<string, unknown>>;

const size = /(\d+(?:[.,]\d+)?)\s*(mm|cm|m|in|inch|inches|ft|feet|"|')(?![a-z])/gi;
const percent = /(\d+(?:[.,]\d+)?)\s*(?:%|per ?cent)/gi;
const unitNames: Readonly<Record<string, string>> = {
  inch: 'in',
  inches: 'in',
  feet: 'ft',
  '"': 'in',
  "'": 'ft',
};

/** Sizes, percentages and timbers of a question, put into the fields they are for: only what is clear. */
export function understand(question: string, model: RecipeModel, timbers: readonly string[]): Understood {
  const given: Record<string, unknown> = {};
  const lengths = model.inputs.filter(
    (field) => field.kind === 'length' && (!field.optional || field.inExample),
  );
  for (const [at, text] of sizesOf(question).entries()) {
    const field =
      fieldNear(
        question,
        text.at,
        lengths.filter(({ name }) => !(name in given)),
      ) ?? (at === 0 ? lengths[0] : undefined);
    if (field !== undefined) given[field.name] = text.text;
  }
  const shares = model.inputs.filter((field) => !field.optional && takesMoisture(field));
  for (const [i, found] of [...question.matchAll(percent)].entries()) {
    const field = shares[i];
    if (field !== undefined) given[field.name] = `${(found[1] ?? '').replace(',', '.')} %`;
  }
  const timberField = model.inputs.find(
    (field) => field.kind === 'timber' && (field.inExample || !field.optional),
  );
  const timber = timberIn(question, timbers);
  if (timberField !== undefined && timber !== undefined) given[timberField.name] = timber;
  return given;
}

const takesMoisture = (field: FieldModel): boolean =>
  field.kind === 'moisture' || field.items.some(({ kind }) => kind === 'moisture');

function sizesOf(question: string): { text: string; at: number }[] {
  return [...question.matchAll(size)].map((found) => {
    const unit = (found[2] ?? '').toLowerCase();
    return {
      text: `${(found[1] ?? '').replace(',', '.')} ${unitNames[unit] ?? unit}`,
      at: found.index + found[0].length,
    };
  });
}

/** The field whose label or name stands within a few words after the number, such as `640 mm wide`. */
function fieldNear(question: string, at: number, fields: readonly FieldModel[]): FieldModel | undefined {
  const after = question.slice(at, at + 26).toLowerCase();
  const hints: readonly (readonly [RegExp, RegExp])[] = [
    [/\bwid(e|th)\b/, /width/i],
    [/\blong|length\b/, /length/i],
    [/\bthick/, /thick/i],
    [/\bstrip|batten|rafter/, /strip/i],
    [/\bhigh|height|tall\b/, /height/i],
    [/\btop\b/, /topWidth|^width|topLength/i],
  ];
  for (const [said, named] of hints)
    if (said.test(after)) {
      const field = fields.find(({ name, label }) => named.test(name) || named.test(label));
      if (field !== undefined) return field;
    }
  return undefined;
}

/** The longest timber name in the question. */
function timberIn(question: string, timbers: readonly string[]): string | undefined {
  const text = ` ${question.toLowerCase().replace(/[^\p{L}]+/gu, ' ')} `;
  const found = timbers.filter((name) =>
    text.includes(` ${name.toLowerCase().replace(/[^\p{L}]+/gu, ' ')} `),
  );
  return found.sort((a, b) => b.length - a.length)[0];
}

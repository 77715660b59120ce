import { kinds, type Kind } from '../../../units/kind.js';
import type { Field } from '../../../engine/field.js';
import { humanizeName } from '../../../notebook/handout/humanize.js';
import type { FieldModel } from '../model/recipe-model.js';
import { capitalised } from '../../../units/capitalised.js';

/** Fields of words that the page offers a searchable list for. */
const named = new Set(['timber', 'climate']);

/** The field as plain data for a form; `example` is the recipe's own value for it. */
export function fieldModel(name: string, field: Field, example: unknown): FieldModel {
  const { label, help } = labelOf(field, name);
  const facts = Object.hasOwn(kinds, field.kind) ? kinds[field.kind as Kind] : undefined;
  return {
    name,
    label,
    help,
    kind: field.kind,
    expects: field.expects,
    optional: field.optional,
    assumed: field.default === undefined ? undefined : assumedText(field.default),
    example: example ?? field.default ?? facts?.example,
    inExample: example !== undefined,
    choices: field.choices ?? [],
    units: facts === undefined || facts.plain === true ? [] : unitsOf(field, facts),
    isPlain: facts?.plain === true,
    fields: Object.entries(field.fields ?? {}).map(([key, part]) =>
      fieldModel(key, part, partOf(example, key)),
    ),
    items: (field.items ?? []).map((item) =>
      fieldModel(name, item, item.accepts(example) ? example : undefined),
    ),
    hasNames: named.has(field.kind),
  };
}

/** The first row's or the object's own value under a key. */
function partOf(example: unknown, key: string): unknown {
  const first: unknown = Array.isArray(example) ? example[0] : example;
  return typeof first === 'object' && first !== null ? (first as Record<string, unknown>)[key] : undefined;
}

/** Units a maker may choose from: the field's own first, then those of the kind. */
function unitsOf(field: Field, facts: (typeof kinds)[Kind]): readonly string[] {
  const middle = field.kind === 'length' ? ['cm'] : [];
  return [
    ...new Set([
      ...(field.unit === undefined ? [] : [field.unit]),
      ...facts.metric,
      ...middle,
      ...facts.inch,
    ]),
  ];
}

/** A short label and one line of help: from the field's own `help` where it has one, else both from its one line of meaning. */
function labelOf(field: Field, name: string): { label: string; help: string } {
  const own = (field as { readonly help?: unknown }).help;
  if (typeof own === 'string') return { label: capitalised(field.label), help: own };
  const whole = capitalised(field.label);
  const [first = ''] = whole.split(/[;:,(]/);
  const label = first.trim();
  if (label.length <= 34) return { label, help: label.length === whole.length ? '' : `${whole}.` };
  return { label: capitalised(humanizeName(name)), help: `${whole}.` };
}

function assumedText(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  return 'as usual';
}

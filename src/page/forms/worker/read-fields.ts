import { valueInUnits } from '../../../units/unit-system.js';
import type { Field } from '../../../engine/field.js';
import { InputError } from '../../../units/input-error.js';
import type { FieldIssue, ReadFields } from '../model/answer.js';
import { repairOf } from './repair.js';

type Fields = Readonly<Record<string, Field>>;

/** Every field looked at by itself, so that a message stands at its field while others are still empty. */
export function issuesOfFields(fields: Fields, inputs: Readonly<Record<string, unknown>>): FieldIssue[] {
  return Object.entries(inputs).flatMap(([name, value]): FieldIssue[] => {
    const field = fields[name];
    if (field === undefined) return [{ field: name, message: 'there is no field of this name' }];
    try {
      field.read(value);
      return [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.issues.map((issue) =>
        withRepair(
          fields,
          {
            ...issue,
            field:
              issue.field.startsWith('[') || issue.field === ''
                ? name + issue.field
                : `${name}.${issue.field}`,
          },
          inputs,
        ),
      );
    }
  });
}

/** The issue with a text that would mend it, where there is one. */
export function withRepair(
  fields: Fields,
  issue: FieldIssue,
  inputs: Readonly<Record<string, unknown>>,
): FieldIssue {
  const field = fields[issue.field];
  const value = inputs[issue.field];
  return field === undefined || typeof value === 'object'
    ? issue
    : { ...issue, repair: repairOf(field, value) };
}

/** Each field that can be read, in words. */
export function readFields(fields: Fields, inputs: Readonly<Record<string, unknown>>): ReadFields {
  const read: Record<string, { metric: string; inch: string }> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = fields[name];
    if (field === undefined) continue;
    try {
      const text = field.format(field.read(value));
      const both = /^([^()]*\S) \(([^()]*)\)$/.exec(text);
      read[name] = valueInUnits({ metric: both?.[1] ?? text, inch: both?.[2] ?? '' });
    } catch {
      // Not readable yet: said as an issue.
    }
  }
  return read;
}

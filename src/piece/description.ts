// The description of a piece: its fields, how it is read, and which of its values were assumed.
import {
  collectIssues,
  field,
  isPlainObject,
  makeParser,
  type Field,
  type Fields,
  type Input,
  type Parsed,
} from '../engine/field.js';
import { inputsJsonSchema } from '../engine/json-schema.js';
import type { JsonSchema } from '../engine/json-schema-type.js';
import { fixingFields, jointFields, partFields } from './part-fields.js';
import { costFields, finishFields, gluingFields, shopFields } from './workshop-fields.js';
import { shareEqual } from './shared-structure.js';
import { kindField, pileFields, topFields, useFields } from './top-and-use-fields.js';

/** Everything a piece is described by; lengths along from the left end of the top, across from its front edge, up from the floor. */
export const pieceFields = {
  name: field.text({ label: 'Name' }),
  kind: kindField,
  height: field.length({ label: 'Height of the top over the floor', above: '0 mm', max: '5 m' }),
  top: field.group(topFields, { label: 'Top' }),
  parts: field.record(field.group(partFields, { label: 'part' }), { label: 'Parts of the frame' }),
  joints: field.record(field.group(jointFields, { label: 'joint' }), { label: 'Joints', optional: true }),
  fixings: field.record(field.group(fixingFields, { label: 'fixing' }), {
    label: 'Fixings',
    optional: true,
  }),
  finishes: field.record(field.group(finishFields, { label: 'finish' }), {
    label: 'Finishes',
    optional: true,
  }),
  use: field.group(useFields, { label: 'Loads and use', default: {} }),
  pile: field.group(pileFields, { label: 'Pile and stock', default: {} }),
  shop: field.group(shopFields, { label: 'Shop', default: {} }),
  gluing: field.group(gluingFields, { label: 'Glue and clamps', default: {} }),
  costs: field.group(costFields, { label: 'Costs and hours', default: {} }),
} as const;

/** What a person writes to describe a piece. */
export type PieceInput = Input<typeof pieceFields>;
/** A description as read: base units, defaults filled in. */
export type Description = Parsed<typeof pieceFields>;

const parse = makeParser(pieceFields);

/** Reads a description. @throws InputError with every wrong value by its path, such as `parts.frontRail.section` */
export const readDescription = (written: unknown): Description => parse(written);

/** Reads some sections again; what equals the old one stays the same object. @throws InputError by path */
export function readSections(
  written: object,
  sections: readonly string[],
  before: Description,
): Partial<Description> {
  const given = written as Readonly<Record<string, unknown>>;
  const read = collectIssues(
    sections.map((name) => [name, () => (pieceFields as Fields)[name]?.read(given[name])] as const),
  );
  const old = before as Readonly<Record<string, unknown>>;
  return Object.fromEntries(sections.map((name, i) => [name, shareEqual(old[name], read[i])]));
}

/** The published schema of `*.piece.json`. */
export const pieceJsonSchema = (): JsonSchema =>
  inputsJsonSchema({
    name: 'piece',
    topic: 'piece',
    title: 'Description of a piece',
    about: 'One piece of furniture of straight parts: its top, frame, joints, fixings, use, shop and pile.',
    inputs: pieceFields,
    outputs: {},
    example: {},
  });

/** A value that nobody wrote: its path, its label, and the default in words. */
export interface Assumed {
  readonly path: string;
  readonly label: string;
  readonly value: string;
}

/** The defaults in use, by path. */
export function assumedValues(written: object): readonly Assumed[] {
  const found: Assumed[] = [];
  const visit = (fields: Fields, given: Readonly<Record<string, unknown>>, path: string): void => {
    for (const [name, f] of Object.entries(fields)) {
      const value = given[name];
      const at = path === '' ? name : `${path}.${name}`;
      if (value === undefined && f.default !== undefined && f.kind !== 'group')
        found.push({ path: at, label: f.label, value: f.format(f.read(undefined)) });
      else visitBelow(f, value, at, visit);
    }
  };
  visit(pieceFields, written as Readonly<Record<string, unknown>>, '');
  return found;
}

function visitBelow(
  f: Field,
  value: unknown,
  at: string,
  visit: (fields: Fields, given: Readonly<Record<string, unknown>>, path: string) => void,
): void {
  if (f.kind === 'group' && f.fields && (value !== undefined || f.default !== undefined))
    visit(f.fields, isPlainObject(value) ? value : {}, at);
  const each = f.items?.[0]?.fields;
  if (f.kind === 'record' && each && isPlainObject(value))
    for (const [name, one] of Object.entries(value))
      if (isPlainObject(one)) visit(each, one, `${at}.${name}`);
}

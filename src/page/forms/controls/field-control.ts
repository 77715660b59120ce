import type { FieldModel } from '../model/recipe-model.js';

/** What holds one value on a form. */
export interface Control {
  readonly element: HTMLElement;
  /** The element that a label belongs to and that takes the focus. */
  readonly input: HTMLElement;
  /** Shows plain data; undefined where nothing is given. */
  show(value: unknown): void;
}

/** What a control is made for. */
export interface ControlContext {
  readonly field: FieldModel;
  /** Id of its input, unique on the page. */
  readonly id: string;
  /** A default that stands when nothing is given, as text. */
  readonly assumed: string | undefined;
  /** Called with the plain data that a person has given; undefined where it was emptied. */
  readonly write: (value: unknown) => void;
  /** Names to choose from; asked for when the list is first opened. */
  readonly names: () => Promise<readonly string[]>;
}

/** Text of a simple value; undefined for lists and objects. */
export function textOf(value: unknown): string | undefined {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return undefined;
}

/** An example as one short line; empty where it is a list or an object. */
export const exampleText = (field: FieldModel): string => textOf(field.example) ?? '';

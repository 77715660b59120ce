import { InputError, inspectValue } from '../units/input-error.js';

/** What a field of a recipe takes: facts for people and pages, and the check itself. `In` is what a person writes, `Out` what `solve` gets. */
export interface Field<In = unknown, Out = unknown, Optional extends boolean = boolean> {
  /** Carries the types alone; there is no such member at run time. */
  readonly '~types'?: { readonly in: In; readonly out: Out };
  /** 'length', 'moisture', ... or 'choice', 'flag', 'text', 'list', 'table', 'group', 'record', 'either', 'timber'. */
  readonly kind: string;
  /** Its name in one to four words, as tables, axes and notes show it. */
  readonly label: string;
  /** One sentence for forms and reference: what is meant, when to leave it out. */
  readonly help?: string;
  /** What it takes, in words with a right example. */
  readonly expects: string;
  readonly optional: Optional;
  /** The default as a person would write it. */
  readonly default?: unknown;
  readonly symbol?: string;
  /** Unit in which it is shown and charted. */
  readonly unit?: string;
  /** Limits in the base unit. */
  readonly min?: number;
  readonly max?: number;
  readonly choices?: readonly string[];
  /** Columns or parts, of a table or group. */
  readonly fields?: Fields;
  /** Item of a list or record; alternatives of an either. */
  readonly items?: readonly Field[];
  /** Reads what a person wrote. @throws InputError with paths below this field */
  read(value: unknown): Out;
  /** Shows the read value in words: metric first, inches in brackets. */
  format(value: Out): string;
  /** Could this value be meant for this field? Decides between alternatives. */
  accepts(value: unknown): boolean;
}

export type Fields = { readonly [name: string]: Field };

export type InputOf<F> = F extends { readonly '~types'?: { readonly in: infer I } } ? I : never;
export type ParsedOf<F> = F extends { readonly '~types'?: { readonly out: infer O } } ? O : never;
type OptionalNames<F extends Fields> = { [K in keyof F]: F[K]['optional'] extends true ? K : never }[keyof F];

/** What a person writes for a set of fields. */
export type Input<F extends Fields> = {
  readonly [K in Exclude<keyof F, OptionalNames<F>>]: InputOf<F[K]>;
} & {
  readonly [K in OptionalNames<F>]?: InputOf<F[K]>;
};
/** What the recipe gets: numbers in base units, checked, defaults filled in. */
export type Parsed<F extends Fields> = { readonly [K in keyof F]: ParsedOf<F[K]> };

/** What every field's options hold. */
export interface BaseFieldOptions {
  readonly label: string;
  readonly help?: string;
  /** May be left out and has no default. */
  readonly optional?: true;
}

export type IsOptional<O> = O extends { optional: true }
  ? true
  : O extends { default: string | number | boolean | object }
    ? true
    : false;
export type MaybeOut<O, Out> = O extends { optional: true } ? Out | undefined : Out;

interface Parts<Out> {
  readonly kind: string;
  readonly expects: string;
  readonly read: (value: unknown) => Out;
  readonly format: (value: Out) => string;
  readonly accepts: (value: unknown) => boolean;
}

/** Puts the optional and default handling round a field's own reading. Used by other folders to make fields of their own. */
export function makeField<In, Out, const O extends BaseFieldOptions & { readonly default?: unknown }>(
  parts: Parts<Out>,
  options: O,
  more: Partial<Pick<Field, 'symbol' | 'unit' | 'min' | 'max' | 'choices' | 'fields' | 'items'>> = {},
): Field<In, MaybeOut<O, Out>, IsOptional<O>> {
  const optional = (options.optional === true || options.default !== undefined) as IsOptional<O>;
  const read = (value: unknown): MaybeOut<O, Out> => {
    if (value === undefined) {
      if (options.default !== undefined) return parts.read(options.default);
      if (options.optional) return undefined as MaybeOut<O, Out>;
      throw new InputError(`missing; takes ${parts.expects}`);
    }
    return parts.read(value);
  };
  return {
    kind: parts.kind,
    label: options.label,
    ...(options.help === undefined ? {} : { help: options.help }),
    expects: parts.expects,
    optional,
    ...(options.default !== undefined ? { default: options.default } : {}),
    ...more,
    read,
    format: (value) => (value === undefined ? 'not given' : parts.format(value)),
    accepts: parts.accepts,
  };
}

/** A field shows only what it could have read: an `either` tries its alternatives in turn and goes by this. */
export function assertAccepted<T>(fits: boolean, value: T): T {
  if (!fits) throw new TypeError(`not a value of this field: ${inspectValue(value)}`);
  return value;
}

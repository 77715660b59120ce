// How a recipe takes the state of the wood: as a moisture, or as the air it has come to rest in; and how it was sawn.
import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { field, isPlainObject, makeField, type Field } from '../../engine/field.js';
import type { Trace } from '../../engine/trace.js';
import { outOfRange } from '../../engine/caution.js';
import { airLimits, inTable, outsideTable, sorptionSource, workEquilibrium } from './sorption.js';

/** Air that the wood rests in: °C and a fraction. */
export interface Air {
  readonly temperature: number;
  readonly humidity: number;
}
/** A moisture as a fraction, or air. */
export type WoodState = number | Air;
/** As written: `'8 %'`, `{ temperature: '21 degC', humidity: '50 %' }`, or in one text `'21 degC, 50 %'`. */
export type StateWritten =
  | string
  | Quantity<'moisture'>
  | {
      readonly temperature: string | Quantity<'temperature'>;
      readonly humidity: string | Quantity<'humidity'>;
    };

export const airField = field.group(
  {
    temperature: field.temperature({
      label: 'temperature of the air',
      min: airLimits.coldest,
      max: airLimits.hottest,
    }),
    humidity: field.humidity({ label: 'relative humidity', min: '0 %', max: '100 %' }),
  },
  { label: 'air', help: 'Temperature and humidity of the air that the wood has settled in.' },
);
const moistureField = field.moisture({ label: 'moisture content', min: '0 %', max: '300 %' });

const takes =
  'a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }';

/** A field that takes a moisture or air. */
export function stateField(label: string): Field<StateWritten, WoodState, false> {
  return makeField<StateWritten, WoodState, { label: string }>(
    {
      kind: 'either',
      expects: takes,
      accepts: (v) => typeof v === 'string' || v instanceof Quantity || isPlainObject(v),
      format: (s) =>
        typeof s === 'number' ? new Quantity('moisture', s).toString() : `air of ${airField.format(s)}`,
      read: (v) => {
        if (typeof v === 'string') {
          const air = /^([^,;]*?(?:deg ?[CF]|[CF]|K|°[CF])\b)[,;]?\s+(.*)$/.exec(v.trim());
          if (air)
            return airField.read({
              temperature: air[1],
              humidity: (air[2] as string).replace(/\s*(rh|RH)$/, ''),
            });
        }
        if (isPlainObject(v) && ('temperature' in v || 'humidity' in v)) return airField.read(v);
        if (typeof v === 'string' || v instanceof Quantity || isPlainObject(v)) return moistureField.read(v);
        throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
      },
    },
    { label: label },
    { items: [moistureField, airField] },
  );
}

/** The same field, optional; `without` says what its absence means. */
export function optionalStateField(
  label: string,
  without = 'not given',
): Field<StateWritten, WoodState | undefined, true> {
  const inner = stateField(label);
  return {
    ...inner,
    optional: true,
    read: (v) => (v === undefined ? undefined : inner.read(v)),
    format: (s) => (s === undefined ? without : inner.format(s)),
  };
}

/** The moisture of a state, its calculation noted. */
export function moistureOf(trace: Trace, state: WoodState, name: string): number {
  if (typeof state === 'number') {
    if (!(state >= 0 && state <= 3))
      throw new InputError({ field: name, message: `got ${inspectValue(state)}, takes ${takes}` });
    return state;
  }
  if (!inTable(state.temperature, state.humidity)) trace.warn(outOfRange(outsideTable, sorptionSource));
  return workEquilibrium(
    trace,
    state.temperature,
    state.humidity,
    `${name}: moisture that wood comes to in this air`,
  );
}

/** How the rings lie: an angle from flat (0, rings along the width) to quarter (a quarter turn), or not known. */
export interface Cut {
  readonly angle: number;
  readonly unknown: boolean;
}
export type CutWritten = string | Quantity<'angle'>;

const cuts: Readonly<Record<string, Cut>> = {
  flatsawn: { angle: 0, unknown: false },
  flat: { angle: 0, unknown: false },
  plainsawn: { angle: 0, unknown: false },
  tangential: { angle: 0, unknown: false },
  backsawn: { angle: 0, unknown: false },
  throughandthrough: { angle: 0, unknown: false },
  quartersawn: { angle: Math.PI / 2, unknown: false },
  quarter: { angle: Math.PI / 2, unknown: false },
  radial: { angle: Math.PI / 2, unknown: false },
  riftsawn: { angle: Math.PI / 4, unknown: false },
  rift: { angle: Math.PI / 4, unknown: false },
  mixed: { angle: Math.PI / 4, unknown: true },
  unknown: { angle: Math.PI / 4, unknown: true },
};
const angleField = field.angle({
  label: 'ring angle',
  help: 'Angle between the growth rings and the face.',
  min: '0 deg',
  max: '90 deg',
});
const cutTakes =
  '"flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn)';

/** A field that takes a way of sawing or a ring angle. */
export function cutField<const O extends { readonly label: string; readonly default?: string }>(
  options: O,
): Field<CutWritten, Cut, O extends { default: string } ? true : false> {
  return makeField<CutWritten, Cut, O>(
    {
      kind: 'cut',
      expects: cutTakes,
      accepts: (v) => typeof v === 'string' || v instanceof Quantity || isPlainObject(v),
      format: cutWords,
      read: (v) => {
        if (typeof v === 'string') {
          const key = v.toLowerCase().replace(/[^a-z]/g, '');
          if (!/\d/.test(v) && Object.hasOwn(cuts, key)) return cuts[key] as Cut;
        }
        const angle = tryParse(() => angleField.read(v));
        if (angle instanceof InputError)
          throw new InputError(
            `got ${inspectValue(v instanceof Quantity ? v.toString() : v)}, takes ${cutTakes}`,
          );
        return { angle, unknown: false };
      },
    },
    options,
    { choices: ['flat-sawn', 'quarter-sawn', 'rift-sawn', 'mixed'] },
  ) as unknown as Field<CutWritten, Cut, O extends { default: string } ? true : false>;
}

export function cutWords(c: Cut): string {
  if (c.unknown) return 'mixed or not known: from quarter-sawn to flat-sawn';
  const degrees = (c.angle * 180) / Math.PI;
  return degrees === 0
    ? 'flat-sawn'
    : degrees === 90
      ? 'quarter-sawn'
      : `rings at ${Number(degrees.toFixed(1))}° to the face`;
}

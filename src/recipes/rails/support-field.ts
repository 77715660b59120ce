import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { field, isPlainObject, makeField, makeParser } from '../../engine/field.js';
import { inBounds, listOf, place } from './beam-list.js';
import type { Support } from './beam-loads.js';

type Written<K extends 'length' | 'force' | 'lineLoad' | 'moment' | 'springRate' | 'rotationalStiffness'> =
  string | Quantity<K>;

/** A support as a user writes it; `kind` defaults to pinned. A text is a position: "0 mm", "fixed 0 mm". */
export type SupportGiven =
  | string
  | {
      readonly position: Written<'length'>;
      readonly kind?: SupportKind;
      readonly type?: SupportKind;
      readonly stiffness?: Written<'springRate'>;
      readonly turning?: Written<'rotationalStiffness'>;
    };
type SupportKind = 'pinned' | 'fixed' | 'spring';

const kinds = ['pinned', 'fixed', 'spring'] as const;

const supportParts = makeParser({
  position: place('from the left end'),
  kind: field.choice(kinds, { label: 'how it holds', optional: true }),
  type: field.choice(kinds, { label: 'the same as kind', optional: true }),
  stiffness: field.springRate({
    label: 'spring stiffness',
    help: 'Force for each millimetre that a spring gives.',
    above: '0 N/mm',
    max: '1e9 N/mm',
    optional: true,
  }),
  turning: field.quantity('rotationalStiffness', {
    label: 'turning stiffness',
    help: 'Moment for each radian that it turns.',
    above: '0 N m/rad',
    max: '1e12 N m/rad',
    optional: true,
  }),
});
const supportTakes =
  'a list of supports such as { position: "0 mm", kind: "pinned" }; kinds are pinned, fixed and spring (with stiffness), and turning is a spring against turning';

/** A support in base units, as a sweep hands it on; one that does not hold the beam up is none. */
const isReadSupport = (v: Record<string, unknown>): v is Record<string, unknown> & Support =>
  inBounds(v, { position: [0, 100], lift: [Number.MIN_VALUE, Infinity], turn: [0, Infinity] });

function readSupport(value: unknown): Support {
  if (typeof value === 'string') {
    const word = /^(pinned|fixed)\s+(.*)$/i.exec(value.trim());
    return readSupport(word ? { kind: word[1]?.toLowerCase(), position: word[2] } : { position: value });
  }
  if (!isPlainObject(value)) throw new InputError(`got ${inspectValue(value)}, takes ${supportTakes}`);
  if (isReadSupport(value)) return value;
  const s = supportParts(value);
  const kind = s.kind ?? s.type ?? (s.stiffness === undefined ? 'pinned' : 'spring');
  checkParts(kind, s.stiffness, s.turning);
  return {
    position: s.position,
    lift: kind === 'spring' ? (s.stiffness as number) : Infinity,
    turn: kind === 'fixed' ? Infinity : (s.turning ?? 0),
  };
}

/** @throws InputError for a stiffness that is missing or does not go with the kind of support */
function checkParts(kind: SupportKind, stiffness: number | undefined, turning: number | undefined): void {
  if (kind === 'spring' && stiffness === undefined)
    throw new InputError({
      field: 'stiffness',
      message: 'missing; a spring takes the force for each millimetre it gives, such as "200 N/mm"',
    });
  if (kind !== 'spring' && stiffness !== undefined)
    throw new InputError({
      field: 'stiffness',
      message: `got a stiffness at a support that is ${kind}; takes kind "spring" with it`,
    });
  if (kind === 'fixed' && turning !== undefined)
    throw new InputError({
      field: 'turning',
      message:
        'got a stiffness against turning at a fixed support; takes it at one that is pinned or a spring',
    });
}

/** A field for the supports of a beam. */
export function supportsField<
  const O extends { readonly label: string; readonly default?: readonly SupportGiven[] },
>(options: O) {
  const text = (list: readonly Support[]): string =>
    list
      .map(
        (s) =>
          `${s.turn === Infinity ? 'fixed' : s.lift === Infinity ? 'pinned' : `spring of ${new Quantity('springRate', s.lift).toString()}`} at ${new Quantity('length', s.position).toString()}`,
      )
      .join(', ');
  return makeField<readonly SupportGiven[] | string, readonly Support[], O>(
    {
      kind: 'supports',
      expects: supportTakes,
      read: (v) => listOf(v, supportTakes, readSupport, 60),
      format: text,
      accepts: (v) => Array.isArray(v) || typeof v === 'string',
    },
    options,
  );
}

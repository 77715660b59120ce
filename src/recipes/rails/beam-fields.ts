import { both, Quantity } from '../../quantities/quantity.js';
import { nearest, Refusal, shown } from '../../quantities/refusal.js';
import { field, isPlainObject, makeField, schemaOf, together } from '../../recipe/field.js';
import type { Load, Support } from './beam-loads.js';

type Written<K extends 'length' | 'force' | 'lineLoad' | 'moment' | 'springRate' | 'rotationalStiffness'> =
  string | Quantity<K>;

/** A support as a person writes it; `kind` is pinned unless said. A text is a position: "0 mm", "fixed 0 mm". */
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

/** A load as a person writes it; `kind` may be left out where the parts tell it. */
export type LoadGiven =
  | string
  | { readonly kind?: 'point'; readonly position: Written<'length'>; readonly force: Written<'force'> }
  | { readonly kind?: 'point'; readonly at: Written<'length'>; readonly force: Written<'force'> }
  | { readonly kind?: 'uniform'; readonly load: Written<'lineLoad'> }
  | {
      readonly kind?: 'partial';
      readonly from: Written<'length'>;
      readonly to: Written<'length'>;
      readonly load: Written<'lineLoad'>;
      readonly loadTo?: Written<'lineLoad'>;
    }
  | { readonly kind?: 'moment'; readonly position: Written<'length'>; readonly moment: Written<'moment'> };

/** A load before the beam's length is known: `uniform` runs from end to end. */
export type LoadRead = Load | { readonly kind: 'uniform'; readonly q: number };

const place = (says: string) => field.length({ says, min: '0 mm', max: '100 m' });
const q = (says: string) => field.lineLoad({ says, min: '-1000 kN/m', max: '1000 kN/m' });
const kinds = ['pinned', 'fixed', 'spring'] as const;

const supportParts = schemaOf({
  position: place('from the left end'),
  kind: field.choice(kinds, { says: 'how it holds', optional: true }),
  type: field.choice(kinds, { says: 'the same as kind', optional: true }),
  stiffness: field.springRate({
    says: 'force for each millimetre that a spring gives',
    above: '0 N/mm',
    max: '1e9 N/mm',
    optional: true,
  }),
  turning: field.quantity('rotationalStiffness', {
    says: 'moment for each radian that it turns',
    above: '0 N m/rad',
    max: '1e12 N m/rad',
    optional: true,
  }),
});
const pointParts = schemaOf({
  kind: field.text({ says: 'point', optional: true }),
  position: place('from the left end'),
  force: field.force({ says: 'down', min: '-10000 kN', max: '10000 kN' }),
});
const momentParts = schemaOf({
  kind: field.text({ says: 'moment', optional: true }),
  position: place('from the left end'),
  moment: field.moment({ says: 'clockwise', min: '-10000 kN m', max: '10000 kN m' }),
});
const uniformParts = schemaOf({
  kind: field.text({ says: 'uniform', optional: true }),
  load: q('by length, down'),
});
const partialParts = schemaOf({
  kind: field.text({ says: 'partial', optional: true }),
  from: place('where it begins'),
  to: place('where it ends'),
  load: q('by length at its beginning, down'),
  loadTo: field.lineLoad({
    says: 'by length at its end; as at its beginning if left out',
    min: '-1000 kN/m',
    max: '1000 kN/m',
    optional: true,
  }),
});

const supportTakes =
  'a list of supports such as { position: "0 mm", kind: "pinned" }; kinds are pinned, fixed and spring (with stiffness), and turning is a spring against turning';
const loadTakes =
  'a list of loads, as text ("10 kN at 500 mm", "2 kN/m from 0 mm to 600 mm", "450 N/m") or as parts: { position, force }, { load } from end to end, { from, to, load, loadTo? }, or { position, moment }';

function list<T>(value: unknown, takes: string, one: (v: unknown) => T, most: number): T[] {
  const items =
    typeof value === 'string'
      ? value
          .split(/[;,]/)
          .map((s) => s.trim())
          .filter((s) => s !== '')
      : value;
  if (!Array.isArray(items)) throw new Refusal(`got ${shown(value)}, takes ${takes}`);
  if (items.length === 0 || items.length > most)
    throw new Refusal(`got ${items.length} entries, takes 1 to ${most}: ${takes}`);
  return together(items.map((v, i) => [`[${i + 1}]`, () => one(v)] as const));
}

/** Numbers in base units, as a sweep hands them on. */
const isReadSupport = (v: unknown): v is Support =>
  isPlainObject(v) &&
  (['position', 'lift', 'turn'] as const).every((k) => typeof v[k] === 'number' && !Number.isNaN(v[k]));
const isReadLoad = (v: Record<string, unknown>): v is Record<string, unknown> & LoadRead => {
  const names = {
    point: ['at', 'force'],
    moment: ['at', 'moment'],
    spread: ['from', 'to', 'q1', 'q2'],
    uniform: ['q'],
  }[v['kind'] as string];
  return names !== undefined && names.every((k) => typeof v[k] === 'number' && Number.isFinite(v[k]));
};

function readSupport(value: unknown): Support {
  if (isReadSupport(value)) return value;
  if (typeof value === 'string') {
    const word = /^(pinned|fixed)\s+(.*)$/i.exec(value.trim());
    return readSupport(word ? { kind: word[1]?.toLowerCase(), position: word[2] } : { position: value });
  }
  if (!isPlainObject(value)) throw new Refusal(`got ${shown(value)}, takes ${supportTakes}`);
  const s = supportParts(value);
  const kind = s.kind ?? s.type ?? (s.stiffness === undefined ? 'pinned' : 'spring');
  if (kind === 'spring' && s.stiffness === undefined)
    throw new Refusal({
      field: 'stiffness',
      says: 'missing; a spring takes the force for each millimetre it gives, such as "200 N/mm"',
    });
  if (kind !== 'spring' && s.stiffness !== undefined)
    throw new Refusal({
      field: 'stiffness',
      says: `got a stiffness at a support that is ${kind}; takes kind "spring" with it`,
    });
  if (kind === 'fixed' && s.turning !== undefined)
    throw new Refusal({
      field: 'turning',
      says: 'got a stiffness against turning at a fixed support; takes it at one that is pinned or a spring',
    });
  return {
    position: s.position,
    lift: kind === 'spring' ? (s.stiffness as number) : Infinity,
    turn: kind === 'fixed' ? Infinity : (s.turning ?? 0),
  };
}

/** "10 kN at 500 mm", "2 kN/m from 0 mm to 600 mm", "450 N/m". */
function loadOfText(text: string): LoadRead {
  const between = /^(\S+ ?\S+) from (.{1,30}) to (.{1,30})$/.exec(text);
  if (between) return readLoad({ load: between[1], from: between[2], to: between[3] });
  const at = /^(.{1,30}) at (.{1,30})$/.exec(text);
  if (!at) return readLoad({ load: text });
  return readLoad(
    /m(?:m)?$|in$|ft$/.test(at[1] as string)
      ? { moment: at[1], position: at[2] }
      : { force: at[1], position: at[2] },
  );
}

function readLoad(value: unknown): LoadRead {
  if (typeof value === 'string') return loadOfText(value.trim().replace(/\s+/g, ' '));
  if (!isPlainObject(value)) throw new Refusal(`got ${shown(value)}, takes ${loadTakes}`);
  if (isReadLoad(value)) return value;
  const kind =
    value['kind'] ??
    value['type'] ??
    ('force' in value
      ? 'point'
      : 'moment' in value
        ? 'moment'
        : 'from' in value || 'to' in value
          ? 'partial'
          : 'load' in value
            ? 'uniform'
            : undefined);
  const { type: _, at, ...rest } = value;
  const parts = at === undefined ? rest : { position: at, ...rest };
  switch (kind) {
    case 'point': {
      const p = pointParts(parts);
      return { kind: 'point', at: p.position, force: p.force };
    }
    case 'moment': {
      const m = momentParts(parts);
      return { kind: 'moment', at: m.position, moment: m.moment };
    }
    case 'uniform':
      return { kind: 'uniform', q: uniformParts(parts).load };
    case 'partial': {
      const p = partialParts(parts);
      if (p.to <= p.from)
        throw new Refusal({
          field: 'to',
          says: `got ${both(new Quantity('length', p.to))}, takes more than where the load begins, ${both(new Quantity('length', p.from))}`,
        });
      return { kind: 'spread', from: p.from, to: p.to, q1: p.load, q2: p.loadTo ?? p.load };
    }
    default: {
      const near =
        typeof kind === 'string' ? nearest(kind, ['point', 'uniform', 'partial', 'moment']) : undefined;
      throw new Refusal(
        `got ${shown(value)}, takes ${near ? `kind ${shown(near)}, or ` : ''}one of ${loadTakes}`,
      );
    }
  }
}

/** A field for the supports of a beam. */
export function supportsField<
  const O extends { readonly says: string; readonly default?: readonly SupportGiven[] },
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
      takes: supportTakes,
      read: (v) => list(v, supportTakes, readSupport, 60),
      show: text,
      fits: (v) => Array.isArray(v) || typeof v === 'string',
    },
    options,
  );
}

/** A field for the loads on a beam. */
export function loadsField<const O extends { readonly says: string }>(options: O) {
  const one = (l: LoadRead): string => {
    switch (l.kind) {
      case 'point':
        return `${new Quantity('force', l.force).toString()} at ${new Quantity('length', l.at).toString()}`;
      case 'moment':
        return `${new Quantity('moment', l.moment).toString()} at ${new Quantity('length', l.at).toString()}`;
      case 'uniform':
        return `${new Quantity('lineLoad', l.q).toString()} all along`;
      case 'spread':
        return `${new Quantity('lineLoad', l.q1).toString()}${l.q2 === l.q1 ? '' : ` to ${new Quantity('lineLoad', l.q2).toString()}`} from ${new Quantity('length', l.from).toString()} to ${new Quantity('length', l.to).toString()}`;
    }
  };
  return makeField<readonly LoadGiven[] | string, readonly LoadRead[], O>(
    {
      kind: 'loads',
      takes: loadTakes,
      read: (v) => list(v, loadTakes, readLoad, 200),
      show: (l) => l.map(one).join(', '),
      fits: (v) => Array.isArray(v) || typeof v === 'string',
    },
    options,
  );
}

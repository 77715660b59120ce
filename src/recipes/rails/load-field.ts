import { both, Quantity } from '../../units/quantity.js';
import { nearest, InputError, inspectValue } from '../../units/input-error.js';
import { field, isPlainObject, makeField, makeParser } from '../../engine/field.js';
import { inBounds, listOf, place } from './beam-list.js';
import type { Load } from './beam-loads.js';

type Written<K extends 'length' | 'force' | 'lineLoad' | 'moment'> = string | Quantity<K>;

/** A load as a user writes it; `kind` is optional where the other parts settle it. */
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

const q = (label: string) => field.lineLoad({ label: label, min: '-1000 kN/m', max: '1000 kN/m' });
const pointParts = makeParser({
  kind: field.text({ label: 'point', optional: true }),
  position: place('from the left end'),
  force: field.force({ label: 'down', min: '-10000 kN', max: '10000 kN' }),
});
const momentParts = makeParser({
  kind: field.text({ label: 'moment', optional: true }),
  position: place('from the left end'),
  moment: field.moment({ label: 'clockwise', min: '-10000 kN m', max: '10000 kN m' }),
});
const uniformParts = makeParser({
  kind: field.text({ label: 'uniform', optional: true }),
  load: q('by length, down'),
});
const partialParts = makeParser({
  kind: field.text({ label: 'partial', optional: true }),
  from: place('where it begins'),
  to: place('where it ends'),
  load: q('by length at its beginning, down'),
  loadTo: field.lineLoad({
    label: 'load at end',
    help: 'Load by length at its end; leave it out where it is that at the beginning.',
    min: '-1000 kN/m',
    max: '1000 kN/m',
    optional: true,
  }),
});

const loadTakes =
  'a list of loads, as text ("10 kN at 500 mm", "2 kN/m from 0 mm to 600 mm", "450 N/m") or as parts: { position, force }, { load } from end to end, { from, to, load, loadTo? }, or { position, moment }';

/** Bounds of loads in base units, as a sweep hands them on: those of the fields above. */
const at = [0, 100] as const;
const force = [-1e7, 1e7] as const;
const line = [-1e6, 1e6] as const;
const bounds = {
  point: { at, force },
  moment: { at, moment: force },
  spread: { from: at, to: at, q1: line, q2: line },
  uniform: { q: line },
};
function isReadLoad(v: Record<string, unknown>): v is Record<string, unknown> & LoadRead {
  const wanted = Object.hasOwn(bounds, String(v['kind'])) && bounds[v['kind'] as keyof typeof bounds];
  return wanted !== false && inBounds(v, wanted) && !((v['to'] as number) <= (v['from'] as number));
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
  if (!isPlainObject(value)) throw new InputError(`got ${inspectValue(value)}, takes ${loadTakes}`);
  if (isReadLoad(value)) return value;
  const kind = value['kind'] ?? value['type'] ?? kindByParts(value);
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
    case 'partial':
      return partialLoad(parts);
    default: {
      const near =
        typeof kind === 'string' ? nearest(kind, ['point', 'uniform', 'partial', 'moment']) : undefined;
      throw new InputError(
        `got ${inspectValue(value)}, takes ${near ? `kind ${inspectValue(near)}, or ` : ''}one of ${loadTakes}`,
      );
    }
  }
}

/** The kind of a load that has no `kind`, from the names of its parts. */
function kindByParts(value: Record<string, unknown>): string | undefined {
  if ('force' in value) return 'point';
  if ('moment' in value) return 'moment';
  if ('from' in value || 'to' in value) return 'partial';
  return 'load' in value ? 'uniform' : undefined;
}

function partialLoad(parts: Record<string, unknown>): LoadRead {
  const p = partialParts(parts);
  if (p.to <= p.from)
    throw new InputError({
      field: 'to',
      message: `got ${both(new Quantity('length', p.to))}, takes more than where the load begins, ${both(new Quantity('length', p.from))}`,
    });
  return { kind: 'spread', from: p.from, to: p.to, q1: p.load, q2: p.loadTo ?? p.load };
}

/** A field for the loads on a beam. */
export function loadsField<const O extends { readonly label: string }>(options: O) {
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
      expects: loadTakes,
      read: (v) => listOf(v, loadTakes, readLoad, 200),
      format: (l) => l.map(one).join(', '),
      accepts: (v) => Array.isArray(v) || typeof v === 'string',
    },
    options,
  );
}

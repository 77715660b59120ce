import { twoSides } from '../../units/written-forms.js';
import { both, Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { field, isPlainObject, makeField, makeParser, collectIssues } from '../../engine/field.js';

/** A piece of a built-up section; without a modulus of its own it has that of the whole. Metres, pascals. */
export interface Piece {
  readonly width: number;
  readonly depth: number;
  readonly modulus?: number | undefined;
}

/** The cross-section of a rail, lengths in metres; `depth` stands in the direction of the load. */
export type Section =
  | { readonly shape: 'solid'; readonly width: number; readonly depth: number }
  | { readonly shape: 'round'; readonly diameter: number }
  /** Two upright webs under and over two flanges of the full width. */
  | {
      readonly shape: 'box';
      readonly width: number;
      readonly depth: number;
      readonly web: number;
      readonly flange: number;
    }
  /** Laid one on another, from the top down; glued into one, or loose so that each slides on the next. */
  | { readonly shape: 'layers'; readonly pieces: readonly Piece[]; readonly loose: boolean }
  /** Standing side by side, fastened so that they sag alike, each about its own middle. */
  | { readonly shape: 'beside'; readonly pieces: readonly Piece[] };

/** What a user may write for a section. */
export type SectionGiven =
  | string
  | { readonly width: Side; readonly depth: Side; readonly web?: Side; readonly flange?: Side }
  | { readonly diameter: Side }
  | { readonly layers: readonly PieceGiven[]; readonly loose?: boolean }
  | { readonly beside: readonly PieceGiven[] };
type Side = string | Quantity<'length'>;
type PieceGiven = {
  readonly width: Side;
  readonly depth: Side;
  readonly modulus?: string | Quantity<'modulus'>;
};

const side = (label: string) => field.length({ label: label, above: '0 mm', max: '3 m' });
const solid = makeParser({ width: side('across the load'), depth: side('in the direction of the load') });
const box = makeParser({
  width: side('of the whole box'),
  depth: side('of the whole box'),
  web: side('thickness of each upright side'),
  flange: side('thickness of top and bottom'),
});
const round = makeParser({ diameter: side('of a round bar') });
const piece = makeParser({
  width: side('across the load'),
  depth: side('in the direction of the load'),
  modulus: field.modulus({
    label: 'modulus of elasticity',
    help: 'Modulus of elasticity of this piece.',
    above: '0 MPa',
    max: '100 GPa',
    optional: true,
  }),
});

const takes =
  'width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }';

/** A field for a section: text, solid, box, round, layers or pieces side by side. */
export function sectionField<
  const O extends { readonly label: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  return makeField<SectionGiven, Section, O>(
    {
      kind: 'section',
      expects: takes,
      read: readSection,
      format: sectionText,
      accepts: (v) => typeof v === 'string' || isPlainObject(v),
    },
    options,
  );
}

/** A field for a plain rectangle alone. */
export function solidField<
  const O extends { readonly label: string; readonly optional?: true; readonly default?: string },
>(options: O) {
  const read = (v: unknown): Extract<Section, { shape: 'solid' }> => {
    const s = readSection(v);
    if (s.shape !== 'solid')
      throw new InputError(`got ${sectionText(s)}, takes a solid section such as "45 x 95 mm"`);
    return s;
  };
  return makeField<SectionGiven, Extract<Section, { shape: 'solid' }>, O>(
    {
      kind: 'section',
      expects: 'width by depth such as "45 x 95 mm", or { width, depth }',
      read,
      format: sectionText,
      accepts: (v) => typeof v === 'string' || isPlainObject(v),
    },
    options,
  );
}

function readSection(value: unknown): Section {
  if (typeof value === 'string') return { shape: 'solid', ...solid(sides(value)) };
  if (!isPlainObject(value)) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  if (typeof value['shape'] === 'string') return readAgain(value);
  if ('diameter' in value) return { shape: 'round', ...round(value) };
  if ('layers' in value)
    return { shape: 'layers', pieces: pieces('layers', value['layers']), loose: loose(value) };
  if ('beside' in value) return { shape: 'beside', pieces: pieces('beside', rest(value, ['beside'])) };
  if ('web' in value || 'flange' in value) {
    const b = box(value);
    if (2 * b.web >= b.width)
      throw new InputError({
        field: 'web',
        message: `got ${mm(b.web)}, takes less than half the width of ${mm(b.width)}`,
      });
    if (2 * b.flange >= b.depth)
      throw new InputError({
        field: 'flange',
        message: `got ${mm(b.flange)}, takes less than half the depth of ${mm(b.depth)}`,
      });
    return { shape: 'box', ...b };
  }
  return { shape: 'solid', ...solid(value) };
}

/** A section already read, its lengths numbers in metres: checked again, since a user could have written it. */
function readAgain(value: Record<string, unknown>): Section {
  const { shape, loose: slides, ...parts } = value;
  const metres = (v: unknown): unknown => (typeof v === 'number' ? `${v} m` : v);
  const each = (o: unknown): unknown =>
    isPlainObject(o)
      ? Object.fromEntries(
          Object.entries(o).map(([k, v]) => [
            k,
            k === 'modulus' && typeof v === 'number' ? `${v} Pa` : metres(v),
          ]),
        )
      : o;
  const list = Array.isArray(parts['pieces']) ? parts['pieces'].map(each) : parts['pieces'];
  if (shape === 'layers') return readSection({ layers: list, loose: slides });
  if (shape === 'beside') return readSection({ beside: list });
  return readSection(each(parts));
}

/** "45 x 95 mm": a side without a unit has that of the other. */
function sides(text: string): { width: string; depth: string } {
  const { first, second } = twoSides(text, takes);
  return { width: first, depth: second };
}

function rest(value: Record<string, unknown>, allowed: readonly string[]): unknown {
  const stranger = Object.keys(value).find((k) => !allowed.includes(k));
  if (stranger)
    throw new InputError({ field: stranger, message: `no such part of this section; takes ${takes}` });
  return value[allowed[0] as string];
}

function loose(value: Record<string, unknown>): boolean {
  rest(value, ['layers', 'loose']);
  const v = value['loose'] ?? false;
  if (typeof v !== 'boolean')
    throw new InputError({
      field: 'loose',
      message: `got ${inspectValue(v)}, takes true (layers slide) or false (glued)`,
    });
  return v;
}

function pieces(name: string, value: unknown): Piece[] {
  if (!Array.isArray(value) || value.length === 0 || value.length > 100)
    throw new InputError({
      field: name,
      message: `got ${inspectValue(value)}, takes a list of 1 to 100 pieces { width, depth, modulus? }`,
    });
  return collectIssues(value.map((v, i) => [`${name}[${i + 1}]`, () => piece(v)] as const));
}

const mm = (m: number): string => both(new Quantity('length', m));
const inMm = (m: number): string => String(Number((m * 1000).toPrecision(6)));

/** A section in words, mm. */
export function sectionText(s: Section): string {
  const of = (p: { width: number; depth: number }): string => `${inMm(p.width)} × ${inMm(p.depth)} mm`;
  switch (s.shape) {
    case 'solid':
      return of(s);
    case 'round':
      return `round, ${inMm(s.diameter)} mm`;
    case 'box':
      return `box ${of(s)}, webs ${inMm(s.web)} mm, flanges ${inMm(s.flange)} mm`;
    case 'layers':
      return `${s.loose ? 'loose' : 'glued'} layers from the top: ${s.pieces.map(of).join(', ')}`;
    case 'beside':
      return `side by side: ${s.pieces.map(of).join(', ')}`;
  }
}

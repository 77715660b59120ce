import { drawing, type Fill, type Shape } from '../../charts/drawing.js';
import { dimension, line, rectangle, words } from '../../charts/shapes.js';
import { mm } from './salvage-caution.js';

interface Laid {
  readonly piece: string;
  readonly start: number;
  readonly length: number;
  readonly tone?: string | undefined;
}

/** How each tone is drawn: a fill and a hatching of its own, so that it reads in grey and to the colour-blind. */
const looks: readonly { readonly fill: Fill; readonly hatch?: 'grain' | 'grainUp' | 'waste' }[] = [
  { fill: 'wood' },
  { fill: 'woodDark', hatch: 'grain' },
  { fill: 'ground', hatch: 'waste' },
  { fill: 'waste', hatch: 'grainUp' },
  { fill: 'wood', hatch: 'grainUp' },
  { fill: 'woodDark' },
];

/** Width of the rows, px. */
const rowPixels = 575;
/** Rows beyond which neither rows nor pieces are named. */
const namedRows = 40;

/** The slab in plan: rows with their joints, tones and names, and the place where joints come nearest. */
export function layoutDrawing(
  given: { readonly topLength: number; readonly rowWidth: number; readonly minStagger: number },
  rows: readonly (readonly Laid[])[],
) {
  const w = given.rowWidth * 1000;
  const L = given.topLength * 1000;
  const tones = [...new Set(rows.flat().flatMap((p) => (p.tone === undefined ? [] : [p.tone])))].sort();
  const lookOf = looksFor(tones);
  // Rows are drawn higher than true where names would not fit; the drawing says so.
  const stretch = Math.max(1, Math.ceil((2 * 20 * L) / (rowPixels * w)) / 2);
  const bottom = (r: number): number => (rows.length - r - 1) * w;
  const near = nearest(rows);
  return drawing({
    title: 'The slab seen from above',
    subtitle: near
      ? `Thick strokes: the nearest joints, ${mm(Math.abs(near.a - near.b))} apart (${mm(given.minStagger)} asked).`
      : 'No joints in neighbouring rows.',
    stretch,
    description: rows
      .map((row, r) => `Row ${r + 1}: ${row.map((p) => `${p.piece} ${mm(p.length)}`).join(', ')}.`)
      .join(' ')
      .slice(0, 2000),
    shapes: [
      ...rows.flatMap((row, r) =>
        row.map((p) =>
          rectangle(p.start * 1000, bottom(r), p.length * 1000, w, {
            ...lookOf(p.tone),
            ...(rows.length <= namedRows ? { label: p.piece } : {}),
          }),
        ),
      ),
      ...(near ? nearestJoints(near, bottom(near.row), w) : []),
      ...(rows.length <= namedRows
        ? rows.map((_, r) => words(0, bottom(r) + w / 2, String(r + 1), { align: 'right', dx: -6, size: 11 }))
        : []),
      ...(tones.length > 1 ? key(tones, lookOf, L, stretch) : []),
      dimension([0, 0], [L, 0], mm(given.topLength), -16),
    ],
  });
}

/** A thick stroke on each of the two joints that come nearest. */
const nearestJoints = (near: Near, y: number, w: number): Shape[] => [
  line([near.a * 1000, y], [near.a * 1000, y + w], { weight: 3.5 }),
  line([near.b * 1000, y + w], [near.b * 1000, y + 2 * w], { weight: 3.5 }),
];

/** What each tone looks like, below the slab. */
function key(
  tones: readonly string[],
  lookOf: (tone: string) => (typeof looks)[number],
  L: number,
  stretch: number,
): Shape[] {
  const px = L / rowPixels;
  const y = (-62 * px) / stretch;
  return tones.slice(0, looks.length).flatMap((tone, i) => {
    const x = (i * L) / Math.min(looks.length, tones.length);
    return [
      rectangle(x, y, 26 * px, (15 * px) / stretch, lookOf(tone)),
      words(x + 26 * px, y + (7.5 * px) / stretch, tone, { align: 'left', dx: 6 }),
    ];
  });
}

/** A look for each tone: names of dark and light tones get a dark and a light one, the rest what is left. */
function looksFor(tones: readonly string[]): (tone: string | undefined) => (typeof looks)[number] {
  const spare = looks.map((_, i) => i);
  const taken = new Map<string, number>();
  const take = (tone: string, at: number): void => {
    taken.set(tone, spare.splice(spare.includes(at) ? spare.indexOf(at) : 0, 1)[0] ?? 0);
  };
  for (const tone of tones) if (/dark|deep|brown/i.test(tone)) take(tone, 1);
  for (const tone of tones) if (!taken.has(tone) && /light|pale|white/i.test(tone)) take(tone, 0);
  for (const tone of tones) if (!taken.has(tone)) take(tone, -1);
  return (tone) => looks[taken.get(tone ?? '') ?? 0] as (typeof looks)[number];
}

/** Two joints of neighbouring rows: `a` in the lower row, `row`, and `b` in the one above it. */
interface Near {
  readonly row: number;
  readonly a: number;
  readonly b: number;
}

/** The two joints of neighbouring rows that come nearest. */
function nearest(rows: readonly (readonly Laid[])[]): Near | undefined {
  let found: Near | undefined;
  for (let r = 1; r < rows.length; r++)
    for (const p of (rows[r] as readonly Laid[]).slice(1))
      for (const q of (rows[r - 1] as readonly Laid[]).slice(1))
        if (!found || Math.abs(p.start - q.start) < Math.abs(found.a - found.b))
          found = { row: r, a: p.start, b: q.start };
  return found;
}

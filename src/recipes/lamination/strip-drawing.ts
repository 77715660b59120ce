import { drawing, type Fill, type Shape } from '../../charts/drawing.js';
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

/** The slab in plan: rows with their joints, tones and names, and the place where joints come nearest. */
export function layoutDrawing(
  given: { readonly topLength: number; readonly rowWidth: number; readonly minStagger: number },
  rows: readonly (readonly Laid[])[],
) {
  const w = given.rowWidth * 1000;
  const L = given.topLength * 1000;
  const high = rows.length * w;
  const tones = [...new Set(rows.flat().flatMap((p) => (p.tone === undefined ? [] : [p.tone])))].sort();
  const lookOf = looksFor(tones);
  // Rows are drawn higher than true where names would not fit; the picture says so.
  const stretch = Math.max(1, Math.ceil((2 * 20 * L) / (575 * w)) / 2);
  const px = L / 575;
  const bottom = (r: number): number => high - (r + 1) * w;
  const pieces: Shape[] = rows.flatMap((row, r) =>
    row.map((p): Shape => ({
      kind: 'rectangle',
      x: p.start * 1000,
      y: bottom(r),
      width: p.length * 1000,
      height: w,
      ...lookOf(p.tone),
      ...(rows.length <= 40 ? { label: p.piece } : {}),
    })),
  );
  const near = nearest(rows);
  const marks: Shape[] = near
    ? [
        {
          kind: 'polyline',
          points: [
            [near.a * 1000, bottom(near.row)],
            [near.a * 1000, bottom(near.row) + w],
          ],
          weight: 3.5,
        },
        {
          kind: 'polyline',
          points: [
            [near.b * 1000, bottom(near.row) + w],
            [near.b * 1000, bottom(near.row) + 2 * w],
          ],
          weight: 3.5,
        },
      ]
    : [];
  const names: Shape[] =
    rows.length <= 40
      ? rows.map((_, r): Shape => ({
          kind: 'text',
          x: 0,
          y: bottom(r) + w / 2,
          text: String(r + 1),
          align: 'right',
          dx: -6,
          size: 11,
        }))
      : [];
  const key: Shape[] =
    tones.length > 1
      ? tones.slice(0, looks.length).flatMap((tone, i): Shape[] => {
          const x = (i * L) / Math.min(looks.length, tones.length);
          const y = (-62 * px) / stretch;
          return [
            { kind: 'rectangle', x, y, width: 26 * px, height: (15 * px) / stretch, ...lookOf(tone) },
            { kind: 'text', x: x + 26 * px, y: y + (7.5 * px) / stretch, text: tone, align: 'left', dx: 6 },
          ];
        })
      : [];
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
      ...pieces,
      ...marks,
      ...names,
      ...key,
      { kind: 'dimension', from: [0, 0], to: [L, 0], text: mm(given.topLength), offset: -16 },
    ],
  });
}

/** A look for each tone: words for dark and light get what they say, the rest what is left. */
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

/** The two joints of neighbouring rows that come nearest: `a` in the lower of the two rows, `row`. */
function nearest(rows: readonly (readonly Laid[])[]): { row: number; a: number; b: number } | undefined {
  let found: { row: number; a: number; b: number } | undefined;
  for (let r = 1; r < rows.length; r++)
    for (const p of (rows[r] as readonly Laid[]).slice(1))
      for (const q of (rows[r - 1] as readonly Laid[]).slice(1))
        if (!found || Math.abs(p.start - q.start) < Math.abs(found.a - found.b))
          found = { row: r, a: p.start, b: q.start };
  return found;
}

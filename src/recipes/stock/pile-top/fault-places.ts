// Where faults lie on a board, as they are written in a survey. Metres.
import { InputError, inspectValue } from '../../../units/input-error.js';
import { toQuantity } from '../../../units/parse-quantity.js';

/** A fault from and to along the board; `edge`: only to a depth from that edge; `back`: only on the face that is hidden. */
export interface FaultPlace {
  readonly from: number;
  readonly to: number;
  readonly edge?: { readonly depth: number; readonly far: boolean };
  readonly back: boolean;
}

const number = String.raw`(\d+(?:[.,]\d+)?)\s*(mm|cm|m|in|"|ft|')?`;
const place = new RegExp(
  String.raw`^${number}\s*(?:-|–|to)\s*${number}(?:\s+(back|edge|far edge)(?:\s+${number})?)?(?:\s*(mm|cm|m|in|"|ft|'))?$`,
  'i',
);

const takes =
  'takes places from the left end such as "310-350; 900-930 mm", with "edge 15" or "far edge 15" for a fault that deep along one edge, or "back" for one on the hidden face';

/** One fault, or several with `;` between: `310-350; 900-2100 edge 15 mm`, the last unit for all. @throws InputError */
export function faultPlaces(text: string, length: number): FaultPlace[] {
  const unit = [...text.matchAll(/\d\s*(mm|cm|m|in|"|ft|')(?![a-z])|\s(mm|cm|m|in|ft)\s*$/gi)]
    .map((m) => m[1] ?? m[2])
    .at(-1);
  const metres = (value: string, own: string | undefined): number =>
    toQuantity(`${value} ${own ?? unit ?? 'mm'}`, 'length').value;
  return text
    .split(';')
    .map((part) => part.trim())
    .filter(Boolean)
    .map((part): FaultPlace => {
      const m = place.exec(part);
      if (!m) throw new InputError({ field: 'faultsAt', message: `got ${inspectValue(part)}, ${takes}` });
      const [from, to] = [metres(m[1] as string, m[2]), metres(m[3] as string, m[4])];
      const kind = m[5]?.toLowerCase();
      const depth = m[6] === undefined ? undefined : metres(m[6], m[7]);
      if (!(from < to && to <= length * (1 + 1e-9)))
        throw new InputError({
          field: 'faultsAt',
          message: `got ${inspectValue(part)} on a board of ${Number((length * 1000).toFixed(1))} mm; takes a place that begins before it ends, on the board`,
        });
      if (kind?.endsWith('edge') !== (depth !== undefined) && (kind?.endsWith('edge') || depth !== undefined))
        throw new InputError({ field: 'faultsAt', message: `got ${inspectValue(part)}, ${takes}` });
      return {
        from,
        to,
        back: kind === 'back',
        ...(depth === undefined ? {} : { edge: { depth, far: kind === 'far edge' } }),
      };
    })
    .sort((a, b) => a.from - b.from);
}

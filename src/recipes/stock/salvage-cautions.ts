import { danger, dataCaution, estimate, note, type Caution } from '../../engine/caution.js';
import { gives, nameOf, type Dressed } from './survey.js';

/** What to mind with salvaged boards, and with these: short or thin pieces, rows that give nothing, faults not placed. */
export function salvage(rows: readonly Dressed[], commonThickness: number): Caution[] {
  const lost = rows.flatMap((d, i) => (gives(d) ? [] : [nameOf(d, i)]));
  return [
    danger(
      'go over every salvaged board with a metal detector, from both faces, and pull nails, staples and screws before it meets a blade; then wear eye protection all the same',
    ),
    danger(
      'leave out timber with treatment marks, green or oily stain, or old paint that may hold lead: neither its dust nor its shavings belong in a workshop, and it must not touch food',
    ),
    ...(rows.some((d) => gives(d) && d.pieceLength < 0.3)
      ? [
          danger(
            'plane pieces before crosscutting, never singly: some are shorter than about 300 mm (common practice; the machine maker’s own limit rules)',
          ),
        ]
      : []),
    ...(commonThickness < 0.006
      ? [
          danger(
            'keep to the machine maker’s least thickness, or use a carrier board: under about 6 mm boards may shatter in a thicknesser',
          ),
        ]
      : []),
    ...(lost.length > 0
      ? [
          dataCaution(
            `these give nothing: ${lost.slice(0, 20).join(', ')}${lost.length > 20 ? ` and ${lost.length - 20} more` : ''}`,
          ),
        ]
      : []),
    ...(rows.some((d) => d.stretches > 1)
      ? [
          estimate(
            'a survey does not say where faults lie: the clear stretches of a board are taken as equal',
          ),
        ]
      : []),
    note(
      'cup and bow add up in the loss; a board ripped into strips keeps less of its cup than one planed whole',
    ),
  ];
}

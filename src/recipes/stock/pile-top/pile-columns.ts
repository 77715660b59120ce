// How each column of a pile's survey is measured: for the paper form, and for whoever asks what a column means.
import type { pileColumns } from './pile-survey.js';

export interface ColumnGuide {
  /** As it stands at the head of the column, with its unit. */
  readonly head: string;
  /** One sentence: what to measure, and with what. */
  readonly how: string;
  /** A column of the short form. The others are for piles measured in less detail. */
  readonly onForm: boolean;
}

const inMm = (name: string): string => `${name} (mm)`;

/** Every column of the survey. Common practice. */
export const columnGuide: { readonly [name in keyof typeof pileColumns]: ColumnGuide } = {
  name: { head: 'name', how: 'Chalk a mark on the left end of each board and write it here.', onForm: true },
  group: { head: 'group', how: 'What it was: rafter, floorboard, batten.', onForm: true },
  count: {
    head: 'count',
    how: 'Boards alike within 2 mm may share a line; a board with faults has its own.',
    onForm: true,
  },
  length: { head: inMm('length'), how: 'Tape, end to end, as found.', onForm: true },
  width: { head: inMm('width'), how: 'Tape or rule, at the narrowest place.', onForm: true },
  thickness: { head: inMm('thickness'), how: 'Calliper or rule, at the thinnest place.', onForm: true },
  tone: { head: 'tone', how: 'Light or dark, on a freshly scraped patch.', onForm: true },
  endLoss: {
    head: inMm('endLoss'),
    how: 'Only where the two ends were not measured apart: what both lose together.',
    onForm: false,
  },
  endLeft: {
    head: inMm('endLeft'),
    how: 'From the marked end to the first sound wood: splits, nails, rot.',
    onForm: true,
  },
  endRight: { head: inMm('endRight'), how: 'The same from the other end.', onForm: true },
  faultsAt: {
    head: 'faultsAt',
    how: 'From the marked end, begin and end of each fault in mm: 310-350; 900-930. Add "edge 15" or "far edge 15" for one that deep along an edge, "back" for one on the face that will be hidden.',
    onForm: true,
  },
  faultLength: {
    head: inMm('faultLength'),
    how: 'Only where the places were not measured: length of all faults together.',
    onForm: false,
  },
  faults: { head: 'faults', how: 'Only where the places were not measured: how many.', onForm: false },
  cup: {
    head: inMm('cup'),
    how: 'Straightedge across the hollow face: the widest gap, with a feeler or rule.',
    onForm: true,
  },
  bow: {
    head: inMm('bow'),
    how: 'String from end to end along the hollow side: the widest gap.',
    onForm: true,
  },
};

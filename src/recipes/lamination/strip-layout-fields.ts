import { field } from '../../engine/field.js';
import { piecesField } from './strip-job.js';

/** What the layout of strips takes. */
export const stripLayoutFields = {
  topLength: field.length({
    label: 'top length',
    help: 'Length of the slab, and so of every row.',
    above: '0 mm',
    max: '20 m',
  }),
  rows: field.count({ label: 'rows side by side', min: 1, max: 200 }),
  lengths: piecesField,
  minStagger: field.length({
    label: 'stagger',
    help: 'Least distance of a joint from any joint in the next row.',
    min: '0 mm',
    max: '5 m',
  }),
  kerf: field.length({
    label: 'kerf',
    help: 'Width of a saw cut.',
    min: '0 mm',
    max: '20 mm',
    default: '3 mm',
  }),
  shortest: field.length({
    label: 'shortest piece',
    help: 'Least length of a piece that is cut and of an offcut worth keeping; leave it out to take the stagger, 100 mm at most.',
    min: '0 mm',
    max: '5 m',
    optional: true,
  }),
  rowWidth: field.length({
    label: 'row width',
    help: 'For the drawing.',
    above: '0 mm',
    max: '1 m',
    default: '45 mm',
  }),
  timeLimit: field.time({
    label: 'time limit',
    help: 'Longest time to search.',
    min: '50 ms',
    max: '10 min',
    default: '1 s',
  }),
  seed: field.count({ label: 'seed of the search', min: 0, max: 4_000_000_000, default: 1 }),
} as const;

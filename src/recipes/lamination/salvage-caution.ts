import { danger, note, type Caution } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';

/** Said wherever strips from an old building or pallet meet a blade. */
export const metalFirst: Caution = danger(
  'look over every salvaged strip with a metal detector and pull nails and staples before it meets a blade',
);

/** Said wherever a slab goes through the thicknesser. Sources differ on the least length; the longest of them is given. */
export const thicknesserLeast: Caution = danger(
  'feed no piece into a thicknesser that is shorter than its maker allows (350 mm and 5 mm thick in one school’s sheet, 305 mm in an insurer’s): dress shorter pieces before they are cut, or by hand',
  cite('school-planer-sheet', 'least length and thickness', {
    also: cite('insurer-planer-talk', 'least length'),
  }),
);

/** Least length that {@link thicknesserLeast} names, m. */
export const shortestThroughThicknesser = 0.35;

/** Said wherever glue is spread: the open surface ages. */
export const freshSurfaces: Caution = note(
  'joint and glue on the same day, within 24 h at most: a planed face ages and takes glue less well',
  cite('wood-industry-joint-preparation', 'surfaces'),
);

/** A length in mm for a sentence or a label, without a tail of digits. */
export const mm = (metres: number, places = 1): string => `${Number((metres * 1000).toFixed(places))} mm`;

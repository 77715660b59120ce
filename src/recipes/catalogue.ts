// Written by src/launch/catalogue.mjs from the files in this folder; do not edit.
import type { RecipeEntry } from '../recipe/entry.js';
import { stripCount } from './lamination/strip-count.js';
import { cutterMarks } from './machining/cutter-marks.js';

export { stripCount, cutterMarks };

/** Every recipe, by topic and file. */
export const catalogue: readonly RecipeEntry[] = [stripCount, cutterMarks] as unknown as readonly RecipeEntry[];

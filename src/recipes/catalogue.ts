// Written by src/launch/catalogue.mjs from the files in this folder; do not edit.
import type { RecipeEntry } from '../recipe/entry.js';
import { equilibriumMoisture } from './moisture/equilibrium-moisture.js';
import { humidityFor } from './moisture/humidity-for.js';
import { movementAcross } from './moisture/movement-across.js';
import { boardMeasure } from './stock/board-measure.js';
import { flatteningLoss } from './stock/flattening-loss.js';
import { pileYield } from './stock/pile-yield.js';
import { layerCount } from './lamination/layer-count.js';
import { stripCount } from './lamination/strip-count.js';
import { railSpan } from './rails/rail-span.js';
import { finishQuantity } from './finish/finish-quantity.js';
import { thinningRatio } from './finish/thinning-ratio.js';
import { cutterMarks } from './machining/cutter-marks.js';

export { equilibriumMoisture, humidityFor, movementAcross, boardMeasure, flatteningLoss, pileYield, layerCount, stripCount, railSpan, finishQuantity, thinningRatio, cutterMarks };

/** Every recipe, by topic and file. */
export const catalogue: readonly RecipeEntry[] = [equilibriumMoisture, humidityFor, movementAcross, boardMeasure, flatteningLoss, pileYield, layerCount, stripCount, railSpan, finishQuantity, thinningRatio, cutterMarks] as unknown as readonly RecipeEntry[];

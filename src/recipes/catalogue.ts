// Written by src/launch/catalogue.mjs from the files in this folder; do not edit.
import type { RecipeEntry } from '../recipe/entry.js';
import { crampedStress } from './moisture/cramped-stress.js';
import { cupDepth } from './moisture/cup-depth.js';
import { equilibriumMoisture } from './moisture/equilibrium-moisture.js';
import { fixingSlots } from './moisture/fixing-slots.js';
import { humidityFor } from './moisture/humidity-for.js';
import { meterCorrection } from './moisture/meter-correction.js';
import { moistureByWeight } from './moisture/moisture-by-weight.js';
import { movementAcross } from './moisture/movement-across.js';
import { pieceWeight } from './moisture/piece-weight.js';
import { seasonalMovement } from './moisture/seasonal-movement.js';
import { woodDensity } from './moisture/wood-density.js';
import { boardMeasure } from './stock/board-measure.js';
import { flatteningLoss } from './stock/flattening-loss.js';
import { gradeYield } from './stock/grade-yield.js';
import { partsCost } from './stock/parts-cost.js';
import { pileSampling } from './stock/pile-sampling.js';
import { pileYield } from './stock/pile-yield.js';
import { roughToDressed } from './stock/rough-to-dressed.js';
import { caulCamber } from './lamination/caul-camber.js';
import { clampPlan } from './lamination/clamp-plan.js';
import { glueQuantity } from './lamination/glue-quantity.js';
import { glueTiming } from './lamination/glue-timing.js';
import { layerCount } from './lamination/layer-count.js';
import { matchSlabs } from './lamination/match-slabs.js';
import { stackUp } from './lamination/stack-up.js';
import { stripCount } from './lamination/strip-count.js';
import { beam } from './rails/beam.js';
import { rackingFrame } from './rails/racking-frame.js';
import { railSpan } from './rails/rail-span.js';
import { tipping } from './rails/tipping.js';
import { topSag } from './rails/top-sag.js';
import { filmBuild } from './finish/film-build.js';
import { finishQuantity } from './finish/finish-quantity.js';
import { gritSequence } from './finish/grit-sequence.js';
import { shellacCut } from './finish/shellac-cut.js';
import { thinToSolids } from './finish/thin-to-solids.js';
import { thinnedVoc } from './finish/thinned-voc.js';
import { thinningRatio } from './finish/thinning-ratio.js';
import { cutterMarks } from './machining/cutter-marks.js';
import { planingTime } from './machining/planing-time.js';
import { sheetAndDust } from './machining/sheet-and-dust.js';
import { bill } from './bill/bill.js';

export { crampedStress, cupDepth, equilibriumMoisture, fixingSlots, humidityFor, meterCorrection, moistureByWeight, movementAcross, pieceWeight, seasonalMovement, woodDensity, boardMeasure, flatteningLoss, gradeYield, partsCost, pileSampling, pileYield, roughToDressed, caulCamber, clampPlan, glueQuantity, glueTiming, layerCount, matchSlabs, stackUp, stripCount, beam, rackingFrame, railSpan, tipping, topSag, filmBuild, finishQuantity, gritSequence, shellacCut, thinToSolids, thinnedVoc, thinningRatio, cutterMarks, planingTime, sheetAndDust, bill };

/** Every recipe, by topic and file. */
export const catalogue: readonly RecipeEntry[] = [crampedStress, cupDepth, equilibriumMoisture, fixingSlots, humidityFor, meterCorrection, moistureByWeight, movementAcross, pieceWeight, seasonalMovement, woodDensity, boardMeasure, flatteningLoss, gradeYield, partsCost, pileSampling, pileYield, roughToDressed, caulCamber, clampPlan, glueQuantity, glueTiming, layerCount, matchSlabs, stackUp, stripCount, beam, rackingFrame, railSpan, tipping, topSag, filmBuild, finishQuantity, gritSequence, shellacCut, thinToSolids, thinnedVoc, thinningRatio, cutterMarks, planingTime, sheetAndDust, bill] as unknown as readonly RecipeEntry[];

// Written by src/launch/catalogue.mjs from the files in this folder; do not edit.
import type { AnyRecipe } from '../engine/any-recipe.ts';
import { cupDepth } from './moisture/cup-depth.js';
import { equilibriumMoisture } from './moisture/equilibrium-moisture.js';
import { fixingSlots } from './moisture/fixing-slots.js';
import { humidityFor } from './moisture/humidity-for.js';
import { meterCorrection } from './moisture/meter-correction.js';
import { moistureByWeight } from './moisture/moisture-by-weight.js';
import { movementAcross } from './moisture/movement-across.js';
import { pieceWeight } from './moisture/piece-weight.js';
import { restraintStress } from './moisture/restraint-stress.js';
import { seasonalMovement } from './moisture/seasonal-movement.js';
import { woodDensity } from './moisture/wood-density.js';
import { boardMeasure } from './stock/board-measure.js';
import { cuttingPlan } from './stock/cutting-plan.js';
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
import { stripLayout } from './lamination/strip-layout.js';
import { angledRail } from './joinery/angled-rail.js';
import { biscuitSpacing } from './joinery/biscuit-spacing.js';
import { halfLap } from './joinery/half-lap.js';
import { jointFit } from './joinery/joint-fit.js';
import { mitredEnd } from './joinery/mitred-end.js';
import { screwHold } from './joinery/screw-hold.js';
import { splayedCorner } from './joinery/splayed-corner.js';
import { splineSlot } from './joinery/spline-slot.js';
import { squareness } from './joinery/squareness.js';
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
import { chipVolume } from './machining/chip-volume.js';
import { cutterMarks } from './machining/cutter-marks.js';
import { planingTime } from './machining/planing-time.js';
import { bill } from './bill/bill.js';

export {
  cupDepth,
  equilibriumMoisture,
  fixingSlots,
  humidityFor,
  meterCorrection,
  moistureByWeight,
  movementAcross,
  pieceWeight,
  restraintStress,
  seasonalMovement,
  woodDensity,
  boardMeasure,
  cuttingPlan,
  flatteningLoss,
  gradeYield,
  partsCost,
  pileSampling,
  pileYield,
  roughToDressed,
  caulCamber,
  clampPlan,
  glueQuantity,
  glueTiming,
  layerCount,
  matchSlabs,
  stackUp,
  stripCount,
  stripLayout,
  angledRail,
  biscuitSpacing,
  halfLap,
  jointFit,
  mitredEnd,
  screwHold,
  splayedCorner,
  splineSlot,
  squareness,
  beam,
  rackingFrame,
  railSpan,
  tipping,
  topSag,
  filmBuild,
  finishQuantity,
  gritSequence,
  shellacCut,
  thinToSolids,
  thinnedVoc,
  thinningRatio,
  chipVolume,
  cutterMarks,
  planingTime,
  bill,
};

/** Every recipe, by topic and file. */
export const catalogue: readonly AnyRecipe[] = [
  cupDepth,
  equilibriumMoisture,
  fixingSlots,
  humidityFor,
  meterCorrection,
  moistureByWeight,
  movementAcross,
  pieceWeight,
  restraintStress,
  seasonalMovement,
  woodDensity,
  boardMeasure,
  cuttingPlan,
  flatteningLoss,
  gradeYield,
  partsCost,
  pileSampling,
  pileYield,
  roughToDressed,
  caulCamber,
  clampPlan,
  glueQuantity,
  glueTiming,
  layerCount,
  matchSlabs,
  stackUp,
  stripCount,
  stripLayout,
  angledRail,
  biscuitSpacing,
  halfLap,
  jointFit,
  mitredEnd,
  screwHold,
  splayedCorner,
  splineSlot,
  squareness,
  beam,
  rackingFrame,
  railSpan,
  tipping,
  topSag,
  filmBuild,
  finishQuantity,
  gritSequence,
  shellacCut,
  thinToSolids,
  thinnedVoc,
  thinningRatio,
  chipVolume,
  cutterMarks,
  planingTime,
  bill,
] as unknown as readonly AnyRecipe[];

import type { Sketches } from './model/sketch-definition.js';
import { clampSketches } from './lamination/clamp-sketches.js';
import { jointSketches } from './joinery/joint-sketches.js';
import { layerSketches } from './lamination/layer-sketches.js';
import { casingSketch } from './joinery/casing-sketch.js';
import { mitreSketches } from './joinery/mitre-sketches.js';
import { bodySketches } from './people/body-sketches.js';
import { frameSketches, railSketches } from './rails/rail-sketches.js';
import { billSketches } from './bill/bill-sketches.js';
import { filmSketches } from './finish/film-sketches.js';
import { mixSketches } from './finish/mix-sketches.js';
import { cutSketches } from './machining/cut-sketches.js';
import { boardSketches } from './stock/board-sketches.js';
import { moistureSketches } from './moisture/moisture-sketches.js';
import { movementSketches } from './moisture/movement-sketches.js';
import { pileSketches } from './stock/pile-sketches.js';
import { yieldSketches } from './stock/yield-sketches.js';

/** The sketches of all recipes by name; a recipe without one does not compile. */
export const sketches: Sketches = {
  ...moistureSketches,
  ...movementSketches,
  ...boardSketches,
  ...yieldSketches,
  ...pileSketches,
  ...clampSketches,
  ...layerSketches,
  ...jointSketches,
  ...mitreSketches,
  ...casingSketch,
  ...railSketches,
  ...frameSketches,
  ...bodySketches,
  ...filmSketches,
  ...mixSketches,
  ...cutSketches,
  ...billSketches,
};

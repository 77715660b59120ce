import {
  americanStress,
  australianLoadFactor,
  australianStress,
  eurocodeDepthFactor,
  eurocodeLoadFactor,
  eurocodeStress,
} from './class-formulas.js';
import { clearWoodStress, lowerLimit, sizeFactor, ungradedModulus } from './clear-wood-formulas.js';

/** Every formula of a working stress, for the recipes that use one. */
export const stressFormulas = [
  lowerLimit,
  sizeFactor,
  clearWoodStress,
  ungradedModulus,
  eurocodeLoadFactor,
  eurocodeDepthFactor,
  eurocodeStress,
  australianLoadFactor,
  australianStress,
  americanStress,
];

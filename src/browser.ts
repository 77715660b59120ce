// The public face in a browser: recipes, quantities and explore, without notebook, files and frames. The build makes of it
// modules that any bundler takes; see src/launch/browser-modules.mjs.
// Quantities come with the parser, which reads the text they are compared with.
export {
  Quantity,
  quantity,
  length,
  area,
  volume,
  liquid,
  mass,
  force,
  pressure,
  density,
  moisture,
  humidity,
  temperature,
  time,
  angle,
  money,
  share,
} from './units/constructors.js';
export { setUnits } from './units/unit-system.js';
export type { UnitSystem } from './units/unit-system.js';
export { InputError } from './units/input-error.js';
export type { Issue } from './units/input-error.js';
export type { Kind } from './units/kind.js';
export type { FormatOptions } from './units/format-quantity.js';
export type { ChartSpec } from './charts/chart-spec.js';
export type { Caution } from './engine/caution.js';
export type { Citation } from './engine/source.js';
export type { Working } from './engine/trace.js';
export type { Result, ResultMethods } from './engine/result.js';
export type { Recipe, AsyncRecipe } from './engine/recipe.js';
export type { DocumentedAsyncRecipe, DocumentedRecipe } from './engine/documented-recipe.js';
export type { AnyRecipe } from './engine/any-recipe.js';
export * from './recipes/catalogue.js';
export type * from './recipes/interfaces.js';
export { range, each } from './explore/range.js';
export type { Range, ValueList } from './explore/range.js';
export { sweep } from './explore/sweep.js';
export type { Sweep, SweepOptions } from './explore/sweep.js';
export { normal, uniform, triangular, empirical } from './explore/distribution-spec.js';
export type { DistributionSpec } from './explore/distribution-spec.js';
export { uncertain } from './explore/uncertain.js';
export type { Correlation, Distribution, Sensitivity, UncertainOptions } from './explore/uncertain.js';
export { solveFor } from './explore/solve-for.js';
export type { Interval, Solution } from './explore/solution.js';
export { compare } from './explore/compare.js';
export type { Comparison } from './explore/compare.js';
export { whatIf } from './explore/what-if.js';
export type { WhatIf } from './explore/what-if.js';
export { findSpecies, speciesNames, speciesWith } from './materials/species.js';
export type { Timber, Property } from './materials/timber.js';
export { climates, findClimate } from './materials/climate.js';

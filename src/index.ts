// The public face: what a notebook, the command and code may use.
export { Quantity } from './quantities/quantity.js';
export {
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
} from './quantities/make.js';
export { Refusal } from './quantities/refusal.js';
export type { Trouble } from './quantities/refusal.js';
export type { Kind } from './quantities/kind.js';
export type { FormatOptions } from './quantities/format.js';
export type { ChartSpec } from './charts/types.js';
export { renderSvg } from './charts/svg.js';
export type { Caution } from './recipe/caution.js';
export type { Citation } from './recipe/source.js';
export type { Working } from './recipe/work.js';
export type { Result, ResultFace } from './recipe/result.js';
export type { Recipe, LongRecipe } from './recipe/recipe.js';
export type { RecipeEntry } from './recipe/entry.js';
export * from './recipes/catalogue.js';
export { frame } from './explore/frame.js';
export type { Frame, FrameColumn } from './explore/frame.js';
export { range, each } from './explore/range.js';
export { sweep } from './explore/sweep.js';
export type { Sweep, SweepOptions } from './explore/sweep.js';
export { normal, uniform, triangular, measured } from './explore/spread.js';
export { uncertain } from './explore/uncertain.js';
export type { Distribution, Influence, UncertainOptions } from './explore/uncertain.js';
export { solveFor } from './explore/solve-for.js';
export type { Solution } from './explore/solve-for.js';
export { compare } from './explore/compare.js';
export type { Comparison } from './explore/compare.js';
export { whatIf } from './explore/what-if.js';
export type { WhatIf } from './explore/what-if.js';
export { cutList } from './notes/cutList.js';
export type { CutList } from './notes/cutList.js';
export { buildNotes } from './notes/note.js';
export type { BuildNotes, NoteOptions } from './notes/note.js';
export { exercise } from './recipe/exercise.js';
export type { Exercise, ExerciseSpec, Verdict } from './recipe/exercise.js';
export type { CheckOutcome, CheckRow } from './recipe/validation.js';
export type { ValidationTable } from './recipe/validation-table.js';
export { checkTopics, publishedChecks } from './recipes/checks.js';
export type { CheckTopic } from './recipes/checks.js';
export { findSpecies, speciesNames, speciesWith } from './timber/species.js';
export type { Timber, Property } from './timber/timber.js';
export { climates, findClimate } from './timber/climate.js';
export { publishedTable, publishedTables } from './timber/published-table.js';
export type { PublishedTable } from './timber/published-table.js';

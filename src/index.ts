// The public face: what a notebook, the command and code may use.
export { Quantity } from './units/quantity.js';
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
} from './units/constructors.js';
export { InputError } from './units/input-error.js';
/** @deprecated The former name of {@link InputError}. */
export { InputError as Refusal } from './units/input-error.js';
export type { Issue } from './units/input-error.js';
export type { Kind } from './units/kind.js';
export type { FormatOptions } from './units/format-quantity.js';
export type { ChartSpec } from './charts/chart-spec.js';
export { renderSvg } from './charts/svg.js';
export type { Caution } from './engine/caution.js';
export type { Citation } from './engine/source.js';
export type { Working } from './engine/trace.js';
export type { Result, ResultMethods } from './engine/result.js';
export type { Recipe, AsyncRecipe } from './engine/recipe.js';
export type { DocumentedAsyncRecipe, DocumentedRecipe } from './engine/documented-recipe.js';
export type { AnyRecipe } from './engine/any-recipe.js';
export * from './recipes/catalogue.js';
export type * from './recipes/interfaces.js';
// eslint-disable-next-line @typescript-eslint/no-deprecated -- the former names answer for one version
export { crampedStress, sheetAndDust } from './recipes/former-names.js';
export { frame } from './explore/frame.js';
export type { Frame, FrameColumn } from './explore/frame.js';
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
export { setUnits } from './units/unit-system.js';
export type { UnitSystem } from './units/unit-system.js';
export { shop } from './shop/shop.js';
export type { Shop, ShopClamp } from './shop/shop.js';
export { cutList } from './notes/cut-list.js';
export type { CutList } from './notes/cut-list.js';
export { pileSheets } from './notes/pile-sheets.js';
export type { PileSheets } from './notes/pile-sheets.js';
export { surveyForm } from './notes/survey-form.js';
export type { SurveyForm } from './notes/survey-form.js';
export { buildNotes } from './notes/note.js';
export type { BuildNotes, NoteOptions } from './notes/note.js';
export { piece, Piece } from './piece/piece.js';
export { openPiece, savePiece } from './piece/piece-file.js';
export { pieceJsonSchema } from './piece/description.js';
export type { Assumed, Description, PieceInput } from './piece/description.js';
export type { Answer } from './piece/answers.js';
export type { Alternatives } from './piece/alternatives.js';
export type { Contradiction } from './piece/contradictions/contradiction.js';
export type { PieceSweep, PieceSweepOptions } from './piece/piece-sweep.js';
export type { PieceChanges } from './piece/piece-view.js';
export type { PieceVerdict } from './piece/question.js';
export type { PlacedInput } from './piece/input-places.js';
export type { Remedy } from './piece/remedies.js';
export { templateSheets } from './notes/template-sheets.js';
export type { TemplateSheets } from './notes/template-sheets.js';
export { benchCards } from './notes/bench-cards.js';
export type { BenchCard, BenchCards } from './notes/bench-cards.js';
export { exercise } from './engine/exercise.js';
export type { Exercise, ExerciseSpec, Verdict } from './engine/exercise.js';
export type { CheckOutcome, CheckRow } from './engine/validation.js';
export type { ValidationTable } from './engine/validation-table.js';
export { checkTopics, publishedChecks } from './recipes/published-checks.js';
export type { CheckTopic } from './recipes/published-checks.js';
export { allEvidence, evidenceOf, evidenceText } from './recipes/evidence.js';
export type { Evidence, EvidenceKind } from './recipes/evidence.js';
export { dataCounts } from './recipes/data-counts.js';
export { glossary, glossaryEntry, recipesFor, termsOf } from './recipes/glossary.js';
export type { GlossaryEntry } from './recipes/glossary.js';
export type { DataCounts } from './recipes/data-counts.js';
export { findSpecies, speciesNames, speciesWith } from './materials/species.js';
export type { Timber, Property } from './materials/timber.js';
export { climates, findClimate } from './materials/climate.js';
export { publishedTable, publishedTables } from './materials/published-table.js';
export type { PublishedTable } from './materials/published-table.js';

// The public face: what a notebook, the command and code may use.
export { Quantity } from './quantities/quantity.js';
export { quantity, length, area, volume, liquid, mass, force, pressure, density, moisture, humidity, temperature, time, angle, money, share } from './quantities/make.js';
export { Refusal } from './quantities/refusal.js';
export type { Trouble } from './quantities/refusal.js';
export type { Kind } from './quantities/kind.js';
export type { FormatOptions } from './quantities/format.js';
export type { ChartSpec } from './charts/types.js';
export type { Caution } from './recipe/caution.js';
export type { Citation } from './recipe/source.js';
export type { Working } from './recipe/work.js';
export type { Result, ResultFace } from './recipe/result.js';
export type { Recipe, LongRecipe } from './recipe/recipe.js';
export type { RecipeEntry } from './recipe/entry.js';
export * from './recipes/catalogue.js';

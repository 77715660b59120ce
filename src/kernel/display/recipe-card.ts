/** A recipe described in Markdown: what it answers, its fields with kinds and units, its sources, an example. */
import type { MimeBundle } from '../message.js';

export interface RecipeField {
  kind?: string;
  label?: string;
  expects?: string;
  unit?: string;
  default?: unknown;
  optional?: boolean;
  choices?: readonly string[];
  fields?: Record<string, RecipeField>;
  items?: readonly RecipeField[];
}

interface RecipeOutput {
  label?: string;
  unit?: string;
  kind?: string;
}

/** The parts of a recipe that the kernel reads, known by their shape so that the package need not be loaded. */
export interface RecipeInfo {
  name: string;
  title: string;
  topic: string;
  about?: string;
  inputs: Record<string, RecipeField>;
  outputs?: Record<string, RecipeOutput>;
  sources: readonly unknown[];
  example?: unknown;
  /** Checks inputs without working anything out. Throws an error with `issues`. */
  read?: (inputs: unknown) => unknown;
}

/** Whether a value is a recipe: callable, with inputs and sources. */
export function isRecipe(value: unknown): value is RecipeInfo {
  if (typeof value !== 'function') return false;
  const recipe = value as unknown as Partial<RecipeInfo>;
  const { title, inputs, sources } = recipe;
  return typeof title === 'string' && typeof inputs === 'object' && Array.isArray(sources);
}

export function recipeCard(
  recipe: RecipeInfo,
): MimeBundle & { 'text/plain': string; 'text/markdown': string } {
  const sources = recipe.sources.map(sourceText);
  const example = recipe.example === undefined ? undefined : `${recipe.name}(${literal(recipe.example)})`;
  return {
    'text/plain': plainCard(recipe, sources, example),
    'text/markdown': markdownCard(recipe, sources, example),
  };
}

function plainCard(recipe: RecipeInfo, sources: string[], example: string | undefined): string {
  const section = (title: string, lines: string[]): string[] =>
    lines.length > 0 ? ['', title, ...lines.map((line) => `  ${line}`)] : [];
  return [
    `${recipe.title} (${recipe.topic})`,
    ...(recipe.about ? [recipe.about] : []),
    ...section(
      'Inputs',
      Object.entries(recipe.inputs).map(([name, field]) => `${name}: ${describeField(field)}`),
    ),
    ...section(
      'Results',
      Object.entries(recipe.outputs ?? {}).map(([name, output]) => `${name}: ${describeOutput(output)}`),
    ),
    ...section('Sources', sources),
    ...section('Example', example === undefined ? [] : [example]),
  ].join('\n');
}

function markdownCard(recipe: RecipeInfo, sources: string[], example: string | undefined): string {
  const inputs = Object.entries(recipe.inputs).map(
    ([name, field]) => `- \`${name}\`: ${describeField(field)}`,
  );
  const outputs = Object.entries(recipe.outputs ?? {}).map(
    ([name, output]) => `- \`${name}\`: ${describeOutput(output)}`,
  );
  return [
    `**${recipe.title}** (${recipe.topic})`,
    ...(recipe.about ? [recipe.about] : []),
    ...(inputs.length > 0 ? [`Inputs\n\n${inputs.join('\n')}`] : []),
    ...(outputs.length > 0 ? [`Results\n\n${outputs.join('\n')}`] : []),
    ...(sources.length > 0 ? [`Sources: ${sources.join('; ')}`] : []),
    ...(example === undefined ? [] : [`\`\`\`typescript\n${example}\n\`\`\``]),
  ].join('\n\n');
}

function describeField(field: RecipeField): string {
  const unit = field.unit ? ` in ${field.unit}` : '';
  const optional = field.optional ? ', optional' : '';
  const start = field.default === undefined ? optional : `, default ${literal(field.default)}`;
  return `${field.kind ?? ''}${unit}${start}${field.label ? `: ${field.label}` : ''}`;
}

const describeOutput = ({ kind, unit, label }: RecipeOutput): string =>
  [`${kind ?? ''}${unit ? ` in ${unit}` : ''}`.trim(), label].filter(Boolean).join(': ');

const literal = (value: unknown): string =>
  typeof value === 'string' ? `'${value}'` : JSON.stringify(value);

function sourceText(source: unknown): string {
  if (typeof source === 'string') return source;
  const {
    id,
    source: name,
    title,
    locator,
  } = source as Partial<Record<'id' | 'source' | 'title' | 'locator', string>>;
  return [title ?? id ?? name, locator].filter(Boolean).join(', ') || JSON.stringify(source);
}

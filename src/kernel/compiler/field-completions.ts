/**
 * What the loaded package knows beyond its types: the values a recipe's field takes (species, grades, finishes), and what
 * a recipe says of itself. The package may offer a function `__hints(recipe, field)`; without it a field's own choices serve.
 */

interface HintField {
  kind?: string;
  label?: string;
  expects?: string;
  unit?: string;
  default?: unknown;
  optional?: boolean;
  choices?: readonly string[];
  fields?: Record<string, HintField>;
  items?: readonly HintField[];
}
export interface HintRecipe {
  name: string;
  title: string;
  topic: string;
  about?: string;
  inputs: Record<string, HintField>;
  outputs?: Record<string, { label?: string; unit?: string; kind?: string }>;
  sources: readonly unknown[];
  example?: unknown;
}

/** Whether a value is a recipe: callable, with inputs and sources. */
export function isRecipe(value: unknown): value is HintRecipe {
  if (typeof value !== 'function' && (typeof value !== 'object' || value === null)) return false;
  const face = value as Partial<HintRecipe>;
  return (
    typeof face.title === 'string' &&
    typeof face.inputs === 'object' &&
    face.inputs !== null &&
    Array.isArray(face.sources)
  );
}

/** The texts a recipe's field takes, for completion inside quotes. */
export function valuesFor(
  pkg: Record<string, unknown> | undefined,
  recipe: HintRecipe,
  field: string,
): string[] {
  const offered = pkg?.['__hints'];
  const found = new Set<string>();
  if (typeof offered === 'function') {
    try {
      const given = (offered as (recipe: string, field: string) => unknown)(recipe.name, field);
      if (Array.isArray(given)) for (const value of given) found.add(String(value));
    } catch {
      // A package of another version: its own choices below still serve.
    }
  }
  collect(recipe.inputs[field], found);
  return [...found];
}

function collect(field: HintField | undefined, into: Set<string>): void {
  for (const choice of field?.choices ?? []) into.add(String(choice));
  for (const item of field?.items ?? []) collect(item, into);
}

/** A recipe told in Markdown: what it answers, its fields with kinds and units, its sources, an example. */
export function recipeCard(recipe: HintRecipe): { 'text/plain': string; 'text/markdown': string } {
  const fields = Object.entries(recipe.inputs);
  const results = Object.entries(recipe.outputs ?? {});
  const tell = (field: HintField): string => {
    const unit = field.unit ? ` in ${field.unit}` : '';
    const start =
      field.default === undefined
        ? field.optional
          ? ', may be left out'
          : ''
        : `, default ${show(field.default)}`;
    return `${field.kind ?? ''}${unit}${start}${field.label ? `: ${field.label}` : ''}`;
  };
  const sources = recipe.sources.map(sourceText);
  const example = recipe.example === undefined ? [] : [`${recipe.name}(${show(recipe.example)})`];
  const plain = [
    `${recipe.title} (${recipe.topic})`,
    ...(recipe.about ? [recipe.about] : []),
    '',
    'Takes',
    ...fields.map(([name, field]) => `  ${name}: ${tell(field)}`),
    ...(results.length
      ? [
          '',
          'Gives',
          ...results.map(
            ([name, out]) =>
              `  ${name}: ${out.kind ?? ''}${out.unit ? ` in ${out.unit}` : ''}${out.label ? `: ${out.label}` : ''}`,
          ),
        ]
      : []),
    '',
    'Sources',
    ...sources.map((text) => `  ${text}`),
    ...(example.length ? ['', 'Example', ...example.map((text) => `  ${text}`)] : []),
  ];
  const markdown = [
    `**${recipe.title}** (${recipe.topic})`,
    ...(recipe.about ? [recipe.about] : []),
    fields.map(([name, field]) => `- \`${name}\`: ${tell(field)}`).join('\n'),
    ...(results.length
      ? [
          results
            .map(
              ([name, out]) =>
                `- gives \`${name}\`${out.label ? `: ${out.label}` : ''}${out.unit ? ` (${out.unit})` : ''}`,
            )
            .join('\n'),
        ]
      : []),
    ...(sources.length ? [`Sources: ${sources.join('; ')}`] : []),
    ...example.map((text) => `\`\`\`typescript\n${text}\n\`\`\``),
  ];
  return { 'text/plain': plain.join('\n'), 'text/markdown': markdown.join('\n\n') };
}

const show = (value: unknown): string => (typeof value === 'string' ? `'${value}'` : JSON.stringify(value));

function sourceText(source: unknown): string {
  if (typeof source === 'string') return source;
  const {
    id,
    source: name,
    title,
    locator,
  } = source as { id?: string; source?: string; title?: string; locator?: string };
  return [title ?? id ?? name, locator].filter(Boolean).join(', ') || JSON.stringify(source);
}

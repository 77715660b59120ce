import { keyText, literalText } from './literal-text.js';

/** A new cell that calls a recipe, one field a line. */
export function newCall(
  model: { readonly name: string; readonly isAsync: boolean },
  name: string,
  given: Readonly<Record<string, unknown>> = {},
): string {
  const fields = Object.entries(given).map(
    ([key, value]) => `  ${keyText(key)}: ${literalText(value, '  ')},\n`,
  );
  return `const ${name} = ${model.isAsync ? 'await ' : ''}${model.name}({\n${fields.join('')}});\n${name};`;
}

import { InputError, nearest, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { formerNameLine } from '../engine/recipe.js';
import { catalogue } from '../recipes/catalogue.js';
import { formerNames, recipeCalled } from '../recipes/former-names.js';

/** The recipe called `name`, in any spelling of capitals and hyphens; a former name tells the new one. @throws InputError with the nearest name */
export function findRecipe(name: string | undefined): AnyRecipe {
  if (name === undefined) throw new InputError("recipe: missing; takes a name from 'reckoner list'");
  const plain = name.toLowerCase().replace(/[-_ ]/g, '');
  const found = recipeCalled(name) ?? catalogue.find((r) => r.name.toLowerCase() === plain);
  if (found) {
    if (Object.hasOwn(formerNames, name))
      process.stderr.write(`reckoner: ${formerNameLine(name, found.name)}\n`);
    return found;
  }
  const near = nearest(
    name,
    catalogue.map((r) => r.name),
  );
  throw new InputError(
    `recipe: no recipe ${inspectValue(name)}${near ? `; did you mean ${inspectValue(near)}?` : "; 'reckoner list' shows them"}`,
  );
}

/** Reads `field=value` words into what a recipe takes: JSON where it looks like JSON, `a.b=c` into a group. @throws InputError */
export function parseInputs(words: readonly string[]): Record<string, unknown> {
  const given: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
  for (const word of words) {
    const at = word.indexOf('=');
    if (at < 1) throw new InputError(`${inspectValue(word)}: takes field=value, such as width='900 mm'`);
    const path = word.slice(0, at).split('.');
    if (path.some((p) => !/^[A-Za-z]\w*$/.test(p) || p === '__proto__'))
      throw new InputError(`${inspectValue(word.slice(0, at))}: takes the name of a field`);
    let place = given;
    for (const part of path.slice(0, -1)) {
      const below = (place[part] ??= {}) as object | string;
      if (typeof below === 'string' || Array.isArray(below))
        throw new InputError(
          `${path.join('.')}: ${part} already has a value; takes either ${part}=... or ${part}.name=...`,
        );
      place = below as Record<string, unknown>;
    }
    const last = path[path.length - 1] as string;
    if (Object.hasOwn(place, last)) throw new InputError(`${path.join('.')}: given twice; takes one value`);
    place[last] = valueOf(path.join('.'), word.slice(at + 1));
  }
  return { ...given };
}

function valueOf(name: string, text: string): unknown {
  const t = text.trim();
  if (!/^[[{]/.test(t)) return text;
  try {
    return JSON.parse(t) as unknown;
  } catch (error) {
    throw new InputError(
      `${name}: got ${inspectValue(t)}, which is not whole JSON (${(error as Error).message.split('\n')[0]?.slice(0, 80)}); takes text with a unit, or JSON`,
    );
  }
}

/** An AbortSignal that fires on Ctrl-C, so that a search stops with the best it has. */
export function interruptSignal(): AbortSignal {
  const control = new AbortController();
  process.once('SIGINT', () => control.abort());
  return control.signal;
}

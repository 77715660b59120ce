import { InputError, inspectValue } from '../units/input-error.js';

/**
 * The ending of the name that something is saved under, in small letters; `.htm` counts as `.html`. `endings` are those that
 * are written, such as `['html', 'csv']`, and `example` a name to show. @throws InputError for another name
 */
export function fileEnding<E extends string>(file: unknown, endings: readonly E[], example?: string): E {
  const given = /\.(\w+)$/.exec(typeof file === 'string' ? file : '')?.[1]?.toLowerCase();
  const ending = endings.find((e) => e === (given === 'htm' ? 'html' : given));
  if (ending !== undefined) return ending;
  const [last, ...others] = endings.map((e) => `.${e}`).reverse();
  const names = others.length > 0 ? `${others.reverse().join(', ')} or ${last}` : last;
  throw new InputError({
    field: 'file',
    message: `got ${inspectValue(file)}, takes a name that ends in ${names}${example === undefined ? '' : `, such as "${example}"`}`,
  });
}

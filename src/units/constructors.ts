import type { Kind } from './kind.js';
import { toQuantity } from './parse-quantity.js';
import type { Quantity } from './quantity.js';

export { Quantity } from './quantity.js';

/** Makes a quantity of a kind from text (`'900 mm'`) or another quantity. @throws InputError */
export function quantity<K extends Kind>(kind: K, value: string | Quantity<K>): Quantity<K> {
  return toQuantity(value, kind);
}

const maker =
  <K extends Kind>(kind: K) =>
  (value: string | Quantity<K>): Quantity<K> =>
    toQuantity(value, kind);

/** `length('5\' 10 1/2"')`: text with a unit of length to a quantity. The others alike. @throws InputError */
export const length = maker('length');
export const area = maker('area');
export const volume = maker('volume');
export const liquid = maker('liquid');
export const mass = maker('mass');
export const force = maker('force');
export const pressure = maker('pressure');
export const density = maker('density');
export const moisture = maker('moisture');
export const humidity = maker('humidity');
export const temperature = maker('temperature');
export const time = maker('time');
export const angle = maker('angle');
export const money = maker('money');
export const share = maker('share');

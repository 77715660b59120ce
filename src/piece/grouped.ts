/** Things under their keys, keys in the order met. */
export function grouped<T>(list: readonly T[], keyOf: (thing: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const thing of list) {
    const key = keyOf(thing);
    const had = found.get(key);
    if (had) had.push(thing);
    else found.set(key, [thing]);
  }
  return found;
}

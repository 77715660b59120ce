/**
 * Functions of newer ECMAScript that cells may use and Node 20 lacks, defined as the standard has them where they are
 * missing. Their types are in dist/kernel/lib.d.ts (src/launch/cell-lib.mjs).
 */

type Grouping = (item: unknown, index: number) => unknown;

function groupInto(
  items: Iterable<unknown>,
  keyOf: Grouping,
  normalise: (key: unknown) => unknown,
): Map<unknown, unknown[]> {
  const groups = new Map<unknown, unknown[]>();
  let index = 0;
  for (const item of items) {
    const key = normalise(keyOf(item, index++));
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

const propertyKey = (key: unknown): PropertyKey => (typeof key === 'symbol' ? key : String(key));

function objectGroupBy(items: Iterable<unknown>, keyOf: Grouping): object {
  const groups = Object.create(null) as Record<PropertyKey, unknown>;
  for (const [key, group] of groupInto(items, keyOf, propertyKey)) groups[key as PropertyKey] = group;
  return groups;
}

const mapGroupBy = (items: Iterable<unknown>, keyOf: Grouping): Map<unknown, unknown[]> =>
  groupInto(items, keyOf, (key) => key);

function withResolvers(this: PromiseConstructor): object {
  let resolve: unknown;
  let reject: unknown;
  const promise = new this((onResolve, onReject) => {
    resolve = onResolve;
    reject = onReject;
  });
  return { promise, resolve, reject };
}

/** Defines what is missing on the built-in objects, not enumerable, as built-in functions are. */
export function addLanguageFeatures(): void {
  const define = (holder: object, name: string, value: unknown): void => {
    if (!(name in holder)) Object.defineProperty(holder, name, { value, writable: true, configurable: true });
  };
  define(Object, 'groupBy', objectGroupBy);
  define(Map, 'groupBy', mapGroupBy);
  define(Promise, 'withResolvers', withResolvers);
}

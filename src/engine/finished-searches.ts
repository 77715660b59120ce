/**
 * Answers of long searches kept for the next call with the same inputs. Off by default: a program decides itself what it
 * keeps. The notebook kernel switches it on, so that running a cell again does not repeat a search whose inputs did not change.
 */

interface Kept {
  readonly most: number;
  readonly answers: Map<string, unknown>;
}

// On the global object, so that the notebook's copy of this package and that of the kernel around it mean the same one.
const place = Symbol.for('joiners-reckoner.finished-searches');
const holder = globalThis as { [place]?: Kept | undefined };

/** Keeps the answers of the latest `most` searches from now on; the function it returns forgets them. */
export function keepFinishedSearches(most: number): () => void {
  const mine: Kept = { most, answers: new Map() };
  holder[place] = mine;
  return () => {
    if (holder[place] === mine) holder[place] = undefined;
  };
}

/**
 * The answer kept for these inputs, else that of `search`, which is kept if it finishes. A search that throws, as an
 * interrupted one does, leaves nothing. Inputs that are not plain data are never reused.
 */
export async function finishedOr<T>(name: string, inputs: unknown, search: () => Promise<T>): Promise<T> {
  const kept = holder[place];
  const inputsKey = kept && plainKey(inputs);
  if (!kept || inputsKey === undefined) return search();
  const { answers, most } = kept;
  const key = `${name} ${inputsKey}`;
  const answer = (answers.get(key) as T | undefined) ?? (await search());
  // A Map keeps the order of insertion: the first key is the one used longest ago.
  answers.delete(key);
  answers.set(key, answer);
  const [oldest] = answers.keys();
  if (oldest !== undefined && answers.size > most) answers.delete(oldest);
  return answer;
}

class NotPlain extends Error {}

/** Inputs as text that is equal only for equal inputs; undefined where they hold more than plain data. */
function plainKey(inputs: unknown): string | undefined {
  try {
    return JSON.stringify(inputs, (_key, value: unknown) => {
      if (typeof value === 'number') return Number.isFinite(value) ? value : { number: String(value) };
      if (value === undefined) return { undefined: true };
      if (typeof value === 'function' || typeof value === 'symbol' || typeof value === 'bigint')
        throw new NotPlain();
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
      const prototype: unknown = Object.getPrototypeOf(value);
      if (prototype !== Object.prototype && prototype !== null) throw new NotPlain();
      return value;
    });
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}

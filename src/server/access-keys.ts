import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto';

/** An opening address nobody used for this long no longer opens. */
const openingKeyMs = 24 * 3600_000;
const mostOpeningKeys = 100;

export interface OpeningKey {
  readonly key: string;
  readonly made: number;
}

/**
 * The secrets of one run. The session key opens everything and stays in the tabs that were let in; an opening key stands in an address
 * and is exchanged for the session key once; a ticket opens one document, for links that the browser follows by itself.
 */
export class AccessKeys {
  #opening: OpeningKey[];

  constructor(
    readonly sessionKey: string = newKey(),
    opening: readonly OpeningKey[] = [],
    /** Told whenever the opening keys change, so that a restarted server knows which are used up. */
    private readonly onChange: (opening: readonly OpeningKey[]) => void = () => undefined,
  ) {
    this.#opening = [...opening];
  }

  newOpeningKey(): string {
    const key = newKey();
    this.#keep([...this.#opening, { key, made: Date.now() }].slice(-mostOpeningKeys));
    return key;
  }

  /** The session key for an opening key that was not used yet; undefined for any other. */
  redeem(key: string): string | undefined {
    const found = this.#opening.find((known) => same(known.key, key));
    if (found === undefined) return undefined;
    this.#keep(this.#opening.filter((known) => known !== found));
    return Date.now() - found.made < openingKeyMs ? this.sessionKey : undefined;
  }

  isSessionKey(key: string): boolean {
    return same(key, this.sessionKey);
  }

  /** `path` with a ticket that opens this path alone, in this run alone. */
  withTicket(path: string): string {
    return `${path}?ticket=${this.#ticket(new URL(path, 'http://local').pathname)}`;
  }

  isTicket(ticket: string, path: string): boolean {
    return same(ticket, this.#ticket(path));
  }

  #ticket(path: string): string {
    return createHmac('sha256', this.sessionKey).update(`GET ${path}`).digest('hex');
  }

  #keep(opening: readonly OpeningKey[]): void {
    this.#opening = [...opening];
    this.onChange(this.#opening);
  }
}

export const newKey = (): string => randomBytes(24).toString('hex');

/** Equal in constant time: both are hashed first so that their lengths do not matter. */
function same(a: string, b: string): boolean {
  const hash = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(a), hash(b));
}

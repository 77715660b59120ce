import { dataRevision, readDataFile } from './data-folder.js';

/** A place in a published source. `id` is a key of data/sources.json. */
export interface Citation {
  readonly id: string;
  /** Table, equation, page. */
  readonly locator: string;
  /** 'text' when the figure was read in print, 'memory' when it was recalled and not seen. */
  readonly read?: 'text' | 'memory';
  /** A first source that this one reprints, or another that prints the same. */
  readonly also?: Citation;
}

/** What data/sources.json holds of a source, in CSL-JSON. */
export interface Source {
  readonly id: string;
  readonly type?: string;
  /** Kind of source: standard, handbook, paper, extension bulletin, textbook, manufacturer's sheet ... */
  readonly kind?: string;
  /** How it was seen: the `original`, a `reprint` that names it, `quoted`, or `recalled`. */
  readonly reading?: string;
  readonly title: string;
  readonly author?: readonly {
    readonly family?: string;
    readonly given?: string;
    readonly literal?: string;
  }[];
  readonly publisher?: string;
  readonly number?: string;
  readonly edition?: string;
  readonly issued?: { readonly 'date-parts'?: readonly (readonly number[])[] };
  readonly URL?: string;
}

/** Names a source: `cite('fpl-gtr-190', 'Eq. 13-2, p. 13-15')`. */
export function cite(
  id: string,
  locator: string,
  more: { read?: 'text' | 'memory'; also?: Citation } = {},
): Citation {
  return { id, locator, ...more };
}

let shelf: { readonly revision: number; readonly sources: Map<string, Source> } | undefined;

/** Every source, by id. */
export function allSources(): ReadonlyMap<string, Source> {
  const revision = dataRevision();
  if (shelf?.revision !== revision) {
    const list = JSON.parse(readDataFile('sources.json')) as Source[];
    shelf = { revision, sources: new Map(list.map((s) => [s.id, s])) };
  }
  return shelf.sources;
}

/** A citation as a line of text: authors, title, publisher, year, locator. */
export function citationText(c: Citation): string {
  const s = allSources().get(c.id);
  const year = s?.issued?.['date-parts']?.[0]?.[0];
  const authors = s?.author
    ?.map((a) => a.literal ?? [a.family, a.given].filter(Boolean).join(', '))
    .join('; ');
  const head = s
    ? [authors, s.title, s.number, s.edition, s.publisher, year]
        .filter((x) => x !== undefined && x !== '')
        .join(', ')
    : c.id;
  const memory = c.read === 'memory' ? ' (not yet verified)' : '';
  const also = c.also ? `; also ${citationText(c.also)}` : '';
  return `${head}, ${c.locator}${memory}${also}`;
}

/** A citation in a few words, for a line that has little space: number or title, year, locator. */
export function shortCitation(c: Citation): string {
  const s = allSources().get(c.id);
  const year = s?.issued?.['date-parts']?.[0]?.[0];
  const title =
    s?.number ?? (s && s.title.length > 48 ? `${s.title.slice(0, 45).trimEnd()}...` : s?.title) ?? c.id;
  return `${title}${year === undefined ? '' : ` (${year})`}, ${c.locator}${c.read === 'memory' ? ', unverified' : ''}`;
}

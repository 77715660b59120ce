import { createHash } from 'node:crypto';
import { parseNotebook } from '../notebook/format/notebook-json.js';
import { readPrivateFile, writePrivateFile } from './private-file.js';
import shipped from './shipped-notebooks.json' with { type: 'json' };

/** More notebooks than anyone runs; the oldest are forgotten first. */
const mostHashes = 5000;

/**
 * Which notebooks may run unasked: those that came with the package, unchanged, and those that this user has run before. A hash of the
 * code decides, so new outputs or words change nothing and one changed character of code does.
 */
export class KnownNotebooks {
  readonly #shipped: ReadonlySet<string>;
  /** Where there is no file. */
  #memory: readonly string[] = [];

  constructor(
    /** File of the user's own state folder; undefined remembers for this run only. */
    private readonly file: string | undefined,
    shippedHashes: readonly string[] = shipped,
  ) {
    this.#shipped = new Set(shippedHashes);
  }

  async isKnown(notebook: string): Promise<boolean> {
    const hash = codeHash(notebook);
    return hash !== undefined && (this.#shipped.has(hash) || (await this.#read()).includes(hash));
  }

  /** The user has run this notebook: from now on it may run unasked. */
  async remember(notebook: string): Promise<void> {
    const hash = codeHash(notebook);
    const known = await this.#read();
    if (hash === undefined || this.#shipped.has(hash) || known.includes(hash)) return;
    const next = [...known, hash].slice(-mostHashes);
    if (this.file === undefined) this.#memory = next;
    else await writePrivateFile(this.file, `${next.join('\n')}\n`);
  }

  /** Read each time: another server of this user may have added to it. */
  async #read(): Promise<readonly string[]> {
    if (this.file === undefined) return this.#memory;
    return ((await readPrivateFile(this.file)) ?? '').split('\n').filter(Boolean);
  }
}

/** SHA-256 of a notebook's code cells; undefined for a text that is no notebook. */
export function codeHash(notebook: string): string | undefined {
  try {
    const { cells } = parseNotebook(notebook, 'notebook');
    const sources = cells.filter((cell) => cell.cell_type === 'code').map((cell) => cell.source);
    return createHash('sha256').update(JSON.stringify(sources)).digest('hex');
  } catch {
    return undefined;
  }
}

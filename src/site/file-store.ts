/** The user's files, kept by the browser under their paths. */

export interface StoredFile {
  readonly path: string;
  readonly text: string;
  /** When it was made and last changed, ms since 1970. */
  readonly created: number;
  readonly modified: number;
}

/** The browser has no room left, or does not let this page keep anything. */
export class StorageError extends Error {}

const full =
  'The browser has no room left for this site. Nothing was lost: download the notebook, delete files that are not needed, and save again.';

const settled = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = (): void => resolve(request.result);
    request.onerror = (): void => reject(request.error ?? new StorageError('the browser did not answer'));
  });

/** Resolves once what a transaction wrote is kept. */
const kept = (work: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    work.oncomplete = (): void => resolve();
    work.onabort = (): void =>
      reject(
        work.error?.name === 'QuotaExceededError'
          ? new StorageError(full)
          : (work.error ?? new StorageError('the browser kept nothing')),
      );
  });

export class FileStore {
  /** Files of a private window that keeps nothing; gone with the page. */
  readonly #memory = new Map<string, StoredFile>();
  readonly #database: Promise<IDBDatabase | undefined>;

  constructor(name: string) {
    this.#database = open(name);
  }

  /** Whether files outlive the page. */
  async isKept(): Promise<boolean> {
    return (await this.#database) !== undefined;
  }

  async list(): Promise<StoredFile[]> {
    const database = await this.#database;
    if (!database) return [...this.#memory.values()];
    return (await settled(database.transaction('files').objectStore('files').getAll())) as StoredFile[];
  }

  async get(path: string): Promise<StoredFile | undefined> {
    const database = await this.#database;
    if (!database) return this.#memory.get(path);
    return (await settled(database.transaction('files').objectStore('files').get(path))) as
      StoredFile | undefined;
  }

  /**
   * Writes a file if `mayReplace` agrees to what is there, in one transaction, so that two tabs cannot overwrite one another.
   * @throws what `mayReplace` throws; StorageError where there is no room
   */
  async put(
    path: string,
    text: string,
    mayReplace: (now: StoredFile | undefined) => void = () => undefined,
  ): Promise<StoredFile> {
    const file = (now: StoredFile | undefined): StoredFile => {
      mayReplace(now);
      const time = Date.now();
      return { path, text, created: now?.created ?? time, modified: time };
    };
    const database = await this.#database;
    if (!database) {
      const made = file(this.#memory.get(path));
      this.#memory.set(path, made);
      return made;
    }
    const work = database.transaction('files', 'readwrite');
    const done = kept(work);
    done.catch(() => undefined);
    const store = work.objectStore('files');
    const made = file((await settled(store.get(path))) as StoredFile | undefined);
    store.put(made);
    await done;
    return made;
  }

  async remove(path: string): Promise<void> {
    const database = await this.#database;
    this.#memory.delete(path);
    if (!database) return;
    const work = database.transaction('files', 'readwrite');
    work.objectStore('files').delete(path);
    await kept(work);
  }
}

async function open(name: string): Promise<IDBDatabase | undefined> {
  try {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = (): void => void request.result.createObjectStore('files', { keyPath: 'path' });
    return await settled(request);
  } catch {
    return undefined;
  }
}

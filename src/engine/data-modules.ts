// Stands in for data-folder.ts where there is no disk: the build for browsers puts the tables beside the modules that read
// them, and each such module hands its tables over when it is loaded.

/** A table of data/ as text, with the sources that it names. */
export interface DataModule {
  readonly name: string;
  readonly text: string;
}

const texts = new Map<string, string>();
const sources = new Map<string, object>();
let revision = 0;

/** Takes a table; called by the modules that read it. */
export function addTable({ name, text }: DataModule): void {
  texts.set(name, text);
}

/** Takes entries of the list of sources; called by the modules that cite them. */
export function addSources(list: readonly { readonly id: string }[]): void {
  for (const source of list) sources.set(source.id, source);
  revision++;
}

const missing = (name: string): Error =>
  Object.assign(new Error(`no file ${name} in a browser`), { code: 'ENOENT' });

/** Changes when sources are added, so that a list made before is made anew. */
export const dataRevision = (): number => revision;

/** Text of a file in data/. @throws Error where no loaded module brought it */
export function readDataFile(name: string): string {
  if (name === 'sources.json') return JSON.stringify([...sources.values()]);
  const text = texts.get(name);
  if (text === undefined) throw missing(name);
  return text;
}

/** Names of the files in data/ that are loaded. */
export const dataFileNames = (): string[] => [...texts.keys()];

/** There is no folder of the package in a browser. @throws Error */
export function packageFolder(): string {
  throw missing('package.json');
}

/** There are no files of one's own in a browser: a table is given as text or rows. @throws Error with code ENOENT */
export function readOwnFile(name: string): string {
  throw missing(name);
}

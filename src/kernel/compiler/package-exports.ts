/** The types of the package's own names, which every cell sees without an import: only those that some cell mentions are read. */
import type TS from 'typescript';
import type { ProgramHost } from './program-host.js';
import { moduleSymbol } from './typescript-internals.js';

/** For each exported name the declaration file it comes from, relative to the declarations, its name there, and whether it is a type alone. */
type ExportIndex = Record<string, [file: string, name: string, kind?: 'type']>;

export class PackageExports {
  private readonly index: ExportIndex | undefined;
  private readonly referenced = new Map<string, { path: string; name: string }>();
  private whole: boolean;

  constructor(private readonly host: ProgramHost) {
    const text = host.readText(host.paths.exportIndex);
    this.index = text === undefined ? undefined : (JSON.parse(text) as ExportIndex);
    this.whole = this.index === undefined;
  }

  private get publicTypes(): string {
    return `${this.host.paths.declarations}index.d.ts`;
  }

  /** The declaration files that the program needs now. */
  files(): string[] {
    if (this.whole) return this.host.isFile(this.publicTypes) ? [this.publicTypes] : [];
    return [...new Set([...this.referenced.values()].map(({ path }) => path))];
  }

  /** Every name, loaded or not: the values, with `types` the types too. */
  names(types: boolean): string[] {
    const entries = Object.entries(this.index ?? {});
    return entries.flatMap(([name, [, , kind]]) => (types || kind !== 'type' ? [name] : []));
  }

  /** From now on all names. False if that was so already. */
  loadAll(): boolean {
    if (this.whole) return false;
    return (this.whole = true);
  }

  /** From now on the names that a text mentions too. False if it mentions no new one. */
  load(text: string): boolean {
    const { index } = this;
    if (this.whole || !index) return false;
    const before = this.referenced.size;
    for (const [word] of text.matchAll(/[\p{ID_Start}$_][\p{ID_Continue}$]*/gu)) {
      const entry = Object.hasOwn(index, word) ? index[word] : undefined;
      if (entry) this.referenced.set(word, { path: this.host.paths.declarations + entry[0], name: entry[1] });
    }
    return this.referenced.size > before;
  }

  /** The symbols of the loaded names. */
  symbols(
    checker: TS.TypeChecker,
    fileOf: (path: string) => TS.SourceFile | undefined,
  ): Map<string, TS.Symbol> {
    const exportsOf = (path: string): TS.Symbol[] => {
      const symbol = moduleSymbol(fileOf(path));
      return symbol ? checker.getExportsOfModule(symbol) : [];
    };
    if (this.whole) return new Map(exportsOf(this.publicTypes).map((symbol) => [symbol.name, symbol]));
    const found = new Map<string, TS.Symbol>();
    for (const [name, origin] of this.referenced) {
      const symbol = exportsOf(origin.path).find((exported) => exported.name === origin.name);
      if (symbol) found.set(name, symbol);
    }
    return found;
  }
}

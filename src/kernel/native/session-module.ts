/**
 * The cells that have run, as one module that the native checker reads. Each cell is a namespace: `let width = 600` in the
 * third cell becomes `namespace cell$3 { export let width = 600; }`. A name that was a cell's own then stays that cell's
 * own in all cells that used it, also after a later cell declares it anew.
 *
 * A new cell sees `let` and `var` as globals, which can be assigned to and are checked when they are; it imports the rest.
 */
import type { Meaning } from '../compiler/name-meaning.js';
import { declaredSymbols, type CellFile, type Compiler } from '../compiler/typescript-internals.js';
import {
  awaited,
  cellNamespace,
  emptyNamespace,
  innerName,
  isTopLevel,
  type CellNamespace,
  type VisibleNames,
} from './cell-namespace.js';

/** A name that a cell has declared, and the namespace of that cell. */
interface Provider {
  namespace: string;
  /** The name there. */
  exported: string;
  /** Whether cells can assign to it. */
  isVariable: boolean;
}

/** The newest declarations of a name: those of its value and of its type may be in different cells. */
interface Providers {
  value?: Provider;
  type?: Provider;
}

/** Where the module finds the package. */
export const packageSpecifier = 'joiners-reckoner';

export const wordsOf = (text: string): Set<string> =>
  new Set([...text.matchAll(/[\p{ID_Start}$_][\p{ID_Continue}$]*/gu)].map(([word]) => word));

export class SessionModule {
  private readonly cells = new Map<string, CellNamespace>();
  private readonly providers = new Map<string, Providers>();

  /** `packageNames` are the names of the package, `globalNames` those that a global declaration would clash with. */
  constructor(
    private readonly ts: Compiler,
    private readonly packageNames: ReadonlySet<string>,
    private readonly globalNames: ReadonlySet<string>,
  ) {}

  /** Names of the session and of the package that a cell has to import, of those that its text mentions. */
  importsFor(text: string, own: ReadonlySet<string>): { session: string[]; package: string[] } {
    const foreign = [...wordsOf(text)].filter((word) => !own.has(word));
    return {
      session: foreign.filter((word) => this.importedProvider(word) !== undefined),
      package: foreign.filter((word) => this.packageNames.has(word) && !this.providers.has(word)),
    };
  }

  /** Adds a cell, of whose declarations later cells see those in `names`. */
  publish(file: CellFile, names: ReadonlyMap<string, Meaning>): void {
    if (names.size === 0) return;
    const namespace = `cell$${this.cells.size + 1}`;
    this.cells.set(namespace, cellNamespace(this.ts, file, namespace, names, this.visibleNames));
    for (const [name, { value, type }] of names) {
      const provider = this.providerOf(file, namespace, name);
      const former = this.providers.get(name) ?? {};
      const next = { ...former, ...(value ? { value: provider } : {}), ...(type ? { type: provider } : {}) };
      this.providers.set(name, next);
    }
    this.dropUnused();
  }

  private providerOf(file: CellFile, namespace: string, name: string): Provider {
    const { ts } = this;
    const symbol = declaredSymbols(file).get(name);
    const declaration = symbol?.valueDeclaration;
    if (!symbol || !declaration) return { namespace, exported: name, isVariable: false };
    const { Const, Using } = ts.NodeFlags;
    const isConstant = (ts.getCombinedNodeFlags(declaration) & (Const | Using)) !== 0;
    return {
      namespace,
      exported: isTopLevel(ts, declaration) ? name : innerName(name),
      isVariable: (symbol.flags & ts.SymbolFlags.Variable) !== 0 && !isConstant,
    };
  }

  /** The value that cells see as a global: a variable, or one whose name another cell uses for a type. */
  private globalProvider(name: string): Provider | undefined {
    const { value, type } = this.providers.get(name) ?? {};
    const isApart = type !== undefined && type.namespace !== value?.namespace;
    return value && (value.isVariable || isApart) && !this.globalNames.has(name) ? value : undefined;
  }

  /** What cells import under a name. */
  private importedProvider(name: string): Provider | undefined {
    const { value, type } = this.providers.get(name) ?? {};
    return this.globalProvider(name) ? type : (value ?? type);
  }

  /** Statements by which a namespace sees the earlier names that its text mentions, and the namespaces they come from. */
  private readonly visibleNames = (text: string, own: ReadonlySet<string>): VisibleNames => {
    const lines: string[] = [];
    const uses = new Set<string>();
    const alias = (name: string, { namespace, exported }: Provider): void => {
      uses.add(namespace);
      lines.push(`import ${name} = ${namespace}.${exported};`);
    };
    for (const word of wordsOf(text)) {
      if (own.has(word)) continue;
      const { value, type } = this.providers.get(word) ?? {};
      if (type && value && type.namespace !== value.namespace) {
        // The alias has the type; a constant beside it has the value.
        alias(word, type);
        uses.add(value.namespace);
        lines.push(`declare const ${word}: typeof ${value.namespace}.${value.exported};`);
      } else if (value ?? type) alias(word, (value ?? type) as Provider);
      else if (this.packageNames.has(word)) lines.push(`import ${word} = cell$package.${word};`);
    }
    return { lines, uses: [...uses] };
  };

  /** Removes cells whose names were all declared anew and that no other cell refers to. */
  private dropUnused(): void {
    const needed = new Set<string>();
    const need = (namespace: string): void => {
      if (needed.has(namespace)) return;
      needed.add(namespace);
      this.cells.get(namespace)?.uses.forEach(need);
    };
    for (const { value, type } of this.providers.values())
      for (const provider of [value, type]) if (provider) need(provider.namespace);
    // The entries stay, so that no number is used twice.
    for (const [namespace, cell] of this.cells)
      if (!needed.has(namespace)) Object.assign(cell, emptyNamespace);
  }

  get text(): string {
    const cells = [...this.cells].filter(([, { body }]) => body !== '');
    const names = [...this.providers.keys()];
    const lines = (
      of: (name: string) => Provider | undefined,
      line: (name: string, path: string) => string,
    ): string[] =>
      names.flatMap((name) => {
        const provider = of(name);
        return provider ? [line(name, `${provider.namespace}.${provider.exported}`)] : [];
      });
    return [
      `import * as cell$package from '${packageSpecifier}';`,
      ...cells.map(([, { imports }]) => imports),
      `declare function ${awaited}<T>(value: T): Awaited<T>;`,
      ...cells.map(([namespace, { body }]) => `namespace ${namespace} {\n${body}\n}`),
      'declare global {',
      ...lines(
        (name) => this.globalProvider(name),
        (name, path) => `let ${name}: typeof ${path};`,
      ),
      '}',
      ...lines(
        (name) => this.importedProvider(name),
        (name, path) => `export import ${name} = ${path};`,
      ),
      'export {};',
    ].join('\n');
  }
}

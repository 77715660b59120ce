/**
 * The cells that have run, as one module that the native checker reads. Each cell is a namespace: `let width = 600` in the
 * third cell becomes `namespace cell$3 { export let width = 600; }`. A name that was a cell's own then stays that cell's
 * own in all cells that used it, also after a later cell declares it anew.
 *
 * A new cell sees `let` and `var` as globals, which can be assigned to and are checked when they are; it imports the rest.
 */
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

/** How a later cell reaches a name. */
type Access = 'global' | 'import';

interface Provider {
  /** The namespace of the cell that declared the name. */
  namespace: string;
  /** The name there. */
  exported: string;
  access: Access;
}

/** Where the module finds the package. */
export const packageSpecifier = 'joiners-reckoner';

export const wordsOf = (text: string): Set<string> =>
  new Set([...text.matchAll(/[\p{ID_Start}$_][\p{ID_Continue}$]*/gu)].map(([word]) => word));

export class SessionModule {
  private readonly cells = new Map<string, CellNamespace>();
  private readonly providers = new Map<string, Provider>();

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
      session: foreign.filter((word) => this.providers.get(word)?.access === 'import'),
      package: foreign.filter((word) => this.packageNames.has(word) && !this.providers.has(word)),
    };
  }

  /** Adds a cell, of whose declarations the `names` are seen by later cells. */
  publish(file: CellFile, names: readonly string[]): void {
    if (names.length === 0) return;
    const namespace = `cell$${this.cells.size + 1}`;
    this.cells.set(namespace, cellNamespace(this.ts, file, namespace, names, this.visibleNames));
    for (const name of names) this.providers.set(name, this.providerOf(file, namespace, name));
    this.dropUnused();
  }

  private providerOf(file: CellFile, namespace: string, name: string): Provider {
    const { SymbolFlags } = this.ts;
    const symbol = declaredSymbols(file).get(name);
    const declaration = symbol?.valueDeclaration;
    const isVariable = declaration !== undefined && (symbol?.flags ?? 0) & SymbolFlags.Variable;
    const isConstant =
      declaration !== undefined &&
      (this.ts.getCombinedNodeFlags(declaration) & this.ts.NodeFlags.BlockScoped) > 1;
    const access = isVariable && !isConstant && !this.globalNames.has(name) ? 'global' : 'import';
    const isTop = declaration === undefined || isTopLevel(this.ts, declaration);
    return { namespace, exported: isTop ? name : innerName(name), access };
  }

  /** Statements by which a namespace sees the earlier names that its text mentions, and the namespaces they come from. */
  private readonly visibleNames = (text: string, own: ReadonlySet<string>): VisibleNames => {
    const lines: string[] = [];
    const uses = new Set<string>();
    for (const word of wordsOf(text)) {
      if (own.has(word)) continue;
      const provider = this.providers.get(word);
      if (provider) {
        uses.add(provider.namespace);
        lines.push(`import ${word} = ${provider.namespace}.${provider.exported};`);
      } else if (this.packageNames.has(word)) lines.push(`import ${word} = cell$package.${word};`);
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
    for (const { namespace } of this.providers.values()) need(namespace);
    // Numbers stay used: the map's size only grows.
    for (const [namespace, cell] of this.cells)
      if (!needed.has(namespace)) Object.assign(cell, emptyNamespace);
  }

  get text(): string {
    const cells = [...this.cells].filter(([, { body }]) => body !== '');
    const current = [...this.providers];
    return [
      `import * as cell$package from '${packageSpecifier}';`,
      ...cells.map(([, { imports }]) => imports),
      `declare function ${awaited}<T>(value: T): Awaited<T>;`,
      ...cells.map(([namespace, { body }]) => `namespace ${namespace} {\n${body}\n}`),
      'declare global {',
      ...current
        .filter(([, { access }]) => access === 'global')
        .map(([name, { namespace, exported }]) => `let ${name}: typeof ${namespace}.${exported};`),
      '}',
      ...current
        .filter(([, { access }]) => access === 'import')
        .map(([name, { namespace, exported }]) => `export import ${name} = ${namespace}.${exported};`),
      'export {};',
    ].join('\n');
  }
}

/** One cell as a namespace of the module that the native checker reads: see session-module.ts. */
import type TS from 'typescript';
import type { Meaning } from '../compiler/name-meaning.js';
import { declaredSymbols, type CellFile, type Compiler } from '../compiler/typescript-internals.js';

export interface CellNamespace {
  /** Imports of modules, which a namespace cannot hold. */
  imports: string;
  body: string;
  /** Namespaces it refers to. */
  uses: string[];
}

/** Statements by which a namespace sees the earlier names that its text mentions, and the namespaces they come from. */
export interface VisibleNames {
  lines: string[];
  uses: string[];
}

/** What remains of a cell that nothing refers to any more. */
export const emptyNamespace: CellNamespace = { imports: '', body: '', uses: [] };

/** A function that has the type of `await`: in a namespace `await` is a name like any other. */
export const awaited = 'cell$await';

/** The name under which a namespace exports a `var` that stands inside a block. */
export const innerName = (name: string): string => `cell$inner$${name}`;

/** Whether a declaration stands in a statement of the cell itself, not in a block of it. */
export function isTopLevel(ts: Compiler, declaration: TS.Node): boolean {
  let node = declaration;
  while (!ts.isStatement(node) && !ts.isSourceFile(node.parent)) node = node.parent;
  return ts.isSourceFile(node.parent) && !ts.isIterationStatement(node, false);
}

/** A cell's declarations as a namespace. `visibleNames` finds the names of earlier cells and of the package. */
export const cellNamespace = (
  ts: Compiler,
  file: CellFile,
  namespace: string,
  names: ReadonlyMap<string, Meaning>,
  visibleNames: (text: string, own: ReadonlySet<string>) => VisibleNames,
): CellNamespace => new NamespaceText(ts, file, namespace, names, visibleNames).made();

/** A change of a cell's text: what stands from `start` to `end` becomes `text`. */
interface Edit {
  start: number;
  end: number;
  text: string;
}

/** Makes the namespace of one cell. */
class NamespaceText {
  private readonly edits: Edit[] = [];
  private readonly symbols: Map<string, TS.Symbol>;

  constructor(
    private readonly ts: Compiler,
    private readonly file: CellFile,
    private readonly namespace: string,
    private readonly names: ReadonlyMap<string, Meaning>,
    private readonly visibleNames: (text: string, own: ReadonlySet<string>) => VisibleNames,
  ) {
    this.symbols = declaredSymbols(file);
  }

  made(): CellNamespace {
    const { ts, file } = this;
    const imports: string[] = [];
    const body: string[] = [];
    for (const statement of file.statements) {
      if (ts.isImportDeclaration(statement)) {
        const { line, aliases } = this.imported(statement);
        imports.push(line);
        body.push(...aliases);
      } else if (this.isKept(statement)) body.push(this.exported(statement));
    }
    const hidden = [...this.names.keys()].filter((name) => {
      const declaration = this.symbols.get(name)?.valueDeclaration;
      return declaration !== undefined && !isTopLevel(ts, declaration);
    });
    body.push(...hidden.map((name) => `export let ${innerName(name)} = ${name};`));
    const { lines, uses } = this.visibleNames(body.join('\n'), new Set(this.symbols.keys()));
    return { imports: imports.join('\n'), body: [...lines, ...body].join('\n'), uses };
  }

  /** Declarations, and statements that hold a `var` of the cell. */
  private isKept(statement: TS.Statement): boolean {
    const { ts } = this;
    if (this.isDeclaration(statement)) return true;
    return [...this.names.keys()].some((name) => {
      const declaration = this.symbols.get(name)?.valueDeclaration;
      return (
        declaration !== undefined &&
        statement.pos <= declaration.pos &&
        declaration.end <= statement.end &&
        !ts.isImportDeclaration(statement)
      );
    });
  }

  private isDeclaration(statement: TS.Statement): boolean {
    const { ts } = this;
    return (
      ts.isVariableStatement(statement) ||
      ts.isFunctionDeclaration(statement) ||
      ts.isClassDeclaration(statement) ||
      ts.isInterfaceDeclaration(statement) ||
      ts.isTypeAliasDeclaration(statement) ||
      ts.isEnumDeclaration(statement) ||
      ts.isModuleDeclaration(statement)
    );
  }

  /** The text of a statement with `export` before a declaration, and what a namespace does not allow replaced. */
  private exported(statement: TS.Statement): string {
    const { ts, file } = this;
    const start = statement.getStart(file);
    this.edits.length = 0;
    for (const modifier of ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [])
      if (modifier.kind === ts.SyntaxKind.ExportKeyword || modifier.kind === ts.SyntaxKind.DefaultKeyword)
        this.edits.push({ start: modifier.getStart(file), end: modifier.end, text: '' });
    if (ts.isVariableStatement(statement) && (statement.declarationList.flags & ts.NodeFlags.Using) !== 0) {
      const list = statement.declarationList;
      const first = list.declarations[0];
      if (first) this.edits.push({ start: list.getStart(file), end: first.getStart(file), text: 'const ' });
    }
    this.replaceAwaits(statement);
    const text = this.edited(start, statement.end);
    return this.isDeclaration(statement) ? `export ${text}` : text;
  }

  /** `await x` outside a function as a call that has its type: in a namespace `await` is a name like any other. */
  private replaceAwaits(node: TS.Node): void {
    const { ts, file } = this;
    if (ts.isFunctionLike(node)) return;
    if (ts.isAwaitExpression(node)) {
      this.edits.push({
        start: node.getStart(file),
        end: node.expression.getStart(file),
        text: `${awaited}(`,
      });
      this.edits.push({ start: node.end, end: node.end, text: ')' });
    }
    ts.forEachChild(node, (child) => this.replaceAwaits(child));
  }

  private edited(from: number, to: number): string {
    const { text } = this.file;
    let at = from;
    let made = '';
    for (const { start, end, text: replacement } of [...this.edits].sort((a, b) => a.start - b.start)) {
      made += text.slice(at, start) + replacement;
      at = end;
    }
    return made + text.slice(at, to);
  }

  /** An import under names of its own, and their aliases in the namespace. */
  private imported({ importClause: clause, moduleSpecifier }: TS.ImportDeclaration): {
    line: string;
    aliases: string[];
  } {
    const { ts, file } = this;
    const from = moduleSpecifier.getText(file);
    if (!clause) return { line: `import ${from};`, aliases: [] };
    const aliases: string[] = [];
    const own = (name: string): string => {
      const imported = `${this.namespace}$${name}`;
      // An alias of a member of a module that is one value (`export =`) would be of any type.
      const isValueOnly = this.names.get(name)?.type === false;
      aliases.push(
        isValueOnly ? `export const ${name}: typeof ${imported};` : `export import ${name} = ${imported};`,
      );
      return imported;
    };
    const parts: string[] = [];
    if (clause.name) parts.push(own(clause.name.text));
    const { namedBindings: named } = clause;
    if (named && ts.isNamespaceImport(named)) parts.push(`* as ${own(named.name.text)}`);
    else if (named)
      parts.push(
        `{ ${named.elements.map(({ name, propertyName }) => `${(propertyName ?? name).getText(file)} as ${own(name.text)}`).join(', ')} }`,
      );
    return { line: `import ${parts.join(', ')} from ${from};`, aliases };
  }
}

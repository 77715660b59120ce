/**
 * Turns a checked cell into the body of a function whose top-level names are bindings shared by all cells, so that every
 * cell and every function defined in one sees the newest value of a name. `a` becomes `ǀa.v`; the executor passes the
 * binding in. The mark ǀ (a letter to JavaScript) keeps the bindings apart from a cell's own names.
 */
import type TS from 'typescript';
import { DeclarationAssignments } from './declaration-assignments.js';
import { ExpressionTransformer, type TransformContext } from './transform-expressions.js';
import type { Compiler } from './typescript-internals.js';

/** A transformer of one cell; it fills in what `context` leaves open. */
export function cellTransformer(
  ts: Compiler,
  context: TransformContext,
): TS.TransformerFactory<TS.SourceFile> {
  return (transformation) => {
    const transformer = new CellTransformer(ts, context, transformation);
    return (file) => transformer.transform(file);
  };
}

class CellTransformer {
  private readonly f: TS.NodeFactory;
  private readonly inner: ExpressionTransformer;
  private readonly declarations: DeclarationAssignments;

  constructor(
    private readonly ts: Compiler,
    private readonly context: TransformContext,
    transformation: TS.TransformationContext,
  ) {
    this.f = transformation.factory;
    this.inner = new ExpressionTransformer(ts, context, transformation);
    this.declarations = new DeclarationAssignments(this.inner);
    const { SyntaxKind } = ts;
    this.inner.handle(SyntaxKind.VariableStatement, (node: TS.VariableStatement) => this.variables(node));
    this.inner.handle(SyntaxKind.VariableDeclarationList, (node: TS.VariableDeclarationList) =>
      this.loopHead(node),
    );
  }

  transform(file: TS.SourceFile): TS.SourceFile {
    const { ts, f } = this;
    const hoisted: TS.Statement[] = [];
    const body: TS.Statement[] = [];
    const last = file.statements.filter((s) => !ts.isEmptyStatement(s) && !ts.isImportDeclaration(s)).at(-1);
    for (const node of file.statements) {
      if (node === last && ts.isExpressionStatement(node)) {
        const value = f.createReturnStatement(this.inner.expression(node.expression));
        body.push(this.inner.replacing(value, node));
      } else {
        body.push(...this.statement(node, hoisted));
      }
    }
    const statements = ts.setTextRange(f.createNodeArray([...hoisted, ...body]), file.statements);
    return f.updateSourceFile(file, statements);
  }

  /** A top-level statement. Functions stay hoisted; classes, enums and namespaces set their binding once defined. */
  private statement(node: TS.Statement, hoisted: TS.Statement[]): TS.Statement[] {
    const { ts, f } = this;
    if (ts.isImportDeclaration(node) || ts.isImportEqualsDeclaration(node) || ts.isExportDeclaration(node))
      return [];
    if (ts.isExportAssignment(node))
      return [f.createExpressionStatement(this.inner.expression(node.expression))];
    if (this.isAmbient(node)) return [];
    if (ts.isFunctionDeclaration(node)) return [this.functionDeclaration(node, hoisted)];
    const isBody = ts.isClassDeclaration(node) || ts.isEnumDeclaration(node) || ts.isModuleDeclaration(node);
    const name = isBody ? node.name : undefined;
    if (!isBody || !name)
      return ([] as TS.Statement[]).concat((this.inner.visit(node) ?? []) as TS.Statement | TS.Statement[]);
    const kept = this.withoutExport(this.inner.insideName(name.text, node));
    return this.context.declared.has(name.text)
      ? [kept, this.setBinding(name.text, f.createIdentifier(name.text), name)]
      : [kept];
  }

  private functionDeclaration(node: TS.FunctionDeclaration, hoisted: TS.Statement[]): TS.Statement {
    const { f } = this;
    const done = this.inner.insideFunction(node) as TS.FunctionDeclaration;
    if (node.name && node.body)
      hoisted.push(this.setBinding(node.name.text, f.createIdentifier(node.name.text), node.name));
    return f.updateFunctionDeclaration(
      done,
      this.plainModifiers(done.modifiers),
      done.asteriskToken,
      done.name,
      done.typeParameters,
      done.parameters,
      done.type,
      done.body,
    );
  }

  private withoutExport(node: TS.ClassDeclaration | TS.EnumDeclaration | TS.ModuleDeclaration): TS.Statement {
    const { ts, f } = this;
    if (ts.isEnumDeclaration(node))
      return f.updateEnumDeclaration(node, this.plainModifiers(node.modifiers), node.name, node.members);
    if (ts.isModuleDeclaration(node))
      return f.updateModuleDeclaration(node, this.plainModifiers(node.modifiers), node.name, node.body);
    return f.updateClassDeclaration(
      node,
      this.plainModifiers(node.modifiers),
      node.name,
      node.typeParameters,
      node.heritageClauses,
      node.members,
    );
  }

  private plainModifiers<T extends TS.Node>(modifiers: readonly T[] | undefined): T[] | undefined {
    const { ExportKeyword, DefaultKeyword } = this.ts.SyntaxKind;
    return modifiers?.filter((m) => m.kind !== ExportKeyword && m.kind !== DefaultKeyword);
  }

  private setBinding(name: string, value: TS.Expression, origin: TS.Node): TS.Statement {
    const { f } = this;
    return this.inner.replacing(
      f.createExpressionStatement(f.createAssignment(this.inner.binding(name), value)),
      origin,
    );
  }

  /** `let a = 1, b` at the cell's top level, or `var` in a block of it, as assignments. */
  private variables(node: TS.VariableStatement): TS.VisitResult<TS.Node | undefined> {
    const { f, inner } = this;
    const { declarationList: list } = node;
    if (this.isAmbient(node) || !this.isCellLevel(list)) return inner.children(node);
    if (this.isUsing(list)) return this.usings(node);
    return list.declarations.flatMap((declaration) => {
      const set = this.declarations.assignment(declaration);
      if (!set) return [];
      const statement = this.ts.setTextRange(f.createExpressionStatement(set), declaration);
      return [this.ts.setOriginalNode(statement, node)];
    });
  }

  /** `using a = b` keeps its declaration, so that `a` is disposed of when the cell ends, and sets the binding too. */
  private usings(node: TS.VariableStatement): TS.Statement[] {
    const { ts, f, inner } = this;
    const { declarations, flags } = node.declarationList;
    // `await using` has the flags of both `const` and `using`.
    if ((flags & ts.NodeFlags.Const) !== 0) this.context.hasTopLevelAwait = true;
    const sets = declarations.flatMap(({ name }) =>
      ts.isIdentifier(name) ? [this.setBinding(name.text, f.createIdentifier(name.text), name)] : [],
    );
    return [inner.children(node) as TS.Statement, ...sets];
  }

  private isUsing({ flags }: TS.VariableDeclarationList): boolean {
    return (flags & this.ts.NodeFlags.Using) !== 0;
  }

  /** The declarations of a loop's head, where they declare names of the cell. */
  private loopHead(list: TS.VariableDeclarationList): TS.VisitResult<TS.Node | undefined> {
    const { ts, f, inner } = this;
    if (ts.isVariableStatement(list.parent) || !this.isCellLevel(list)) return inner.children(list);
    const [first] = list.declarations;
    if (!ts.isForStatement(list.parent) && first) return this.declarations.target(first.name);
    const sets = list.declarations
      .map((declaration) => this.declarations.assignment(declaration))
      .filter((set) => set !== undefined);
    return sets.length > 0 ? sets.reduce((before, set) => f.createComma(before, set)) : undefined;
  }

  /** Whether this list declares names of the cell rather than of a block or a function. */
  private isCellLevel(list: TS.VariableDeclarationList): boolean {
    const { ts } = this;
    if (this.inner.isInFunction) return false;
    if ((list.flags & ts.NodeFlags.BlockScoped) === 0) return true;
    return ts.isVariableStatement(list.parent) && ts.isSourceFile(list.parent.parent);
  }

  private isAmbient(node: TS.Node): boolean {
    const { ts } = this;
    if (!ts.canHaveModifiers(node)) return false;
    return ts.getModifiers(node)?.some((m) => m.kind === ts.SyntaxKind.DeclareKeyword) ?? false;
  }
}

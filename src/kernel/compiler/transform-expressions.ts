/** The part of the transformation that replaces names, calls, imports and awaits wherever they are in a cell. */
import type TS from 'typescript';
import type { AssignmentContext } from './declaration-assignments.js';
import { accessOf } from './name-access.js';
import type { Compiler } from './typescript-internals.js';

export const mark = 'ǀ';

/** Where a name used in a cell comes from. */
export type Origin = 'cell' | 'package' | 'elsewhere';

export interface TransformContext {
  /** Finds the origin of an identifier that reads or writes a value. */
  originOf(identifier: TS.Identifier): Origin;
  /** Names declared at the cell's top level that hold a value. */
  declared: ReadonlySet<string>;
  /** Filled in: the bindings the code uses, and of those the ones it reads and assigns to. */
  bindings: Set<string>;
  reads: Set<string>;
  writes: Set<string>;
  hasTopLevelAwait: boolean;
  usesPackage: boolean;
}

type Visited = TS.VisitResult<TS.Node | undefined>;
type Handler = (node: TS.Node) => Visited;
type NamedBody = TS.ClassDeclaration | TS.EnumDeclaration | TS.ModuleDeclaration;

export class ExpressionTransformer implements AssignmentContext {
  readonly factory: TS.NodeFactory;
  private functionDepth = 0;
  /** Classes, enums and namespaces being visited: inside themselves they keep their plain name. */
  private readonly enclosing: string[] = [];
  private readonly handlers = new Map<TS.SyntaxKind, Handler>();

  constructor(
    readonly ts: Compiler,
    private readonly context: TransformContext,
    private readonly transformation: TS.TransformationContext,
  ) {
    this.factory = transformation.factory;
    const { SyntaxKind } = ts;
    this.handle(SyntaxKind.Identifier, (node: TS.Identifier) => this.identifier(node));
    this.handle(SyntaxKind.ExpressionWithTypeArguments, (node: TS.ExpressionWithTypeArguments) =>
      this.factory.updateExpressionWithTypeArguments(
        node,
        this.expression(node.expression),
        node.typeArguments,
      ),
    );
    this.handle(SyntaxKind.ShorthandPropertyAssignment, (node: TS.ShorthandPropertyAssignment) =>
      this.shorthand(node),
    );
    this.handle(SyntaxKind.CallExpression, (node: TS.CallExpression) => this.call(node));
    this.handle(SyntaxKind.TaggedTemplateExpression, (node: TS.TaggedTemplateExpression) =>
      this.taggedTemplate(node),
    );
    this.handle(SyntaxKind.MetaProperty, (node: TS.MetaProperty) =>
      node.keywordToken === SyntaxKind.ImportKeyword ? this.kernel('meta') : this.children(node),
    );
    this.handle(SyntaxKind.AwaitExpression, (node: TS.AwaitExpression) => this.awaitExpression(node));
    this.handle(SyntaxKind.ForOfStatement, (node: TS.ForOfStatement) => this.forOf(node));
  }

  /** Registers what becomes of nodes of a kind. */
  handle(kind: TS.SyntaxKind, handler: (node: never) => Visited): void {
    this.handlers.set(kind, handler as Handler);
  }

  visit = (node: TS.Node): Visited => {
    const { ts } = this;
    const handler = this.handlers.get(node.kind);
    if (handler) return handler(node);
    const isType =
      ts.isTypeNode(node) ||
      ts.isInterfaceDeclaration(node) ||
      ts.isTypeAliasDeclaration(node) ||
      ts.isTypeParameterDeclaration(node);
    if (isType) return node;
    if (ts.isFunctionLike(node) || ts.isClassStaticBlockDeclaration(node) || ts.isPropertyDeclaration(node))
      return this.insideFunction(node);
    return this.children(node);
  };

  children = (node: TS.Node): TS.Node => this.ts.visitEachChild(node, this.visit, this.transformation);

  expression = (node: TS.Expression): TS.Expression => this.ts.visitNode(node, this.visit) as TS.Expression;

  get isInFunction(): boolean {
    return this.functionDepth > 0;
  }

  insideFunction(node: TS.Node): TS.Node {
    this.functionDepth++;
    const result = this.children(node);
    this.functionDepth--;
    return result;
  }

  /** Visits a class, an enum or a namespace, inside which `name` stays as it is. */
  insideName(name: string, node: NamedBody): NamedBody {
    this.enclosing.push(name);
    const visited = this.ts.isModuleDeclaration(node) ? this.insideFunction(node) : this.children(node);
    this.enclosing.pop();
    return visited as NamedBody;
  }

  /** Gives a new node the place in the text of the one it replaces. */
  replacing<T extends TS.Node>(made: T, origin: TS.Node): T {
    return this.ts.setOriginalNode(this.ts.setTextRange(made, origin), origin);
  }

  binding = (name: string): TS.Expression => {
    this.context.bindings.add(name);
    const { factory: f } = this;
    return f.createPropertyAccessExpression(f.createIdentifier(mark + name), 'v');
  };

  private kernel(name: string): TS.Expression {
    const { factory: f } = this;
    return f.createPropertyAccessExpression(f.createIdentifier(mark), name);
  }

  /** What a name becomes: its binding, the package's export, or (undefined) itself. */
  private reference(id: TS.Identifier): TS.Expression | undefined {
    if (this.enclosing.includes(id.text)) return undefined;
    const origin = this.context.originOf(id);
    if (origin === 'cell') {
      const access = accessOf(this.ts, id);
      if (access.reads) this.context.reads.add(id.text);
      if (access.writes) this.context.writes.add(id.text);
      return this.ts.setTextRange(this.binding(id.text), id);
    }
    if (origin !== 'package') return undefined;
    this.context.usesPackage = true;
    const exported = this.factory.createPropertyAccessExpression(this.kernel('pkg'), id.text);
    return this.ts.setTextRange(exported, id);
  }

  private identifier(node: TS.Identifier): TS.Node {
    return this.ts.isExpressionNode(node) ? (this.reference(node) ?? node) : node;
  }

  private shorthand(node: TS.ShorthandPropertyAssignment): TS.Node {
    const { factory: f } = this;
    const value = this.reference(node.name);
    const fallback = node.objectAssignmentInitializer && this.expression(node.objectAssignmentInitializer);
    if (!value) return f.updateShorthandPropertyAssignment(node, node.name, fallback);
    const assigned = fallback ? f.createAssignment(value, fallback) : value;
    return this.ts.setTextRange(f.createPropertyAssignment(node.name.text, assigned), node);
  }

  /** `(0, ǀf.v)(...)`: a plain call, whose `this` is not the binding. */
  private plainCallee(callee: TS.Node): TS.Expression | undefined {
    const { factory: f } = this;
    const target = this.ts.isIdentifier(callee) ? this.reference(callee) : undefined;
    return target && f.createParenthesizedExpression(f.createComma(f.createNumericLiteral(0), target));
  }

  private call(node: TS.CallExpression): TS.Node {
    const { ts, factory: f } = this;
    if (node.expression.kind === ts.SyntaxKind.ImportKeyword)
      return f.updateCallExpression(
        node,
        this.kernel('importing'),
        undefined,
        node.arguments.map(this.expression),
      );
    const callee = this.plainCallee(node.expression);
    if (!callee) return this.children(node);
    const values = node.arguments.map(this.expression);
    return ts.isCallChain(node)
      ? f.updateCallChain(node, callee, node.questionDotToken, node.typeArguments, values)
      : f.updateCallExpression(node, callee, node.typeArguments, values);
  }

  private taggedTemplate(node: TS.TaggedTemplateExpression): TS.Node {
    const tag = this.plainCallee(node.tag);
    if (!tag) return this.children(node);
    const template = this.ts.visitNode(node.template, this.visit) as TS.TemplateLiteral;
    return this.factory.updateTaggedTemplateExpression(node, tag, node.typeArguments, template);
  }

  private awaitExpression(node: TS.AwaitExpression): TS.Node {
    const { factory: f } = this;
    if (!this.isInFunction) this.context.hasTopLevelAwait = true;
    const waited = f.createCallExpression(this.kernel('wait'), undefined, [this.expression(node.expression)]);
    return f.updateAwaitExpression(node, waited);
  }

  private forOf(node: TS.ForOfStatement): TS.Node {
    const { factory: f } = this;
    const each = this.children(node) as TS.ForOfStatement;
    if (!node.awaitModifier) return each;
    if (!this.isInFunction) this.context.hasTopLevelAwait = true;
    const source = f.createCallExpression(this.kernel('each'), undefined, [each.expression]);
    return f.updateForOfStatement(each, each.awaitModifier, each.initializer, source, each.statement);
  }
}

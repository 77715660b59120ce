/** Variable declarations of a cell as assignments to its bindings: `const { a, b: [c] = d } = e` becomes `({ a: ǀa.v, b: [ǀc.v] = d } = e)`. */
import type TS from 'typescript';
import type { Compiler } from './typescript-internals.js';

export interface AssignmentContext {
  ts: Compiler;
  factory: TS.NodeFactory;
  /** The place that holds a name's value. */
  binding: (name: string) => TS.Expression;
  /** Transforms an expression inside the declaration. */
  expression: (node: TS.Expression) => TS.Expression;
}

export class DeclarationAssignments {
  constructor(private readonly context: AssignmentContext) {}

  /** One declaration as an assignment; undefined for a `var` without a value, which leaves the name as it is. */
  assignment(declaration: TS.VariableDeclaration): TS.Expression | undefined {
    const { ts, factory: f, expression } = this.context;
    const isVar = (declaration.parent.flags & ts.NodeFlags.BlockScoped) === 0;
    if (!declaration.initializer && isVar) return undefined;
    const value = declaration.initializer ? expression(declaration.initializer) : f.createVoidZero();
    const { name } = declaration;
    const assigned = ts.isIdentifier(name) ? this.named(name.text, value) : value;
    return ts.setTextRange(f.createAssignment(this.target(name), assigned), declaration);
  }

  /** A binding pattern as the target of an assignment, every name in it a binding. */
  target(name: TS.BindingName): TS.Expression {
    const { ts, factory: f } = this.context;
    if (ts.isIdentifier(name)) return this.context.binding(name.text);
    if (ts.isObjectBindingPattern(name))
      return f.createObjectLiteralExpression(name.elements.map((element) => this.property(element)));
    return f.createArrayLiteralExpression(name.elements.map((element) => this.item(element)));
  }

  private property(element: TS.BindingElement): TS.ObjectLiteralElementLike {
    const { ts, factory: f, expression } = this.context;
    if (element.dotDotDotToken) return f.createSpreadAssignment(this.target(element.name));
    const key = element.propertyName ?? (element.name as TS.Identifier);
    const property = ts.isComputedPropertyName(key)
      ? f.createComputedPropertyName(expression(key.expression))
      : key;
    return f.createPropertyAssignment(property, this.withDefault(element));
  }

  private item(element: TS.ArrayBindingElement): TS.Expression {
    const { ts, factory: f } = this.context;
    if (ts.isOmittedExpression(element)) return element;
    return element.dotDotDotToken
      ? f.createSpreadElement(this.target(element.name))
      : this.withDefault(element);
  }

  private withDefault(element: TS.BindingElement): TS.Expression {
    const { ts, factory: f, expression } = this.context;
    const target = this.target(element.name);
    if (!element.initializer) return target;
    const value = expression(element.initializer);
    return f.createAssignment(
      target,
      ts.isIdentifier(element.name) ? this.named(element.name.text, value) : value,
    );
  }

  /** `const f = () => 1` must stay named f, although it is now assigned to a property. */
  private named(name: string, value: TS.Expression): TS.Expression {
    const { ts, factory: f } = this.context;
    const isNameless =
      ts.isArrowFunction(value) ||
      ((ts.isFunctionExpression(value) || ts.isClassExpression(value)) && !value.name);
    if (!isNameless) return value;
    const key = f.createStringLiteral(name);
    const holder = f.createObjectLiteralExpression([f.createPropertyAssignment(key, value)]);
    return f.createElementAccessExpression(f.createParenthesizedExpression(holder), key);
  }
}

/** A node of a parsed expression, as the parser of {@link file://./algebra.ts} makes it. */
export interface ExpressionNode {
  readonly type: string;
  readonly name: string;
  readonly value: number;
  readonly op: string;
  readonly fn: string & { name: string };
  readonly args: ExpressionNode[];
  readonly content: ExpressionNode;
  readonly condition: ExpressionNode;
  readonly trueExpr: ExpressionNode;
  readonly falseExpr: ExpressionNode;
}

/** A parsed expression and the symbols it names, constants such as pi left out. */
export interface Tree {
  readonly node: ExpressionNode;
  readonly symbols: readonly string[];
}

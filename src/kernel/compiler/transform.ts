/**
 * Turns a checked cell into the body of a function whose top-level names live in boxes shared by all cells, so that
 * every cell and every function defined in one sees the newest value of a name. `a` becomes `ǀa.v`; the box is handed in
 * by the executor. The mark ǀ (a letter to JavaScript, though no one types it) keeps the boxes clear of a cell's own names.
 */
import type TS from 'typescript';
import type { Compiler } from './tslab.js';

export const mark = 'ǀ';

/** Where a name used in a cell comes from. */
export type Origin = 'cell' | 'package' | 'elsewhere';

export interface TransformContext {
  /** Finds the origin of an identifier that reads or writes a value. */
  originOf(identifier: TS.Identifier): Origin;
  /** Names declared at the cell's top level that hold a value. */
  declared: ReadonlySet<string>;
  /** Filled in: the boxes the code asks for, and whether it waits. */
  bindings: Set<string>;
  hasTopLevelAwait: boolean;
  usesPackage: boolean;
}

export function cellTransformer(ts: Compiler, task: TransformContext): TS.TransformerFactory<TS.SourceFile> {
  return (context) => {
    const f = context.factory;
    let functionDepth = 0;
    /** Classes, enums and namespaces being visited: inside themselves they keep their plain name. */
    const inside: string[] = [];

    const box = (name: string): TS.Expression => {
      task.bindings.add(name);
      return f.createPropertyAccessExpression(f.createIdentifier(mark + name), 'v');
    };
    const kernel = (name: string): TS.Expression =>
      f.createPropertyAccessExpression(f.createIdentifier(mark), name);
    const setBox = (name: string, value: TS.Expression, origin: TS.Node): TS.Statement =>
      ts.setOriginalNode(
        ts.setTextRange(f.createExpressionStatement(f.createAssignment(box(name), value)), origin),
        origin,
      );

    const reference = (id: TS.Identifier): TS.Expression | undefined => {
      if (inside.includes(id.text)) return undefined;
      const origin = task.originOf(id);
      if (origin === 'cell') return ts.setTextRange(box(id.text), id);
      if (origin !== 'package') return undefined;
      task.usesPackage = true;
      return ts.setTextRange(f.createPropertyAccessExpression(kernel('pkg'), id.text), id);
    };

    /** `const f = () => 1` must stay named f, although it is now assigned to a property. */
    const named = (name: string, value: TS.Expression): TS.Expression => {
      const nameless =
        ts.isArrowFunction(value) ||
        (ts.isFunctionExpression(value) && !value.name) ||
        (ts.isClassExpression(value) && !value.name);
      if (!nameless) return value;
      const holder = f.createObjectLiteralExpression([
        f.createPropertyAssignment(f.createStringLiteral(name), value),
      ]);
      return f.createElementAccessExpression(
        f.createParenthesizedExpression(holder),
        f.createStringLiteral(name),
      );
    };

    const expression = (node: TS.Expression): TS.Expression => ts.visitNode(node, visit) as TS.Expression;

    /** A binding pattern as the target of an assignment: `{ a, b: [c] = d }` with every name a box. */
    const target = (name: TS.BindingName): TS.Expression => {
      if (ts.isIdentifier(name)) return box(name.text);
      if (ts.isObjectBindingPattern(name)) {
        return f.createObjectLiteralExpression(
          name.elements.map((element) => {
            if (element.dotDotDotToken) return f.createSpreadAssignment(target(element.name));
            const key = element.propertyName ?? (element.name as TS.Identifier);
            const property = ts.isComputedPropertyName(key)
              ? f.createComputedPropertyName(expression(key.expression))
              : key;
            return f.createPropertyAssignment(property, withDefault(element));
          }),
        );
      }
      return f.createArrayLiteralExpression(
        name.elements.map((element) => {
          if (ts.isOmittedExpression(element)) return element;
          return element.dotDotDotToken ? f.createSpreadElement(target(element.name)) : withDefault(element);
        }),
      );
    };
    const withDefault = (element: TS.BindingElement): TS.Expression => {
      const place = target(element.name);
      if (!element.initializer) return place;
      const value = expression(element.initializer);
      return f.createAssignment(
        place,
        ts.isIdentifier(element.name) ? named(element.name.text, value) : value,
      );
    };

    const assignment = (declaration: TS.VariableDeclaration): TS.Expression | undefined => {
      const isVar = (declaration.parent.flags & ts.NodeFlags.BlockScoped) === 0;
      if (!declaration.initializer && isVar) return undefined;
      const value = declaration.initializer ? expression(declaration.initializer) : f.createVoidZero();
      const text = ts.isIdentifier(declaration.name) ? named(declaration.name.text, value) : value;
      return ts.setTextRange(f.createAssignment(target(declaration.name), text), declaration);
    };

    /** Whether this list declares names of the cell rather than of a block or a function. */
    const isCellLevel = (list: TS.VariableDeclarationList): boolean => {
      if (functionDepth > 0) return false;
      if ((list.flags & ts.NodeFlags.BlockScoped) === 0) return true;
      return ts.isVariableStatement(list.parent) && ts.isSourceFile(list.parent.parent);
    };

    const isAmbient = (node: TS.Node): boolean =>
      ts.canHaveModifiers(node) &&
      (ts.getModifiers(node)?.some((m) => m.kind === ts.SyntaxKind.DeclareKeyword) ?? false);

    const inFunction = (node: TS.Node): TS.Node => {
      functionDepth++;
      const result = ts.visitEachChild(node, visit, context);
      functionDepth--;
      return result;
    };

    const visit = (node: TS.Node): TS.VisitResult<TS.Node | undefined> => {
      if (ts.isExpressionWithTypeArguments(node)) {
        return f.updateExpressionWithTypeArguments(node, expression(node.expression), node.typeArguments);
      }
      if (
        ts.isTypeNode(node) ||
        ts.isInterfaceDeclaration(node) ||
        ts.isTypeAliasDeclaration(node) ||
        ts.isTypeParameterDeclaration(node)
      )
        return node;
      if (ts.isIdentifier(node)) return ts.isExpressionNode(node) ? (reference(node) ?? node) : node;
      if (ts.isVariableStatement(node) && !isAmbient(node) && isCellLevel(node.declarationList)) {
        return node.declarationList.declarations
          .map((declaration) => ({ declaration, set: assignment(declaration) }))
          .filter((entry) => entry.set !== undefined)
          .map(({ declaration, set }) =>
            ts.setOriginalNode(ts.setTextRange(f.createExpressionStatement(set!), declaration), node),
          );
      }
      if (ts.isVariableDeclarationList(node) && isCellLevel(node) && !ts.isVariableStatement(node.parent)) {
        if (!ts.isForStatement(node.parent)) return target(node.declarations[0]!.name);
        const sets = node.declarations
          .map(assignment)
          .filter((set): set is TS.Expression => set !== undefined);
        return sets.length > 0 ? sets.reduce((before, set) => f.createComma(before, set)) : undefined;
      }
      if (ts.isShorthandPropertyAssignment(node)) {
        const value = reference(node.name);
        const fallback = node.objectAssignmentInitializer && expression(node.objectAssignmentInitializer);
        if (!value) return f.updateShorthandPropertyAssignment(node, node.name, fallback);
        return ts.setTextRange(
          f.createPropertyAssignment(node.name.text, fallback ? f.createAssignment(value, fallback) : value),
          node,
        );
      }
      if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
        return f.updateCallExpression(node, kernel('importing'), undefined, node.arguments.map(expression));
      }
      if (ts.isMetaProperty(node) && node.keywordToken === ts.SyntaxKind.ImportKeyword) return kernel('meta');
      if (
        (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) ||
        (ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag))
      ) {
        const callee = ts.isCallExpression(node) ? node.expression : node.tag;
        const place = reference(callee as TS.Identifier);
        if (!place) return ts.visitEachChild(node, visit, context);
        // (0, box.v)(...): a plain call, whose `this` is not the box.
        const plain = f.createParenthesizedExpression(f.createComma(f.createNumericLiteral(0), place));
        if (ts.isTaggedTemplateExpression(node)) {
          return f.updateTaggedTemplateExpression(
            node,
            plain,
            node.typeArguments,
            ts.visitNode(node.template, visit) as TS.TemplateLiteral,
          );
        }
        const given = node.arguments.map(expression);
        return ts.isCallChain(node)
          ? f.updateCallChain(node, plain, node.questionDotToken, node.typeArguments, given)
          : f.updateCallExpression(node, plain, node.typeArguments, given);
      }
      if (ts.isAwaitExpression(node)) {
        if (functionDepth === 0) task.hasTopLevelAwait = true;
        return f.updateAwaitExpression(
          node,
          f.createCallExpression(kernel('wait'), undefined, [expression(node.expression)]),
        );
      }
      if (ts.isForOfStatement(node) && node.awaitModifier) {
        if (functionDepth === 0) task.hasTopLevelAwait = true;
        const each = ts.visitEachChild(node, visit, context);
        return f.updateForOfStatement(
          each,
          each.awaitModifier,
          each.initializer,
          f.createCallExpression(kernel('each'), undefined, [each.expression]),
          each.statement,
        );
      }
      if (ts.isFunctionLike(node) || ts.isClassStaticBlockDeclaration(node) || ts.isPropertyDeclaration(node))
        return inFunction(node);
      return ts.visitEachChild(node, visit, context);
    };

    const bare = <T extends TS.Node>(modifiers: readonly T[] | undefined): T[] | undefined =>
      modifiers?.filter(
        (m) => m.kind !== ts.SyntaxKind.ExportKeyword && m.kind !== ts.SyntaxKind.DefaultKeyword,
      );

    /** A top-level statement. Functions stay hoisted; classes, enums and namespaces fill their box once defined. */
    const statement = (node: TS.Statement, hoisted: TS.Statement[]): TS.Statement[] => {
      if (ts.isImportDeclaration(node) || ts.isImportEqualsDeclaration(node) || ts.isExportDeclaration(node))
        return [];
      if (ts.isExportAssignment(node)) return [f.createExpressionStatement(expression(node.expression))];
      if (isAmbient(node)) return [];
      if (ts.isFunctionDeclaration(node)) {
        const done = inFunction(node) as TS.FunctionDeclaration;
        if (node.name && node.body)
          hoisted.push(setBox(node.name.text, f.createIdentifier(node.name.text), node.name));
        return [
          f.updateFunctionDeclaration(
            done,
            bare(done.modifiers),
            done.asteriskToken,
            done.name,
            done.typeParameters,
            done.parameters,
            done.type,
            done.body,
          ),
        ];
      }
      const isBody =
        ts.isClassDeclaration(node) || ts.isEnumDeclaration(node) || ts.isModuleDeclaration(node);
      const name = isBody ? node.name?.text : undefined;
      if (!isBody || name === undefined)
        return ([] as TS.Statement[]).concat((visit(node) ?? []) as TS.Statement | TS.Statement[]);
      inside.push(name);
      functionDepth += ts.isModuleDeclaration(node) ? 1 : 0;
      const done = ts.visitEachChild(node, visit, context) as
        TS.ClassDeclaration | TS.EnumDeclaration | TS.ModuleDeclaration;
      functionDepth -= ts.isModuleDeclaration(node) ? 1 : 0;
      inside.pop();
      const kept = ts.isClassDeclaration(done)
        ? f.updateClassDeclaration(
            done,
            bare(done.modifiers),
            done.name,
            done.typeParameters,
            done.heritageClauses,
            done.members,
          )
        : ts.isEnumDeclaration(done)
          ? f.updateEnumDeclaration(done, bare(done.modifiers), done.name, done.members)
          : f.updateModuleDeclaration(done, bare(done.modifiers), done.name, done.body);
      return task.declared.has(name) ? [kept, setBox(name, f.createIdentifier(name), node.name!)] : [kept];
    };

    return (file) => {
      const hoisted: TS.Statement[] = [];
      const body: TS.Statement[] = [];
      const last = file.statements
        .filter((s) => !ts.isEmptyStatement(s) && !ts.isImportDeclaration(s))
        .at(-1);
      for (const node of file.statements) {
        if (node === last && ts.isExpressionStatement(node)) {
          body.push(
            ts.setOriginalNode(
              ts.setTextRange(f.createReturnStatement(expression(node.expression)), node),
              node,
            ),
          );
        } else {
          body.push(...statement(node, hoisted));
        }
      }
      return f.updateSourceFile(
        file,
        ts.setTextRange(f.createNodeArray([...hoisted, ...body]), file.statements),
      );
    };
  };
}

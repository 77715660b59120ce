/** From a cell's text to code that the executor can run, or to the reasons why it cannot. */
import type TS from 'typescript';
import { cellTransformer, type TransformContext } from './transform.js';
import type { CellFile, IncrementalProgram } from './incremental-program.js';

/** One name an import brings in: the whole module, its default, or one of its exports. */
export interface ImportedName {
  binding: string;
  from: { kind: 'all' } | { kind: 'default' } | { kind: 'name'; name: string };
}
export interface CellImport {
  specifier: string;
  names: ImportedName[];
}

export interface Declaration {
  name: string;
  /** A let, const or class cannot be read before its line has run; a var, a function or an import can. */
  late: boolean;
}

export interface CompiledCell {
  code: string;
  map: string;
  /** Columns by which the compiled text is ahead of the cell's own on its first line. */
  shift: number;
  declares: Declaration[];
  /** Boxes the code reads or writes, its own and earlier cells'. */
  bindings: string[];
  imports: CellImport[];
  hasTopLevelAwait: boolean;
  usesPackage: boolean;
  /** Lets later cells see this cell's names: all types, and those values for which `set` holds. */
  publish(set: (name: string) => boolean): void;
}

/** A reason why a cell cannot run; line and column from 1. */
export interface CellProblem {
  message: string;
  code: number;
  line: number;
  column: number;
  length: number;
}

export type Compiled = { cell: CompiledCell } | { problems: CellProblem[] };

/**
 * Findings that would stop a fair notebook cell: a `let` whose type only a later cell tells, and a package that comes
 * without typings. Both are let through as `any`.
 */
const tolerated = new Set([7034, 7005, 7016]);

export function compileCell(room: IncrementalProgram, source: string): Compiled {
  const { ts } = room;
  // A cell that is one object literal reads as a block; people mean the object.
  const asObject = /^\s*\{[\s\S]*\}\s*$/.test(source) && isExpression(ts, source);
  const text = asObject ? `(${source.replace(/\s+$/, '')})` : source;
  const file = room.add(text);
  const found = room
    .diagnose(file)
    .filter((d) => d.category === ts.DiagnosticCategory.Error && !tolerated.has(d.code));
  if (found.length > 0) {
    room.drop(file);
    // A name may be one of the package's whose types are not loaded yet.
    if (room.loadWholePackage()) return compileCell(room, source);
    return {
      problems: found
        .map((d) => problem(ts, file, d, asObject))
        .sort((a, b) => a.line - b.line || a.column - b.column),
    };
  }

  const own = room.namesOf(file);
  const meanings = new Map([...own].map(([name, symbol]) => [name, room.meaningOf(symbol)] as const));
  const declared = new Set([...meanings].filter(([, meaning]) => meaning.value).map(([name]) => name));
  const task: TransformContext = {
    declared,
    bindings: new Set(),
    hasTopLevelAwait: false,
    usesPackage: false,
    originOf: (identifier) => {
      if (!declared.has(identifier.text) && !room.hasName(identifier.text)) return 'elsewhere';
      const symbol = room.symbolAt(identifier);
      if (!symbol) return 'elsewhere';
      if (own.get(symbol.name) === symbol || room.isSessionValue(symbol)) return 'cell';
      return room.isPackageValue(symbol) ? 'package' : 'elsewhere';
    },
  };
  const { code, map } = room.emit(file, cellTransformer(ts, task));
  return {
    cell: {
      code: code.replace(/^export \{\};\s*$/m, '').replace(/\n?\/\/# sourceMappingURL=.*\s*$/, ''),
      map,
      shift: asObject ? 1 : 0,
      declares: [...declared].map((name) => ({ name, late: isLate(ts, own.get(name)!) })),
      bindings: [...new Set([...task.bindings, ...declared])],
      imports: importsOf(ts, file, declared),
      hasTopLevelAwait: task.hasTopLevelAwait,
      usesPackage: task.usesPackage,
      publish: (set) => {
        for (const [name, symbol] of own) if (!declared.has(name) || set(name)) room.publish(name, symbol);
      },
    },
  };
}

function isExpression(ts: IncrementalProgram['ts'], source: string): boolean {
  const errors = (text: string): number =>
    (ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2022) as CellFile).parseDiagnostics.length;
  const parsed = ts.createSourceFile('x.ts', source, ts.ScriptTarget.ES2022) as CellFile;
  const block =
    parsed.statements.length === 1 && ts.isBlock(parsed.statements[0]!) ? parsed.statements[0] : undefined;
  const looksLikeBlock =
    parsed.parseDiagnostics.length === 0 &&
    !block?.statements.every((s) => ts.isLabeledStatement(s) || ts.isExpressionStatement(s));
  return !looksLikeBlock && errors(`(${source})`) === 0;
}

function isLate(ts: IncrementalProgram['ts'], symbol: TS.Symbol): boolean {
  const { SymbolFlags } = ts;
  return (
    (symbol.flags &
      (SymbolFlags.BlockScopedVariable | SymbolFlags.Class | SymbolFlags.Enum | SymbolFlags.ValueModule)) !==
      0 && (symbol.flags & SymbolFlags.Function) === 0
  );
}

function importsOf(
  ts: IncrementalProgram['ts'],
  file: TS.SourceFile,
  values: ReadonlySet<string>,
): CellImport[] {
  const imports: CellImport[] = [];
  for (const statement of file.statements) {
    if (ts.isExportDeclaration(statement) && statement.moduleSpecifier && !statement.isTypeOnly) {
      imports.push({ specifier: (statement.moduleSpecifier as TS.StringLiteral).text, names: [] });
    }
    if (!ts.isImportDeclaration(statement) || statement.importClause?.isTypeOnly) continue;
    const { importClause: clause } = statement;
    const names: ImportedName[] = [];
    const add = (box: string, from: ImportedName['from']): unknown =>
      values.has(box) && names.push({ binding: box, from });
    if (clause?.name) add(clause.name.text, { kind: 'default' });
    if (clause?.namedBindings && ts.isNamespaceImport(clause.namedBindings))
      add(clause.namedBindings.name.text, { kind: 'all' });
    if (clause?.namedBindings && ts.isNamedImports(clause.namedBindings)) {
      for (const one of clause.namedBindings.elements) {
        if (one.isTypeOnly) continue;
        const name = (one.propertyName ?? one.name).text;
        add(one.name.text, name === 'default' ? { kind: 'default' } : { kind: 'name', name });
      }
    }
    if (!clause || names.length > 0)
      imports.push({ specifier: (statement.moduleSpecifier as TS.StringLiteral).text, names });
  }
  return imports;
}

function problem(
  ts: IncrementalProgram['ts'],
  file: TS.SourceFile,
  d: TS.Diagnostic,
  shifted: boolean,
): CellProblem {
  const start = d.file === file && d.start !== undefined ? d.start : 0;
  const { line, character } = file.getLineAndCharacterOfPosition(start);
  return {
    message: ts.flattenDiagnosticMessageText(d.messageText, '\n'),
    code: d.code,
    line: line + 1,
    column: character + 1 - (shifted && line === 0 ? 1 : 0),
    length: Math.max(1, d.length ?? 1),
  };
}

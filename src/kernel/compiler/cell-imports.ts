/** What a cell imports, for the module loader. */
import type TS from 'typescript';
import type { Compiler } from './typescript-internals.js';

/** One name an import brings in: the whole module, its default, or one of its exports. */
export interface ImportedName {
  binding: string;
  from: { kind: 'all' } | { kind: 'default' } | { kind: 'name'; name: string };
}

export interface CellImport {
  specifier: string;
  names: ImportedName[];
  /** The module's kind as the import states it: `with { type: 'json' }`. */
  type?: string;
}

/** The imports of a cell that load something. `values` are the cell's names that are values, not types. */
export function importsOf(ts: Compiler, file: TS.SourceFile, values: ReadonlySet<string>): CellImport[] {
  return file.statements.flatMap((statement): CellImport[] => {
    const imported = ts.isImportDeclaration(statement) ? importOf(ts, statement, values) : undefined;
    if (imported) return [imported];
    if (!ts.isExportDeclaration(statement) || !statement.moduleSpecifier || statement.isTypeOnly) return [];
    return [{ specifier: textOf(ts, statement.moduleSpecifier), names: [] }];
  });
}

function importOf(
  ts: Compiler,
  { importClause: clause, moduleSpecifier, attributes }: TS.ImportDeclaration,
  values: ReadonlySet<string>,
): CellImport | undefined {
  if (clause?.phaseModifier === ts.SyntaxKind.TypeKeyword) return undefined;
  const names = clause ? importedNames(ts, clause).filter(({ binding }) => values.has(binding)) : [];
  if (clause && names.length === 0) return undefined;
  const typed = attributes?.elements.find((element) => element.name.text === 'type');
  const type = typed && ts.isStringLiteral(typed.value) ? typed.value.text : undefined;
  return { specifier: textOf(ts, moduleSpecifier), names, ...(type === undefined ? {} : { type }) };
}

function importedNames(ts: Compiler, { name, namedBindings }: TS.ImportClause): ImportedName[] {
  const names: ImportedName[] = name ? [{ binding: name.text, from: { kind: 'default' } }] : [];
  if (!namedBindings) return names;
  if (ts.isNamespaceImport(namedBindings))
    return [...names, { binding: namedBindings.name.text, from: { kind: 'all' } }];
  for (const element of namedBindings.elements) {
    if (element.isTypeOnly) continue;
    const exported = (element.propertyName ?? element.name).text;
    const from =
      exported === 'default' ? { kind: 'default' as const } : { kind: 'name' as const, name: exported };
    names.push({ binding: element.name.text, from });
  }
  return names;
}

const textOf = (ts: Compiler, specifier: TS.Expression): string =>
  ts.isStringLiteralLike(specifier) ? specifier.text : '';

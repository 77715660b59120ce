/** What a name stands for: a value, a type or both. */
import type TS from 'typescript';
import { isUnknownSymbol, type Compiler } from './typescript-internals.js';

export interface Meaning {
  value: boolean;
  type: boolean;
}

export function meaningOfFlags({ SymbolFlags }: Compiler, flags: number): Meaning {
  const { Value, Type, Namespace } = SymbolFlags;
  return { value: (flags & Value) !== 0, type: (flags & (Type | Namespace)) !== 0 };
}

/** The meaning of what an import leads to. */
export function meaningOfImport(ts: Compiler, checker: TS.TypeChecker, symbol: TS.Symbol): Meaning {
  const aliased = checker.getAliasedSymbol(symbol);
  const { value, type } = meaningOfFlags(ts, aliased.flags);
  // A module without typings has an unknown symbol behind it: it is a value.
  return { value: value || isUnknownSymbol(checker, aliased), type };
}

/** Whether a name is imported as a type only. */
export const isTypeOnly = (ts: Compiler, symbol: TS.Symbol): boolean =>
  symbol.declarations?.every((d) => ts.isTypeOnlyImportOrExportDeclaration(d)) ?? false;

/** A program that knows names and no types: cells are parsed, rewritten and emitted here and checked elsewhere. */
import type TS from 'typescript';
import type { CellChecker } from './cell-checker.js';
import { virtualFolder } from './compiler-host.js';
import { IncrementalProgram } from './incremental-program.js';
import type { Meaning } from './name-meaning.js';
import type { ProgramHost } from './program-host.js';
import { declaredSymbols, parseModule, type CellFile, type Compiler } from './typescript-internals.js';

export class NamesProgram extends IncrementalProgram {
  private readonly imports = new WeakMap<TS.Symbol, Meaning>();

  constructor(
    ts: Compiler,
    host: ProgramHost,
    folder: string,
    private readonly outside: CellChecker,
  ) {
    super(ts, host, folder, { noLib: true, noCheck: true });
  }

  protected override roots(): string[] {
    return [`${virtualFolder}/imports.ts`];
  }

  /** The package's names, whatever they are: only those that stand where a value does are looked up. */
  protected override packageSymbols(): Map<string, TS.Symbol> {
    const names = this.packageExports.names(true);
    const text = names.length > 0 ? `export declare const ${names.join(', ')};` : '';
    const file = parseModule(this.ts, `${virtualFolder}/names.ts`, text);
    this.ts.bindSourceFile(file, this.options);
    return declaredSymbols(file);
  }

  protected override ensureTypes(): void {
    // There are none here.
  }

  override loadWholePackage(): boolean {
    return false;
  }

  protected override typeErrors(file: CellFile): readonly TS.Diagnostic[] {
    return this.outside.diagnose(file);
  }

  /** Asked once, while the cell is the one checked last. */
  protected override importMeaning(symbol: TS.Symbol): Meaning {
    const known = this.imports.get(symbol);
    if (known) return known;
    const meaning = this.askMeaning(symbol);
    this.imports.set(symbol, meaning);
    return meaning;
  }

  private askMeaning(symbol: TS.Symbol): Meaning {
    const [declaration] = symbol.declarations ?? [];
    if (!declaration) return { value: true, type: false };
    const file = declaration.getSourceFile() as CellFile;
    const name = this.ts.getNameOfDeclaration(declaration) ?? declaration;
    return this.outside.importMeaning(file, name.getStart(file));
  }

  override publish(file: CellFile, names: ReadonlyMap<string, TS.Symbol>): void {
    super.publish(file, names);
    this.outside.publish(file, new Map([...names].map(([name, symbol]) => [name, this.meaningOf(symbol)])));
  }
}

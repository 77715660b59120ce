/** From a cell's text to compiled code, or to its end with an error that says what is wrong. */
import { compileCell, type CellProblem, type Compiled, type CompiledCell } from './compiler/compile-cell.js';
import { explainProblems, mayCallRecipe } from './compiler/recipe-problems.js';
import type { SessionView } from './compiler/session-view.js';
import type { CellError, TracebackFormatter } from './display/traceback.js';

/** Ends a cell, with the error if it failed. */
export type EndCell = (error?: CellError) => void;

interface PreparationHooks {
  loadPackage: () => Promise<unknown>;
  duringCompile: (yes: boolean) => void;
}

export class CellPreparation {
  constructor(
    private readonly session: SessionView,
    private readonly tracebacks: TracebackFormatter,
    private readonly hooks: PreparationHooks,
  ) {}

  /** Compiles a cell; undefined, and the cell ends, if that is impossible. */
  prepare(code: string, label: string, end: EndCell): CompiledCell | undefined {
    let compiled: Compiled;
    try {
      compiled = this.compile(code);
    } catch (error) {
      // A defect of the compiler is reported as the cell's error; the session goes on.
      end({ ...this.tracebacks.format(error), ename: 'InternalCompilerError' });
      return undefined;
    }
    if ('problems' in compiled) {
      this.refuse(label, code, compiled.problems, end);
      return undefined;
    }
    this.tracebacks.registerSource(label, code, compiled.cell.map, compiled.cell.shift);
    return compiled.cell;
  }

  compile(code: string): Compiled {
    this.hooks.duringCompile(true);
    try {
      return compileCell(this.session.program, code);
    } finally {
      this.hooks.duringCompile(false);
    }
  }

  /** Ends a cell that has errors. For those in a recipe's call the package is loaded, so that the recipe explains them. */
  private refuse(label: string, code: string, problems: CellProblem[], end: EndCell): void {
    const report = (found: CellProblem[]): void => end(this.tracebacks.fromDiagnostics(label, code, found));
    const explain = (): void => report(explainProblems(this.session, code, problems));
    if (!mayCallRecipe(code)) report(problems);
    else this.hooks.loadPackage().then(explain, () => report(problems));
  }
}

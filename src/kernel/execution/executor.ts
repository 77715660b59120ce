/** Runs compiled cells, one at a time, and keeps the values of their names. */
import type { CompiledCell } from '../compiler/compile-cell.js';
import type { CellBody, ExecutionHost } from '../session-host.js';
import { BindingEnvironment } from './bindings.js';
import { valuesOfImports } from './imported-values.js';
import { isThenable, CellExecution, cancelAwaits, type ExecutionResult } from './cell-execution.js';

export interface ExecutorHooks {
  /** Called right before the cell's own code takes over the thread, and when it hands it back. */
  enter?(): void;
  leave?(): void;
  /** Whether an interrupt came in while the cell was being prepared. */
  isInterrupted?(): boolean;
}

export class Executor {
  readonly bindings = new BindingEnvironment();
  private current: CellExecution | undefined;
  private latest = new CellExecution(() => undefined);
  private package: Record<string, unknown> | undefined;

  /**
   * A cell is entered from a task of its own and from nowhere else: when V8 terminates a looping cell, Node recovers cleanly
   * from there, while its queues of immediates and ticks would be left half processed.
   */
  constructor(
    private readonly host: ExecutionHost,
    private readonly hooks: ExecutorHooks = {},
  ) {}

  /** The package's exports, once loaded. */
  get loadedPackage(): Record<string, unknown> | undefined {
    return this.package;
  }

  /** Fires when the cell that runs now, or ran last, is interrupted. */
  get signal(): AbortSignal {
    return (this.current ?? this.latest).signal;
  }

  /** Loads the package ahead of the first cell that needs it. */
  async warm(): Promise<Record<string, unknown>> {
    return (this.package ??= await this.host.loader.package());
  }

  /**
   * Runs a cell. `done` is called exactly once, also when V8 has terminated the cell: nothing here rests on code after
   * the call into the cell. `set` names what the cell declared and reached.
   */
  run(cell: CompiledCell, label: string, done: (result: ExecutionResult, set: Set<string>) => void): void {
    let restore = (): Set<string> => new Set();
    const run = new CellExecution((result) => {
      this.host.tasks.unref();
      if (this.current === run) this.current = undefined;
      this.latest = run;
      this.hooks.leave?.();
      done(result, restore());
    });
    this.current = run;
    this.host.tasks.ref();

    const enter = (imported: Map<string, unknown>): void => {
      if (run.isOver) return;
      if (this.hooks.isInterrupted?.()) {
        run.interrupt();
        return;
      }
      try {
        const body = this.host.compileBody(cell, label);
        restore = this.bindings.declare(cell.declares);
        for (const [name, value] of imported) this.bindings.get(name).v = value;
        this.enter(body, cell, run);
      } catch (error) {
        run.finish({ error });
      }
    };

    const needsLoading = cell.imports.length > 0 || (cell.usesPackage && !this.package);
    if (!needsLoading) {
      this.host.tasks.post(() => enter(new Map()));
      return;
    }
    Promise.resolve(run.wait(this.prepare(cell))).then(
      (imported) => this.host.tasks.post(() => enter(imported as Map<string, unknown>)),
      (error: unknown) => run.finish({ error }),
    );
  }

  private enter(body: CellBody, cell: CompiledCell, run: CellExecution): void {
    const kernel = {
      wait: run.wait,
      each: run.each,
      importing: (specifier: unknown) => this.host.loader.load(String(specifier)),
      meta: this.host.meta,
      pkg: this.package,
    };
    const bindings = Object.fromEntries(cell.bindings.map((name) => [name, this.bindings.get(name)]));
    this.hooks.enter?.();
    const value = body(kernel, this.host.loader.require, bindings);
    if (!isThenable(value)) {
      run.finish({ value });
      return;
    }
    value.then(
      (result) => run.finish({ value: result }),
      (error: unknown) => run.finish({ error }),
    );
  }

  private async prepare(cell: CompiledCell): Promise<Map<string, unknown>> {
    if (cell.usesPackage) await this.warm();
    return valuesOfImports(this.host.loader, cell.imports);
  }

  /** Ends the running cell and every await that any cell has open. */
  interrupt(): void {
    this.current?.interrupt();
    cancelAwaits();
  }

  close(): void {
    this.host.tasks.close();
  }
}

/** Runs compiled cells, one at a time, and keeps the values of their names. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { MessageChannel } from 'node:worker_threads';
import vm from 'node:vm';
import type { CompiledCell } from '../compiler/compile-cell.js';
import { mark } from '../compiler/transform-expressions.js';
import type { NbOutput } from '../message.js';
import { BindingEnvironment } from './bindings.js';
import { ModuleLoader } from './module-loader.js';
import { isThenable, CellExecution, cancelAwaits, type ExecutionResult } from './cell-execution.js';

type Body = (kernel: object, require: unknown, bindings: Record<string, unknown>) => unknown;

export interface ExecutorHooks {
  /** Called right before the cell's own code takes over the thread, and when it hands it back. */
  enter?(): void;
  leave?(): void;
  /** Takes the outputs of libraries that display by themselves. */
  emit?(output: NbOutput): void;
  /** Whether an interrupt came in while the cell was being prepared. */
  isInterrupted?(): boolean;
}

export class Executor {
  readonly bindings = new BindingEnvironment();
  readonly importer: ModuleLoader;
  private current: CellExecution | undefined;
  private latest = new CellExecution(() => undefined);
  private package: Record<string, unknown> | undefined;
  private readonly meta: { url: string; dirname: string; filename: string };
  /**
   * A cell is entered from a message handler and from nowhere else: when V8 terminates a looping cell, Node recovers
   * cleanly from there, while its queues of immediates and ticks would be left half processed.
   */
  private readonly taskChannel = new MessageChannel();
  private readonly pendingTasks: (() => void)[] = [];

  constructor(
    cwd: string,
    file: string | undefined,
    private readonly hooks: ExecutorHooks = {},
  ) {
    this.importer = new ModuleLoader(cwd, (output) => hooks.emit?.(output));
    const filename = file ?? join(cwd, 'cell.ts');
    this.meta = { url: pathToFileURL(filename).href, dirname: cwd, filename };
    this.taskChannel.port2.on('message', () => this.pendingTasks.shift()?.());
    this.taskChannel.port2.unref();
  }

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
    return (this.package ??= await this.importer.package());
  }

  /**
   * Runs a cell. `done` is called exactly once, also when V8 has terminated the cell: nothing here rests on code after
   * the call into the cell. `set` names what the cell declared and reached.
   */
  run(cell: CompiledCell, label: string, done: (result: ExecutionResult, set: Set<string>) => void): void {
    let restore = (): Set<string> => new Set();
    const run = new CellExecution((result) => {
      this.taskChannel.port2.unref();
      if (this.current === run) this.current = undefined;
      this.latest = run;
      this.hooks.leave?.();
      done(result, restore());
    });
    this.current = run;
    this.taskChannel.port2.ref();

    const enter = (imported: Map<string, unknown>): void => {
      if (run.isOver) return;
      if (this.hooks.isInterrupted?.()) {
        run.interrupt();
        return;
      }
      try {
        const body = compileBody(cell, label);
        restore = this.bindings.declare(cell.declares);
        for (const [name, value] of imported) this.bindings.get(name).v = value;
        this.enter(body, cell, run);
      } catch (error) {
        run.finish({ error });
      }
    };

    const needsLoading = cell.imports.length > 0 || (cell.usesPackage && !this.package);
    if (!needsLoading) {
      this.fromMessage(() => enter(new Map()));
      return;
    }
    Promise.resolve(run.wait(this.prepare(cell))).then(
      (imported) => this.fromMessage(() => enter(imported as Map<string, unknown>)),
      (error: unknown) => run.finish({ error }),
    );
  }

  private enter(body: Body, cell: CompiledCell, run: CellExecution): void {
    const kernel = {
      wait: run.wait,
      each: run.each,
      importing: (specifier: unknown) => this.importer.load(String(specifier)),
      meta: this.meta,
      pkg: this.package,
    };
    const bindings = Object.fromEntries(cell.bindings.map((name) => [name, this.bindings.get(name)]));
    this.hooks.enter?.();
    const value = body(kernel, this.importer.require, bindings);
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
    return this.importer.fill(cell.imports);
  }

  private fromMessage(work: () => void): void {
    this.pendingTasks.push(work);
    this.taskChannel.port1.postMessage(null);
  }

  /** Ends the running cell and every await that any cell has open. */
  interrupt(): void {
    this.current?.interrupt();
    cancelAwaits();
  }

  close(): void {
    this.taskChannel.port1.close();
  }
}

function compileBody(cell: CompiledCell, label: string): Body {
  const names = cell.bindings.map((name) => `${JSON.stringify(name)}: ${mark}${name}`).join(', ');
  const head = `${cell.hasTopLevelAwait ? 'async ' : ''}function (${mark}, require, { ${names} })`;
  // Not a vm.Script: Node 20 keeps a little of each for good, which adds up over ten thousand cells.
  const make = vm.compileFunction(`'use strict';return (${head} {\n${cell.code}\n})`, [], {
    filename: label,
    lineOffset: -1,
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  }) as () => Body;
  return make();
}

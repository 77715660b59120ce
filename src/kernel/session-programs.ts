/** The programs of a session in Node. */
import { compileCell } from './compiler/compile-cell.js';
import { loadCompiler } from './compiler/compiler-loader.js';
import type { IncrementalProgram } from './compiler/incremental-program.js';
import { NamesProgram } from './compiler/names-program.js';
import { createNodeProgram, nodeHost } from './compiler/node-host.js';
import { NativeChecker, type NativeCompiler } from './native/native-checker.js';
import type { SessionPrograms } from './session-host.js';
import { prewarmedProgram } from './snapshot/prewarmed-program.js';

/** The programs for cells that resolve files and packages from `cwd`; with `native`, that compiler checks the cells. */
export function openPrograms(cwd: string, native: NativeCompiler | undefined): SessionPrograms {
  if (native) return new NativePrograms(native, cwd);
  const program = prewarmedProgram(cwd);
  return { checking: program, language: () => program, record: () => undefined, close: () => undefined };
}

/** Types in this process are made only once completion or inspection asks for them: from the cells that ran until then. */
class NativePrograms implements SessionPrograms {
  readonly checking: NamesProgram;
  private readonly checker: NativeChecker;
  private readonly pending: { code: string; isSet: (name: string) => boolean }[] = [];
  private types: IncrementalProgram | undefined;

  constructor(
    native: NativeCompiler,
    private readonly cwd: string,
  ) {
    const ts = loadCompiler();
    this.checker = new NativeChecker(native, ts, nodeHost, cwd);
    this.checking = new NamesProgram(ts, nodeHost, cwd, this.checker);
  }

  record(code: string, isSet: (name: string) => boolean): void {
    this.pending.push({ code, isSet });
  }

  language(): IncrementalProgram {
    this.types ??= createNodeProgram(this.cwd);
    for (const { code, isSet } of this.pending.splice(0)) {
      const compiled = compileCell(this.types, code);
      if ('cell' in compiled) compiled.cell.publish(isSet);
    }
    return this.types;
  }

  close(): void {
    this.checker.close();
  }
}

/** Errors as a notebook shows them: with the cell's own names, lines and columns, without the kernel's stack frames. */
import { originalPositionFor, TraceMap } from '@jridgewell/trace-mapping';
import type { StackForm } from '../session-host.js';
import type { CellProblem } from '../compiler/compile-cell.js';
import { mark } from '../compiler/transform-expressions.js';
import { textOf } from './value-text.js';

export interface CellError {
  ename: string;
  evalue: string;
  traceback: string[];
  line?: number;
  column?: number;
}

interface SourcePosition {
  label: string;
  line: number;
  column: number;
}

const red = (text: string): string => `\u001b[0;31m${text}\u001b[0m`;
const dim = (text: string): string => `\u001b[2m${text}\u001b[0m`;

/** The error of a cell that was interrupted. */
export const interruption: CellError = {
  ename: 'Interrupted',
  evalue: 'the cell was interrupted',
  traceback: [red('Interrupted: the cell was interrupted')],
};

/** Binding accesses in a message, such as `(0 , ǀf.v) is not a function`, as the names that the cell uses. */
const plainNames = (text: string): string =>
  text
    .replace(new RegExp(`\\(0\\s*,\\s*${mark}(?:\\.pkg\\.)?([\\p{ID_Continue}$]+?)(?:\\.v)?\\)`, 'gu'), '$1')
    .replace(new RegExp(`${mark}([\\p{ID_Continue}$]+)\\.v`, 'gu'), '$1')
    .replaceAll(`${mark}.pkg.`, '');

/** Remembers the cells of a session well enough to say where in them an error arose. */
export class TracebackFormatter {
  private readonly cells = new Map<
    string,
    { source: string; map: string; shift: number; ready?: TraceMap }
  >();

  constructor(private readonly form: StackForm) {}

  /** `shift` is how many columns the compiled text is ahead of the cell's own on its first line. */
  registerSource(label: string, source: string, map: string, shift: number): void {
    this.cells.delete(label);
    this.cells.set(label, { source, map, shift });
    const [oldest] = this.cells.keys();
    if (oldest !== undefined && this.cells.size > 2_000) this.cells.delete(oldest);
  }

  private original(place: SourcePosition): SourcePosition | undefined {
    const cell = this.cells.get(place.label);
    if (!cell) return undefined;
    cell.ready ??= new TraceMap(cell.map);
    const entry = originalPositionFor(cell.ready, {
      line: Math.max(1, place.line),
      column: place.column - 1,
    });
    if (entry.line === null) return undefined;
    const lines = cell.source.split('\n');
    const line = Math.min(entry.line - 1, lines.length - 1);
    let column = Math.max(0, entry.column - (line === 0 ? cell.shift : 0));
    // A call of a cell's own function is compiled to (0, binding.v)(...): point at its name, not at the bracket after it.
    const text = lines[line] ?? '';
    if (text[column] === '(')
      while (column > 0 && /[\p{ID_Continue}$]/u.test(text[column - 1] ?? '')) column--;
    return { label: place.label, line: line + 1, column: column + 1 };
  }

  /** The cells' share of a stack, innermost first, and how each line of it reads. */
  private frames(stack: string): { text: string; place?: SourcePosition }[] {
    const frames: { text: string; place?: SourcePosition }[] = [];
    for (const line of stack.split('\n')) {
      if (!/^\s+at /.test(line)) continue;
      const cell = /(In\[[^\]]*\]):(\d+):(\d+)/.exec(line);
      if (cell) {
        const place = this.original({
          label: cell[1] ?? '',
          line: Number(cell[2]) - this.form.lineOffset,
          column: Number(cell[3]),
        });
        if (!place) continue;
        const named = /^\s+at (?:async )?([^(]+?) \(/.exec(line)?.[1];
        const name =
          named && !/^(eval|Object\.<anonymous>|<anonymous>)$/.test(named) ? `${plainNames(named)} ` : '';
        frames.push({
          text: `    at ${name}${place.label}, line ${place.line}, column ${place.column}`,
          place,
        });
        // The caller of the cell itself is the kernel.
        if (!named || /^eval$/.test(named)) continue;
      } else if (this.form.isKernelFrame(line)) {
        continue;
      } else {
        frames.push({ text: line });
      }
    }
    return frames.slice(0, 16);
  }

  /** An error thrown by a cell, or whatever else it threw. */
  format(error: unknown): CellError {
    if (!(error instanceof Error) && !isErrorLike(error)) {
      return { ename: 'Thrown', evalue: textOf(error), traceback: [red(`Thrown: ${textOf(error)}`)] };
    }
    const { ename, evalue } = read(error);
    const stack = readStack(error);
    const frames = this.frames(stack);
    const place = frames.find((frame) => frame.place)?.place ?? syntaxPlace(error, stack);
    const head = red(`${ename}: ${evalue}`);
    const excerpt = place ? this.excerpt(place, 1) : [];
    const causes = [...causesOf(error)].map((cause) => {
      const { ename, evalue } = read(cause);
      return `  caused by ${ename}: ${evalue}`;
    });
    return {
      ename,
      evalue,
      traceback: [head, ...excerpt, ...frames.map((frame) => dim(frame.text)), ...causes],
      ...(place ? { line: place.line, column: place.column } : {}),
    };
  }

  /** Reasons why a cell was not run at all. */
  fromDiagnostics(label: string, source: string, problems: CellProblem[]): CellError {
    this.cells.set(label, { source, map: '', shift: 0 });
    const [first] = problems;
    if (!first) throw new Error('a cell was refused without a reason');
    const lines = problems.slice(0, 8).flatMap((problem) => this.problemLines(label, problem));
    if (problems.length > 8) lines.push(`and ${problems.length - 8} more`);
    const reason = (first.plain ?? `${first.message.split('\n')[0] ?? ''} (TS${first.code})`).replaceAll(
      '\n',
      '; ',
    );
    return {
      ename: first.ename ?? (first.code < 2000 ? 'SyntaxError' : 'TypeScriptError'),
      evalue: `line ${first.line}, column ${first.column}: ${reason}`,
      traceback: lines,
      line: first.line,
      column: first.column,
    };
  }

  /** A recipe's own sentence comes first, then the place, then in short what the compiler says. */
  private problemLines(label: string, { plain, message, code, line, column, length }: CellProblem): string[] {
    const head = `${label}, line ${line}, column ${column}: `;
    const place = { label, line, column };
    if (plain === undefined)
      return [red(head + message) + dim(` (TS${code})`), ...this.excerpt(place, length)];
    const compiler = message.split('\n').at(-1)?.trim() ?? '';
    const short = compiler.length > 160 ? `${compiler.slice(0, 157)}...` : compiler;
    return [red(head + plain), ...this.excerpt(place, length), dim(`TypeScript: ${short} (TS${code})`)];
  }

  /** The line of the cell with a pointer under the spot, and the line before it. */
  private excerpt(place: SourcePosition, length: number): string[] {
    const source = this.cells.get(place.label)?.source.split('\n');
    const line = source?.[place.line - 1];
    if (!source || line === undefined) return [];
    const width = String(place.line).length;
    const before =
      place.line > 1 ? [`${String(place.line - 1).padStart(width)} | ${source[place.line - 2]}`] : [];
    const pointer = '^'.repeat(Math.max(1, Math.min(length, line.length - place.column + 1)));
    const indent = line.slice(0, place.column - 1).replace(/[^\t]/g, ' ');
    return [...before, `${place.line} | ${line}`, `${' '.repeat(width)} | ${indent}${red(pointer)}`];
  }
}

function read(error: object): { ename: string; evalue: string } {
  try {
    const { name, message, code } = error as { name?: unknown; message?: unknown; code?: unknown };
    const className = (error as { constructor?: { name?: string } }).constructor?.name;
    const ename = typeof name === 'string' && name !== '' && name !== 'Error' ? name : className || 'Error';
    const text = typeof message === 'string' ? message : textOf(message ?? '');
    const tail = typeof code === 'string' && !text.includes(code) ? ` (${code})` : '';
    return { ename, evalue: plainNames(text) + tail };
  } catch {
    return { ename: 'Error', evalue: 'the error cannot be read' };
  }
}

function readStack(error: object): string {
  try {
    const { stack } = error as { stack?: unknown };
    return typeof stack === 'string' ? stack : '';
  } catch {
    return '';
  }
}

function* causesOf(error: object): Generator<object> {
  let cause = (error as { cause?: unknown }).cause;
  for (let depth = 0; depth < 4 && typeof cause === 'object' && cause !== null; depth++) {
    yield cause;
    cause = (cause as { cause?: unknown }).cause;
  }
}

function isErrorLike(value: unknown): value is Error {
  return typeof value === 'object' && value !== null && 'message' in value && 'stack' in value;
}

/** A syntax error found only when the code is compiled names its place in the first line of the stack. */
function syntaxPlace(error: object, stack: string): SourcePosition | undefined {
  if ((error as Error).name !== 'SyntaxError') return undefined;
  const found = /^(In\[[^\]]*\]):(\d+)/.exec(stack);
  return found ? { label: found[1] ?? '', line: Number(found[2]), column: 1 } : undefined;
}

import type { CellOutcome, NbOutput } from '../../kernel/session.js';
import type { JsonObject, MimeBundle, Output } from '../format/notebook.js';

/**
 * Gathers what cells put out into the form a notebook file keeps: prints that follow each other become one, a display that
 * is updated changes where it stands (also in an earlier cell), and a cleared cell starts again.
 */
export class OutputCollector {
  readonly #outputs = new Map<number, Output[]>();
  readonly #displays = new Map<string, { at: number; index: number }[]>();
  readonly #clearNext = new Set<number>();

  /** `store` gets a cell's whole list of outputs each time it changes. */
  constructor(private readonly store: (cell: number, outputs: readonly Output[]) => void) {}

  take(cell: number, output: NbOutput): void {
    if (output.output_type === 'clear_output') {
      // With `wait` the old output stays until the new one comes, so that a picture redrawn often does not flicker.
      if (output.wait) this.#clearNext.add(cell);
      else this.#clear(cell);
      return;
    }
    if (output.output_type === 'update_display_data') {
      this.#update(output);
      return;
    }
    if (this.#clearNext.delete(cell)) this.#clear(cell);
    const list = this.#list(cell);
    const last = list.at(-1);
    if (output.output_type === 'stream' && last?.output_type === 'stream' && last.name === output.name)
      list[list.length - 1] = { ...last, text: last.text + output.text };
    else {
      list.push(plain(output));
      const id = output.output_type === 'display_data' ? output.transient?.display_id : undefined;
      if (id !== undefined)
        this.#displays.set(id, [...(this.#displays.get(id) ?? []), { at: cell, index: list.length - 1 }]);
    }
    this.store(cell, [...list]);
  }

  endCell(cell: number): void {
    if (this.#clearNext.delete(cell)) this.#clear(cell);
  }

  /** A failing cell always shows its error, even where the kernel sent it only with its reply. */
  ensureError(cell: number, error: CellOutcome['error']): void {
    const list = this.#list(cell);
    if (list.some((o) => o.output_type === 'error')) return;
    list.push({
      output_type: 'error',
      ename: error?.ename ?? 'Stopped',
      evalue: error?.evalue ?? 'the cell was stopped',
      traceback: [...(error?.traceback ?? [])],
    });
    this.store(cell, [...list]);
  }

  #list(cell: number): Output[] {
    let list = this.#outputs.get(cell);
    if (list === undefined) this.#outputs.set(cell, (list = []));
    return list;
  }

  #clear(cell: number): void {
    this.#list(cell).length = 0;
    for (const [id, places] of this.#displays)
      this.#displays.set(
        id,
        places.filter((p) => p.at !== cell),
      );
    this.store(cell, []);
  }

  #update(output: Extract<NbOutput, { output_type: 'update_display_data' }>): void {
    for (const { at, index } of this.#displays.get(output.transient.display_id) ?? []) {
      const list = this.#list(at);
      if (list[index]?.output_type !== 'display_data') continue;
      list[index] = { output_type: 'display_data', data: json(output.data), metadata: json(output.metadata) };
      this.store(at, [...list]);
    }
  }
}

function plain(output: Exclude<NbOutput, { output_type: 'update_display_data' | 'clear_output' }>): Output {
  switch (output.output_type) {
    case 'stream':
      return { output_type: 'stream', name: output.name, text: output.text };
    case 'error':
      return {
        output_type: 'error',
        ename: output.ename,
        evalue: output.evalue,
        traceback: [...output.traceback],
      };
    case 'display_data':
      return { output_type: 'display_data', data: json(output.data), metadata: json(output.metadata) };
    case 'execute_result':
      return {
        output_type: 'execute_result',
        execution_count: output.execution_count,
        data: json(output.data),
        metadata: json(output.metadata),
      };
  }
}

/** A copy as the file will hold it: what JSON cannot say (undefined, functions, NaN) is gone now and not first on reading back. */
function json(value: Record<string, unknown>): MimeBundle {
  return JSON.parse(JSON.stringify(value)) as JsonObject;
}

/** What every cell finds without an import besides the package: showing, asking, and the signal of an interrupt. */
import { randomUUID } from 'node:crypto';
import type { MimeBundle, NbOutput } from './message.js';
import { formatValueSync, formatValue, rawBundle } from './display/mime-bundle.js';

export interface CellGlobals {
  emit(output: NbOutput): void;
  signal(): AbortSignal;
  prompt(text: string, password: boolean): string;
  comms: object;
}

interface ShowOptions {
  display_id?: string;
  raw?: boolean;
  metadata?: Record<string, unknown>;
}

const noPerson = (): never => {
  throw new Error(
    'prompt: nobody can answer here; it works in a notebook whose page takes input, not in a run from start to end',
  );
};

/** Puts the kernel's names on the global object and returns the way to take them off again. */
export function installGlobals(
  given: Partial<CellGlobals> & Pick<CellGlobals, 'emit' | 'signal'>,
): () => void {
  const withBundle = (value: unknown, raw: boolean | undefined, then: (data: MimeBundle) => void): void => {
    const atOnce = raw ? rawBundle(value) : formatValueSync(value);
    if (atOnce) return then(atOnce);
    formatValue(value).then(then, (error: unknown) =>
      then({ 'text/plain': `cannot be shown: ${String((error as Error)?.message ?? error)}` }),
    );
  };

  const updateDisplay = (displayId: string, value: unknown, options: ShowOptions = {}): void =>
    withBundle(value, options.raw, (data) =>
      given.emit({
        output_type: 'update_display_data',
        data,
        metadata: options.metadata ?? {},
        transient: { display_id: displayId },
      }),
    );

  const display = (value: unknown, options: ShowOptions = {}): object => {
    const displayId = options.display_id ?? randomUUID();
    withBundle(value, options.raw, (data) =>
      given.emit({
        output_type: 'display_data',
        data,
        metadata: options.metadata ?? {},
        transient: { display_id: displayId },
      }),
    );
    return Object.defineProperty(
      { displayId, update: (next: unknown) => updateDisplay(displayId, next) },
      Symbol.for('Jupyter.display'),
      {
        // A cell that ends in display(...) has shown its value already.
        value: {},
        enumerable: false,
      },
    );
  };

  const names: Record<string, PropertyDescriptor> = {
    display: { value: display },
    updateDisplay: { value: updateDisplay },
    clearOutput: {
      value: (wait = false): void => given.emit({ output_type: 'clear_output', wait: Boolean(wait) }),
    },
    prompt: {
      value: (text: unknown = '', options: { password?: boolean } = {}): string =>
        (given.prompt ?? noPerson)(String(text), options.password ?? false),
    },
    signal: { get: given.signal },
    comms: { value: given.comms ?? {} },
  };
  const former = Object.keys(names).map(
    (name) => [name, Object.getOwnPropertyDescriptor(globalThis, name)] as const,
  );
  for (const [name, descriptor] of Object.entries(names)) {
    Object.defineProperty(globalThis, name, {
      ...descriptor,
      configurable: true,
      enumerable: false,
      ...('value' in descriptor ? { writable: true } : {}),
    });
  }
  return () => {
    for (const [name, descriptor] of former) {
      if (descriptor) Object.defineProperty(globalThis, name, descriptor);
      else delete (globalThis as Record<string, unknown>)[name];
    }
  };
}

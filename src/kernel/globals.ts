/** What every cell has without an import besides the package: display, input, and the signal of an interrupt. */
import { newDisplayId } from './display/display-id.js';
import type { PendingOutput } from './display/cell-output.js';
import { html, md, svg } from './display/rich-text.js';
import type { MimeBundle, NbOutput } from './message.js';
import { displaySymbol, formatValue, rawBundle, type Formatted } from './display/mime-bundle.js';
import { messageOf } from './display/value-text.js';

export interface CellGlobals {
  emit: (output: NbOutput) => void;
  /** Keeps the place of an output that is still being made. */
  emitPending: (output: PendingOutput) => void;
  signal(): AbortSignal;
  /** The value of the last cell that showed one: `_` in a cell. */
  lastValue: { get(): unknown; set(value: unknown): void };
  prompt(text: string, password: boolean): string;
  comms: object;
}

type GivenGlobals = Partial<CellGlobals> & Pick<CellGlobals, 'emit' | 'emitPending' | 'signal' | 'lastValue'>;

interface DisplayOptions {
  display_id?: string;
  raw?: boolean;
  metadata?: Record<string, unknown>;
}

const noInput = (): never => {
  throw new Error(
    'prompt: nobody can answer here; it works in a notebook whose page takes input, not in a run from start to end',
  );
};

/** Puts the kernel's names on the global object; the function returned removes them again. */
export function installGlobals(given: GivenGlobals): () => void {
  const { display, updateDisplay } = displayFunctions(given);
  const names: Record<string, PropertyDescriptor> = {
    display: { value: display },
    updateDisplay: { value: updateDisplay },
    clearOutput: {
      value: (wait: unknown = false): void =>
        given.emit({ output_type: 'clear_output', wait: Boolean(wait) }),
    },
    prompt: {
      value: (text: unknown = '', options: { password?: boolean } = {}): string =>
        (given.prompt ?? noInput)(String(text), options.password ?? false),
    },
    signal: { get: given.signal },
    _: given.lastValue,
    comms: { value: given.comms ?? {} },
    html: { value: html },
    md: { value: md },
    svg: { value: svg },
  };
  return defineGlobals(names);
}

function displayFunctions({ emit, emitPending }: Pick<CellGlobals, 'emit' | 'emitPending'>): {
  display: (value: unknown, options?: DisplayOptions) => object;
  updateDisplay: (displayId: string, value: unknown, options?: DisplayOptions) => void;
} {
  /** Emits the output that `make` builds of a value's bundle, in its place among the cell's outputs. */
  const emitBundle = (
    value: unknown,
    raw: boolean | undefined,
    make: (data: MimeBundle) => NbOutput,
  ): void => {
    const output = (bundle: Formatted): NbOutput | undefined => bundle && make(bundle);
    const failed = (error: unknown): NbOutput =>
      make({ 'text/plain': `cannot be shown: ${messageOf(error)}` });
    if (raw) {
      emit(make(rawBundle(value)));
      return;
    }
    try {
      const bundle = formatValue(value);
      if (bundle instanceof Promise) emitPending(bundle.then(output).catch(failed));
      else if (bundle) emit(make(bundle));
    } catch (error) {
      emit(failed(error));
    }
  };

  const updateDisplay = (displayId: string, value: unknown, options: DisplayOptions = {}): void =>
    emitBundle(value, options.raw, (data) => ({
      output_type: 'update_display_data',
      data,
      metadata: options.metadata ?? {},
      transient: { display_id: displayId },
    }));

  const display = (value: unknown, options: DisplayOptions = {}): object => {
    const displayId = options.display_id ?? newDisplayId();
    emitBundle(value, options.raw, (data) => ({
      output_type: 'display_data',
      data,
      metadata: options.metadata ?? {},
      transient: { display_id: displayId },
    }));
    const handle = { displayId, update: (next: unknown) => updateDisplay(displayId, next) };
    // A cell that ends in display(...) has shown its value already: the handle itself shows nothing.
    return Object.defineProperty(handle, displaySymbol, { value: {}, enumerable: false });
  };

  return { display, updateDisplay };
}

function defineGlobals(names: Record<string, PropertyDescriptor>): () => void {
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
      else Reflect.deleteProperty(globalThis, name);
    }
  };
}

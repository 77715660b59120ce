/**
 * The types of what every cell has without an import: Node's globals and the kernel's. The full typings of Node cost most
 * of a second at start, so they are loaded only once a cell imports a module of Node's own; they replace `nodeGlobals`.
 */
/** What Node and a browser's worker both have. */
const commonGlobals = `
  interface Console {
    log(...data: unknown[]): void; info(...data: unknown[]): void; debug(...data: unknown[]): void;
    warn(...data: unknown[]): void; error(...data: unknown[]): void; trace(...data: unknown[]): void;
    table(data: unknown, columns?: string[]): void; dir(value: unknown, options?: object): void;
    group(...label: unknown[]): void; groupEnd(): void; assert(condition?: unknown, ...data: unknown[]): void;
    count(label?: string): void; countReset(label?: string): void;
    time(label?: string): void; timeLog(label?: string, ...data: unknown[]): void; timeEnd(label?: string): void;
  }
  var console: Console;
  function queueMicrotask(run: () => void): void;
  function structuredClone<T>(value: T): T;
  function atob(data: string): string;
  function btoa(data: string): string;
  interface Event { readonly type: string; readonly target: EventTarget | null }
  var Event: { new (type: string, init?: { cancelable?: boolean }): Event };
  interface EventTarget {
    addEventListener(type: string, listener: (event: Event) => void, options?: { once?: boolean; signal?: AbortSignal } | boolean): void;
    removeEventListener(type: string, listener: (event: Event) => void): void;
    dispatchEvent(event: Event): boolean;
  }
  var EventTarget: { new (): EventTarget };
  interface AbortSignal extends EventTarget { readonly aborted: boolean; readonly reason: any; throwIfAborted(): void }
  var AbortSignal: { abort(reason?: unknown): AbortSignal; timeout(ms: number): AbortSignal };
  interface AbortController { readonly signal: AbortSignal; abort(reason?: unknown): void }
  var AbortController: { new (): AbortController };
  interface URLSearchParams extends Iterable<[string, string]> {
    append(name: string, value: string): void; delete(name: string): void; get(name: string): string | null;
    getAll(name: string): string[]; has(name: string): boolean; set(name: string, value: string): void; toString(): string;
  }
  var URLSearchParams: { new (init?: string | Record<string, string> | Iterable<[string, string]>): URLSearchParams };
  interface URL {
    hash: string; host: string; hostname: string; href: string; readonly origin: string; password: string; pathname: string;
    port: string; protocol: string; search: string; readonly searchParams: URLSearchParams; username: string; toString(): string;
  }
  var URL: { new (url: string | URL, base?: string | URL): URL; canParse(url: string, base?: string): boolean };
  interface TextEncoder { encode(text?: string): Uint8Array }
  var TextEncoder: { new (): TextEncoder };
  interface TextDecoder { decode(data?: ArrayBuffer | ArrayBufferView): string }
  var TextDecoder: { new (label?: string): TextDecoder };
  var performance: { now(): number; readonly timeOrigin: number };
  var crypto: { randomUUID(): string; getRandomValues<T extends ArrayBufferView>(array: T): T };
  interface Response {
    readonly ok: boolean; readonly status: number; readonly statusText: string; readonly url: string;
    json(): Promise<any>; text(): Promise<string>; arrayBuffer(): Promise<ArrayBuffer>;
    readonly headers: { get(name: string): string | null; has(name: string): boolean };
  }
  function fetch(url: string | URL, init?: {
    method?: string; headers?: Record<string, string>; body?: string | Uint8Array | URLSearchParams; signal?: AbortSignal;
  }): Promise<Response>;
`;

export const nodeGlobals = `export {};
declare global {
${commonGlobals}
  interface Timeout { ref(): this; unref(): this; hasRef(): boolean; refresh(): this; [Symbol.toPrimitive](): number }
  function setTimeout(run: (_: void) => void, ms?: number): Timeout;
  function setTimeout<A extends unknown[]>(run: (...args: A) => void, ms?: number, ...args: A): Timeout;
  function setInterval<A extends unknown[]>(run: (...args: A) => void, ms?: number, ...args: A): Timeout;
  function setImmediate<A extends unknown[]>(run: (...args: A) => void, ...args: A): object;
  function clearTimeout(timer?: Timeout | number | string): void;
  function clearInterval(timer?: Timeout | number | string): void;
  function clearImmediate(immediate?: object): void;
  function require(id: string): any;
  interface Buffer extends Uint8Array { toString(encoding?: string, start?: number, end?: number): string }
  var Buffer: {
    from(data: string, encoding?: string): Buffer; from(data: ArrayLike<number> | ArrayBuffer): Buffer;
    alloc(size: number): Buffer; concat(parts: readonly Uint8Array[]): Buffer; byteLength(text: string, encoding?: string): number;
    isBuffer(value: unknown): value is Buffer;
  };
  var process: {
    readonly argv: string[]; readonly env: Record<string, string | undefined>; readonly pid: number; readonly platform: string;
    readonly version: string; readonly versions: Record<string, string>; cwd(): string; chdir(folder: string): void;
    memoryUsage(): { rss: number; heapTotal: number; heapUsed: number; external: number }; uptime(): number;
    hrtime: { bigint(): bigint }; nextTick(run: (...args: any[]) => void, ...args: any[]): void;
    readonly stdout: { write(text: string): boolean }; readonly stderr: { write(text: string): boolean };
    on(event: string, listener: (...args: any[]) => void): unknown; exit(code?: number): never;
  };
}
`;

/** The same of a browser's worker. */
export const workerGlobals = `export {};
declare global {
${commonGlobals}
  function setTimeout<A extends unknown[]>(run: (...args: A) => void, ms?: number, ...args: A): number;
  function setInterval<A extends unknown[]>(run: (...args: A) => void, ms?: number, ...args: A): number;
  function clearTimeout(timer?: number): void;
  function clearInterval(timer?: number): void;
}
`;

export const kernelGlobals = `export {};
/** Rich contents by media type, such as 'text/html' or 'image/svg+xml'. */
interface MimeContents { [mediaType: string]: unknown }
/** A displayed output that can be changed later in place. */
interface DisplayHandle { readonly displayId: string; update(value: unknown): void }
/** Text that is displayed as HTML, Markdown or SVG. */
interface Markup { readonly type: string; toString(): string }
interface Comm {
  readonly id: string; readonly target: string;
  send(data: unknown, metadata?: object, buffers?: Uint8Array[]): void;
  close(data?: unknown): void;
  onMessage: (data: any, buffers: Uint8Array[]) => void;
  onClose: (data: any) => void;
}
declare global {
  namespace WebAssembly {
    interface Module {}
    interface Instance { readonly exports: Record<string, any> }
    var Module: { new (bytes: ArrayBuffer | ArrayBufferView): Module };
    var Instance: { new (module: Module, imports?: object): Instance };
    function instantiate(bytes: ArrayBuffer | ArrayBufferView, imports?: object): Promise<{ module: Module; instance: Instance }>;
  }
  interface ImportMeta { url: string; dirname: string; filename: string }
  /** Shows a value in the cell's output. With a display_id, a later \`updateDisplay\` or \`.update\` replaces it in place. */
  function display(value: unknown, options?: { display_id?: string; raw?: boolean; metadata?: object }): DisplayHandle;
  /** Replaces what \`display\` showed under this display_id, wherever it stands in the notebook. */
  function updateDisplay(displayId: string, value: unknown, options?: { raw?: boolean; metadata?: object }): void;
  /** Clears the cell's output; with \`wait\` only when the next output comes, so that nothing flickers. */
  function clearOutput(wait?: boolean): void;
  /** Asks the user of the notebook for a line of text and waits for it. */
  function prompt(text?: string, options?: { password?: boolean }): string;
  /** HTML to display: html\`<b>\${text}</b>\`. Inserted values are escaped, except those made by html or svg. */
  function html(parts: TemplateStringsArray, ...values: unknown[]): Markup;
  /** Markdown to display: md\`**\${text}**\`. */
  function md(parts: TemplateStringsArray, ...values: unknown[]): Markup;
  /** SVG to display: svg\`<svg ...>\${shapes}</svg>\`. Inserted values are escaped, except those made by svg. */
  function svg(parts: TemplateStringsArray, ...values: unknown[]): Markup;
  /** The value that the last cell with a result showed. */
  var _: any;
  /** Fires when the cell is interrupted. Pass it to long work: \`fetch(url, { signal })\`. */
  var signal: AbortSignal;
  /** Two-way channels to widgets in the page. */
  var comms: {
    open(target: string, data?: unknown, metadata?: object): Comm;
    register(target: string, opened: (comm: Comm, data: any) => void): void;
    unregister(target: string): void;
  };
}
`;

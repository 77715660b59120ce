import type { IncomingMessage } from 'node:http';
import { requestUrl } from './auth.js';
import { HttpError } from './http-error.js';

/** What a handler gives back. `body`: an object is sent as JSON, a Buffer or string as it stands. */
export interface Response {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: object | string | Buffer | null;
}

/** One request as the handlers see it: the path parts named in the pattern, decoded once, and the body read with a limit. */
export interface RequestContext {
  readonly request: IncomingMessage;
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  readonly bytes: (limit: number) => Promise<Buffer>;
  /** The body as a JSON object; an empty body is an empty object. */
  readonly json: (limit?: number) => Promise<Record<string, unknown>>;
}

type Handler = (context: RequestContext) => Response | Promise<Response>;

interface Route {
  readonly method: string;
  readonly pattern: RegExp;
  readonly handler: Handler;
}

export const smallBody = 1024 * 1024;
/** A notebook with many pictures is some tens of megabytes. */
export const largeBody = 64 * 1024 * 1024;

export class Router {
  readonly #routes: Route[] = [];

  /** `pattern`: `/api/kernels/:id`; a part `*path` takes any number of names. */
  on(method: string, pattern: string, handler: Handler): this {
    const source = pattern.replace(/:(\w+)/g, '(?<$1>[^/]+)').replace(/\/\*(\w+)/g, '(?:/(?<$1>.*?))?');
    this.#routes.push({ method, pattern: new RegExp(`^${source}$`), handler });
    return this;
  }

  async handle(request: IncomingMessage): Promise<Response> {
    const url = requestUrl(request);
    const allowed: string[] = [];
    for (const route of this.#routes) {
      const match = route.pattern.exec(url.pathname);
      if (match === null) continue;
      if (route.method !== request.method && !(route.method === 'GET' && request.method === 'HEAD')) {
        allowed.push(route.method);
        continue;
      }
      const groups = (match.groups ?? {}) as Record<string, string | undefined>;
      const params = Object.fromEntries(
        Object.entries(groups).map(([name, raw]) => [name, decoded(raw ?? '')]),
      );
      return route.handler({
        request,
        params,
        query: url.searchParams,
        bytes: (limit) => readBody(request, limit),
        json: (limit) => readJson(request, limit),
      });
    }
    if (allowed.length > 0)
      throw new HttpError(
        405,
        `${request.method ?? ''}: this address takes ${[...new Set(allowed)].join(', ')}`,
      );
    throw new HttpError(404, `no such address: ${url.pathname.slice(0, 120)}`);
  }
}

function decoded(raw: string): string {
  try {
    return decodeURIComponent(raw);
  } catch {
    throw new HttpError(400, 'address: a % must be followed by two hexadecimal digits');
  }
}

async function readBody(request: IncomingMessage, limit: number): Promise<Buffer> {
  const tooLarge = (): HttpError =>
    new HttpError(
      413,
      `body: larger than ${Math.round(limit / 1024 / 1024)} MB, the most this address takes`,
    );
  if (Number(request.headers['content-length'] ?? 0) > limit) throw tooLarge();
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > limit) throw tooLarge();
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** A notebook nests some ten deep and holds some ten thousand lists and objects per megabyte of charts. */
const deepest = 200;
const mostContainers = 3_000_000;

/** Turns down JSON that is nested or divided beyond any notebook, before the parser spends memory and seconds on it. */
function refuseDeepJson(bytes: Buffer): void {
  let depth = 0;
  let containers = 0;
  let inString = false;
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at];
    if (inString) {
      if (byte === backslash) at += 1;
      else if (byte === quote) inString = false;
    } else if (byte === quote) inString = true;
    else if (byte === openBracket || byte === openBrace) {
      depth += 1;
      containers += 1;
      if (depth > deepest || containers > mostContainers)
        throw new HttpError(
          400,
          `body: takes JSON nested at most ${deepest} deep and with at most ${mostContainers} lists and objects`,
        );
    } else if (byte === closeBracket || byte === closeBrace) depth -= 1;
  }
}

const [quote, backslash, openBracket, closeBracket, openBrace, closeBrace] = [
  0x22, 0x5c, 0x5b, 0x5d, 0x7b, 0x7d,
];

async function readJson(request: IncomingMessage, limit = smallBody): Promise<Record<string, unknown>> {
  const bytes = await readBody(request, limit);
  if (bytes.length === 0) return {};
  refuseDeepJson(bytes);
  let value: unknown;
  try {
    value = JSON.parse(bytes.toString('utf8'));
  } catch (error) {
    throw new HttpError(
      400,
      `body: not JSON (${error instanceof Error ? error.message.slice(0, 120) : 'unreadable'})`,
    );
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new HttpError(400, 'body: takes a JSON object');
  return value as Record<string, unknown>;
}

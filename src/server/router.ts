import type { IncomingMessage } from 'node:http';
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
  bytes(limit: number): Promise<Buffer>;
  /** The body as a JSON object; an empty body is an empty object. */
  json(limit?: number): Promise<Record<string, unknown>>;
}

type Handler = (call: RequestContext) => Response | Promise<Response>;

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
    const url = new URL(request.url ?? '/', 'http://local');
    const allowed: string[] = [];
    for (const route of this.#routes) {
      const match = route.pattern.exec(url.pathname);
      if (match === null) continue;
      if (route.method !== request.method && !(route.method === 'GET' && request.method === 'HEAD')) {
        allowed.push(route.method);
        continue;
      }
      const parts: Record<string, string> = {};
      for (const [name, raw] of Object.entries(match.groups ?? {})) parts[name] = decoded(raw ?? '');
      return route.handler({
        request,
        params: parts,
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

async function readJson(request: IncomingMessage, limit = smallBody): Promise<Record<string, unknown>> {
  const bytes = await readBody(request, limit);
  if (bytes.length === 0) return {};
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

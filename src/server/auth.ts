import type { IncomingMessage } from 'node:http';
import type { AccessKeys } from './access-keys.js';
import { HttpError } from './http-error.js';

/** Who may come in: the port the server listens on and the secrets of this run. */
export interface AuthConfig {
  readonly port: number;
  readonly keys: AccessKeys;
}

/** A WebSocket cannot carry a header of the page's own: the key travels as one of the protocols it offers. */
export const keyProtocol = 'reckoner.key.';

/** Reason in the answer to a request without the key of this run; the page then tells how to open it again. */
export const keyReason = 'key';

/**
 * Lets a request in or throws a 403. Three checks, because the loopback address is reachable from every page open in the same browser:
 * the Host must be ours (a foreign name that resolves to 127.0.0.1 would otherwise read our files), the Origin must be ours, and the
 * key must be right. There is no cookie: a cookie knows no port, so every other program on this machine would be sent it.
 */
export function authenticate(request: IncomingMessage, config: AuthConfig): void {
  checkHostAndOrigin(request, config);
  const { keys } = config;
  const shown = headerKey(request) ?? socketKey(request);
  if (shown !== undefined) {
    if (keys.isSessionKey(shown)) return;
    throw new HttpError(403, 'key: this is not the key of this run', { reason: keyReason });
  }
  const url = requestUrl(request);
  const ticket = url.searchParams.get('ticket');
  if (ticket !== null && (request.method === 'GET' || request.method === 'HEAD')) {
    if (keys.isTicket(ticket, url.pathname)) return;
    throw new HttpError(403, 'This link was made by an earlier run; open the document from the list again.', {
      reason: keyReason,
    });
  }
  throw new HttpError(403, 'key: missing; open the notebooks with the address the terminal printed', {
    reason: keyReason,
  });
}

/** Host and Origin only: enough for the page's own code and style, which hold nothing of the user's. */
export function checkHostAndOrigin(request: IncomingMessage, config: AuthConfig): void {
  const hosts = [`127.0.0.1:${config.port}`, `localhost:${config.port}`, `[::1]:${config.port}`];
  if (!hosts.includes(request.headers.host ?? ''))
    throw new HttpError(403, `Host: got ${quoted(request.headers.host)}, takes ${hosts[0] ?? ''}`);
  const origin = request.headers.origin;
  if (origin !== undefined && !hosts.some((host) => origin === `http://${host}`))
    throw new HttpError(403, `Origin: got ${quoted(origin)}, takes http://${hosts[0] ?? ''}`);
  const site = request.headers['sec-fetch-site'];
  const opensPage = request.method === 'GET' && request.headers['sec-fetch-mode'] === 'navigate';
  if ((site === 'cross-site' || site === 'same-site') && !opensPage)
    throw new HttpError(403, 'this request comes from another site');
}

/** The address a request names. Throws a 400 for one that is none, such as `//`. */
export function requestUrl(request: IncomingMessage): URL {
  const address = request.url ?? '';
  if (!address.startsWith('/') || address.startsWith('//') || !URL.canParse(address, 'http://local'))
    throw new HttpError(400, `address: takes a path that begins with one /, got ${quoted(address)}`);
  return new URL(address, 'http://local');
}

/**
 * Headers of every answer. No 'unsafe-eval': charts run on Vega's expression interpreter, and what the page compiles from recipes is
 * compiled when the page is built. Inline style stays allowed because CodeMirror and KaTeX set it; inline script does not.
 */
export function pageHeaders(config: AuthConfig): Record<string, string> {
  return {
    'Content-Security-Policy': [
      "default-src 'none'",
      "script-src 'self'",
      "style-src 'self' 'unsafe-inline'",
      "img-src 'self' data: blob:",
      "font-src 'self' data:",
      `connect-src 'self' ws://127.0.0.1:${config.port} ws://localhost:${config.port}`,
      "form-action 'none'",
      "base-uri 'none'",
      "object-src 'none'",
      "frame-ancestors 'none'",
    ].join('; '),
    ...plainHeaders,
  };
}

/** A finished page is a document of its own: it may look like something, but runs nothing and fetches nothing. */
export const documentHeaders: Record<string, string> = {
  'Content-Security-Policy':
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
};

export const plainHeaders: Record<string, string> = {
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
};

const headerKey = (request: IncomingMessage): string | undefined =>
  /^(?:token|bearer) (.+)$/i.exec(request.headers.authorization ?? '')?.[1];

/** A WebSocket shows its key as a protocol, or, as other Jupyter clients do, in an address that no history keeps. */
function socketKey(request: IncomingMessage): string | undefined {
  if (request.headers.upgrade === undefined) return undefined;
  const offered = (request.headers['sec-websocket-protocol'] ?? '').split(',').map((name) => name.trim());
  const protocol = offered.find((name) => name.startsWith(keyProtocol));
  return protocol?.slice(keyProtocol.length) ?? requestUrl(request).searchParams.get('token') ?? undefined;
}

const quoted = (text: string | undefined): string =>
  text === undefined ? 'nothing' : JSON.stringify(text.slice(0, 80));

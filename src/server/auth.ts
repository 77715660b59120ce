import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { HttpError } from './http-error.js';

/** Who may come in: the port we listen on and the random token of this run. */
export interface AuthConfig {
  readonly port: number;
  readonly token: string;
}

/** How a request showed its token: as a cookie from an earlier visit, or in the address or a header. */
export type Credential = 'cookie' | 'token';

export const cookieName = (door: AuthConfig): string => `reckoner-${door.port}`;

/**
 * Lets a request in or throws a 403. Three checks, because the loopback address is reachable from every page open in the same browser:
 * the Host must be ours (a foreign name that resolves to 127.0.0.1 would otherwise read our files), the Origin must be ours, and the
 * token must be right. Browsers that send Sec-Fetch-Site also tell us when another local port asks with our cookie.
 */
export function authenticate(request: IncomingMessage, door: AuthConfig): Credential {
  checkHostAndOrigin(request, door);
  const asks = request.headers['sec-fetch-site'];
  const opensPage = request.method === 'GET' && request.headers['sec-fetch-mode'] === 'navigate';
  if ((asks === 'cross-site' || asks === 'same-site') && !opensPage)
    throw new HttpError(403, 'this request comes from another site');
  const url = new URL(request.url ?? '/', 'http://local');
  const given =
    url.searchParams.get('token') ??
    /^(?:token|bearer) (.+)$/i.exec(request.headers.authorization ?? '')?.[1];
  if (given !== undefined && given !== null) {
    if (same(given, door.token)) return 'token';
    throw new HttpError(
      403,
      'token: this is not the token of this run; use the address the terminal printed',
    );
  }
  if (same(cookies(request)[cookieName(door)] ?? '', door.token)) return 'cookie';
  throw new HttpError(403, 'token: missing; use the address the terminal printed, it ends in ?token=...');
}

/** Host and Origin only: enough for the page's own code and style, which hold nothing of the person's. */
export function checkHostAndOrigin(request: IncomingMessage, door: AuthConfig): void {
  const hosts = [`127.0.0.1:${door.port}`, `localhost:${door.port}`, `[::1]:${door.port}`];
  if (!hosts.includes(request.headers.host ?? ''))
    throw new HttpError(403, `Host: got ${quoted(request.headers.host)}, takes ${hosts[0]}`);
  const origin = request.headers.origin;
  if (origin !== undefined && !hosts.some((host) => origin === `http://${host}`)) {
    throw new HttpError(403, `Origin: got ${quoted(origin)}, takes http://${hosts[0]}`);
  }
}

/**
 * Headers of every answer. No 'unsafe-eval': charts run on Vega's expression interpreter, and what the page compiles from recipes is
 * compiled when the page is built. Inline style stays allowed because CodeMirror and KaTeX set it; inline script does not.
 */
export function pageHeaders(door: AuthConfig): Record<string, string> {
  return {
    'Content-Security-Policy': [
      "default-src 'none'",
      "script-src 'self'",
      "style-src 'self' 'unsafe-inline'",
      "img-src 'self' data: blob:",
      "font-src 'self' data:",
      `connect-src 'self' ws://127.0.0.1:${door.port} ws://localhost:${door.port}`,
      "form-action 'self'",
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

function cookies(request: IncomingMessage): Record<string, string> {
  const out: Record<string, string> = {};
  for (const part of (request.headers.cookie ?? '').split(';')) {
    const at = part.indexOf('=');
    if (at > 0) out[part.slice(0, at).trim()] = part.slice(at + 1).trim();
  }
  return out;
}

/** Equal in constant time: both are hashed first so that their lengths do not matter. */
function same(a: string, b: string): boolean {
  const hash = (text: string): Buffer => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(a), hash(b));
}

const quoted = (text: string | undefined): string =>
  text === undefined ? 'nothing' : JSON.stringify(text.slice(0, 80));

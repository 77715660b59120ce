import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Duplex } from 'node:stream';
import { WebSocketServer } from 'ws';
import {
  authenticate,
  checkHostAndOrigin,
  keyReason,
  pageHeaders,
  plainHeaders,
  requestUrl,
  type AuthConfig,
} from './auth.js';
import { HttpError } from './http-error.js';
import type { Kernels } from './kernels.js';
import { binaryProtocol, connectWebSocket, plainProtocol } from './kernel-websocket.js';
import { noticeHtml } from './page-template.js';
import type { Response, Router } from './router.js';

const mostMessage = 64 * 1024 * 1024;

interface Handlers {
  readonly api: Router;
  readonly app: Router;
  readonly kernels: Kernels;
  readonly log: (line: string) => void;
}

/** Answers requests and opens WebSockets; whatever a client sends or cuts off, nothing is thrown from here. */
export class RequestHandler {
  readonly #sockets = new WebSocketServer({
    noServer: true,
    maxPayload: mostMessage,
    handleProtocols: (offered) => [binaryProtocol, plainProtocol].find((name) => offered.has(name)) ?? false,
  });

  constructor(
    private readonly config: AuthConfig,
    private readonly handlers: Handlers,
  ) {}

  async answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    // A client may go away at any moment; that is no error of the server's.
    request.on('error', ignore);
    response.on('error', ignore);
    try {
      const { pathname } = requestUrl(request);
      if (isOpen(request.method, pathname)) checkHostAndOrigin(request, this.config);
      else authenticate(request, this.config);
      const { api, app } = this.handlers;
      this.#send(response, request, await (pathname.startsWith('/api') ? api : app).handle(request));
    } catch (error) {
      this.#send(response, request, errorResponse(request, this.#asHttpError(request, error)));
    }
  }

  upgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
    socket.on('error', ignore);
    try {
      authenticate(request, this.config);
      const { pathname, searchParams } = requestUrl(request);
      const id = /^\/api\/kernels\/([^/]+)\/channels$/.exec(pathname)?.[1];
      // Clients subscribe to events of the server; there are none to tell, and a refusal would make them ask again and again.
      if (id === undefined && pathname !== '/api/events/subscribe')
        throw new HttpError(404, 'no such channel');
      const kernel = id === undefined ? undefined : this.handlers.kernels.get(id);
      this.#sockets.handleUpgrade(request, socket, head, (ws) => {
        ws.on('error', () => ws.terminate());
        if (kernel !== undefined) connectWebSocket(ws, kernel, searchParams.get('session_id') ?? undefined);
      });
    } catch (error) {
      const { status } = this.#asHttpError(request, error);
      const words =
        { 400: 'Bad Request', 403: 'Forbidden', 404: 'Not Found' }[status] ?? 'Internal Server Error';
      socket.end(`HTTP/1.1 ${status} ${words}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`, () =>
        socket.destroy(),
      );
    }
  }

  closeSockets(): void {
    for (const ws of this.#sockets.clients) ws.terminate();
  }

  #asHttpError(request: IncomingMessage, error: unknown): HttpError {
    if (error instanceof HttpError) return error;
    // The client went away in the middle of its own request.
    if (request.destroyed && (error as NodeJS.ErrnoException | undefined)?.code === 'ECONNRESET')
      return new HttpError(400, 'the request was cut off');
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    this.handlers.log(`${request.method ?? ''} ${(request.url ?? '').split('?')[0] ?? ''}: ${what}`);
    return new HttpError(500, 'an error in the server; the terminal shows its message');
  }

  #send(response: ServerResponse, request: IncomingMessage, answer: Response): void {
    if (response.headersSent || response.destroyed) return;
    const { body = null, status = 200, headers = {} } = answer;
    const json = body !== null && typeof body === 'object' && !Buffer.isBuffer(body);
    const bytes = Buffer.isBuffer(body) ? body : Buffer.from(json ? JSON.stringify(body) : (body ?? ''));
    response.writeHead(status, {
      ...pageHeaders(this.config),
      ...plainHeaders,
      'Cache-Control': 'no-store',
      ...(json ? { 'Content-Type': 'application/json; charset=utf-8' } : {}),
      ...headers,
      ...(status === 204 ? {} : { 'Content-Length': String(bytes.length) }),
    });
    response.end(request.method === 'HEAD' || status === 204 ? undefined : bytes);
  }
}

const ignore = (): void => undefined;

/** What holds nothing of the user's and needs no key: the empty pages, their code, and the exchange of an opening key. */
function isOpen(method: string | undefined, path: string): boolean {
  if (method === 'POST') return path === '/reckoner/open';
  return path === '/' || ['/page/', '/notebook/', '/reference/'].some((start) => path.startsWith(start));
}

function errorResponse(request: IncomingMessage, error: HttpError): Response {
  const wantsPage = request.method === 'GET' && /text\/html/.test(request.headers.accept ?? '');
  const title = error.detail['reason'] === keyReason ? 'This address needs its key' : 'This cannot be shown';
  return {
    status: error.status,
    body: wantsPage
      ? noticeHtml(title, error.message)
      : { message: error.message, reason: null, ...error.detail },
    headers: {
      ...(wantsPage ? { 'Content-Type': 'text/html; charset=utf-8' } : {}),
      // The rest of a body that was refused is not read.
      ...(error.status === 413 ? { Connection: 'close' } : {}),
    },
  };
}

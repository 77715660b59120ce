import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { randomBytes } from 'node:crypto';
import type { Duplex } from 'node:stream';
import { WebSocketServer } from 'ws';
import { jupyterRoutes } from './jupyter-routes.js';
import { binaryProtocol, connectWebSocket } from './kernel-websocket.js';
import { Checkpoints } from './checkpoints.js';
import { NotebookIndex } from './notebook-index.js';
import { Contents } from './contents.js';
import {
  authenticate,
  checkHostAndOrigin,
  cookieName,
  pageHeaders,
  plainHeaders,
  type AuthConfig,
} from './auth.js';
import { Kernels, type SpawnKernel } from './kernels.js';
import { appRoutes, type PageFiles } from './app-routes.js';
import { ContentsRoot } from './safe-path.js';
import { HttpError } from './http-error.js';
import type { Response } from './router.js';
import { sweepLeftovers, WriteQueue } from './save-contents.js';
import { Sessions } from './sessions.js';
import { noticeHtml } from './page-template.js';

export interface ServerOptions {
  /** Folder of notebooks. */
  readonly notebooks: string;
  /** 0 takes any free port. */
  readonly port: number;
  readonly spawnKernel: SpawnKernel;
  readonly version: string;
  /** Folder of the built page. */
  readonly page: string;
  /** How finished pages are made; without it there are none. */
  readonly pages?: {
    readonly maker: string;
    readonly makerArguments: readonly string[];
    readonly cache: string;
    readonly program: string;
  };
  readonly token?: string;
  readonly say?: (line: string) => void;
}

export interface NotebookServer {
  readonly port: number;
  readonly token: string;
  /** With the token in it: whoever has this address may open, run and save. */
  readonly address: string;
  readonly collection: NotebookIndex | undefined;
  close(): Promise<void>;
}

const mostMessage = 64 * 1024 * 1024;
/** A notebook closed over lunch keeps its values. */
const idleKernelMs = 90 * 60_000;

/** Starts the server on the loopback address only. Rejects when the port is taken or the folder is not there. */
export async function startServer(options: ServerOptions): Promise<NotebookServer> {
  const say = options.say ?? ((): void => undefined);
  const place = await ContentsRoot.at(options.notebooks);
  await sweepLeftovers(place.root);
  const contents = new Contents(place, new WriteQueue());
  const kernels = new Kernels(options.spawnKernel);
  const sessions = new Sessions(kernels, place);
  const collection =
    options.pages === undefined ? undefined : new NotebookIndex({ contents, say, ...options.pages });
  const token = options.token ?? randomBytes(24).toString('hex');
  const door: { port: number; token: string } = { port: options.port, token };
  const api = jupyterRoutes({
    contents,
    checkpoints: new Checkpoints(contents),
    kernels,
    sessions,
    version: options.version,
  });
  const own: PageFiles = appRoutes({ contents, collection, folder: options.page, version: options.version });

  const server = createServer((request, response) => void answer(request, response));
  const sockets = new WebSocketServer({
    noServer: true,
    maxPayload: mostMessage,
    handleProtocols: (offered) => (offered.has(binaryProtocol) ? binaryProtocol : false),
  });
  server.on('upgrade', upgrade);
  server.headersTimeout = 20_000;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    try {
      const path = new URL(request.url ?? '/', 'http://local').pathname;
      // The page's own code holds nothing of the person's: it needs no token, so that it can be cached.
      const open = path.startsWith('/page/');
      const shown = open ? checkHostAndOrigin(request, door) : authenticate(request, door);
      const headers: Record<string, string> =
        shown === 'token' && request.method === 'GET'
          ? { 'Set-Cookie': `${cookieName(door)}=${token}; HttpOnly; SameSite=Strict; Path=/` }
          : {};
      const given = await (path.startsWith('/api') ? api : own.routes).handle(request);
      send(response, request, door, { ...given, headers: { ...headers, ...given.headers } });
    } catch (error) {
      const refusal =
        error instanceof HttpError
          ? error
          : new HttpError(500, 'the server stumbled; its own message stands in the terminal');
      if (!(error instanceof HttpError))
        say(
          `${request.method ?? ''} ${(request.url ?? '').split('?')[0]}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
        );
      const wantsPage = request.method === 'GET' && /text\/html/.test(request.headers.accept ?? '');
      const body = wantsPage
        ? noticeHtml(refusal.status === 403 ? 'This address needs its key' : 'Not to be had', refusal.message)
        : { message: refusal.message, reason: null, ...refusal.detail };
      send(response, request, door, {
        status: refusal.status,
        body,
        headers: {
          ...(wantsPage ? { 'Content-Type': 'text/html; charset=utf-8' } : {}),
          ...(refusal.status === 413 ? { Connection: 'close' } : {}),
        },
      });
    }
  }

  function upgrade(request: IncomingMessage, socket: Duplex, head: Buffer): void {
    try {
      authenticate(request, door);
      const path = new URL(request.url ?? '/', 'http://local').pathname;
      const id = /^\/api\/kernels\/([^/]+)\/channels$/.exec(path)?.[1];
      // Clients subscribe to events of the server; there are none to tell, and a refusal would make them ask again and again.
      const quiet = path === '/api/events/subscribe';
      if (id === undefined && !quiet) throw new HttpError(404, 'no such channel');
      const kernel = id === undefined ? undefined : kernels.get(id);
      sockets.handleUpgrade(request, socket, head, (ws) => {
        if (kernel === undefined) ws.on('error', () => ws.terminate());
        else connectWebSocket(ws, kernel);
      });
    } catch (error) {
      const status = error instanceof HttpError ? error.status : 500;
      socket.end(
        `HTTP/1.1 ${status} ${status === 403 ? 'Forbidden' : 'Not Found'}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`,
      );
    }
  }

  const sweeping = setInterval(() => void kernels.sweepIdle(idleKernelMs), 60_000);
  sweeping.unref();
  await listen(server, options.port);
  door.port = (server.address() as AddressInfo).port;
  return {
    port: door.port,
    token,
    address: `http://127.0.0.1:${door.port}/?token=${token}`,
    collection,
    async close() {
      clearInterval(sweeping);
      collection?.close();
      for (const ws of sockets.clients) ws.terminate();
      server.closeAllConnections();
      await Promise.all([kernels.removeAll(), new Promise<void>((resolve) => server.close(() => resolve()))]);
    },
  };
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function send(response: ServerResponse, request: IncomingMessage, door: AuthConfig, answer: Response): void {
  if (response.headersSent || response.destroyed) return;
  const { body = null, status = 200, headers = {} } = answer;
  const json = body !== null && typeof body === 'object' && !Buffer.isBuffer(body);
  const bytes =
    body === null
      ? Buffer.alloc(0)
      : Buffer.isBuffer(body)
        ? body
        : Buffer.from(json ? JSON.stringify(body) : (body as string));
  response.writeHead(status, {
    ...pageHeaders(door),
    ...plainHeaders,
    'Cache-Control': 'no-store',
    ...(json ? { 'Content-Type': 'application/json; charset=utf-8' } : {}),
    ...headers,
    ...(status === 204 ? {} : { 'Content-Length': String(bytes.length) }),
  });
  response.end(request.method === 'HEAD' || status === 204 ? undefined : bytes);
}

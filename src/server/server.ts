import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { jupyterRoutes } from './jupyter-routes.js';
import { Checkpoints } from './checkpoints.js';
import { NotebookIndex, type RenderOptions } from './notebook-index.js';
import { AccessKeys, type OpeningKey } from './access-keys.js';
import { Contents } from './contents.js';
import { KnownNotebooks } from './known-notebooks.js';
import type { LiveKernel, SpawnKernel } from './kernel.js';
import { Kernels } from './kernels.js';
import { appRoutes } from './app-routes.js';
import { RequestHandler } from './request-handler.js';
import { ContentsRoot } from './safe-path.js';
import { sweepLeftovers, WriteQueue } from './save-contents.js';
import { Sessions, type StoredSession } from './sessions.js';

/** What outlives the server's process: a restarted server goes on with it. */
export interface ServerState {
  readonly openingKeys: readonly OpeningKey[];
  readonly sessions: readonly StoredSession[];
}

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
  readonly pages?: RenderOptions;
  /** File that remembers which notebooks this user has run; undefined remembers for this run only. */
  readonly knownNotebooks?: string;
  /** Default: a random one. */
  readonly sessionKey?: string;
  /** Left by the server that this one takes the place of. */
  readonly state?: ServerState;
  /** Kernels that still run from then. */
  readonly liveKernels?: readonly LiveKernel[];
  readonly onState?: (state: ServerState) => void;
  readonly log?: (line: string) => void;
}

export interface NotebookServer {
  readonly port: number;
  readonly sessionKey: string;
  /** An address that opens the notebooks once. */
  newAddress(): string;
  readonly index: NotebookIndex | undefined;
  close(): Promise<void>;
}

/** A notebook closed over lunch keeps its values. */
const idleKernelMs = 90 * 60_000;

/** Starts the server on the loopback address only. Rejects when the port is taken or the folder is not there. */
export async function startServer(options: ServerOptions): Promise<NotebookServer> {
  const log = options.log ?? ((): void => undefined);
  const root = await ContentsRoot.at(options.notebooks);
  await sweepLeftovers(root.folder);
  const contents = new Contents(root, new WriteQueue(), log);
  const kernels = new Kernels(options.spawnKernel, options.liveKernels);
  const report = (): void => options.onState?.({ openingKeys, sessions: sessions.stored() });
  let openingKeys = options.state?.openingKeys ?? [];
  const keys = new AccessKeys(options.sessionKey, openingKeys, (next) => {
    openingKeys = next;
    report();
  });
  const sessions = new Sessions(kernels, root, options.state?.sessions, report);
  const known = new KnownNotebooks(options.knownNotebooks);
  const index = options.pages && new NotebookIndex({ contents, known, log, ...options.pages });
  const config = { port: options.port, keys };
  const { version } = options;
  const handler = new RequestHandler(config, {
    api: jupyterRoutes({ contents, checkpoints: new Checkpoints(contents), kernels, sessions, version }),
    app: appRoutes({ contents, index, known, keys, folder: options.page, version }),
    kernels,
    log,
  });
  const server = createServer((request, response) => void handler.answer(request, response));
  guardSockets(server, handler);
  const sweeping = setInterval(() => void kernels.sweepIdle(idleKernelMs), 60_000);
  sweeping.unref();
  await listen(server, options.port);
  config.port = (server.address() as AddressInfo).port;
  return {
    port: config.port,
    sessionKey: keys.sessionKey,
    newAddress: () => `http://127.0.0.1:${config.port}/#open=${keys.newOpeningKey()}`,
    index,
    async close() {
      clearInterval(sweeping);
      index?.close();
      handler.closeSockets();
      server.closeAllConnections();
      await Promise.all([kernels.removeAll(), new Promise<void>((resolve) => server.close(() => resolve()))]);
    },
  };
}

/** A socket that fails without a listener for it would end the process: each has one from its first byte. */
function guardSockets(server: Server, handler: RequestHandler): void {
  server.on('connection', (socket) => socket.on('error', () => socket.destroy()));
  server.on('clientError', (_error, socket) => {
    socket.on('error', () => socket.destroy());
    if (socket.writable)
      socket.end('HTTP/1.1 400 Bad Request\r\nConnection: close\r\n\r\n', () => socket.destroy());
    else socket.destroy();
  });
  server.on('upgrade', (request, socket, head) => handler.upgrade(request, socket, head));
  server.headersTimeout = 20_000;
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

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../engine/data-folder.js';
import { HostedKernels } from './hosted-kernels.js';
import { hashOf } from './save-contents.js';
import { startServer, type NotebookServer } from './server.js';
import type { FromServer, ServerStart, ToServer } from './supervisor.js';
import { cacheFolder, makePrivateFolder, stateFolder } from './user-folders.js';

interface ServerProcessOptions {
  /** Script that is forked as page maker. */
  readonly maker: string;
  readonly makerArguments: readonly string[];
}

/** The server in a process of its own, under a supervisor that keeps the kernels. It ends when the supervisor does. */
export function runServerProcess(options: ServerProcessOptions): void {
  const kernels = new HostedKernels(tell);
  let server: NotebookServer | undefined;
  // Ctrl-C in the terminal reaches every process; the supervisor decides when this one ends.
  process
    .on('SIGINT', () => undefined)
    .on('SIGTERM', () => undefined)
    .on('SIGHUP', () => undefined);
  process.on('disconnect', () => {
    server?.index?.close();
    process.exit(0);
  });
  const die = (error: unknown): void => {
    log(error instanceof Error ? (error.stack ?? error.message) : String(error));
    server?.index?.close();
    process.exit(70);
  };
  process.on('uncaughtException', die);
  process.on('unhandledRejection', die);
  process.on('message', (message: ToServer) => {
    if (message.kind === 'start')
      void start(message, kernels, options).then(
        (started) => {
          server = started;
          tell({ kind: 'ready', port: started.port });
        },
        (error: unknown) => {
          const { code, message: text } = error as NodeJS.ErrnoException;
          tell({ kind: 'failed', code, message: text });
          setTimeout(() => process.exit(1), 50);
        },
      );
    else if (message.kind === 'new-address') tell({ kind: 'address', address: server?.newAddress() ?? '' });
    else if (message.kind === 'make-pages')
      void server?.index?.makeAll(message).catch((error: unknown) => log(String(error)));
    else kernels.hear(message);
  });
}

async function start(
  { notebooks, port, sessionKey, state, kernels: live }: ServerStart,
  kernels: HostedKernels,
  { maker, makerArguments }: ServerProcessOptions,
): Promise<NotebookServer> {
  const root = packageFolder();
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const stateBase = await privateFolder(stateFolder());
  const cache = await privateFolder(cacheFolder(), join('pages', hashOf(notebooks).slice(0, 12)));
  return startServer({
    notebooks,
    port,
    version,
    sessionKey,
    spawnKernel: kernels.spawn,
    liveKernels: live.map((kernel) => kernels.adopt(kernel)),
    page: join(root, 'dist', 'page'),
    pages: { maker, makerArguments, cache, program: join(root, 'dist') },
    onState: (next) => tell({ kind: 'state', state: next }),
    log,
    ...(state === undefined ? {} : { state }),
    ...(stateBase === undefined ? {} : { knownNotebooks: join(stateBase, 'known-notebooks') }),
  });
}

/** A folder of the user's own, or undefined (said once) where there cannot be one: the server then remembers for this run only. */
async function privateFolder(base: string, below = ''): Promise<string | undefined> {
  try {
    return await makePrivateFolder(join(base, below), base);
  } catch (error) {
    log(`Nothing is remembered after this run: ${error instanceof Error ? error.message : String(error)}`);
    return undefined;
  }
}

function tell(message: FromServer): void {
  if (process.connected) process.send?.(message);
}

function log(line: string): void {
  process.stdout.write(`${line}\n`);
}

// npm start ends here: the notebook server, its address, and every notebook run in the background into a finished page.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { access, constants } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { packageFolder } from '../engine/data-folder.js';
import { startServer, type NotebookServer } from './server.js';

const help = `Opens the notebooks in a browser, editable and running; every notebook is also run into a finished page.

  npm start                          the notebooks of this project
  npm start -- --port 8123           on that port (default: 8765, or a free one when it is taken)
  npm start -- --notebooks DIR       the notebooks in that folder
  npm start -- --no-browser          only print the address
  npm start -- --no-pages            do not run the notebooks in the background
  npm start -- --help                this text

Stop with Ctrl-C. Only this machine can reach the address, and only with the key in it.
`;

const usualPort = 8765;
const makePagesFlag = '--make-pages';

interface Wishes {
  readonly port: number | undefined;
  readonly browser: boolean;
  readonly pages: boolean;
  readonly notebooks: string;
}

function readWishes(args: readonly string[]): Wishes | string {
  let values;
  try {
    ({ values } = parseArgs({
      args: [...args],
      options: {
        port: { type: 'string' },
        'no-browser': { type: 'boolean' },
        'no-pages': { type: 'boolean' },
        notebooks: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
      strict: true,
    }));
  } catch (error) {
    return `${(error as Error).message.split('. ')[0] ?? ''}; npm start -- --help tells what is taken`;
  }
  if (values.help) {
    process.stdout.write(help);
    process.exit(0);
  }
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port <= 65535))
    return `--port: got ${JSON.stringify(values.port)}, takes a whole number from 0 (any free port) to 65535`;
  const notebooks =
    values.notebooks === undefined ? join(packageFolder(), 'notebooks') : resolve(values.notebooks);
  if (!existsSync(notebooks) || !statSync(notebooks).isDirectory())
    return `--notebooks: ${notebooks} is no folder; make it first or name another`;
  return { port, browser: values['no-browser'] !== true, pages: values['no-pages'] !== true, notebooks };
}

/** The wished port, or the usual one; when nobody wished and it is taken, any free one. */
async function start(wishes: Wishes): Promise<NotebookServer> {
  const root = packageFolder();
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  const { spawnKernel } = await import('../kernel/kernel-process.js');
  const pages = {
    maker: fileURLToPath(import.meta.url),
    makerArguments: [makePagesFlag],
    cache: await cacheFolder(root, wishes.notebooks),
    program: join(root, 'dist'),
  };
  const options = {
    notebooks: wishes.notebooks,
    version,
    spawnKernel,
    page: join(root, 'dist', 'page'),
    pages,
    say: (line: string) => process.stdout.write(`${line}\n`),
  };
  try {
    return await startServer({ ...options, port: wishes.port ?? usualPort });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE' || wishes.port !== undefined) throw error;
    return startServer({ ...options, port: 0 });
  }
}

/** Finished pages of this project lie in dist/pages; those of another folder, or of a package one may not write to, elsewhere. */
async function cacheFolder(root: string, notebooks: string): Promise<string> {
  const own = notebooks === join(root, 'notebooks');
  const tag = createHash('sha256').update(notebooks).digest('hex').slice(0, 12);
  const mayWrite = await access(join(root, 'dist'), constants.W_OK).then(
    () => true,
    () => false,
  );
  if (!mayWrite) return join(tmpdir(), 'joiners-reckoner', tag);
  return own ? join(root, 'dist', 'pages') : join(root, 'dist', 'pages', tag);
}

function openBrowser(address: string): void {
  const display =
    process.platform === 'darwin' ||
    process.platform === 'win32' ||
    process.env['DISPLAY'] ||
    process.env['WAYLAND_DISPLAY'];
  if (!display || !process.stdout.isTTY) return;
  const [command, args] =
    process.platform === 'darwin'
      ? ['open', [address]]
      : process.platform === 'win32'
        ? ['cmd', ['/c', 'start', '', address]]
        : ['xdg-open', [address]];
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}

async function main(): Promise<void> {
  const wishes = readWishes(process.argv.slice(2));
  if (typeof wishes === 'string') {
    process.stderr.write(`${wishes}\n`);
    process.exit(2);
  }
  const server = await start(wishes).catch((error: NodeJS.ErrnoException) => {
    process.stderr.write(
      error.code === 'EADDRINUSE'
        ? `--port: ${wishes.port ?? usualPort} is taken by another program; name another or leave it out\n`
        : `The notebooks could not be opened: ${error.message}\n`,
    );
    process.exit(1);
  });
  process.stdout.write(`\nNotebooks:  ${server.address}\nStop with Ctrl-C.\n\n`);
  let closing = false;
  const close = (): void => {
    if (closing) process.exit(130);
    closing = true;
    void server.close().finally(() => process.exit(0));
  };
  process.on('SIGINT', close).on('SIGTERM', close).on('SIGHUP', close);
  if (wishes.browser) openBrowser(server.address);
  if (wishes.pages) await server.collection?.makeAll();
}

if (process.argv[2] === makePagesFlag) (await import('./render-worker.js')).renderPages();
else await main();

// npm start ends here: a supervisor that keeps the kernels, and under it the notebook server and the maker of finished pages.
import { existsSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { packageFolder } from '../engine/data-folder.js';
import { KernelHost } from './kernel-host.js';
import { hasBrowser, openBrowser } from './open-browser.js';
import { Supervisor } from './supervisor.js';
import { makePrivateFolder, stateFolder } from './user-folders.js';

const help = `Opens the notebooks in a browser, editable and running. The notebooks of the project, and those you have run before, are
also run into finished pages; others wait until you ask.

  npm start                          the notebooks of this project
  npm start -- --port 8123           on that port (default: 8765, or a free one when it is taken)
  npm start -- --notebooks DIR       the notebooks in that folder; none runs until you ask
  npm start -- --no-browser          only print the address
  npm start -- --no-pages            do not run the notebooks in the background
  npm start -- --help                this text

Stop with Ctrl-C. Only this machine can reach the address, and only with the key in it, which works once.
`;

const usualPort = 8765;
const makerFlag = '--make-pages';
const serverFlag = '--server';

interface Options {
  readonly port: number | undefined;
  readonly browser: boolean;
  readonly pages: boolean;
  readonly notebooks: string;
  /** Named by the user: nothing in it runs until asked for. */
  readonly ownFolder: boolean;
}

function readOptions(args: readonly string[]): Options | string {
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
  return {
    port,
    browser: values['no-browser'] !== true,
    pages: values['no-pages'] !== true,
    notebooks,
    ownFolder: values.notebooks !== undefined,
  };
}

/** The wished port, or the usual one; when nobody wished and it is taken, any free one. */
async function start(supervisor: Supervisor, port: number | undefined): Promise<number> {
  try {
    return await supervisor.start(port ?? usualPort);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE' || port !== undefined) throw error;
    return supervisor.start(0);
  }
}

/** Where the file that opens the browser is put; undefined where the user has no folder for it. */
const openingFolder = (): Promise<string | undefined> =>
  makePrivateFolder(stateFolder(), stateFolder()).catch(() => undefined);

async function showAddress(supervisor: Supervisor, browser: boolean): Promise<void> {
  const address = await supervisor.newAddress();
  process.stdout.write(`\nNotebooks:  ${address}\n`);
  process.stdout.write('It opens once. Press Enter for another address, Ctrl-C to stop.\n\n');
  const folder = browser && hasBrowser() ? await openingFolder() : undefined;
  if (folder !== undefined) await openBrowser(await supervisor.newAddress(), folder);
}

function endOnSignals(supervisor: Supervisor): void {
  let closing = 0;
  const close = (): void => {
    // The terminal and the script that started this may both pass one Ctrl-C on; a second one later ends at once.
    if (closing > 0) {
      if (Date.now() - closing > 400) process.exit(130);
      return;
    }
    closing = Date.now();
    void supervisor.close().finally(() => process.exit(0));
  };
  process.on('SIGINT', close).on('SIGTERM', close).on('SIGHUP', close);
}

async function main(): Promise<void> {
  const options = readOptions(process.argv.slice(2));
  if (typeof options === 'string') {
    process.stderr.write(`${options}\n`);
    process.exit(2);
  }
  const { spawnKernel } = await import('../kernel/kernel-process.js');
  const supervisor = new Supervisor({
    script: fileURLToPath(import.meta.url),
    scriptArguments: [serverFlag],
    notebooks: options.notebooks,
    host: new KernelHost(spawnKernel),
    pages: options.pages ? { unasked: !options.ownFolder } : undefined,
    log: (line) => process.stdout.write(`${line}\n`),
  });
  endOnSignals(supervisor);
  process.on('uncaughtException', (error) => process.stderr.write(`${error.stack ?? error.message}\n`));
  await start(supervisor, options.port).catch((error: unknown) => {
    const { code, message } = error as NodeJS.ErrnoException;
    process.stderr.write(
      code === 'EADDRINUSE'
        ? `--port: ${options.port ?? usualPort} is taken by another program; name another or leave it out\n`
        : `The notebooks could not be opened: ${message}\n`,
    );
    process.exit(1);
  });
  await showAddress(supervisor, options.browser);
  if (process.stdin.isTTY) process.stdin.on('data', () => void showAddress(supervisor, false));
}

const here = fileURLToPath(import.meta.url);
if (process.argv[2] === makerFlag)
  (await import('./render-worker.js')).renderPages(join(dirname(here), 'parent-watch.js'));
else if (process.argv[2] === serverFlag)
  (await import('./server-process.js')).runServerProcess({ maker: here, makerArguments: [makerFlag] });
else await main();

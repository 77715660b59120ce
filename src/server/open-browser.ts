import { spawn } from 'node:child_process';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { newKey } from './access-keys.js';
import { writePrivateFile } from './private-file.js';

/** Long enough for a browser that starts slowly. */
const fileLifeMs = 60_000;

/**
 * Opens `address` in the user's browser by way of a file in `folder` that this user alone can read: a command line is shown to every
 * user of the machine, and the address holds a key.
 */
export async function openBrowser(address: string, folder: string): Promise<void> {
  const file = await redirectPage(address, folder);
  setTimeout(() => void rm(file, { force: true }), fileLifeMs).unref();
  const [command, args] = openCommand(pathToFileURL(file).href);
  const child = spawn(command, args, { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}

/** Writes a page that leads to `address`; the path of it. */
export async function redirectPage(address: string, folder: string): Promise<string> {
  const file = join(folder, `open-${newKey().slice(0, 16)}.html`);
  await writePrivateFile(file, redirectHtml(address));
  return file;
}

/** A browser can be opened from here: there is a screen, and a terminal that someone sits at. */
export const hasBrowser = (): boolean =>
  process.stdout.isTTY &&
  (process.platform === 'darwin' ||
    process.platform === 'win32' ||
    Boolean(process.env['DISPLAY'] ?? process.env['WAYLAND_DISPLAY']));

function openCommand(address: string): [string, string[]] {
  if (process.platform === 'darwin') return ['open', [address]];
  if (process.platform === 'win32') return ['cmd', ['/c', 'start', '', address]];
  return ['xdg-open', [address]];
}

const redirectHtml = (address: string): string =>
  `<!doctype html><meta charset="utf-8"><meta name="referrer" content="no-referrer"><meta http-equiv="refresh" content="0;url=${address}"><title>Opening the notebooks</title>`;

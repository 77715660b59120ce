import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { referenceHtml, referenceIndexHtml } from '../notes/reference-html.js';
import { catalogue } from '../recipes/catalogue.js';
import { savedShop, saveShop, shopPath } from '../shop/shop-file.js';
import { InputError } from '../units/input-error.js';
import type { AccessKeys } from './access-keys.js';
import { documentHeaders, keyReason } from './auth.js';
import type { Contents } from './contents.js';
import { HttpError } from './http-error.js';
import { exportPage } from './export-page.js';
import type { KnownNotebooks } from './known-notebooks.js';
import type { NotebookIndex } from './notebook-index.js';
import { listNotebooks } from './notebook-metadata.js';
import { notesPage } from './notes-page.js';
import { escapeHtml } from '../engine/escape-html.js';
import { noticeHtml, pageHtmlFor, readManifest, type PageName } from './page-template.js';
import { recipeCard, type RecipeCard } from './recipe-list.js';
import { largeBody, Router, type Response } from './router.js';
import { hashOf } from './save-contents.js';

interface AppServices {
  readonly contents: Contents;
  readonly index: NotebookIndex | undefined;
  readonly known: KnownNotebooks;
  readonly keys: AccessKeys;
  /** Folder of the built page. */
  readonly folder: string;
  readonly version: string;
}

let cards: readonly RecipeCard[] | undefined;

const types: Record<string, string> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.png': 'image/png',
  '.map': 'application/json',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
};
/** The worker that runs the recipes may compile formulas and the solver; it holds no page and is reached by messages alone. */
const workerHeaders = {
  'Content-Security-Policy':
    "default-src 'none'; script-src 'self' 'unsafe-eval' 'wasm-unsafe-eval'; connect-src 'self'",
};
const html = { 'Content-Type': 'text/html; charset=utf-8' };

/** What is our own beside the Jupyter API: the two pages and their files, finished pages, recipes, build notes. */
export function appRoutes(services: AppServices): Router {
  const { version } = services;
  const routes = new Router();
  addPageRoutes(routes, services);
  addKeyRoutes(routes, services);
  addListRoutes(routes, services);
  if (services.index !== undefined) addFinishedPageRoutes(routes, services.index, services.keys);
  return routes
    .on('GET', '/reckoner/shop', () => ({ body: shopBody() }))
    .on('PUT', '/reckoner/shop', async ({ json }) => {
      try {
        saveShop(await json());
      } catch (error) {
        if (error instanceof InputError) throw new HttpError(400, error.message, { issues: error.issues });
        throw error;
      }
      return { body: shopBody() };
    })
    .on('GET', '/reckoner/recipes', () => ({ body: (cards ??= catalogue.map(recipeCard)) }))
    .on('POST', '/reckoner/export', async ({ json }) =>
      exportPage(await json(largeBody), services.contents.root.folder),
    )
    .on('POST', '/reckoner/notes', async ({ json }) => notesPage(await json(largeBody), version));
}

/** The person's shop and the file it stands in; a file that cannot be read is told as it is. */
function shopBody(): Record<string, unknown> {
  try {
    return { shop: savedShop() ?? null, path: shopPath() };
  } catch (error) {
    if (error instanceof InputError) throw new HttpError(409, error.message);
    throw error;
  }
}

/** The two empty pages and what they are made of; none of it holds anything of the user's. */
function addPageRoutes(routes: Router, { contents, folder }: AppServices): void {
  const pageResponse = (page: PageName, title: string): Response => ({
    headers: html,
    body: pageHtmlFor(page, readManifest(folder), title, folderId(contents.root.folder)),
  });
  routes
    .on('GET', '/', () => pageResponse('home', "Joiner's Reckoner"))
    .on('GET', '/notebook/*path', ({ params }) => {
      contents.root.split(params['path'] ?? '');
      return pageResponse('notebook', params['path'] ?? '');
    })
    .on('GET', '/reference/:page', ({ params }) => referenceResponse(params['page'] ?? ''))
    .on('GET', '/page/*path', ({ params }) => pageFile(folder, params['path'] ?? ''));
}

/** A page of the reference, or its index: `movementAcross.html`. */
async function referenceResponse(page: string): Promise<Response> {
  const name = page.replace(/\.html$/, '');
  const recipe = catalogue.find((r) => r.name === name);
  if (recipe === undefined && name !== 'index')
    throw new HttpError(404, `page: no recipe ${JSON.stringify(name)}`);
  const body = recipe ? await referenceHtml(recipe, catalogue) : referenceIndexHtml(catalogue);
  return { headers: { ...html, ...documentHeaders }, body };
}

function addKeyRoutes(routes: Router, { contents, keys }: AppServices): void {
  routes
    .on('POST', '/reckoner/open', async ({ json }) => {
      const { key } = await json();
      const session = typeof key === 'string' ? keys.redeem(key) : undefined;
      if (session === undefined)
        throw new HttpError(403, 'key: this address was used before, or belongs to an earlier run', {
          reason: keyReason,
        });
      return { body: { key: session } };
    })
    // A link that the browser follows by itself cannot carry the key; it carries a ticket for this one document.
    .on('POST', '/reckoner/ticket', async ({ json }) => {
      const { path } = await json();
      if (typeof path !== 'string' || !/^\/(files|pages)\/[^?#]+$/.test(path))
        throw new HttpError(400, 'path: takes an address under /files/ or /pages/');
      return { body: { address: keys.withTicket(path) } };
    })
    .on('GET', '/files/*path', async ({ params }) => {
      const path = params['path'] ?? '';
      const name = encodeURIComponent(path.split('/').at(-1) ?? 'file');
      return {
        headers: {
          ...documentHeaders,
          'Content-Type': 'application/octet-stream',
          'Content-Disposition': `attachment; filename*=UTF-8''${name}`,
        },
        body: await contents.root.read(path),
      };
    });
}

function addListRoutes(routes: Router, { contents, index, known, keys }: AppServices): void {
  routes
    .on('GET', '/reckoner/notebooks', async () => {
      const { notebooks, files } = await listNotebooks(contents);
      const download = (path: string): string => keys.withTicket(`/files/${encodePath(path)}`);
      const page = (path: string): string => keys.withTicket(`/pages/${encodePath(pageName(path))}`);
      return {
        body: {
          notebooks: notebooks.map((notebook) => ({
            ...notebook,
            download: download(notebook.path),
            ...(index === undefined ? {} : { page: page(notebook.path) }),
          })),
          files: files.map((file) => ({ ...file, download: download(file.path) })),
          pages: index?.states() ?? [],
        },
      };
    })
    // Run by the user in the page, or asked to run: it may run unasked from now on.
    .on('POST', '/reckoner/run', async ({ json }) => {
      const { path, pageWanted } = await json();
      if (typeof path !== 'string') throw new HttpError(400, 'path: takes the path of a notebook');
      await known.remember((await contents.root.read(path)).toString('utf8'));
      if (pageWanted === true) index?.request(path);
      return { status: 204 };
    });
}

function addFinishedPageRoutes(routes: Router, index: NotebookIndex, keys: AccessKeys): void {
  routes
    .on('GET', '/pages/', () => ({ headers: html, body: listHtml(index, keys) }))
    .on('GET', '/pages/:name', async ({ params }) => {
      const name = (params['name'] ?? '').replace(/\.html$/, '.ipynb');
      return { headers: { ...html, ...documentHeaders }, body: withWayBack(await index.page(name), name) };
    });
}

const encodePath = (path: string): string => path.split('/').map(encodeURIComponent).join('/');
const pageName = (path: string): string => path.replace(/\.ipynb$/, '.html');

/** Tells drafts of one folder from those of another without naming the folder. */
const folderId = (folder: string): string => hashOf(`folder ${folder}`).slice(0, 12);

/** Built files only, by the names the build gave them; those with a hash of their content in the name may be kept for good. */
async function pageFile(folder: string, path: string): Promise<Response> {
  if (!/^[\w-]+(\.[\w-]+)*(\/[\w-]+(\.[\w-]+)*)?$/.test(path)) throw new HttpError(404, 'page: no such file');
  const body = await readFile(join(folder, path)).catch(() => {
    throw new HttpError(404, `page: no file ${JSON.stringify(path)}`);
  });
  const lasting = /-[A-Z0-9]{8}\./.test(path);
  return {
    headers: {
      'Content-Type': types[extname(path)] ?? 'application/octet-stream',
      'Cache-Control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache',
      ...(path.startsWith('recipe-worker-') ? workerHeaders : {}),
    },
    body,
  };
}

function listHtml(index: NotebookIndex, keys: AccessKeys): string {
  const rows = index.states().map(({ name, state }) => {
    const address = keys.withTicket(`/pages/${encodePath(pageName(name))}`);
    const title = escapeHtml(name.replace(/\.ipynb$/, ''));
    return `<li><a href="${address}">${title}</a>${state === 'done' ? '' : ` (${state})`}</li>`;
  });
  return noticeHtml('Finished pages', '').replace('<p></p>', `<ul>${rows.join('')}</ul>`);
}

/** The stored page stands alone; served from here it gains a line that leads on. */
function withWayBack(page: string, name: string): string {
  const line = `<p class="way-back"><style>.way-back{margin:0 0 1.5rem;font-size:.95rem}@media print{.way-back{display:none}}</style><a href="/">All notebooks</a> · <a href="/notebook/${encodeURIComponent(name)}">Open this one to work in it</a></p>`;
  return page.replace(/<body>\n?/, (body) => `${body}${line}`);
}

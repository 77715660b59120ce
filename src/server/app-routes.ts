import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { catalogue } from '../recipes/catalogue.js';
import { chapters } from './notebook-metadata.js';
import type { NotebookIndex } from './notebook-index.js';
import type { Contents } from './contents.js';
import { documentHeaders } from './auth.js';
import { notesPage } from './notes-page.js';
import { recipeCard, type RecipeCard } from './recipe-list.js';
import { HttpError } from './http-error.js';
import { largeBody, Router, type Response } from './router.js';
import { escapeHtml, noticeHtml, readManifest, pageHtmlFor, type PageName } from './page-template.js';

interface Parts {
  readonly contents: Contents;
  readonly collection: NotebookIndex | undefined;
  /** Folder of the built page. */
  readonly folder: string;
  readonly version: string;
}

export interface PageFiles {
  readonly routes: Router;
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
};
const html = { 'Content-Type': 'text/html; charset=utf-8' };

/** What is our own beside the Jupyter API: the two pages and their files, finished chapters, recipes, build notes. */
export function appRoutes({ contents, collection, folder, version }: Parts): PageFiles {
  const shell = (page: PageName, title: string): Response => ({
    headers: html,
    body: pageHtmlFor(page, readManifest(folder), title),
  });
  const routes = new Router()
    .on('GET', '/', () => shell('home', "Joiner's Reckoner"))
    .on('GET', '/notebook/*path', ({ params: parts }) => {
      contents.place.split(parts['path'] ?? '');
      return shell('notebook', parts['path'] ?? '');
    })
    .on('GET', '/page/*path', ({ params: parts }) => pageFile(folder, parts['path'] ?? ''))
    .on('GET', '/files/*path', async ({ params: parts }) => {
      const path = parts['path'] ?? '';
      const bytes = await readFile(await contents.place.resolve(path)).catch(() => {
        throw new HttpError(404, `path: no file ${JSON.stringify(path)}`);
      });
      const name = encodeURIComponent(path.split('/').at(-1) ?? 'file');
      return {
        headers: {
          ...documentHeaders,
          'Content-Type': 'application/octet-stream',
          'Content-Disposition': `attachment; filename*=UTF-8''${name}`,
        },
        body: bytes,
      };
    })
    .on('GET', '/reckoner/chapters', async () => ({
      body: { ...(await chapters(contents)), pages: collection?.states() ?? [] },
    }))
    .on('GET', '/reckoner/recipes', () => ({ body: (cards ??= catalogue.map(recipeCard)) }))
    .on('POST', '/reckoner/notes', async ({ json }) => notesPage(await json(largeBody), version));
  if (collection !== undefined) {
    routes
      .on('GET', '/pages/', () => ({ headers: html, body: listHtml(collection) }))
      .on('GET', '/pages/:name', async ({ params: parts }) => {
        const name = (parts['name'] ?? '').replace(/\.html$/, '.ipynb');
        return {
          headers: { ...html, ...documentHeaders },
          body: withWayBack(await collection.page(name), name),
        };
      });
  }
  return { routes };
}

/** Built files only, by the names the build gave them; those with a print of their content in the name may be kept for good. */
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
    },
    body,
  };
}

function listHtml(collection: NotebookIndex): string {
  const rows = collection
    .states()
    .map(
      ({ name, state }) =>
        `<li><a href="/pages/${encodeURIComponent(name.replace(/\.ipynb$/, '.html'))}">${escapeHtml(name.replace(/\.ipynb$/, ''))}</a>${state === 'done' ? '' : ` (${state})`}</li>`,
    );
  return noticeHtml('Finished chapters', '').replace('<p></p>', `<ul>${rows.join('')}</ul>`);
}

/** The stored page stands alone; served from here it gains a line that leads on. */
function withWayBack(page: string, name: string): string {
  const line = `<p class="way-back"><style>.way-back{margin:0 0 1.5rem;font-size:.95rem}@media print{.way-back{display:none}}</style><a href="/">All notebooks</a> · <a href="/notebook/${encodeURIComponent(name)}">Open this one to work in it</a></p>`;
  return page.replace(/<body>\n?/, (body) => `${body}${line}`);
}

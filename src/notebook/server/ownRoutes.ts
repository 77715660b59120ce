import { readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { catalogue } from '../../recipes/catalogue.ts';
import { chapters } from './chapters.ts';
import type { Collection } from './collection.ts';
import type { Contents } from './contents.ts';
import { documentHeaders } from './door.ts';
import { notesPage } from './notesPage.ts';
import { recipeCard, type RecipeCard } from './recipeList.ts';
import { Refusal } from './refusal.ts';
import { largeBody, Routes, type Answer } from './route.ts';
import { escapeHtml, noticeHtml, readManifest, shellHtml, type PageName } from './shell.ts';

interface Parts {
  readonly contents: Contents;
  readonly collection: Collection | undefined;
  /** Folder of the built page. */
  readonly folder: string;
  readonly version: string;
}

export interface PageFiles {
  readonly routes: Routes;
}

let cards: readonly RecipeCard[] | undefined;

const types: Record<string, string> = {
  '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8', '.svg': 'image/svg+xml', '.woff2': 'font/woff2', '.woff': 'font/woff', '.ttf': 'font/ttf', '.png': 'image/png', '.map': 'application/json', '.json': 'application/json',
};
const html = { 'Content-Type': 'text/html; charset=utf-8' };

/** What is our own beside the Jupyter API: the two pages and their files, finished chapters, recipes, build notes. */
export function ownRoutes({ contents, collection, folder, version }: Parts): PageFiles {
  const shell = (page: PageName, title: string): Answer => ({ headers: html, body: shellHtml(page, readManifest(folder), title) });
  const routes = new Routes()
    .on('GET', '/', () => shell('home', "Joiner's Reckoner"))
    .on('GET', '/notebook/*path', ({ parts }) => {
      contents.place.split(parts['path'] ?? '');
      return shell('notebook', parts['path'] ?? '');
    })
    .on('GET', '/page/*path', ({ parts }) => pageFile(folder, parts['path'] ?? ''))
    .on('GET', '/files/*path', async ({ parts }) => {
      const path = parts['path'] ?? '';
      const bytes = await readFile(await contents.place.find(path)).catch(() => {
        throw new Refusal(404, `path: no file ${JSON.stringify(path)}`);
      });
      const name = encodeURIComponent(path.split('/').at(-1) ?? 'file');
      return { headers: { ...documentHeaders, 'Content-Type': 'application/octet-stream', 'Content-Disposition': `attachment; filename*=UTF-8''${name}` }, body: bytes };
    })
    .on('GET', '/reckoner/chapters', async () => ({ body: { ...(await chapters(contents)), pages: collection?.states() ?? [] } }))
    .on('GET', '/reckoner/recipes', () => ({ body: (cards ??= catalogue.map(recipeCard)) }))
    .on('POST', '/reckoner/notes', async ({ json }) => notesPage(await json(largeBody), version));
  if (collection !== undefined) {
    routes
      .on('GET', '/pages/', () => ({ headers: html, body: listHtml(collection) }))
      .on('GET', '/pages/:name', async ({ parts }) => {
        const name = (parts['name'] ?? '').replace(/\.html$/, '.ipynb');
        return { headers: { ...html, ...documentHeaders }, body: withWayBack(await collection.page(name), name) };
      });
  }
  return { routes };
}

/** Built files only, by the names the build gave them; those with a print of their content in the name may be kept for good. */
async function pageFile(folder: string, path: string): Promise<Answer> {
  if (!/^[\w-]+(\.[\w-]+)*(\/[\w-]+(\.[\w-]+)*)?$/.test(path)) throw new Refusal(404, 'page: no such file');
  const body = await readFile(join(folder, path)).catch(() => {
    throw new Refusal(404, `page: no file ${JSON.stringify(path)}`);
  });
  const lasting = /-[A-Z0-9]{8}\./.test(path);
  return { headers: { 'Content-Type': types[extname(path)] ?? 'application/octet-stream', 'Cache-Control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache' }, body };
}

function listHtml(collection: Collection): string {
  const rows = collection.states().map(({ name, state }) => `<li><a href="/pages/${encodeURIComponent(name.replace(/\.ipynb$/, '.html'))}">${escapeHtml(name.replace(/\.ipynb$/, ''))}</a>${state === 'done' ? '' : ` (${state})`}</li>`);
  return noticeHtml('Finished chapters', '').replace('<p></p>', `<ul>${rows.join('')}</ul>`);
}

/** The stored page stands alone; served from here it gains a line that leads on. */
function withWayBack(page: string, name: string): string {
  const line = `<p class="way-back"><style>.way-back{margin:0 0 1.5rem;font-size:.95rem}@media print{.way-back{display:none}}</style><a href="/">All notebooks</a> · <a href="/notebook/${encodeURIComponent(name)}">Open this one to work in it</a></p>`;
  return page.replace(/<body>\n?/, (body) => `${body}${line}`);
}

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { escapeHtml } from '../engine/escape-html.js';

/** What the page's build leaves behind: which files each of the two pages starts with. */
export interface PageManifest {
  readonly [page: string]:
    { readonly js: string; readonly css: readonly string[]; readonly preload: readonly string[] } | undefined;
}

export type PageName = 'home' | 'notebook';

export function readManifest(folder: string): PageManifest {
  return JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8')) as PageManifest;
}

/** The HTML a page starts from. It holds nothing but where its code is; everything else is asked for by the code. */
export function pageHtmlFor(page: PageName, manifest: PageManifest, title: string, folderId: string): string {
  const files = manifest[page];
  if (files === undefined) throw new Error(`the page ${page} is not built`);
  return `<!doctype html>
<html lang="en" data-page="${page}" data-folder="${folderId}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(title)}</title>
<link rel="icon" href="/page/mark.svg" type="image/svg+xml">
${files.css.map((href) => `<link rel="stylesheet" href="/page/${href}">`).join('\n')}
${files.preload.map((href) => `<link rel="modulepreload" href="/page/${href}">`).join('\n')}
<script src="/page/theme-init.js"></script>
<script type="module" src="/page/${files.js}"></script>
</head>
<body>
<main id="app" aria-busy="true"><p class="opening">Opening…</p></main>
<noscript><p class="opening">This page needs JavaScript. To read a notebook without it, save it as a page: reckoner run NOTEBOOK --save page.html.</p></noscript>
</body>
</html>
`;
}

/** A plain page that says one thing: no key, no such page. */
export function noticeHtml(title: string, text: string): string {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escapeHtml(title)}</title>
<style>body{margin:0;min-height:100vh;display:grid;place-items:center;background:#f7f1e6;color:#2b2620;font:1.15rem/1.6 system-ui,sans-serif}main{max-width:34rem;padding:2rem}h1{font-size:1.6rem}
@media (prefers-color-scheme:dark){body{background:#211d19;color:#f1e9dd}}</style></head>
<body><main><h1>${escapeHtml(title)}</h1><p>${escapeHtml(text)}</p></main></body></html>
`;
}

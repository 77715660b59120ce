/** The two pages of a site, its service worker and its manifest, as texts. */
import { escapeHtml } from '../engine/escape-html.js';
import { jsonForHtml } from '../notes/json-for-html.js';
import type { PageName, PageManifest } from '../server/page-template.js';

/** What the page asks of the site it is part of; see src/site/site-backend.ts. */
export interface SiteParts {
  readonly files: readonly string[];
  readonly kernelWorker: string;
  readonly kernelInfo: object;
}

/** Nothing is loaded from elsewhere and nothing is sent; the worker that runs cells has a policy of its own. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "connect-src 'self' blob:",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "manifest-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "object-src 'none'",
].join('; ');

const title = "Joiner's Reckoner";

export function sitePage(page: PageName, manifest: PageManifest, parts: SiteParts): string {
  const files = manifest[page];
  if (files === undefined) throw new Error(`the page ${page} is not built`);
  return `<!doctype html>
<html lang="en" data-page="${page}" data-folder="site">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${escapeHtml(title)}</title>
<link rel="icon" href="page/mark.svg" type="image/svg+xml">
<link rel="manifest" href="site.webmanifest">
${files.css.map((href) => `<link rel="stylesheet" href="page/${href}">`).join('\n')}
${files.preload.map((href) => `<link rel="modulepreload" href="page/${href}">`).join('\n')}
<script src="page/theme-init.js"></script>
<script type="application/json" id="site">${jsonForHtml(parts)}</script>
<script type="module" src="page/${files.js}"></script>
</head>
<body>
<main id="app" aria-busy="true"><p class="opening">Opening…</p></main>
<noscript><p class="opening">This page needs JavaScript. The <a href="reference/index.html">reference</a> can be read without it.</p></noscript>
</body>
</html>
`;
}

export const webManifest = (): string =>
  `${JSON.stringify(
    {
      name: title,
      short_name: 'Reckoner',
      description: 'The figures before the cut: with units, workings, sources and cautions.',
      start_url: 'index.html',
      scope: './',
      display: 'standalone',
      background_color: '#f7f1e6',
      theme_color: '#8a5a2b',
      icons: [{ src: 'page/mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
    },
    undefined,
    2,
  )}\n`;

/**
 * The service worker: keeps every file of this version of the site, answers from what it kept, and forgets the versions before. The first
 * files are kept when it is installed, the others when they are first asked for or, at the latest, right after that.
 */
export const serviceWorker = (
  version: string,
  files: readonly string[],
): string => `// Written by reckoner site.
const version = ${JSON.stringify(`site-${version}`)};
const files = ${JSON.stringify(files)};
self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(version).then((cache) => cache.addAll(files)).then(() => self.skipWaiting()));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches.keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith('site-') && name !== version).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(
    caches.open(version).then(async (cache) => {
      const kept = await cache.match(request, { ignoreSearch: true });
      if (kept) return kept;
      const answer = await fetch(request);
      if (answer.ok) void cache.put(request, answer.clone());
      return answer;
    }),
  );
});
`;

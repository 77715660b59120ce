import type { PageBackend } from '../site/page-backend.js';

const encoded = (path: string): string => path.split('/').map(encodeURIComponent).join('/');

const server: PageBackend = {
  fetch: (input, init) => fetch(input, init),
  WebSocket: globalThis.WebSocket,
  keyed: true,
  homeAddress: '/',
  notebookAddress: (path) => `/notebook/${encoded(path)}`,
  openNotebook: () => decodeURIComponent(location.pathname.replace(/^\/notebook\//, '')),
  assetAddress: (name) => `/page/${name}`,
  referenceAddress: (recipe) => `/reference/${recipe}.html`,
  placeWords: 'Everything stays on this machine.',
};

/** The notebook server; in a page of a site without one, the page itself. */
export const backend: PageBackend =
  document.querySelector('#site') === null ? server : (await import('../site/site-backend.js')).siteBackend;

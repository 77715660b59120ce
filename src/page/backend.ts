/**
 * Where the page's requests go and where its pages are: the notebook server. The site without a server puts
 * src/site/backend.ts in this module's place.
 */

const encoded = (path: string): string => path.split('/').map(encodeURIComponent).join('/');

export const backend = {
  fetch: (input: RequestInfo | URL, init?: RequestInit): Promise<Response> => fetch(input, init),
  WebSocket: globalThis.WebSocket,
  /** Whether requests carry the key of a run of the server. */
  keyed: true,
  homeAddress: '/',
  notebookAddress: (path: string): string => `/notebook/${encoded(path)}`,
  /** The path of the notebook that this page shows. */
  openNotebook: (): string => decodeURIComponent(location.pathname.replace(/^\/notebook\//, '')),
  /** A file of the page's own build. */
  assetAddress: (name: string): string => `/page/${name}`,
  referenceAddress: (recipe: string): string => `/reference/${recipe}.html`,
  /** One sentence at the foot of the first page. */
  placeWords: 'Everything stays on this machine.',
};

export type Backend = typeof backend;

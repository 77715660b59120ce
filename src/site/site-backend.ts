/** The page's backend in a site without a server: requests are answered in the page, cells run in a worker, files stay in the browser. */
import type { KernelParts } from '../kernel/browser-host/dispatcher-worker.js';
import type { PageBackend } from './page-backend.js';
import { FileStore } from './file-store.js';
import { KernelSocket } from './kernel-socket.js';
import { SiteContents } from './site-contents.js';
import { SiteKernels } from './site-kernels.js';
import { SiteServer } from './site-server.js';
import { WorkerKernel } from './worker-kernel.js';

/** What came with the site, as its pages state it. Addresses are relative to the site's own folder. */
interface SiteParts {
  readonly files: readonly string[];
  readonly kernelWorker: string;
  readonly kernelInfo: object;
}

const site = JSON.parse(document.querySelector('#site')?.textContent ?? '{}') as SiteParts;

const partText = async (name: string): Promise<string> => {
  const answer = await fetch(name);
  if (!answer.ok) throw new Error(`${name} of this site could not be read (${answer.status})`);
  return answer.text();
};
const readPart = async (name: string): Promise<unknown> =>
  JSON.parse(await partText(`parts/${name}`)) as unknown;

const contents = new SiteContents(new FileStore('reckoner'), {
  paths: site.files,
  read: (path) => partText(`notebooks/${path}`),
});

let parts: Promise<readonly [compiler: string, types: unknown]> | undefined;

/** The compiler and the types, read once a page, and the user's files as they are now. */
async function kernelParts(): Promise<KernelParts> {
  parts ??= Promise.all([partText('parts/compiler.js.txt'), readPart('types.json')]);
  const [compiler, files] = await parts;
  const { kernelInfo } = site;
  return {
    kind: 'start',
    compiler,
    files: files as Readonly<Record<string, string>>,
    kernelInfo,
    userFiles: await contents.userFiles(),
  };
}

const kernels = new SiteKernels(() => new WorkerKernel(site.kernelWorker, kernelParts));
KernelSocket.find = (id) => kernels.find(id);
const server = new SiteServer({ contents, kernels, readPart });

export const siteBackend: PageBackend = {
  fetch: (input, init) => server.handle(new Request(input, init)),
  WebSocket: KernelSocket as unknown as typeof WebSocket,
  keyed: false,
  homeAddress: 'index.html',
  notebookAddress: (path) => `notebook.html#${encodeURIComponent(path)}`,
  openNotebook: () => decodeURIComponent(location.hash.slice(1)),
  assetAddress: (name) => `page/${name}`,
  referenceAddress: (recipe) => `reference/${recipe}.html`,
  placeWords: 'Everything stays in this browser: nothing is sent anywhere.',
};

// Another notebook is another address behind the #; on the first page it is another view.
if (document.documentElement.dataset['page'] === 'notebook')
  addEventListener('hashchange', () => location.reload());
if ('serviceWorker' in navigator)
  void navigator.serviceWorker.register('service-worker.js').catch(() => undefined);

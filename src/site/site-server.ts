/** Answers the page's requests in the page itself, as the notebook server does where there is one: files, kernels, sessions, lists. */
import { HttpError } from '../server/http-error.js';
import { headingAndSentence } from '../server/notebook-metadata.js';
import type { SiteContents } from './site-contents.js';
import type { SiteKernels } from './site-kernels.js';

type Body = Readonly<Record<string, unknown>>;
type Handler = (params: readonly string[], body: Body, query: URLSearchParams) => unknown;

/** A file that came with the site as a finished answer, such as the list of recipes. */
export type ReadPart = (name: string) => Promise<unknown>;

export interface SiteServices {
  readonly contents: SiteContents;
  readonly kernels: SiteKernels;
  readonly readPart: ReadPart;
}

const onlyWithServer = (what: string): never => {
  throw new HttpError(
    501,
    `${what} needs the program on your own machine (npm start). Here: download the notebook, or print the page.`,
  );
};

const shopKey = 'reckoner-shop';
const kernelSpec = {
  name: 'reckoner',
  spec: {
    argv: [],
    env: {},
    display_name: "Joiner's Reckoner (TypeScript)",
    language: 'typescript',
    interrupt_mode: 'message',
    metadata: {},
  },
  resources: {},
};

export class SiteServer {
  readonly #routes: readonly (readonly [method: string, pattern: RegExp, handler: Handler])[];

  constructor(private readonly services: SiteServices) {
    this.#routes = [
      ...fileRoutes(services.contents),
      ...kernelRoutes(services.kernels),
      ['GET', /^\/api\/(?:status|me|terminals|config\/.*)$/, () => ({})],
      ['GET', /^\/reckoner\/notebooks$/, () => this.#listing()],
      ['GET', /^\/reckoner\/recipes$/, () => services.readPart('recipes.json')],
      ['GET', /^\/reckoner\/shop$/, () => shopBody()],
      ['PUT', /^\/reckoner\/shop$/, (_params, body) => saveShop(body)],
      ['POST', /^\/reckoner\/run$/, () => undefined],
      ['POST', /^\/reckoner\/ticket$/, (_params, body) => this.#ticket(String(body['path']))],
      ['POST', /^\/reckoner\/export$/, () => onlyWithServer('Saving a notebook as a page or a handout')],
      ['POST', /^\/reckoner\/notes$/, () => onlyWithServer('Saving build notes')],
    ];
  }

  /** The answer to a request, as `fetch` gives it. */
  async handle(request: Request): Promise<Response> {
    const { pathname, searchParams } = new URL(request.url);
    // The site may lie below any address: what the page asks for begins with one of these.
    const path = decodeURIComponent(/\/(?:api|reckoner)(?:\/.*)?$/.exec(pathname)?.[0] ?? pathname);
    try {
      const body = await bodyOf(request);
      for (const [method, pattern, handler] of this.#routes) {
        const found = method === request.method ? pattern.exec(path) : null;
        if (!found) continue;
        const answer = await handler(found.slice(1), body, searchParams);
        const status = request.method === 'POST' && answer !== undefined ? 201 : 200;
        return answer === undefined ? new Response(null, { status: 204 }) : json(answer, status);
      }
      throw new HttpError(404, `${request.method} ${path}: a site without a server has no such address`);
    } catch (error) {
      if (error instanceof HttpError) return json({ message: error.message, ...error.detail }, error.status);
      return json({ message: error instanceof Error ? error.message : String(error) }, 500);
    }
  }

  async #listing(): Promise<object> {
    const { contents } = this.services;
    const notebooks: object[] = [];
    const files: object[] = [];
    for (const [path, file] of await contents.paths()) {
      const text = await contents.text(path);
      const download = textAddress(text);
      if (path.endsWith('.ipynb'))
        notebooks.push({
          ...summaryOf(path, text),
          modified: new Date(file?.modified ?? 0).toISOString(),
          download,
        });
      else files.push({ path, size: text.length, download });
    }
    return { notebooks, files, pages: [] };
  }

  async #ticket(path: string): Promise<object> {
    return { address: textAddress(await this.services.contents.text(path.replace(/^\/files\//, ''))) };
  }
}

const json = (value: unknown, status: number): Response =>
  new Response(JSON.stringify(value), { status, headers: { 'Content-Type': 'application/json' } });

async function bodyOf(request: Request): Promise<Body> {
  const text = request.method === 'GET' ? '' : await request.text();
  return text === '' ? {} : (JSON.parse(text) as Body);
}

/** An address that gives a text back. */
const textAddress = (text: string): string =>
  URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }));

function summaryOf(path: string, text: string): object {
  const number = /^(\d+)[-_]/.exec(path)?.[1];
  try {
    const { cells } = JSON.parse(text) as { cells?: { cell_type?: string; source?: string | string[] }[] };
    const first = cells?.find((cell) => cell.cell_type === 'markdown')?.source ?? '';
    const { title, label } = headingAndSentence(Array.isArray(first) ? first.join('') : first);
    return { path, number, title: title ?? path.replace(/\.ipynb$/, ''), summary: label };
  } catch {
    const problem = 'This file is not a whole notebook. Open it to see where it breaks.';
    return { path, number, title: path, summary: '', problem };
  }
}

const fileRoutes = (contents: SiteContents): (readonly [string, RegExp, Handler])[] => [
  ['GET', /^\/api\/contents\/.*\/checkpoints$/, () => []],
  ['GET', /^\/api\/contents\/?(.*)$/, ([path = ''], _body, query) => contents.read(path, query)],
  ['PUT', /^\/api\/contents\/(.+)$/, ([path = ''], body) => contents.write(path, body)],
  ['POST', /^\/api\/contents\/?$/, (_params, body) => contents.create(body)],
  ['PATCH', /^\/api\/contents\/(.+)$/, ([path = ''], body) => contents.rename(path, body['path'])],
  ['DELETE', /^\/api\/contents\/(.+)$/, ([path = '']) => contents.remove(path)],
];

const kernelRoutes = (kernels: SiteKernels): (readonly [string, RegExp, Handler])[] => [
  [
    'GET',
    /^\/api\/kernelspecs$/,
    () => ({ default: kernelSpec.name, kernelspecs: { [kernelSpec.name]: kernelSpec } }),
  ],
  ['GET', /^\/api\/kernels$/, () => kernels.list().map((kernel) => kernel.model)],
  ['POST', /^\/api\/kernels$/, () => kernels.start().model],
  ['GET', /^\/api\/kernels\/(\w+)$/, ([id = '']) => kernels.get(id).model],
  ['DELETE', /^\/api\/kernels\/(\w+)$/, ([id = '']) => kernels.remove(id)],
  ['POST', /^\/api\/kernels\/(\w+)\/interrupt$/, ([id = '']) => kernels.get(id).interrupt()],
  [
    'POST',
    /^\/api\/kernels\/(\w+)\/restart$/,
    ([id = '']) => {
      kernels.get(id).restart();
      return kernels.get(id).model;
    },
  ],
  ['GET', /^\/api\/sessions$/, () => kernels.sessions()],
  ['POST', /^\/api\/sessions$/, (_params, body) => kernels.openSession(body)],
  ['GET', /^\/api\/sessions\/(\w+)$/, ([id = '']) => kernels.session(id)],
  ['PATCH', /^\/api\/sessions\/(\w+)$/, ([id = ''], body) => kernels.changeSession(id, body)],
  ['DELETE', /^\/api\/sessions\/(\w+)$/, ([id = '']) => kernels.closeSession(id)],
];

const shopBody = (): object => {
  const saved = localStorage.getItem(shopKey);
  return { shop: saved === null ? null : (JSON.parse(saved) as unknown), path: 'this browser' };
};

/** Kept as it is: each value is read by its field where a form or a recipe takes it. */
function saveShop(body: Body): object {
  localStorage.setItem(shopKey, JSON.stringify(body));
  return shopBody();
}

/** The server's answer to a request it turned down. */
export class ServerError extends Error {
  constructor(
    readonly status: number,
    message: string,
    readonly detail: Readonly<Record<string, unknown>>,
  ) {
    super(message);
  }
}

/** What went wrong, in one line. */
export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

export interface FileModel {
  readonly name: string;
  readonly path: string;
  readonly last_modified: string;
  readonly content: unknown;
  readonly hash?: string;
}

async function send(method: string, address: string, body?: unknown): Promise<Response> {
  const answer = await fetch(address, {
    method,
    ...(body === undefined
      ? {}
      : { body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } }),
  }).catch(() => {
    throw new ServerError(0, 'The notebook server does not answer. Is it still running in the terminal?', {});
  });
  if (answer.ok) return answer;
  const detail = (await answer.json().catch(() => ({}))) as Record<string, unknown>;
  throw new ServerError(
    answer.status,
    typeof detail['message'] === 'string' ? detail['message'] : `The server answered ${answer.status}.`,
    detail,
  );
}

const json = async <T>(answer: Promise<Response>): Promise<T> => (await (await answer).json()) as T;
export const contentsAddress = (path: string): string =>
  `/api/contents/${path.split('/').map(encodeURIComponent).join('/')}`;
export const notebookAddress = (path: string): string =>
  `/notebook/${path.split('/').map(encodeURIComponent).join('/')}`;
export const filesAddress = (path: string): string =>
  `/files/${path.split('/').map(encodeURIComponent).join('/')}`;

export const server = {
  get: <T>(address: string): Promise<T> => json<T>(send('GET', address)),
  post: <T>(address: string, body: unknown): Promise<T> => json<T>(send('POST', address, body)),
  postForText: async (address: string, body: unknown): Promise<string> =>
    (await send('POST', address, body)).text(),
  put: <T>(address: string, body: unknown): Promise<T> => json<T>(send('PUT', address, body)),
  patch: <T>(address: string, body: unknown): Promise<T> => json<T>(send('PATCH', address, body)),
  remove: async (address: string): Promise<void> => {
    await send('DELETE', address);
  },
};

/** The key came in the address; it is a cookie now and need not stand there to be copied or seen over a shoulder. */
export function hideKey(): void {
  const url = new URL(location.href);
  if (!url.searchParams.has('token')) return;
  url.searchParams.delete('token');
  history.replaceState(null, '', url.pathname + url.search + url.hash);
}

/** Offers a text as a file. */
export function download(name: string, content: string | Blob, type = 'text/plain'): void {
  const address = URL.createObjectURL(
    content instanceof Blob ? content : new Blob([content], { type: `${type};charset=utf-8` }),
  );
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

import { backend } from './backend.js';
import { connection } from './connection.js';
import { sessionKey } from './session-key.js';

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
  const key = await sessionKey();
  const answer = await backend
    .fetch(address, {
      method,
      headers: {
        Authorization: `token ${key ?? ''}`,
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    })
    .catch(() => {
      connection.lost('away');
      throw new ServerError(0, 'The notebook server does not answer. Start it again in its terminal.', {});
    });
  if (answer.ok) return answer;
  const detail = (await answer.json().catch(() => ({}))) as Record<string, unknown>;
  if (detail['reason'] === 'key') connection.lost('locked');
  throw new ServerError(
    answer.status,
    typeof detail['message'] === 'string' ? detail['message'] : `The server answered ${answer.status}.`,
    detail,
  );
}

const json = async <T>(request: Promise<Response>): Promise<T> => {
  const answer = await request;
  return (answer.status === 204 ? undefined : await answer.json()) as T;
};
export const contentsAddress = (path: string): string =>
  `/api/contents/${path.split('/').map(encodeURIComponent).join('/')}`;
const filesAddress = (path: string): string => `/files/${path.split('/').map(encodeURIComponent).join('/')}`;

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

/** An address of a file that the browser may follow by itself, as a picture or a download. */
export const ticketFor = async (path: string): Promise<string> =>
  (await server.post<{ address: string }>('/reckoner/ticket', { path: filesAddress(path) })).address;

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

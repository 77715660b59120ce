import { mkdtemp, mkdir, rm, writeFile } from 'node:fs/promises';
import { request as httpRequest } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer, type NotebookServer, type ServerOptions } from '../../src/server/server.js';
import { spawnFakeKernel } from './fake-kernel.js';

export interface Bench {
  readonly server: NotebookServer;
  readonly folder: string;
  readonly base: string;
  /** A request with the token, JSON in and out. */
  ask(
    method: string,
    path: string,
    body?: unknown,
  ): Promise<{ status: number; body: Record<string, unknown>; headers: Headers }>;
  close(): Promise<void>;
}

/** A server on a folder of its own, with the small kernel. */
export async function openBench(more: Partial<ServerOptions> = {}): Promise<Bench> {
  const above = await mkdtemp(join(tmpdir(), 'reckoner-server-'));
  const folder = join(above, 'notebooks');
  const page = join(above, 'page');
  await mkdir(folder);
  await mkdir(page);
  await writeFile(
    join(page, 'manifest.json'),
    JSON.stringify({
      home: { js: 'home-ABCDEFGH.js', css: [], preload: [] },
      notebook: { js: 'notebook-ABCDEFGH.js', css: [], preload: [] },
    }),
  );
  await writeFile(join(page, 'home-ABCDEFGH.js'), 'export {};');
  const server = await startServer({
    notebooks: folder,
    port: 0,
    spawnKernel: spawnFakeKernel,
    version: '0.0.0',
    page,
    ...more,
  });
  const base = `http://127.0.0.1:${server.port}`;
  return {
    server,
    folder,
    base,
    async ask(method, path, body) {
      const answer = await fetch(`${base}${path}`, {
        method,
        headers: { Authorization: `token ${server.sessionKey}` },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      const text = await answer.text();
      return {
        status: answer.status,
        headers: answer.headers,
        body: (/json/.test(answer.headers.get('content-type') ?? '') && text !== ''
          ? JSON.parse(text)
          : { text }) as Record<string, unknown>,
      };
    },
    async close() {
      await server.close();
      await rm(above, { recursive: true, force: true });
    },
  };
}

/** A request exactly as written: fetch would tidy the path and forbid some headers. */
export function raw(
  port: number,
  path: string,
  headers: Record<string, string>,
  method = 'GET',
  body?: Buffer | string,
): Promise<{ status: number; text: string; headers: Record<string, unknown> }> {
  return new Promise((resolve, reject) => {
    const request = httpRequest(
      { host: '127.0.0.1', port, path, method, headers: { Host: `127.0.0.1:${port}`, ...headers } },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            text: Buffer.concat(chunks).toString(),
            headers: response.headers,
          }),
        );
      },
    );
    request.on('error', reject);
    request.end(body);
  });
}

export const notebookOf = (...sources: string[]): Record<string, unknown> => ({
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {},
  cells: sources.map((source, n) => ({
    cell_type: 'code',
    id: `cell-${n}`,
    metadata: {},
    execution_count: null,
    outputs: [],
    source,
  })),
});

import { kernelName, type Kernels } from './kernels.js';
import type { Checkpoints } from './checkpoints.js';
import type { Contents } from './contents.js';
import { largeBody, Router } from './router.js';
import type { Sessions } from './sessions.js';

interface Parts {
  readonly contents: Contents;
  readonly checkpoints: Checkpoints;
  readonly kernels: Kernels;
  readonly sessions: Sessions;
  readonly version: string;
}

const kernelSpec = {
  name: kernelName,
  spec: {
    argv: [],
    env: {},
    display_name: 'TypeScript (Reckoner)',
    language: 'typescript',
    interrupt_mode: 'message',
    metadata: {},
  },
  resources: {},
};

/** The public Jupyter Server REST API, as far as one person's notebooks on one machine need it. */
export function jupyterRoutes({ contents, checkpoints, kernels, sessions, version }: Parts): Router {
  const routes = new Router();
  const started = new Date().toISOString();
  routes
    .on('GET', '/api', () => ({ body: { version } }))
    .on('GET', '/api/status', () => ({
      body: {
        started,
        last_activity: new Date().toISOString(),
        connections: kernels.list().reduce((sum, k) => sum + k.connections, 0),
        kernels: kernels.list().length,
      },
    }))
    .on('GET', '/api/me', () => ({
      body: {
        identity: {
          username: 'local',
          name: 'local',
          display_name: 'local',
          initials: 'L',
          avatar_url: null,
          color: null,
        },
        permissions: {},
      },
    }))
    .on('GET', '/api/kernelspecs', () => ({
      body: { default: kernelName, kernelspecs: { [kernelName]: kernelSpec } },
    }))
    .on('GET', '/api/kernelspecs/:name', ({ params: parts }) =>
      parts['name'] === kernelName
        ? { body: kernelSpec }
        : { status: 404, body: { message: `kernel spec: takes ${kernelName}` } },
    )
    .on('GET', '/api/terminals', () => ({ body: [] }))
    .on('GET', '/api/config/*section', () => ({ body: {} }))
    .on('PUT', '/api/config/*section', async ({ json }) => ({ body: await json() }))
    .on('PATCH', '/api/config/*section', async ({ json }) => ({ body: await json() }));

  routes
    .on('GET', '/api/contents/*path/checkpoints', async ({ params: parts }) => ({
      body: await checkpoints.list(parts['path'] ?? ''),
    }))
    .on('POST', '/api/contents/*path/checkpoints', async ({ params: parts }) => ({
      status: 201,
      body: await checkpoints.create(parts['path'] ?? ''),
    }))
    .on('POST', '/api/contents/*path/checkpoints/:id', async ({ params: parts }) => {
      await checkpoints.restore(parts['path'] ?? '', parts['id'] ?? '');
      return { status: 204 };
    })
    .on('DELETE', '/api/contents/*path/checkpoints/:id', async ({ params: parts }) => {
      await checkpoints.remove(parts['path'] ?? '', parts['id'] ?? '');
      return { status: 204 };
    })
    .on('GET', '/api/contents/*path', async ({ params: parts, query }) => ({
      body: await contents.read(parts['path'] ?? '', {
        content: query.get('content') !== '0',
        hash: query.get('hash') === '1',
        type: query.get('type'),
        format: query.get('format'),
      }),
    }))
    .on('PUT', '/api/contents/*path', async ({ params: parts, json }) => ({
      body: await contents.write(parts['path'] ?? '', await json(largeBody)),
    }))
    .on('POST', '/api/contents/*path', async ({ params: parts, json }) => ({
      status: 201,
      body: await contents.create(parts['path'] ?? '', await json()),
    }))
    .on('PATCH', '/api/contents/*path', async ({ params: parts, json }) => {
      const model = await contents.rename(parts['path'] ?? '', (await json())['path']);
      sessions.moved(parts['path'] ?? '', model.path);
      return { body: model };
    })
    .on('DELETE', '/api/contents/*path', async ({ params: parts }) => {
      await contents.remove(parts['path'] ?? '');
      return { status: 204 };
    });

  routes
    .on('GET', '/api/kernels', () => ({ body: kernels.list().map((kernel) => kernel.model) }))
    .on('POST', '/api/kernels', async ({ json }) => {
      const wish = await json();
      const cwd = await sessions.folderOf(typeof wish['path'] === 'string' ? wish['path'] : '');
      return { status: 201, body: kernels.start(cwd, wish['name']).model };
    })
    .on('GET', '/api/kernels/:id', ({ params: parts }) => ({ body: kernels.get(parts['id'] ?? '').model }))
    .on('DELETE', '/api/kernels/:id', async ({ params: parts }) => {
      await kernels.remove(parts['id'] ?? '');
      return { status: 204 };
    })
    .on('POST', '/api/kernels/:id/interrupt', async ({ params: parts }) => {
      await kernels.get(parts['id'] ?? '').interrupt();
      return { status: 204 };
    })
    .on('POST', '/api/kernels/:id/restart', async ({ params: parts }) => {
      const kernel = kernels.get(parts['id'] ?? '');
      await kernel.restart();
      return { body: kernel.model };
    });

  return routes
    .on('GET', '/api/sessions', () => ({ body: sessions.list() }))
    .on('POST', '/api/sessions', async ({ json }) => ({
      status: 201,
      body: await sessions.open(await json()),
    }))
    .on('GET', '/api/sessions/:id', ({ params: parts }) => ({ body: sessions.get(parts['id'] ?? '') }))
    .on('PATCH', '/api/sessions/:id', async ({ params: parts, json }) => ({
      body: await sessions.change(parts['id'] ?? '', await json()),
    }))
    .on('DELETE', '/api/sessions/:id', async ({ params: parts }) => {
      await sessions.close(parts['id'] ?? '');
      return { status: 204 };
    });
}

import { displayName, kernelName } from '../kernel/kernel-identity.js';
import type { Kernels } from './kernels.js';
import type { Checkpoints } from './checkpoints.js';
import type { Contents } from './contents.js';
import { largeBody, Router } from './router.js';
import type { Sessions } from './sessions.js';

interface JupyterServices {
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
    display_name: displayName,
    language: 'typescript',
    interrupt_mode: 'message',
    metadata: {},
  },
  resources: {},
};

/** The public Jupyter Server REST API, as far as one user's notebooks on one machine need it. */
export function jupyterRoutes(services: JupyterServices): Router {
  const routes = new Router();
  addServerRoutes(routes, services);
  addCheckpointRoutes(routes, services);
  addContentsRoutes(routes, services);
  addKernelRoutes(routes, services);
  addSessionRoutes(routes, services);
  return routes;
}

function addServerRoutes(routes: Router, { kernels, version }: JupyterServices): void {
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
    .on('GET', '/api/kernelspecs/:name', ({ params }) =>
      params['name'] === kernelName
        ? { body: kernelSpec }
        : { status: 404, body: { message: `kernel spec: takes ${kernelName}` } },
    )
    .on('GET', '/api/terminals', () => ({ body: [] }))
    .on('GET', '/api/config/*section', () => ({ body: {} }))
    .on('PUT', '/api/config/*section', async ({ json }) => ({ body: await json() }))
    .on('PATCH', '/api/config/*section', async ({ json }) => ({ body: await json() }));
}

function addCheckpointRoutes(routes: Router, { checkpoints }: JupyterServices): void {
  routes
    .on('GET', '/api/contents/*path/checkpoints', async ({ params }) => ({
      body: await checkpoints.list(params['path'] ?? ''),
    }))
    .on('POST', '/api/contents/*path/checkpoints', async ({ params }) => ({
      status: 201,
      body: await checkpoints.create(params['path'] ?? ''),
    }))
    .on('POST', '/api/contents/*path/checkpoints/:id', async ({ params }) => {
      await checkpoints.restore(params['path'] ?? '', params['id'] ?? '');
      return { status: 204 };
    })
    .on('DELETE', '/api/contents/*path/checkpoints/:id', async ({ params }) => {
      await checkpoints.remove(params['path'] ?? '', params['id'] ?? '');
      return { status: 204 };
    });
}

function addContentsRoutes(routes: Router, { contents, sessions }: JupyterServices): void {
  routes
    .on('GET', '/api/contents/*path', async ({ params, query }) => ({
      body: await contents.read(params['path'] ?? '', {
        content: query.get('content') !== '0',
        hash: query.get('hash') === '1',
        type: query.get('type'),
        format: query.get('format'),
      }),
    }))
    .on('PUT', '/api/contents/*path', async ({ params, json }) => ({
      body: await contents.write(params['path'] ?? '', await json(largeBody)),
    }))
    .on('POST', '/api/contents/*path', async ({ params, json }) => ({
      status: 201,
      body: await contents.create(params['path'] ?? '', await json()),
    }))
    .on('PATCH', '/api/contents/*path', async ({ params, json }) => {
      const model = await contents.rename(params['path'] ?? '', (await json())['path']);
      sessions.moved(params['path'] ?? '', model.path);
      return { body: model };
    })
    .on('DELETE', '/api/contents/*path', async ({ params }) => {
      await contents.remove(params['path'] ?? '');
      return { status: 204 };
    });
}

function addKernelRoutes(routes: Router, { kernels, sessions }: JupyterServices): void {
  routes
    .on('GET', '/api/kernels', () => ({ body: kernels.list().map((kernel) => kernel.model) }))
    .on('POST', '/api/kernels', async ({ json }) => {
      const wish = await json();
      const cwd = await sessions.folderOf(typeof wish['path'] === 'string' ? wish['path'] : '');
      return { status: 201, body: kernels.start(cwd, wish['name']).model };
    })
    .on('GET', '/api/kernels/:id', ({ params }) => ({ body: kernels.get(params['id'] ?? '').model }))
    .on('DELETE', '/api/kernels/:id', async ({ params }) => {
      await kernels.remove(params['id'] ?? '');
      return { status: 204 };
    })
    .on('POST', '/api/kernels/:id/interrupt', async ({ params }) => {
      await kernels.get(params['id'] ?? '').interrupt();
      return { status: 204 };
    })
    .on('POST', '/api/kernels/:id/restart', async ({ params }) => {
      const kernel = kernels.get(params['id'] ?? '');
      await kernel.restart();
      return { body: kernel.model };
    });
}

function addSessionRoutes(routes: Router, { sessions }: JupyterServices): void {
  routes
    .on('GET', '/api/sessions', () => ({ body: sessions.list() }))
    .on('POST', '/api/sessions', async ({ json }) => ({
      status: 201,
      body: await sessions.open(await json()),
    }))
    .on('GET', '/api/sessions/:id', ({ params }) => ({ body: sessions.get(params['id'] ?? '') }))
    .on('PATCH', '/api/sessions/:id', async ({ params, json }) => ({
      body: await sessions.change(params['id'] ?? '', await json()),
    }))
    .on('DELETE', '/api/sessions/:id', async ({ params }) => {
      await sessions.close(params['id'] ?? '');
      return { status: 204 };
    });
}

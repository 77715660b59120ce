import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import WebSocket from 'ws';
import { notebookOf, openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
let port = 0;
let key: Record<string, string> = {};
beforeAll(async () => {
  bench = await openBench();
  port = bench.server.port;
  key = { Authorization: `token ${bench.server.sessionKey}` };
});
afterAll(() => bench.close());

const guarded = [
  '/api',
  '/api/contents',
  '/api/kernels',
  '/files/a.csv',
  '/reckoner/recipes',
  '/reckoner/notebooks',
  '/pages/a.html',
];

describe('the key', () => {
  it.each([
    ['none', {}],
    ['a wrong one', { Authorization: 'token 0123' }],
    ['an empty one', { Authorization: 'token ' }],
  ])('%s opens nothing', async (_name, headers) => {
    for (const path of guarded) expect((await raw(port, path, headers)).status, path).toBe(403);
  });

  it('is taken from no cookie and from no address, both of which others could read', async () => {
    const key = bench.server.sessionKey;
    for (const path of guarded) {
      for (const name of [`reckoner-${port}`, 'reckoner', 'token'])
        expect((await raw(port, path, { Cookie: `${name}=${key}` })).status, path).toBe(403);
      expect((await raw(port, `${path}?token=${key}`, {})).status, path).toBe(403);
    }
  });

  it('is never sent as a cookie, and the pages that need none hold nothing of the user', async () => {
    await bench.ask('PUT', '/api/contents/secret.ipynb', { type: 'notebook', content: notebookOf('mine') });
    for (const path of ['/', '/notebook/secret.ipynb']) {
      const page = await raw(port, path, {});
      expect(page.status).toBe(200);
      expect(page.headers['set-cookie']).toBeUndefined();
      expect(page.text).not.toContain(bench.server.sessionKey);
      expect(page.text).not.toContain('mine');
      expect(page.text).not.toContain(bench.folder);
    }
    expect((await raw(port, '/api/status', key)).headers['set-cookie']).toBeUndefined();
  });

  it('comes for an opening key, which works once', async () => {
    const address = new URL(bench.server.newAddress());
    expect(address.origin).toBe(`http://127.0.0.1:${port}`);
    expect(address.search).toBe('');
    const open = (opening: string): ReturnType<typeof raw> =>
      raw(port, '/reckoner/open', {}, 'POST', JSON.stringify({ key: opening }));
    const opening = address.hash.replace('#open=', '');
    expect(opening).not.toBe(bench.server.sessionKey);
    const first = await open(opening);
    expect(first.status).toBe(200);
    expect(JSON.parse(first.text)).toEqual({ key: bench.server.sessionKey });
    const second = await open(opening);
    expect(second.status).toBe(403);
    expect(second.text).toContain('was used before');
    expect((await open('0123')).status).toBe(403);
    const foreign = { Origin: 'http://evil.example' };
    const other = new URL(bench.server.newAddress()).hash.replace('#open=', '');
    expect((await raw(port, '/reckoner/open', foreign, 'POST', JSON.stringify({ key: other }))).status).toBe(
      403,
    );
  });

  it('is replaced by a ticket in links, which opens one document and no other', async () => {
    await writeFile(join(bench.folder, 'a.csv'), 'name\nplank\n');
    await writeFile(join(bench.folder, 'b.csv'), 'name\nother\n');
    const asked = await bench.ask('POST', '/reckoner/ticket', { path: '/files/a.csv' });
    const address = String(asked.body['address']);
    expect((await raw(port, address, {})).text).toContain('plank');
    expect((await raw(port, address.replace('a.csv', 'b.csv'), {})).status).toBe(403);
    expect((await raw(port, address.replace('/files/', '/api/contents/'), {})).status).toBe(403);
    expect((await raw(port, address, {}, 'DELETE')).status).toBe(403);
    expect((await bench.ask('POST', '/reckoner/ticket', { path: '/api/contents' })).status).toBe(400);
  });

  it('is long and differs from run to run', async () => {
    const other = await openBench();
    expect(other.server.sessionKey).toMatch(/^[0-9a-f]{48}$/);
    expect(other.server.sessionKey).not.toBe(bench.server.sessionKey);
    await other.close();
  });
});

describe('where a request comes from', () => {
  it('a foreign Host is refused even with the token (a name that resolves to this machine)', async () => {
    for (const host of [
      'evil.example',
      `evil.example:${port}`,
      `127.0.0.1:${port}.evil.example`,
      '127.0.0.1',
      `127.0.0.1:${port + 1}`,
    ]) {
      expect((await raw(port, '/api/contents', { ...key, Host: host })).status, host).toBe(403);
      expect((await raw(port, '/page/home-ABCDEFGH.js', { Host: host })).status, host).toBe(403);
    }
    for (const host of [`localhost:${port}`, `127.0.0.1:${port}`])
      expect((await raw(port, '/api/contents', { ...key, Host: host })).status, host).toBe(200);
  });

  it('a foreign Origin is refused', async () => {
    for (const origin of [
      'http://evil.example',
      'null',
      `http://127.0.0.1:${port + 1}`,
      `https://127.0.0.1:${port}`,
      `http://127.0.0.1:${port}.evil.example`,
    ]) {
      expect(
        (await raw(port, '/api/contents', { ...key, Origin: origin }, 'POST', '{}')).status,
        origin,
      ).toBe(403);
    }
    expect((await raw(port, '/api/contents', { ...key, Origin: `http://127.0.0.1:${port}` })).status).toBe(
      200,
    );
  });

  it('a request from another local port is refused even with the key: the browser tells it is another site', async () => {
    expect(
      (
        await raw(port, '/api/contents', {
          ...key,
          'Sec-Fetch-Site': 'same-site',
          'Sec-Fetch-Mode': 'no-cors',
        })
      ).status,
    ).toBe(403);
    expect(
      (await raw(port, '/api/contents', { ...key, 'Sec-Fetch-Site': 'cross-site', 'Sec-Fetch-Mode': 'cors' }))
        .status,
    ).toBe(403);
    expect(
      (
        await raw(port, '/api/contents', {
          ...key,
          'Sec-Fetch-Site': 'same-origin',
          'Sec-Fetch-Mode': 'cors',
        })
      ).status,
    ).toBe(200);
  });

  it('WebSockets pass the same checks', async () => {
    const session = await bench.ask('POST', '/api/sessions', {
      path: 'a.ipynb',
      name: 'a',
      type: 'notebook',
      kernel: { name: 'reckoner' },
    });
    const path = `/api/kernels/${(session.body['kernel'] as { id: string }).id}/channels`;
    const opens = (address: string, headers: Record<string, string> = {}): Promise<boolean> =>
      new Promise((resolve) => {
        const socket = new WebSocket(address, { headers });
        socket.on('open', () => {
          resolve(true);
          socket.close();
        });
        socket.on('error', () => resolve(false));
      });
    const there = `ws://127.0.0.1:${port}${path}`;
    expect(await opens(there)).toBe(false);
    expect(await opens(`${there}?token=wrong`)).toBe(false);
    expect(await opens(`${there}?token=${bench.server.sessionKey}`, { Origin: 'http://evil.example' })).toBe(
      false,
    );
    expect(await opens(`${there}?token=${bench.server.sessionKey}`, { Host: 'evil.example' })).toBe(false);
    expect(
      await opens(`ws://127.0.0.1:${port}/api/kernels/none/channels?token=${bench.server.sessionKey}`),
    ).toBe(false);
    expect(await opens(`${there}?token=${bench.server.sessionKey}`)).toBe(true);
    const protocols = ['reckoner', `reckoner.key.${bench.server.sessionKey}`];
    const socket = new WebSocket(there, protocols);
    await new Promise((resolve, reject) => socket.on('open', resolve).on('error', reject));
    expect(socket.protocol).toBe('reckoner');
    socket.close();
    expect(await opens(`ws://127.0.0.1:${port}/api/events/subscribe?token=${bench.server.sessionKey}`)).toBe(
      true,
    );
  });

  it('listens on the loopback address only', () => {
    expect(bench.server.newAddress()).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#open=[0-9a-f]{48}$/);
  });
});

describe('what the browser may do with an answer', () => {
  it('the policy allows no eval, no inline script, no foreign address, no frame', async () => {
    for (const path of ['/', '/notebook/a.ipynb', '/api/status', '/no/such']) {
      const policy = String((await raw(port, path, key)).headers['content-security-policy']);
      expect(policy, path).toContain("default-src 'none'");
      expect(policy, path).toContain("script-src 'self';");
      expect(policy, path).toContain("frame-ancestors 'none'");
      expect(policy, path).toContain("base-uri 'none'");
      expect(policy, path).not.toContain('unsafe-eval');
      expect(/script-src[^;]*unsafe-inline/.test(policy), path).toBe(false);
      expect(/https?:\/\//.test(policy.replaceAll(/ws:\/\/(127\.0\.0\.1|localhost):\d+/g, '')), path).toBe(
        false,
      );
    }
  });

  it('types are not guessed, addresses not passed on, answers not kept', async () => {
    const { headers } = await raw(port, '/api/status', key);
    expect(headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-resource-policy': 'same-origin',
      'x-frame-options': 'DENY',
      'cache-control': 'no-store',
    });
  });

  it('a refused page says in words what is wanted', async () => {
    const page = await raw(port, '/pages/a.html', { Accept: 'text/html' });
    expect(page.status).toBe(403);
    expect(page.text).toContain('the address the terminal printed');
  });
});

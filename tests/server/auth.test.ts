import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import WebSocket from 'ws';
import { openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
let port = 0;
let key: Record<string, string> = {};
beforeAll(async () => {
  bench = await openBench();
  port = bench.server.port;
  key = { Authorization: `token ${bench.server.token}` };
});
afterAll(() => bench.close());

describe('the token', () => {
  it.each([
    ['none', {}, 403],
    ['a wrong one', { Authorization: 'token 0123' }, 403],
    ['a wrong one as cookie', { Cookie: 'reckoner-1=abc' }, 403],
    ['an empty one', { Authorization: 'token ' }, 403],
  ])('%s opens nothing', async (_name, headers, status) => {
    for (const path of [
      '/',
      '/api',
      '/api/contents',
      '/api/kernels',
      '/notebook/a.ipynb',
      '/files/a.csv',
      '/reckoner/recipes',
      '/pages/a.html',
    ])
      expect((await raw(port, path, headers)).status, path).toBe(status);
  });

  it('opens as header, in the address, and then as a cookie that scripts cannot read and other sites do not send', async () => {
    expect((await raw(port, '/api/status', key)).status).toBe(200);
    const first = await raw(port, `/?token=${bench.server.token}`, {});
    expect(first.status).toBe(200);
    const cookie = String((first.headers['set-cookie'] as string[])[0]);
    expect(cookie).toMatch(/HttpOnly/);
    expect(cookie).toMatch(/SameSite=Strict/);
    expect((await raw(port, '/api/status', { Cookie: cookie.split(';')[0] ?? '' })).status).toBe(200);
  });

  it('is long and differs from run to run', async () => {
    const other = await openBench();
    expect(other.server.token).toMatch(/^[0-9a-f]{48}$/);
    expect(other.server.token).not.toBe(bench.server.token);
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

  it('another local port cannot use the cookie: the browser tells it is another site', async () => {
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

  it('WebSockets go through the same door', async () => {
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
    expect(await opens(`${there}?token=${bench.server.token}`, { Origin: 'http://evil.example' })).toBe(
      false,
    );
    expect(await opens(`${there}?token=${bench.server.token}`, { Host: 'evil.example' })).toBe(false);
    expect(await opens(`ws://127.0.0.1:${port}/api/kernels/none/channels?token=${bench.server.token}`)).toBe(
      false,
    );
    expect(await opens(`${there}?token=${bench.server.token}`)).toBe(true);
    expect(await opens(`ws://127.0.0.1:${port}/api/events/subscribe?token=${bench.server.token}`)).toBe(true);
  });

  it('listens on the loopback address only', () => {
    expect(bench.server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?token=[0-9a-f]+$/);
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
    const page = await raw(port, '/', { Accept: 'text/html' });
    expect(page.status).toBe(403);
    expect(page.text).toContain('the address the terminal printed');
  });
});

import { connect, type Socket } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBench, type Bench } from './server-bench.js';

// The server runs in this process: an error it does not catch ends the test run, which vitest reports as a failure.
let bench: Bench;
const logged: string[] = [];
beforeAll(async () => {
  bench = await openBench({ log: (line) => logged.push(line) });
});
afterAll(() => bench.close());

const count = 5000;
const atOnce = 100;
const ends = ['reset', 'close', 'half-close'] as const;

/** A linear congruential generator: the storm is the same in every run. */
function random(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 1_103_515_245 + 12_345) % 2 ** 31) / 2 ** 31;
}

function requests(kernel: string, key: string): string[] {
  const host = `Host: 127.0.0.1:${bench.server.port}\r\n`;
  const socket =
    'Connection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n';
  const body = '{"type":"notebook"}';
  return [
    `GET /api/kernels/x/channels HTTP/1.1\r\n${host}${socket}\r\n`,
    `GET /api/kernels/${kernel}/channels HTTP/1.1\r\n${host}${socket}\r\n`,
    `GET /api/kernels/${kernel}/channels HTTP/1.1\r\n${host}${socket}Authorization: token ${key}\r\n\r\n\x81\x05hello`,
    `GET /api/kernels/${kernel}/channels HTTP/1.1\r\n${host}${socket}Sec-WebSocket-Protocol: reckoner, reckoner.key.${key}\r\n\r\n`,
    `GET /api/kernels/x/channels HTTP/1.1\r\n${host}${socket}Origin: http://evil.example\r\n\r\n`,
    `GET / HTTP/1.1\r\n${host}\r\n`,
    `GET /api/contents HTTP/1.1\r\n${host}Authorization: token ${key}\r\n\r\n`,
    `POST /api/contents/none HTTP/1.1\r\n${host}Authorization: token ${key}\r\nContent-Length: ${body.length + 20}\r\n\r\n${body}`,
    `PUT /api/contents/a.txt HTTP/1.1\r\n${host}Authorization: token ${key}\r\nTransfer-Encoding: chunked\r\n\r\nffffff\r\n${body}`,
    `\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03 nothing like HTTP`,
    `GET // HTTP/1.1\r\n${host}\r\n`,
  ];
}

/** Sends the first `bytes` of a request and goes away. */
function cutOff(text: string, bytes: number, end: (typeof ends)[number], wait: number): Promise<void> {
  return new Promise((resolve) => {
    const socket: Socket = connect(bench.server.port, '127.0.0.1');
    socket.on('error', () => undefined).on('close', () => resolve());
    socket.resume();
    socket.on('connect', () => {
      socket.write(text.slice(0, bytes), 'latin1', () => {
        const leave = (): void => {
          if (end === 'reset') socket.resetAndDestroy();
          else if (end === 'close') socket.destroy();
          else {
            socket.end();
            setTimeout(() => socket.destroy(), 20);
          }
        };
        if (wait === 0) leave();
        else setTimeout(leave, wait);
      });
    });
  });
}

describe('clients that go away', () => {
  it(`${count} requests and upgrades, cut off at any byte before and after the key, leave server and kernel as they were`, async () => {
    const session = await bench.ask('POST', '/api/sessions', {
      path: 'a.ipynb',
      name: 'a',
      type: 'notebook',
      kernel: { name: 'reckoner' },
    });
    const kernel = (session.body['kernel'] as { id: string }).id;
    const all = requests(kernel, bench.server.sessionKey);
    const next = random(20_261_130);
    for (let done = 0; done < count; done += atOnce) {
      await Promise.all(
        Array.from({ length: atOnce }, () => {
          const text = all[Math.floor(next() * all.length)] ?? '';
          const whole = next() < 0.5;
          const bytes = whole ? text.length : Math.floor(next() * text.length);
          return cutOff(
            text,
            bytes,
            ends[Math.floor(next() * ends.length)] ?? 'reset',
            Math.floor(next() * 4),
          );
        }),
      );
    }
    expect((await bench.ask('GET', '/api/status')).status).toBe(200);
    await expect
      .poll(async () => (await bench.ask('GET', `/api/kernels/${kernel}`)).body['connections'])
      .toBe(0);
    expect(logged.filter((line) => /Unhandled|uncaught/i.test(line))).toEqual([]);
  }, 120_000);

  it('a foreign page that opens 3000 sockets is refused each time and ends nothing', async () => {
    const [, , , , foreign = ''] = requests('x', 'y');
    for (let done = 0; done < 3000; done += 250)
      await Promise.all(Array.from({ length: 250 }, () => cutOff(foreign, foreign.length, 'reset', 0)));
    expect((await bench.ask('GET', '/api/status')).status).toBe(200);
  }, 60_000);
});

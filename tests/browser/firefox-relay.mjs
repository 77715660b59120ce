#!/usr/bin/env node
// Stands in for Firefox's executable: starts the installed Firefox and passes WebDriver BiDi messages on between it and Playwright.
// Playwright asks for commands that the installed Firefox does not know yet; those it can do without are answered here.
import { spawn } from 'node:child_process';
import WebSocket, { WebSocketServer } from 'ws';

/** Light or dark is left as the browser has it. */
const notThereYet = new Set(['emulation.setMediaFeaturesOverride']);

const firefox = spawn(process.env.FIREFOX ?? '/usr/bin/firefox-esr', process.argv.slice(2), {
  stdio: ['ignore', 'inherit', 'pipe'],
});
firefox.on('error', (error) => {
  process.stderr.write(`${error.message}\n`);
  process.exit(1);
});
firefox.on('exit', (code) => process.exit(code ?? 0));
process.on('SIGTERM', () => firefox.kill('SIGKILL'));
let said = '';
firefox.stderr.setEncoding('utf8').on('data', (text) => {
  if (process.env.FIREFOX_LOG) process.stdout.write(text);
  if (said === undefined) return;
  said += text;
  const address = /WebDriver BiDi listening on (ws:\/\/[^\s/]+)/.exec(said)?.[1];
  if (address === undefined) return;
  said = undefined;
  relay(address);
});

function relay(address) {
  const server = new WebSocketServer({ host: '127.0.0.1', port: 0 });
  server.on('listening', () =>
    process.stderr.write(`WebDriver BiDi listening on ws://127.0.0.1:${server.address().port}\n`),
  );
  server.on('connection', (client, request) => {
    const browser = new WebSocket(`${address}${request.url}`);
    const waiting = [];
    browser.on('open', () => waiting.splice(0).forEach((text) => browser.send(text)));
    client.on('message', (data) => {
      const text = data.toString();
      const { id, method } = JSON.parse(text);
      if (notThereYet.has(method)) client.send(JSON.stringify({ type: 'success', id, result: {} }));
      else if (browser.readyState === WebSocket.OPEN) browser.send(text);
      else waiting.push(text);
    });
    browser.on('message', (data) => client.send(data.toString()));
    for (const [one, other] of [
      [client, browser],
      [browser, client],
    ])
      one.on('close', () => other.close()).on('error', () => other.close());
  });
}

import { backend } from './backend.js';

/**
 * The key of this run of the server. It is kept in the tab alone (a cookie would be sent to every other program on this machine), comes
 * in for an opening key in the address, and passes between tabs of this address, so that a link opened in a new tab opens there.
 */
const storageKey = 'reckoner-key';
const channel = new BroadcastChannel('reckoner-key');
const waitMs = 400;

let current: string | undefined = sessionStorage.getItem(storageKey) ?? undefined;
const listeners: (() => void)[] = [];

channel.addEventListener('message', (event: MessageEvent<{ ask?: true; key?: string }>) => {
  const { ask, key } = event.data;
  if (ask && current !== undefined) channel.postMessage({ key: current });
  // Another tab was let into a newer run: this one goes on with its key.
  if (key !== undefined && key !== current) void take(key);
});

const opened = redeemAddress();

/** The key, once the address is read and other tabs are asked; undefined where there is none. */
export async function sessionKey(): Promise<string | undefined> {
  if (!backend.keyed) return '';
  await opened;
  if (current === undefined) await askOtherTabs();
  return current;
}

/** The key as far as it is known at once. */
export const knownKey = (): string => current ?? '';

/** Calls back when a new key arrives: the server was started again and opened in another tab. */
export function onNewKey(listener: () => void): void {
  listeners.push(listener);
}

/** The server turned the key down: it belongs to an earlier run. */
export async function forgetKey(key: string): Promise<void> {
  if (current !== key) return;
  current = undefined;
  sessionStorage.removeItem(storageKey);
  await askOtherTabs();
}

/** An opening key works once; it is taken out of the address at once, so that it is neither copied nor seen over a shoulder. */
async function redeemAddress(): Promise<void> {
  const key = /^#open=([0-9a-f]+)$/.exec(location.hash)?.[1];
  if (key === undefined) return;
  history.replaceState(null, '', location.pathname + location.search);
  const answer = await fetch('/reckoner/open', {
    method: 'POST',
    body: JSON.stringify({ key }),
    headers: { 'Content-Type': 'application/json' },
  }).catch(() => undefined);
  if (answer?.ok !== true) return;
  const { key: session } = (await answer.json()) as { key: string };
  store(session);
  channel.postMessage({ key: session });
}

/** A key from another tab counts only when the server takes it. */
async function take(key: string): Promise<void> {
  const answer = await fetch('/api/status', { headers: { Authorization: `token ${key}` } }).catch(
    () => undefined,
  );
  if (answer?.ok !== true) return;
  store(key);
  for (const listener of listeners) listener();
}

function store(key: string): void {
  current = key;
  sessionStorage.setItem(storageKey, key);
}

async function askOtherTabs(): Promise<void> {
  channel.postMessage({ ask: true });
  const end = Date.now() + waitMs;
  while (knownKey() === '' && Date.now() < end) await new Promise((resolve) => setTimeout(resolve, 25));
}

import { backend } from './backend.js';
import { el } from './element.js';
import { forgetKey, onNewKey, sessionKey } from './session-key.js';

/** `away`: no answer; `locked`: the server runs, with another key. */
export type ConnectionState = 'connected' | 'away' | 'locked';

const pollMs = 1000;

const words: Record<Exclude<ConnectionState, 'connected'>, string> = {
  away: 'The notebook server does not answer. Start it again in its terminal (npm start); this page goes on by itself. What you type meanwhile is kept in this browser.',
  locked:
    'The notebook server was started again and needs a new key: press Enter in its terminal and open the address it prints, in this browser. What you typed is kept here and offered again.',
};

/** Whether the server can be reached. While it cannot, the page says what to do and asks again every second. */
class Connection {
  state: ConnectionState = 'connected';
  readonly #listeners: (() => void)[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  #line: HTMLElement | undefined;

  /** Called when the server is back. */
  onReturn(listener: () => void): void {
    this.#listeners.push(listener);
  }

  lost(state: Exclude<ConnectionState, 'connected'>): void {
    if (this.state === state) return;
    this.state = state;
    this.#line?.remove();
    this.#line = el('p', { class: `connection ${state}`, role: 'alert' }, words[state]);
    document.body.prepend(this.#line);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.check(), pollMs);
  }

  /** Asks the server; tells the listeners when it is back. */
  async check(): Promise<void> {
    clearTimeout(this.#timer);
    const key = await sessionKey();
    const answer = await backend
      .fetch('/api/status', { headers: { Authorization: `token ${key ?? ''}` } })
      .catch(() => undefined);
    if (answer?.ok === true) this.#returned();
    else {
      if (answer?.status === 403 && key !== undefined) await forgetKey(key);
      this.lost(answer?.status === 403 ? 'locked' : 'away');
      this.#timer = setTimeout(() => void this.check(), pollMs);
    }
  }

  #returned(): void {
    if (this.state === 'connected') return;
    this.state = 'connected';
    this.#line?.remove();
    this.#line = undefined;
    for (const listener of this.#listeners) listener();
  }
}

export const connection = new Connection();
onNewKey(() => void connection.check());

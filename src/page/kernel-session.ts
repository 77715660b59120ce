import { SessionContext } from '@jupyterlab/apputils';
import { KernelManager, KernelSpecManager, ServerConnection, SessionManager } from '@jupyterlab/services';
import { backend } from './backend.js';
import { connection } from './connection.js';
import { ask } from './dialog.js';
import { server } from './server-api.js';
import { knownKey, sessionKey } from './session-key.js';

export type KernelWord = 'starting' | 'ready' | 'working' | 'stopped' | 'restarting' | 'away';

/** Requests of the widgets' own library carry the key as the page's do. */
const fetchWithKey = async (input: RequestInfo | URL, init?: RequestInit): Promise<Response> => {
  const request = new Request(input, init);
  request.headers.set('Authorization', `token ${(await sessionKey()) ?? ''}`);
  return backend.fetch(request);
};

/** A WebSocket cannot carry a header: the key goes as one of the protocols it offers. */
class KeyedWebSocket extends backend.WebSocket {
  constructor(url: string | URL, protocols: string | string[] = []) {
    super(url, [...[protocols].flat(), 'reckoner', `reckoner.key.${knownKey()}`]);
  }

  /** The widgets' own library takes an accepted protocol that it does not know for an error. */
  override get protocol(): string {
    return super.protocol === 'reckoner' ? '' : super.protocol;
  }
}

/** The notebook's kernel: started with the page, shared by every tab on the same notebook. */
export class KernelSession {
  readonly context: SessionContext;
  word: KernelWord = 'starting';
  readonly #listeners: (() => void)[] = [];
  /** The dead kernel that was already spoken of: its death is reported once. */
  #told: unknown;
  /** Set by the page: what to do when the server was started again and has no kernel for this page. */
  onKernelGone: () => Promise<void> = () => Promise.resolve();
  /** Set by the page: runs every cell once a kernel is back. */
  runAll: () => unknown = () => undefined;

  constructor(path: string) {
    const serverSettings = ServerConnection.makeSettings({
      baseUrl: `${location.origin}/`,
      wsUrl: `${location.origin.replace(/^http/, 'ws')}/`,
      appUrl: '',
      token: '',
      appendToken: false,
      fetch: fetchWithKey,
      WebSocket: KeyedWebSocket,
    });
    const kernelManager = new KernelManager({ serverSettings, standby: 'when-hidden' });
    this.context = new SessionContext({
      kernelManager,
      sessionManager: new SessionManager({ serverSettings, kernelManager, standby: 'when-hidden' }),
      specsManager: new KernelSpecManager({ serverSettings, standby: 'when-hidden' }),
      path,
      name: path.split('/').at(-1) ?? path,
      type: 'notebook',
      kernelPreference: {
        name: 'reckoner',
        autoStartDefault: true,
        canStart: true,
        shouldStart: true,
        shutdownOnDispose: false,
      },
    });
    this.context.statusChanged.connect(() => this.#look());
    this.context.connectionStatusChanged.connect(() => this.#look());
    this.context.kernelChanged.connect(() => this.#look());
    connection.onReturn(() => void this.#rejoin());
  }

  onWord(listener: () => void): void {
    this.#listeners.push(listener);
  }

  async start(): Promise<void> {
    const mustChoose = await this.context.initialize();
    // A kernel we do not know the name of, as in a notebook made elsewhere: ours runs it.
    if (mustChoose) await this.context.changeKernel({ name: 'reckoner' });
    this.#look();
  }

  async interrupt(): Promise<void> {
    await this.context.session?.kernel?.interrupt();
  }

  async restart(): Promise<void> {
    const kernel = this.context.session?.kernel;
    if (kernel && !kernel.isDisposed && kernel.status !== 'dead') await kernel.restart();
    else await this.context.changeKernel({ name: 'reckoner' });
    this.#look();
  }

  /** The server is back. A kernel that lived on is joined again; where it is gone, the page is read anew. */
  async #rejoin(): Promise<void> {
    const kernel = this.context.session?.kernel;
    if (!kernel) return;
    const model = await server
      .get<{ execution_state: string }>(`/api/kernels/${kernel.id}`)
      .catch(() => undefined);
    if (model !== undefined) await kernel.reconnect().catch(() => undefined);
    else await this.onKernelGone();
    this.#look();
  }

  #look(): void {
    const status = this.context.kernelDisplayStatus;
    const dead = this.context.session?.kernel?.status === 'dead' || status === 'dead';
    this.word = dead ? 'stopped' : this.#wordOf(status);
    for (const listener of this.#listeners) listener();
    // The server closes its kernels' channels when it ends; asking it tells whether that is why.
    if (this.word === 'away') void connection.check();
    if (dead) void this.#offerRestart();
  }

  #wordOf(status: string): KernelWord {
    if (status === 'restarting' || status === 'autorestarting') return 'restarting';
    const connection = this.context.session?.kernel?.connectionStatus ?? 'connected';
    if (connection !== 'connected') {
      const expected =
        this.word === 'starting' || (connection === 'connecting' && this.word === 'restarting');
      return expected ? this.word : 'away';
    }
    if (status === 'busy') return 'working';
    return status === 'idle' ? 'ready' : 'starting';
  }

  async #offerRestart(): Promise<void> {
    const kernel = this.context.session?.kernel;
    if (this.#told === kernel) return;
    this.#told = kernel;
    const model = await server
      .get<{ exit_reason?: string }>(`/api/kernels/${kernel?.id ?? ''}`)
      .catch((): { exit_reason?: string } => ({}));
    const why = model.exit_reason === undefined ? '' : `: ${model.exit_reason}`;
    const answer = await ask({
      title: 'The kernel has stopped',
      text: [
        `The process that runs your cells has ended${why}. Your text and the results on the page are kept; only the values in the kernel are gone.`,
      ],
      choices: [
        { value: 'start', words: 'Start it again', first: true },
        { value: 'all', words: 'Start and run all cells' },
        { value: 'leave', words: 'Leave it stopped' },
      ],
      class: 'crash',
    });
    // A second word of the same death may come while the new kernel starts: it is not asked about again.
    if (answer !== 'start' && answer !== 'all') return;
    await this.restart();
    if (answer === 'all') await this.runAll();
  }
}

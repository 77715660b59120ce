import { randomUUID } from 'node:crypto';
import type { JupyterMessage, KernelProcess } from '../../src/kernel/kernel-process.js';

/**
 * A small kernel for the server's own tests: it echoes the code it is given. `fail`, `crash`, `wait` and `ask` do what they say. It keeps
 * to the protocol (busy, answer, idle), so a client cannot tell it from a real one that knows little.
 */
export interface FakeKernel extends KernelProcess {
  readonly seen: JupyterMessage[];
  crash(): void;
}

export const fakeKernels: FakeKernel[] = [];

export function spawnFakeKernel({ cwd }: { cwd: string }): Promise<KernelProcess> {
  const listeners = new Set<(message: JupyterMessage) => void>();
  const seen: JupyterMessage[] = [];
  let end: (how: { code: number | null; signal: string | null }) => void = () => undefined;
  const exited = new Promise<{ code: number | null; signal: string | null }>((resolve) => (end = resolve));
  let waiting: JupyterMessage | undefined;
  let count = 0;

  const say = (
    channel: JupyterMessage['channel'],
    type: string,
    parent: JupyterMessage,
    content: Record<string, unknown>,
  ): void => {
    const message = {
      channel,
      header: {
        msg_id: randomUUID(),
        msg_type: type,
        session: 'fake',
        username: 'fake',
        version: '5.3',
        date: new Date().toISOString(),
      },
      parent_header: parent.header,
      metadata: {},
      content,
    };
    for (const listener of listeners) listener(message);
  };
  const answer = (message: JupyterMessage, text: string): void => {
    say('iopub', 'execute_result', message, {
      execution_count: count,
      data: { 'text/plain': text },
      metadata: {},
    });
    say('shell', 'execute_reply', message, { status: 'ok', execution_count: count, user_expressions: {} });
    say('iopub', 'status', message, { execution_state: 'idle' });
  };
  const kernel: FakeKernel = {
    pid: 4_000_000 + fakeKernels.length,
    seen,
    exited,
    onMessage(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    send(message) {
      seen.push(message);
      const type = message.header['msg_type'];
      setImmediate(() => {
        if (type === 'input_reply' && waiting !== undefined)
          return answer(waiting, `got ${String(message.content['value'])}`);
        say('iopub', 'status', message, { execution_state: 'busy' });
        if (type === 'kernel_info_request') {
          say(message.channel, 'kernel_info_reply', message, {
            status: 'ok',
            protocol_version: '5.3',
            implementation: 'fake',
            implementation_version: '1',
            language_info: {
              name: 'typescript',
              version: '5',
              mimetype: 'text/typescript',
              file_extension: '.ts',
            },
            banner: '',
            help_links: [],
          });
        } else if (type === 'execute_request') {
          const code = String(message.content['code']);
          count += 1;
          say('iopub', 'execute_input', message, { code, execution_count: count });
          if (code === 'wait') return void (waiting = message);
          if (code === 'crash') return kernel.crash();
          if (code === 'ask') {
            waiting = message;
            return say('stdin', 'input_request', message, { prompt: 'how wide?', password: false });
          }
          if (code === 'fail') {
            say('iopub', 'error', message, {
              ename: 'InputError',
              evalue: 'width: got nothing',
              traceback: ['width: got nothing'],
            });
            say('shell', 'execute_reply', message, {
              status: 'error',
              ename: 'InputError',
              evalue: 'width: got nothing',
              traceback: [],
              execution_count: count,
            });
          } else return answer(message, code === 'cwd' ? cwd : code);
        }
        say('iopub', 'status', message, { execution_state: 'idle' });
      });
    },
    interrupt() {
      if (waiting !== undefined) {
        say('shell', 'execute_reply', waiting, {
          status: 'error',
          ename: 'Interrupted',
          evalue: '',
          traceback: [],
          execution_count: count,
        });
        say('iopub', 'status', waiting, { execution_state: 'idle' });
      }
      return Promise.resolve();
    },
    shutdown() {
      end({ code: 0, signal: null });
      return Promise.resolve();
    },
    crash: () => end({ code: null, signal: 'SIGSEGV' }),
  };
  fakeKernels.push(kernel);
  return Promise.resolve(kernel);
}

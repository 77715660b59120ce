/** The dispatcher's place in a process of its own, beside an I/O thread. */
import type { NativeCompiler } from '../native/native-checker.js';
import { KernelSession } from '../session.js';
import type { IoThreadData } from '../transport/ipc.js';
import type { DispatcherHost } from './dispatcher-host.js';
import { collectGarbage } from './garbage-collection.js';
import { kernelInfo } from './kernel-info.js';
import { waitForInput } from './wait-for-input.js';

export interface NodeDispatcherOptions {
  readonly data: IoThreadData;
  /** Folder the cells resolve files and packages from. */
  readonly cwd: string;
  readonly native: NativeCompiler | undefined;
  readonly exit: () => void;
}

export const nodeDispatcherHost = ({ data, cwd, native, exit }: NodeDispatcherOptions): DispatcherHost => ({
  flags: data.flags,
  port: data.port,
  kernelInfo,
  toJupyter: 'connectionFile' in data.transport,
  openSession: (options) => new KernelSession({ ...options, cwd, native }),
  collectGarbage,
  waitForInput: (ask) => waitForInput(data, ask),
  exit,
});

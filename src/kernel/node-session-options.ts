import type { SessionOptions } from './cell-session.js';
import type { NativeCompiler } from './native/native-checker.js';

export interface NodeSessionOptions extends SessionOptions {
  /** Folder the cells resolve files and packages from. */
  cwd: string;
  /** The notebook's file, for messages. */
  file?: string;
  /** The compiler that checks cells in place of the kernel's own. */
  native?: NativeCompiler | undefined;
}

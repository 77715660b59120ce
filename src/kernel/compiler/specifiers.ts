import { isBuiltin } from 'node:module';

/** Whether an import names a module of Node's own, such as `fs` or `node:fs`. Right in a process from a snapshot too. */
export const isNodeModule = (name: string): boolean => name.startsWith('node:') || isBuiltin(name);

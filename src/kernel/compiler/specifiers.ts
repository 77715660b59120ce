import { builtinModules } from 'node:module';

const builtins = new Set(builtinModules);

/** Whether an import names a module of Node's own, such as `fs` or `node:fs`. */
export const isNodeModule = (name: string): boolean => name.startsWith('node:') || builtins.has(name);

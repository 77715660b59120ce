/** The compiler's options for cells. */
import type TS from 'typescript';
import type { ProgramHost } from './program-host.js';
import type { Compiler } from './typescript-internals.js';
// ES2023, and the newer parts that the kernel supplies where Node 20 lacks them (language-additions.ts).
import libraries from './cell-libraries.json' with { type: 'json' };

/** Where the notebook's folder keeps typings. */
export const typeRoot = (cwd: string): string => `${cwd.replaceAll('\\', '/')}/node_modules/@types`;

export function compilerOptions(ts: Compiler, host: ProgramHost, cwd: string): TS.CompilerOptions {
  return {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    strict: true,
    esModuleInterop: true,
    resolveJsonModule: true,
    allowImportingTsExtensions: true,
    allowUnusedLabels: true,
    experimentalDecorators: false,
    preserveConstEnums: true,
    skipLibCheck: true,
    sourceMap: true,
    types: [],
    typeRoots: [typeRoot(cwd), host.paths.nodeTypes],
    ...(host.isFile(host.paths.flatLibrary) ? { noLib: true } : { lib: libraries }),
  };
}

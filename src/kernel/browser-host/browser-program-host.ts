/** The compiler's host in a browser's worker: the library's and the package's types as texts in memory. */
import { workerGlobals } from '../compiler/cell-types.js';
import type { ProgramHost } from '../compiler/program-host.js';

/** The folder of the cells; files that the notebook has beside it are there too. */
export const notebookFolder = '/notebook';

/** Texts by path: `/types/` holds the package's declarations, the library (`lib.d.ts`) and the index of names (`names.json`). */
export type TextFiles = Readonly<Record<string, string>>;

export const browserMissingModule = (specifier: string): string =>
  `import '${specifier}': in the browser a notebook can import 'joiners-reckoner' and the modules beside it; start the notebook with npm start for packages and Node's modules`;

export function browserProgramHost(files: TextFiles): ProgramHost {
  const paths = Object.keys(files);
  return {
    readText: (path) => (Object.hasOwn(files, path) ? files[path] : undefined),
    isFile: (path) => Object.hasOwn(files, path),
    isFolder: (path) => paths.some((file) => file.startsWith(`${path}/`)),
    realPath: (path) => path,
    modifiedAt: (path) => (Object.hasOwn(files, path) ? 1 : undefined),
    isPlatformModule: () => false,
    missingModule: browserMissingModule,
    globals: workerGlobals,
    caseSensitive: true,
    paths: {
      packageName: 'joiners-reckoner',
      packageRoot: '/types',
      declarations: '/types/',
      flatLibrary: '/types/lib.d.ts',
      libraryFolder: '/types',
      nodeTypes: '/types/none',
      exportIndex: '/types/names.json',
    },
  };
}

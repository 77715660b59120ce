/** What the compiler reads from outside. The kernel gives it Node's files; a browser worker can give it files in memory. */
export interface ProgramHost {
  /** The text of a file, or undefined if there is none. */
  readText: (path: string) => string | undefined;
  isFile: (path: string) => boolean;
  isFolder: (path: string) => boolean;
  /** The path without symbolic links. */
  realPath: (path: string) => string;
  /** When a file was last changed, in ms; undefined if there is none. */
  modifiedAt: (path: string) => number | undefined;
  /** Whether an import names one of the platform's own modules, such as `node:fs`. */
  isPlatformModule: (name: string) => boolean;
  /** What to tell the user about an import that names nothing there is: how to get it, or why it cannot be had. */
  missingModule: (specifier: string) => string;
  /** The types of what the platform gives every cell without an import, as a module that declares globals. */
  readonly globals: string;
  readonly caseSensitive: boolean;
  readonly paths: ProgramPaths;
}

/** Where the typings are. Absolute paths with forward slashes. */
export interface ProgramPaths {
  /** The name by which cells import this package. */
  packageName: string;
  /** The package's folder; packages that the notebook's folder lacks are resolved from here. */
  packageRoot: string;
  /** The folder of the build's declarations, with a slash at its end; `index.d.ts` is the public one. */
  declarations: string;
  /** The standard library in one file, and the folder of its separate files for a tree that is not built. */
  flatLibrary: string;
  libraryFolder: string;
  /** The folder that holds the typings of Node's own modules. */
  nodeTypes: string;
  /** Where each name of the package is declared (JSON), if the build wrote it. */
  exportIndex: string;
}

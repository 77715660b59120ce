/** Writes dist/browser and gives the packages whose code is in it. */
export function buildBrowserModules(root: string): Promise<unknown[]>;

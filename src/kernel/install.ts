/** Where a kernelspec goes: `prefix` (its share/jupyter/kernels), else the user's own Jupyter data folder. */
export interface InstallPlace {
  prefix?: string;
}

/** Writes the kernelspec `reckoner`; returns the folder it wrote. */
export function installKernel(place: InstallPlace = {}): Promise<string> {
  return Promise.reject(new Error(`the kernel cannot be installed yet (${place.prefix ?? 'user folder'})`));
}

/** Removes the kernelspec `reckoner`; returns the folder it removed, or undefined if there was none. */
export function uninstallKernel(place: InstallPlace = {}): Promise<string | undefined> {
  return Promise.reject(new Error(`the kernel cannot be removed yet (${place.prefix ?? 'user folder'})`));
}

/**
 * A temporary folder for the files that only the native checker reads. From it, files and packages are found as from the
 * notebook's folder: each level has a `node_modules` that leads to one of a folder above the notebook's, and the outermost
 * leads to this package's own.
 */
import { existsSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

export class ResolutionFolder {
  /** The innermost folder, where the files go. */
  readonly path: string;
  private readonly root = realpathSync(mkdtempSync(join(tmpdir(), 'reckoner-types-')));
  private readonly removeAtExit = (): void => this.remove();

  constructor(cwd: string, packageRoot: string) {
    const above = packageFolders(cwd).reverse();
    const own = packageFolders(packageRoot).reverse();
    let at = this.root;
    for (const target of [...own, ...above]) {
      symlinkSync(target, join(at, 'node_modules'), 'junction');
      at = join(at, 'in');
      mkdirSync(at);
    }
    this.path = at;
    process.on('exit', this.removeAtExit);
  }

  remove(): void {
    process.off('exit', this.removeAtExit);
    rmSync(this.root, { recursive: true, force: true });
  }
}

/** The `node_modules` that a module in a folder looks in, nearest first. */
function packageFolders(folder: string): string[] {
  const found: string[] = [];
  for (let at = folder; ; at = dirname(at)) {
    const candidate = join(at, 'node_modules');
    if (existsSync(candidate)) found.push(candidate);
    if (dirname(at) === at) return found;
  }
}

import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { kernelInfo } from '../kernel/dispatcher/kernel-info.js';
import { distPath, packageRoot, packageVersion } from '../kernel/dist-path.js';
import { catalogue } from '../recipes/catalogue.js';
import { readManifest } from '../server/page-template.js';
import { recipeCard } from '../server/recipe-list.js';
import { writePages } from './reference-pages.js';
import { serviceWorker, sitePage, webManifest, type SiteParts } from './site-pages.js';
import { UsageError, type Words } from './usage.js';

/** Folders of the build whose declarations the package's public face needs. */
const typeFolders = /^(?:units|engine|materials|charts|recipes|sketches|explore|shop|notes|piece)\//;

/** `reckoner site DIR`: writes the whole notebook as static files that need no server of ours. */
export async function siteCommand({ plain }: Words): Promise<number> {
  const [folder, more] = plain;
  if (folder === undefined || more !== undefined)
    throw new UsageError(`site: got ${plain.length} names, takes one folder`);
  if (existsSync(folder) && !statSync(folder).isDirectory())
    throw new UsageError(`site: ${folder} is a file; takes a folder`);
  if (existsSync(folder) && readdirSync(folder).length > 0 && !existsSync(join(folder, 'site.webmanifest')))
    throw new UsageError(
      `site: ${folder} holds other files; takes a new or empty folder, or one it wrote before`,
    );
  await writeSite(folder);
  const bytes = filesBelow(folder).reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
  process.stdout.write(
    `${folder}: ${filesBelow(folder).length} files, ${(bytes / 1e6).toFixed(1)} MB. Put the folder on any web server, or try it: npx serve ${folder}\n`,
  );
  return 0;
}

/** Writes the site. @throws the file system's own error */
export async function writeSite(folder: string): Promise<void> {
  const parts = join(folder, 'parts');
  mkdirSync(parts, { recursive: true });
  cpSync(distPath('page'), join(folder, 'page'), {
    recursive: true,
    filter: (path) => !/\.(?:map|json)$/.test(path),
  });
  const notebooks = readdirSync(join(packageRoot, 'notebooks')).filter((name) => name.endsWith('.ipynb'));
  mkdirSync(join(folder, 'notebooks'), { recursive: true });
  for (const name of notebooks) cpSync(join(packageRoot, 'notebooks', name), join(folder, 'notebooks', name));
  cpSync(distPath('kernel-worker'), parts, { recursive: true });
  // The solver's own part, which its code looks for beside itself.
  cpSync(distPath('page/highs.wasm'), join(parts, 'highs.wasm'));
  cpSync(distPath('kernel/compiler.cjs'), join(parts, 'compiler.js.txt'));
  writeFileSync(join(parts, 'types.json'), JSON.stringify(typeTexts()));
  writeFileSync(join(parts, 'recipes.json'), JSON.stringify(catalogue.map(recipeCard)));
  await writePages(join(folder, 'reference'));
  const worker = readdirSync(parts).find((name) => /^kernel-worker-[A-Z0-9]{8}\.js$/.test(name));
  if (worker === undefined) throw new Error('the kernel for browsers is not built; run npm run build');
  const described: SiteParts = {
    files: notebooks,
    kernelWorker: `parts/${worker}`,
    kernelInfo: {
      ...kernelInfo,
      banner: `Joiner's Reckoner ${packageVersion}: TypeScript cells in a browser`,
    },
  };
  const manifest = readManifest(distPath('page'));
  writeFileSync(join(folder, 'index.html'), sitePage('home', manifest, described));
  writeFileSync(join(folder, 'notebook.html'), sitePage('notebook', manifest, described));
  writeFileSync(join(folder, 'site.webmanifest'), webManifest());
  const files = filesBelow(folder).filter(
    (file) => file !== 'service-worker.js' && !file.startsWith('reference/'),
  );
  const version = createHash('sha256');
  for (const file of files) version.update(file).update(readFileSync(join(folder, file)));
  writeFileSync(
    join(folder, 'service-worker.js'),
    serviceWorker(version.digest('hex').slice(0, 12), ['./', ...files]),
  );
}

/** The declarations of the package's public face, the standard library's and the index of names, by the path a cell's compiler knows them by. */
function typeTexts(): Record<string, string> {
  const dist = distPath('');
  const own = filesBelow(dist).filter(
    (file) => file.endsWith('.d.ts') && (file === 'index.d.ts' || typeFolders.test(file)),
  );
  const texts = Object.fromEntries(
    own.map((file) => [`/types/${file}`, readFileSync(join(dist, file), 'utf8')]),
  );
  for (const name of ['lib.d.ts', 'names.json'])
    texts[`/types/${name}`] = readFileSync(distPath(`kernel/${name}`), 'utf8');
  return texts;
}

/** Files below a folder, by their path from it, in order. */
function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

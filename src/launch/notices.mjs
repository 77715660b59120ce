// Writes dist/THIRD-PARTY-NOTICES.txt: the licence of every package whose code is bundled into dist/.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Folders under node_modules, such as `d3-array` or `markdown-it/node_modules/entities`, of the packages in an esbuild bundle. */
export function bundledPackages(metafile) {
  const used = new Set();
  for (const output of Object.values(metafile.outputs))
    for (const [path, { bytesInOutput }] of Object.entries(output.inputs)) {
      const found = /^.*?node_modules\/((?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)/.exec(path);
      if (found !== null && bytesInOutput > 0) used.add(found[1]);
    }
  return [...used].sort();
}

/** Files with the words of a licence or of a notice that goes with it. */
const legalFile = /^(licen[cs]e|notice|copying)/i;

export function writeNotices(root, packages) {
  const texts = new Map();
  for (const name of packages) {
    const folder = join(root, 'node_modules', name);
    if (!existsSync(join(folder, 'package.json'))) continue;
    const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const files = readdirSync(folder).filter((file) => legalFile.test(file));
    const words = files.map((file) => readFileSync(join(folder, file), 'utf8').trim());
    const licence =
      manifest.license ?? manifest.licenses?.map((l) => l.type).join(' OR ') ?? 'see its source';
    const author = typeof manifest.author === 'string' ? manifest.author : manifest.author?.name;
    texts.set(
      `${manifest.name} ${manifest.version}`,
      [`Licence: ${licence}`, ...(words.length > 0 ? words : author ? [`Author: ${author}`] : [])].join(
        '\n\n',
      ),
    );
  }
  const line = '-'.repeat(80);
  const body = [...texts]
    .sort(([a], [b]) => a.localeCompare(b, 'en'))
    .map(([name, text]) => `${line}\n${name}\n${text}\n`);
  writeFileSync(
    join(root, 'dist', 'THIRD-PARTY-NOTICES.txt'),
    `The files of this folder contain code of these packages.\n\n${body.join('\n')}`,
  );
  return texts.size;
}

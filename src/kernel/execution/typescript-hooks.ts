/** Module hooks by which Node loads the notebook's own .ts files; registered only when a cell imports one. */
import { pathToFileURL } from 'node:url';

/** The hooks as a module's URL. `from` is any file in whose name the compiler can be required. */
export function typescriptHooks(compilerFile: string, from: string): string {
  const source = `
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
let ts;
export async function resolve(specifier, context, next) {
  if (specifier.startsWith('.') && context.parentURL?.startsWith('file:')) {
    for (const tail of ['', '.ts', '/index.ts']) {
      const url = new URL(specifier.replace(/\\.js$/, tail ? '' : '.js') + tail, context.parentURL);
      if (url.pathname.endsWith('.ts') && existsSync(url)) return { url: url.href, format: 'module', shortCircuit: true };
    }
  }
  return next(specifier, context);
}
export async function load(url, context, next) {
  if (!new URL(url).pathname.endsWith('.ts')) return next(url, context);
  ts ??= createRequire(${JSON.stringify(pathToFileURL(from).href)})(${JSON.stringify(compilerFile)});
  const text = await readFile(fileURLToPath(url.split('?')[0]), 'utf8');
  const { outputText } = ts.transpileModule(text, { fileName: url, compilerOptions: { module: 99, target: 9, inlineSourceMap: true } });
  return { format: 'module', source: outputText, shortCircuit: true };
}`;
  return `data:text/javascript,${encodeURIComponent(source)}`;
}

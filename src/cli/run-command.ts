import { dirname, extname, resolve } from 'node:path';
import { readNotebook } from '../notebook/format/notebook-file.js';
import { runNotebook, RunError, type RunProgress } from '../notebook/run/run-notebook.js';
import { notebookEndings, saveNotebookAs } from '../notebook/export/export-notebook.js';
import { parametersOf, withParameters } from './notebook-parameters.js';
import { interruptSignal } from './recipe-arguments.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner run NOTEBOOK [-o FILE] [-p NAME=VALUE ...]`: progress on stderr; exit 1 when a cell fails, 130 when interrupted, and then nothing is written. */
export async function run(words: Words): Promise<number> {
  const [file, more] = words.plain;
  if (file === undefined || more !== undefined)
    throw new UsageError(`run: got ${words.plain.length} names, takes one notebook`);
  const output = words.values.get('output');
  // Before minutes of work, not after them.
  if (output !== undefined && !notebookEndings.includes(extname(output).toLowerCase()))
    throw new UsageError(
      `-o: got ${JSON.stringify(output.slice(0, 80))}, takes a name that ends in ${notebookEndings.join(', ')}`,
    );
  const parameters = parametersOf(words.lists.get('parameter') ?? []);
  const began = performance.now();
  try {
    const notebook = withParameters(await readNotebook(file), parameters, file);
    const ran = await runNotebook(notebook, {
      name: file,
      cwd: dirname(resolve(file)),
      signal: interruptSignal(),
      ...(words.flags.has('quiet') ? {} : { onProgress: tellProgress }),
    });
    if (output !== undefined) await saveNotebookAs(output, ran);
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    process.stdout.write(
      `${file}: every cell ran, ${seconds} s; ${output === undefined ? 'nothing was written (-o FILE writes)' : `written to ${output}`}\n`,
    );
    return 0;
  } catch (error) {
    if (!(error instanceof RunError)) throw error;
    process.stderr.write(`reckoner: ${error.message.replace(/\s*\n\s*/g, ' ')}\n`);
    return error.interrupted ? 130 : 1;
  }
}

function tellProgress(p: RunProgress): void {
  const line = `  cell ${p.cell} of ${p.cells}  ${p.line.slice(0, 60)}`;
  if (p.state === 'running') {
    if (process.stderr.isTTY) process.stderr.write(`${line}\r`);
  } else process.stderr.write(`${line}  ${p.state === 'done' ? `${p.seconds.toFixed(1)} s` : 'failed'}\n`);
}

import { extname } from 'node:path';
import { runNotebook, RunError, type RunProgress } from '../notebook/run/run-notebook.js';
import { notebookEndings, saveNotebookAs } from '../notebook/export/export-notebook.js';
import { optionsOf, UsageError } from './usage.js';

/** `reckoner run NOTEBOOK [-o FILE]`: progress on stderr; exit 1 when a cell fails, 130 when interrupted, and then nothing is written. */
export async function run(words: readonly string[]): Promise<number> {
  const { plain, values, flags } = optionsOf(words, { values: ['-o', '--output'], flags: ['--quiet'] });
  const [file, more] = plain;
  if (file === undefined || more !== undefined)
    throw new UsageError(`run: got ${plain.length} names, takes one notebook`);
  const output = values.get('-o') ?? values.get('--output');
  // Before minutes of work, not after them.
  if (output !== undefined && !notebookEndings.includes(extname(output).toLowerCase()))
    throw new UsageError(
      `-o: got ${JSON.stringify(output.slice(0, 80))}, takes a name that ends in ${notebookEndings.join(', ')}`,
    );
  const stop = new AbortController();
  const onInterrupt = (): void => stop.abort();
  process.once('SIGINT', onInterrupt);
  const began = performance.now();
  try {
    const notebook = await runNotebook(file, {
      signal: stop.signal,
      ...(flags.has('--quiet') ? {} : { onProgress: tellProgress }),
    });
    if (output !== undefined) await saveNotebookAs(output, notebook);
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    process.stdout.write(
      `${file}: every cell ran, ${seconds} s; ${output === undefined ? 'nothing was written (-o FILE writes)' : `written to ${output}`}\n`,
    );
    return 0;
  } catch (error) {
    if (!(error instanceof RunError)) throw error;
    process.stderr.write(`reckoner: ${error.message.replace(/\s*\n\s*/g, ' ')}\n`);
    return error.interrupted ? 130 : 1;
  } finally {
    process.off('SIGINT', onInterrupt);
  }
}

function tellProgress(p: RunProgress): void {
  const line = `  cell ${p.cell} of ${p.cells}  ${p.line.slice(0, 60)}`;
  if (p.state === 'running') {
    if (process.stderr.isTTY) process.stderr.write(`${line}\r`);
  } else process.stderr.write(`${line}  ${p.state === 'done' ? `${p.seconds.toFixed(1)} s` : 'failed'}\n`);
}

import { basename, dirname, extname, join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { writeFileAtomically } from '../notes/atomic-write.js';
import { handout } from '../notebook/handout/handout.js';
import { runNotebook, RunError } from '../notebook/run/run-notebook.js';
import { interruptSignal } from './recipe-arguments.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner handout NOTEBOOK [-o FILE.html] [--answers FILE.html]`: runs the notebook and writes the page for the class. */
export async function handoutCommand(words: Words): Promise<number> {
  const { file, output, answers } = filesOf(words);
  const cwd = dirname(resolve(file));
  try {
    const notebook = await runNotebook(file, {
      signal: interruptSignal(),
      onProgress: (p) =>
        p.state === 'done' &&
        process.stderr.write(`  cell ${p.cell} of ${p.cells}${process.stderr.isTTY ? '\r\u001b[K' : '\n'}`),
    });
    const made = await handout(notebook, { cwd });
    await writeFileAtomically(output, made.page);
    if (answers !== undefined) await writeFileAtomically(answers, made.answers);
    const size = Math.ceil(gzipSync(made.page).length / 1000);
    process.stdout.write(
      `${output}: ${made.alive} results alive, ${made.exercises} exercise${made.exercises === 1 ? '' : 's'}, ${size} kB gzipped${answers === undefined ? '' : `; answers in ${answers}`}\n`,
    );
    return 0;
  } catch (error) {
    if (!(error instanceof RunError)) throw error;
    process.stderr.write(`reckoner: ${error.message.replace(/\s*\n\s*/g, ' ')}\n`);
    return error.interrupted ? 130 : 1;
  }
}

/** The notebook, and the files to write. @throws UsageError where a name does not end in .html, or both are one */
function filesOf({ plain, values }: Words): { file: string; output: string; answers: string | undefined } {
  const [file, more] = plain;
  if (file === undefined || more !== undefined)
    throw new UsageError(`handout: got ${plain.length} names, takes one notebook`);
  const output = values.get('output') ?? join('.', `${basename(file, extname(file))}-handout.html`);
  const answers = values.get('answers');
  for (const [option, name] of [
    ['-o', output],
    ['--answers', answers],
  ] as const)
    if (name !== undefined && extname(name).toLowerCase() !== '.html')
      throw new UsageError(
        `${option}: got ${JSON.stringify(name.slice(0, 80))}, takes a name that ends in .html`,
      );
  if (answers !== undefined && resolve(answers) === resolve(output))
    throw new UsageError('--answers: is the same file as the handout; takes another name');
  return { file, output, answers };
}

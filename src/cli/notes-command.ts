import { recipeCalled } from '../recipes/former-names.js';
import { recomputeNotes } from '../notes/recompute.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner notes redo FILE [--write] [--json]`: says what changed; the file is only written with --write. Exit 1 when a result could not be recomputed. */
export async function notes({ plain, flags }: Words): Promise<number> {
  const [what, file, more] = plain;
  if (what !== 'redo' || file === undefined || more !== undefined)
    throw new UsageError(`notes: got ${JSON.stringify(plain.join(' ').slice(0, 80))}, takes redo FILE`);
  const redone = await recomputeNotes(file, recipeCalled);
  const { title, versions, results, changes } = redone;
  process.stdout.write(
    flags.has('json')
      ? `${JSON.stringify({ file, title, versions, results, changes }, null, 1)}\n`
      : `${redone.toText()}\n`,
  );
  const failed = changes.some((c) => c.field === '');
  if (flags.has('write')) {
    if (failed)
      process.stderr.write('reckoner: some results could not be recomputed, so the note was left as it is\n');
    else await redone.notes.save(file);
  }
  return failed ? 1 : 0;
}

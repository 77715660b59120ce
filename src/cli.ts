// The command `reckoner`: reads its words, hands each command its own, and says what is wrong in one line.
import { Refusal } from './quantities/refusal.js';
import { help } from './command/help.js';
import { UsageError } from './command/usage.js';

type Command = (words: readonly string[]) => Promise<number>;

// Each command loads only what it needs, so that reckoning one recipe stays well under half a second.
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  list: async () => (await import('./command/list.js')).list,
  show: async () => (await import('./command/show.js')).show,
  work: async () => (await import('./command/work.js')).work,
  kernel: async () => (await import('./command/kernel.js')).kernel,
  run: async () => (await import('./command/run.js')).run,
  notes: async () => (await import('./command/notes.js')).notes,
  handout: async () => (await import('./command/handout.js')).handoutCommand,
  sweep: async () => (await import('./command/explore.js')).sweepCommand,
  spread: async () => (await import('./command/explore.js')).spreadCommand,
  find: async () => (await import('./command/explore.js')).findCommand,
};

async function main(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    process.stdout.write(help);
    return name === undefined ? 2 : 0;
  }
  if (name === '--version') {
    const { version } = await import('./command/version.js');
    process.stdout.write(`${version()}\n`);
    return 0;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command)
    throw new UsageError(
      `no command ${JSON.stringify(name.slice(0, 60))}; takes ${Object.keys(commands).join(', ')}`,
    );
  return (await command())(rest);
}

process.stdout.on('error', (error: { code?: string }) => {
  // A reader that has seen enough (head, less) closes the pipe; that is no fault.
  if (error.code === 'EPIPE') process.exit(0);
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  // By name, so that rooms a command does not need are not loaded to know their errors.
  const known =
    error instanceof Refusal ||
    ['UsageError', 'NotebookError', 'FileError', 'ChartError', 'Stopped'].includes((error as Error).name);
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`reckoner: ${message.replace(/\s*\n\s*/g, ' ')}\n`);
  if (!known && process.env['RECKONER_TRACE']) process.stderr.write(`${(error as Error).stack ?? ''}\n`);
  process.exitCode = known ? 2 : 1;
}

// The command `reckoner`: reads its words, hands each command its own, and says what is wrong in one line.
import { InputError } from '../units/input-error.js';
import { help } from './help.js';
import { UsageError } from './usage.js';

type Command = (words: readonly string[]) => Promise<number>;

// Each command loads only what it needs, so that reckoning one recipe stays well under half a second.
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  list: async () => (await import('./list-command.js')).list,
  show: async () => (await import('./show-command.js')).show,
  work: async () => (await import('./work-command.js')).work,
  kernel: async () => (await import('./kernel-command.js')).kernel,
  run: async () => (await import('./run-command.js')).run,
  notes: async () => (await import('./notes-command.js')).notes,
  handout: async () => (await import('./handout-command.js')).handoutCommand,
  sweep: async () => (await import('./explore-command.js')).sweepCommand,
  uncertain: async () => (await import('./explore-command.js')).uncertainCommand,
  solve: async () => (await import('./explore-command.js')).solveCommand,
};

async function main(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    process.stdout.write(help);
    return name === undefined ? 2 : 0;
  }
  if (name === '--version') {
    const { version } = await import('./version.js');
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
    error instanceof InputError ||
    ['UsageError', 'NotebookError', 'FileError', 'ChartError', 'AbortError'].includes((error as Error).name);
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`reckoner: ${message.replace(/\s*\n\s*/g, ' ')}\n`);
  if (!known && process.env['RECKONER_TRACE']) process.stderr.write(`${(error as Error).stack ?? ''}\n`);
  process.exitCode = known ? 2 : 1;
}

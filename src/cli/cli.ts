// The command `reckoner`: reads its words, hands each command its own, and says what is wrong in one line.
import { inUnits } from '../units/unit-system.js';
import { InputError, nearest } from '../units/input-error.js';
import { commandInfos, formerCommands } from './commands.js';
import { commandHelp, generalHelp } from './help.js';
import { readWords, UsageError, type CommandInfo, type Words } from './usage.js';

type Command = (words: Words) => number | Promise<number>;

// Each command loads only what it needs, so that running one recipe stays well under half a second.
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  shop: async () => (await import('./shop-command.js')).shopCommand,
  list: async () => (await import('./list-command.js')).list,
  show: async () => (await import('./show-command.js')).show,
  work: async () => (await import('./work-command.js')).work,
  kernel: async () => (await import('./kernel-command.js')).kernel,
  run: async () => (await import('./run-command.js')).run,
  notes: async () => (await import('./notes-command.js')).notes,
  piece: async () => (await import('./piece-command.js')).pieceCommand,
  site: async () => (await import('./site-command.js')).siteCommand,
  handout: async () => (await import('./handout-command.js')).handoutCommand,
  sweep: async () => (await import('./explore-command.js')).sweepCommand,
  uncertain: async () => (await import('./explore-command.js')).uncertainCommand,
  solve: async () => (await import('./explore-command.js')).solveCommand,
  schema: async () => (await import('./schema-command.js')).schema,
  completion: async () => (await import('./completion-command.js')).completion,
};

const isHelp = (word: string | undefined): boolean => word === '--help' || word === '-h';

async function main(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || isHelp(name) || (name === 'help' && rest.length === 0)) {
    process.stdout.write(generalHelp());
    return name === undefined ? 2 : 0;
  }
  if (name === '--version') {
    const { version } = await import('./version.js');
    process.stdout.write(`${version()}\n`);
    return 0;
  }
  if (name === 'help') return main([rest[0] as string, '--help']);
  const info = commandCalled(name);
  // Words of its own may follow; a value that is called --help would be one of an option.
  if (rest.some(isHelp)) {
    process.stdout.write(commandHelp(info));
    return 0;
  }
  const run = await (commands[info.name] as () => Promise<Command>)();
  return run(readWords(info, rest));
}

/** The command called `name`, which may be a former name. @throws UsageError with the nearest name */
function commandCalled(name: string): CommandInfo {
  const former = Object.hasOwn(formerCommands, name) ? formerCommands[name] : undefined;
  if (former)
    process.stderr.write(
      `reckoner: ${name} is called ${former} since version 0.2; the former name goes in version 0.3\n`,
    );
  const info = commandInfos.find((c) => c.name === (former ?? name));
  if (info) return info;
  const names = commandInfos.map((c) => c.name);
  const near = nearest(name, names);
  throw new UsageError(
    `no command ${JSON.stringify(name.slice(0, 60))}${near ? `; did you mean ${near}?` : `; takes ${names.join(', ')}`}`,
  );
}

process.stdout.on('error', (error: { code?: string; message: string }) => {
  // A reader that has seen enough (head, less) closes the pipe; that is no failure.
  if (error.code === 'EPIPE') process.exit(0);
  process.stderr.write(`reckoner: standard output could not be written: ${error.message}\n`);
  process.exit(1);
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  // By name, so that folders a command does not need are not loaded to know their errors.
  const known =
    error instanceof InputError ||
    ['UsageError', 'NotebookError', 'FileError', 'ChartError', 'AbortError'].includes((error as Error).name);
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(`reckoner: ${inUnits(message).replace(/\s*\n\s*/g, ' ')}\n`);
  if (!known && process.env['RECKONER_TRACE']) process.stderr.write(`${(error as Error).stack ?? ''}\n`);
  process.exitCode = known ? 2 : 1;
}

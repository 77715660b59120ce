import { commandInfos } from './commands.js';
import type { CommandInfo } from './usage.js';

const exits =
  'Exit: 0 done, 1 failed, 2 wrong words or bad input (one line says which field, what it got, what it takes).';

const values = `A value is text with a unit: width='900 mm', from='8 %', air as from='{"temperature":"21 degC","humidity":"50 %"}'
or from.temperature='21 degC' from.humidity='50 %'. A list is written lengths='1.2 m, 0.9 m'; a table as JSON or as
the name of a CSV file; named parts as parts='oil:2, spirit:1'.`;

/** Two columns, the second of them aligned. */
function columns(rows: readonly (readonly [string, string])[]): string[] {
  const wide = Math.max(...rows.map(([a]) => a.length));
  return rows.map(([a, b]) => `  ${a.padEnd(wide)}  ${b}`);
}

/** The help of `reckoner` as a whole. */
export function generalHelp(): string {
  return [
    'reckoner: woodworking mathematics with units, workings, sources and cautions',
    '',
    ...columns(commandInfos.map((c) => [`${c.name} ${c.words}`, firstSentence(c.help)] as const)),
    ...columns([['--version', ''] as const]).map((line) => line.trimEnd()),
    '',
    'reckoner COMMAND --help tells its options.',
    '',
    values,
    exits,
    '',
  ].join('\n');
}

/** The help of one command. */
export function commandHelp(c: CommandInfo): string {
  const options = Object.entries(c.options).map(([name, o]) => {
    const short = o.short ? `-${o.short}, ` : '';
    return [`${short}--${name}${o.value ? ` ${o.value}` : ''}`, o.help] as const;
  });
  return [
    `reckoner ${c.name} ${c.words}`,
    '',
    c.help,
    '',
    ...columns([...options, ['-h, --help', 'this text'] as const]),
    '',
    ...(c.words.includes('field') ? [values] : []),
    c.exits ? exits.replace('1 failed', c.exits) : exits,
    '',
  ].join('\n');
}

const firstSentence = (text: string): string => /^.*?[.:](?= |$)/.exec(text)?.[0].slice(0, -1) ?? text;

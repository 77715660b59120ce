import { catalogue } from '../recipes/catalogue.js';
import { commandInfos } from './commands.js';
import { UsageError, type CommandInfo, type Words } from './usage.js';

/** `reckoner completion bash|zsh|fish`: a script for the shell's start file; it runs nothing of reckoner while completing. */
export function completion({ plain }: Words): number {
  const [shell, more] = plain;
  const script = more === undefined && shell !== undefined ? scripts[shell] : undefined;
  if (!script)
    throw new UsageError(
      `completion: got ${JSON.stringify(plain.join(' ').slice(0, 60))}, takes one of ${Object.keys(scripts).join(', ')}`,
    );
  process.stdout.write(script());
  return 0;
}

const optionNames = (c: CommandInfo): string[] => [
  ...Object.entries(c.options).flatMap(([name, o]) => [`--${name}`, ...(o.short ? [`-${o.short}`] : [])]),
  '--help',
];
const names = (): string => catalogue.map((r) => r.name).join(' ');
const takingRecipe = (): string[] => commandInfos.filter((c) => c.completes === 'recipe').map((c) => c.name);
const fieldCases = (): string[] =>
  catalogue.map(
    (r) =>
      `    ${r.name}) fields="${Object.keys(r.inputs)
        .map((n) => `${n}=`)
        .join(' ')}" ;;`,
  );
const wordsOf = (c: CommandInfo): string => (Array.isArray(c.completes) ? c.completes.join(' ') : '');

/** The part that bash and zsh have in common: sets `candidates` and `files` from the command, the recipe and the word. */
const shared = (): string[] => [
  '  candidates="" files="" fields=""',
  '  case "$recipe" in',
  ...fieldCases(),
  '  esac',
  '  case "$command" in',
  ...commandInfos.map((c) => {
    const first = c.completes === 'recipe' ? '$recipes' : c.completes === 'notebook' ? '' : wordsOf(c);
    const files = c.completes === 'notebook' || c.name === 'notes' ? ' files=1' : '';
    return `    ${c.name}) options="${optionNames(c).join(' ')}" first="${first}"${files} ;;`;
  }),
  `    *) options="--help --version" first="${commandInfos.map((c) => c.name).join(' ')}" ;;`,
  '  esac',
  '  case "$word" in',
  '    -*) candidates="$options" ;;',
  '    *) if [ "$place" -le 2 ] || [ -z "$command" ]; then candidates="$first"; else candidates="$fields"; fi ;;',
  '  esac',
];

const scripts: Readonly<Record<string, () => string>> = {
  bash: () =>
    [
      '# Completion of reckoner for bash: source <(reckoner completion bash)',
      '_reckoner() {',
      '  local word="${COMP_WORDS[COMP_CWORD]}" place=$COMP_CWORD command="" recipe=""',
      '  local candidates files fields options first',
      `  local recipes="${names()}"`,
      '  [ "$COMP_CWORD" -gt 1 ] && command="${COMP_WORDS[1]}"',
      '  [ "$COMP_CWORD" -gt 2 ] && recipe="${COMP_WORDS[2]}"',
      ...shared(),
      '  COMPREPLY=($(compgen -W "$candidates" -- "$word"))',
      '  [ -n "$files" ] && COMPREPLY+=($(compgen -f -- "$word"))',
      '  case "${COMPREPLY[0]}" in *=) compopt -o nospace ;; esac',
      '}',
      'complete -F _reckoner reckoner',
      '',
    ].join('\n'),
  zsh: () =>
    [
      '#compdef reckoner',
      '# Completion of reckoner for zsh: source <(reckoner completion zsh)',
      '_reckoner() {',
      '  local word="${words[CURRENT]}" place=$((CURRENT - 1)) command="" recipe=""',
      '  local candidates files fields options first',
      `  local recipes="${names()}"`,
      '  [ "$CURRENT" -gt 2 ] && command="${words[2]}"',
      '  [ "$CURRENT" -gt 3 ] && recipe="${words[3]}"',
      ...shared(),
      '  if [[ "$candidates" == *= ]]; then compadd -S "" -- ${=candidates}; else compadd -- ${=candidates}; fi',
      '  [ -n "$files" ] && _files',
      '  return 0',
      '}',
      'compdef _reckoner reckoner',
      '',
    ].join('\n'),
  fish: () =>
    [
      '# Completion of reckoner for fish: reckoner completion fish | source',
      'complete -c reckoner -f',
      ...commandInfos.map(
        (c) => `complete -c reckoner -n __fish_use_subcommand -a ${c.name} -d ${quoted(c.help)}`,
      ),
      ...commandInfos.flatMap((c) =>
        Object.entries(c.options).map(
          ([name, o]) =>
            `complete -c reckoner -n '__fish_seen_subcommand_from ${c.name}' -l ${name}${o.short ? ` -s ${o.short}` : ''}${o.value ? ' -r' : ''} -d ${quoted(o.help)}`,
        ),
      ),
      `complete -c reckoner -n '__fish_seen_subcommand_from ${takingRecipe().join(' ')}; and test (count (commandline -opc)) -eq 2' -a '${names()}'`,
      ...commandInfos.flatMap((c) =>
        Array.isArray(c.completes)
          ? [`complete -c reckoner -n '__fish_seen_subcommand_from ${c.name}' -a '${wordsOf(c)}'`]
          : c.completes === 'notebook'
            ? [`complete -c reckoner -n '__fish_seen_subcommand_from ${c.name}' -F`]
            : [],
      ),
      ...catalogue.map(
        (r) =>
          `complete -c reckoner -n '__fish_seen_subcommand_from ${r.name}' -a '${Object.keys(r.inputs)
            .map((n) => `${n}=`)
            .join(' ')}'`,
      ),
      '',
    ].join('\n'),
};

const quoted = (text: string): string => `'${text.replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;

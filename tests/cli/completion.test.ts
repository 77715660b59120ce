// The completion scripts, run by the shells themselves; a shell that is not installed has its script checked as text.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it, vi } from 'vitest';
import { completion } from '../../src/cli/completion-command.js';
import { UsageError } from '../../src/cli/usage.js';

const folder = mkdtempSync(join(tmpdir(), 'reckoner-completion-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const words = (...plain: string[]) => ({
  plain,
  flags: new Set<string>(),
  values: new Map(),
  lists: new Map(),
});

function script(shell: string): string {
  let text = '';
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((part) => {
    text += String(part);
    return true;
  });
  try {
    expect(completion(words(shell))).toBe(0);
  } finally {
    write.mockRestore();
  }
  return text;
}

/** What the shell offers for a line, or undefined where it is not installed. */
function offers(shell: string, program: (file: string) => string): string[] | undefined {
  const file = join(folder, `completion.${shell}`);
  writeFileSync(file, script(shell));
  const options = shell === 'fish' ? ['--no-config'] : shell === 'zsh' ? ['-f'] : ['--norc'];
  const run = spawnSync(shell, [...options, '-c', program(file)], { encoding: 'utf8' });
  if (run.error) return undefined;
  expect(run.stderr).toBe('');
  return run.stdout.split(/\s+/).filter((word) => word !== '');
}

/** Commands, recipes and fields stand in the script, and its blocks are closed: all that can be said without the shell. */
function lookedAt(shell: string): void {
  const text = script(shell);
  for (const part of ['movementAcross', 'width=', 'uncertain', '--json'])
    expect(text).toContain(part.replace('--', shell === 'fish' ? '' : '--'));
  expect(text.match(/^ *case /gm)?.length).toBe(text.match(/^ *esac/gm)?.length);
}

const lines: readonly (readonly [line: readonly string[], offered: string])[] = [
  [['reckoner', 'unc'], 'uncertain'],
  [['reckoner', 'work', 'movementA'], 'movementAcross'],
  [['reckoner', 'work', 'movementAcross', 'wid'], 'width='],
  [['reckoner', 'completion', 'z'], 'zsh'],
];

it.each(lines)('bash: %j offers %s', (line, offered) => {
  const quoted = line.map((word) => `'${word}'`).join(' ');
  const got = offers(
    'bash',
    (file) =>
      `compopt() { :; }; source ${file}; COMP_WORDS=(${quoted}); COMP_CWORD=${line.length - 1}; _reckoner; echo "\${COMPREPLY[@]}"`,
  );
  expect(got).toEqual([offered]);
});

it.each(lines)('zsh: %j offers %s', (line, offered) => {
  const quoted = line.map((word) => `'${word}'`).join(' ');
  const got = offers(
    'zsh',
    (file) =>
      `compdef() { : }; _files() { : }; compadd() { print -rl -- "$@" }; source ${file}; words=(${quoted}); CURRENT=${line.length}; _reckoner`,
  );
  if (got === undefined) lookedAt('zsh');
  // The shell itself filters by what is typed.
  else expect(got.filter((word) => word.startsWith(line.at(-1)!))).toEqual([offered]);
});

it.each(lines)('fish: %j offers %s', (line, offered) => {
  const got = offers(
    'fish',
    (file) => `source ${file}; complete -C '${line.join(' ')}' | string replace -r '\\t.*' ''`,
  );
  if (got === undefined) lookedAt('fish');
  else expect(got).toEqual([offered]);
});

it('of another shell there is none', () => {
  expect(() => completion(words('tcsh'))).toThrow(UsageError);
});

import type { CommandInfo, OptionInfo } from './usage.js';

const json: OptionInfo = { help: 'print JSON; its form is printed by "reckoner schema COMMAND"' };
const csv: OptionInfo = { help: 'print CSV, one unit a column' };
const output: OptionInfo = {
  value: 'NAME',
  help: 'the output looked at; default the first that is a number',
};
const outFile: OptionInfo = { value: 'FILE', short: 'o', help: 'where to write' };

/** Every command: from this list come help, suggestions and completion. */
export const commandInfos: readonly CommandInfo[] = [
  {
    name: 'list',
    words: '[WORD]',
    help: 'The recipes, by topic; only those with WORD in name, title or description.',
    options: { json },
  },
  {
    name: 'shop',
    words: '',
    help: 'What is saved under My shop, which forms and notebooks read by shop(), and its file.',
    options: { json },
  },
  {
    name: 'show',
    words: 'RECIPE or TERM',
    help: 'What a recipe takes and gives, its formulas, sources and an example; or what a word of the trade means.',
    options: {
      json: { help: 'print the JSON Schema of its inputs and outputs' },
      markdown: { help: 'print the reference page as Markdown' },
      pages: {
        value: 'FOLDER',
        help: 'write the reference pages of all recipes, with an index, into a folder',
      },
    },
    completes: 'recipe',
  },
  {
    name: 'work',
    words: 'RECIPE field=value ...',
    help: 'Runs a recipe and prints the result with its workings, cautions and sources.',
    options: {
      json,
      csv,
      markdown: { help: 'print Markdown' },
      units: { value: 'UNITS', help: 'metric, inches or both; default those of My shop, else both' },
    },
    completes: 'recipe',
  },
  {
    name: 'sweep',
    words: 'RECIPE field=A..B ...',
    help: 'Runs a recipe over ranges of its inputs.',
    options: { steps: { value: 'N', help: 'values a range is cut into' }, output, json, csv },
    completes: 'recipe',
  },
  {
    name: 'uncertain',
    words: "RECIPE field='A +- B' ...",
    help: 'What uncertain inputs do to the answer. A +- B: normal, 95 % within the bounds; A .. B: uniform.',
    options: {
      samples: { value: 'N', help: 'samples, 100 to 5000000; default 65536' },
      seed: { value: 'N', help: 'same seed, same samples; default 1' },
      output,
      'at-most': { value: 'VALUE', help: 'the chance of at most this' },
      'at-least': { value: 'VALUE', help: 'the chance of at least this' },
      correlated: {
        value: 'A,B[:R]',
        multiple: true,
        help: 'inputs with a common cause, correlated by R (default 1)',
      },
      json,
    },
    completes: 'recipe',
  },
  {
    name: 'solve',
    words: 'RECIPE field OUTPUT=VALUE field=value ...',
    help: 'The input that makes an output meet a target.',
    options: {
      from: { value: 'A', help: 'lower end of the range searched' },
      to: { value: 'B', help: 'upper end of the range searched' },
      json,
    },
    completes: 'recipe',
    exits: '1 where nothing in the range meets the target',
  },
  {
    name: 'run',
    words: 'NOTEBOOK',
    help: 'Runs every cell of a notebook; without -o nothing is written.',
    options: {
      output: { ...outFile, help: 'where to write; the name ends in .ipynb, .html or .md' },
      parameter: {
        value: 'NAME=VALUE',
        short: 'p',
        multiple: true,
        help: 'sets a name that the cell tagged "parameters" declares',
      },
      quiet: { help: 'no progress' },
    },
    completes: 'notebook',
    exits: '1 where a cell fails, 130 where it is interrupted',
  },
  {
    name: 'notes',
    words: 'redo FILE',
    help: 'Recomputes a build note and says what changed.',
    options: { write: { help: 'write the note anew' }, json },
    completes: ['redo'],
    exits: '1 where a result could not be recomputed',
  },
  {
    name: 'piece',
    words: 'check|show|note|cards|bill|handout|cuts|templates FILE.piece.json',
    help: 'Checks a described piece over every question, or writes what is made from it.',
    options: {
      output: { ...outFile, help: 'where to write; default beside the description, ending in .html' },
      quick: { help: 'without the searches for the top and the frame' },
      json: { help: 'check: print every answer as JSON' },
    },
    completes: ['check', 'show', 'note', 'cards', 'bill', 'handout', 'cuts', 'templates'],
    exits: '1 where a safety question fails',
  },
  {
    name: 'handout',
    words: 'NOTEBOOK',
    help: 'Writes a page for a class in which the recipes are alive.',
    options: {
      output: { ...outFile, help: 'where to write; the name ends in .html' },
      answers: { value: 'FILE', help: 'a second page with the answers' },
    },
    completes: 'notebook',
    exits: '1 where a cell fails, 130 where it is interrupted',
  },
  {
    name: 'site',
    words: 'DIR',
    help: 'Writes the whole notebook as static files: it works in a browser without a server of ours, offline too.',
    options: {},
  },
  {
    name: 'kernel',
    words: 'install|uninstall',
    help: 'Makes the TypeScript kernel known to Jupyter, or undoes it.',
    options: {
      prefix: { value: 'DIR', help: 'install below this folder instead of for the user' },
      user: { help: 'install for the user (the default)' },
    },
    completes: ['install', 'uninstall'],
  },
  {
    name: 'schema',
    words: 'COMMAND',
    help: 'The JSON Schema of what a command prints with --json; of piece, that of a description.',
    options: {},
    completes: ['list', 'work', 'sweep', 'uncertain', 'solve', 'notes', 'piece'],
  },
  {
    name: 'completion',
    words: 'bash|zsh|fish',
    help: 'A script that completes commands, recipes and fields: source <(reckoner completion bash).',
    options: {},
    completes: ['bash', 'zsh', 'fish'],
  },
];

/** Former names of commands, which answer for one version. */
export const formerCommands: Readonly<Record<string, string>> = { spread: 'uncertain', find: 'solve' };

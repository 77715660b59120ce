// What cells do wherever they run: the same cases are run by Node's session and by the one of a browser's worker.

export interface Expected {
  /** Text of the result. */
  result?: string;
  /** Text that was printed. */
  printed?: string;
  /** A part of the error, and where in the cell it is. */
  error?: string;
  at?: [line: number, column: number];
  /** A part of an output by media type. */
  shows?: [type: string, part: string];
}

export interface ConformanceCase {
  name: string;
  cells: [code: string, expected: Expected][];
}

export const conformanceCases: ConformanceCase[] = [
  {
    name: 'a function sees a variable that a later cell sets or declares anew',
    cells: [
      ['let a = 18; const f = () => a * 2', {}],
      ['a = 25; f()', { result: '50' }],
      ['let a = 2; f()', { result: '4' }],
    ],
  },
  {
    name: 'types are checked first, and nothing of a wrong cell runs',
    cells: [
      [
        "console.log('ran'); const wrong: number = 'text'",
        { error: "Type 'string' is not assignable to type 'number'", at: [1, 27], printed: '' },
      ],
      ['wrong', { error: "Cannot find name 'wrong'" }],
      ['interface Board { length: number }\ntype Side = "left" | "right"', {}],
      [
        'const board: Board = { length: 1 }; const side: Side = "top"',
        { error: "not assignable to type 'Side'", at: [1, 43] },
      ],
      ['a!.b', { error: "Cannot find name 'a'" }],
    ],
  },
  {
    name: 'a cell that fails keeps what it reached and gives back the rest',
    cells: [
      ["let early = 'old', late = 'old'", {}],
      ["let early = 'new'; throw new Error('stop'); let late = 'new'", { error: 'stop', at: [1, 26] }],
      ['`${early} ${late}`', { result: "'new old'" }],
    ],
  },
  {
    name: 'an error names the place in the cell, also in a function of an earlier one',
    cells: [
      [
        'const cut = (mm: number): number => {\n  if (mm < 0) throw new RangeError("too short");\n  return mm;\n};',
        {},
      ],
      ['\n\ncut(-1)', { error: 'too short', at: [2, 21] }],
    ],
  },
  {
    name: 'await stands anywhere, loops over what is awaited too',
    cells: [
      ['const later = await Promise.resolve(5); later', { result: '5' }],
      ['let sum = 0; for await (const n of [1, Promise.resolve(2)]) sum += n; sum', { result: '3' }],
      ['await Promise.reject(new Error("not dry"))', { error: 'not dry' }],
    ],
  },
  {
    name: 'classes, enums, patterns and functions are those of the newest cell',
    cells: [
      ['class Box<T> { constructor(readonly held: T) {} }; enum Wood { oak, ash = 4 }', {}],
      [
        'const { p, q: [r = 3] } = { p: 1, q: [] as number[] }; [new Box(p).held, Wood.ash, r]',
        { result: '[ 1, 4, 3 ]' },
      ],
      ['function one() { return two() }\nfunction two() { return 2 }', {}],
      ['function two() { return 22 } one()', { result: '22' }],
    ],
  },
  {
    name: 'values are printed as Node prints them',
    cells: [
      [
        "[1, 'two', { three: [3] }, null, undefined, new Map([['a', 1]])]",
        { result: "[ 1, 'two', { three: [ 3 ] }, null, undefined, Map(1) { 'a' => 1 } ]" },
      ],
      ["console.log('a', 1, { b: 2 }); console.error('bad')", { printed: 'a 1 { b: 2 }\nbad\n' }],
      ['{ width: 600 }', { result: '{ width: 600 }' }],
      ['void 0', {}],
    ],
  },
  {
    name: 'what a cell displays is in order, its own markup and the last value too',
    cells: [
      [
        'display(1); console.log("between"); display(html`<b>${"<"}</b>`)',
        { printed: 'between\n', shows: ['text/html', '<b>&lt;</b>'] },
      ],
      ['6 * 7', { result: '42' }],
      ['_ + 1', { result: '43' }],
      ['md`**${1 + 1}**`', { shows: ['text/markdown', '**2**'] }],
    ],
  },
  {
    name: 'an import of what is not there says so',
    cells: [["import x from 'no-such-package'", { error: "import 'no-such-package'", at: [1, 15] }]],
  },
  {
    name: 'recent functions of the language are there and typed',
    cells: [
      ["Object.groupBy([1, 2, 3], (n) => (n > 1 ? 'many' : 'one')).many!.length", { result: '2' }],
      ['[3, 1].toSorted().concat([1, undefined].filter((x) => x !== undefined))', { result: '[ 1, 3, 1 ]' }],
    ],
  },
];

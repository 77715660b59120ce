/** Notebooks as other programs write them, by hand, for reading tests. Format 4.5 unless the name says otherwise. */
export const full = {
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {
    kernelspec: { name: 'reckoner', display_name: 'Reckoner (TypeScript)' },
    language_info: {
      name: 'typescript',
      file_extension: '.ts',
      mimetype: 'text/x-typescript',
      codemirror_mode: { name: 'javascript' },
    },
    title: 'A shelf',
    authors: [{ name: 'A. Maker' }],
  },
  cells: [
    {
      cell_type: 'markdown',
      id: 'top-1',
      metadata: { tags: ['intro'] },
      source: ['# A shelf\n', '\n', 'How wide?'],
      attachments: { 'a.png': { 'image/png': 'iVBORw0KGgo=' } },
    },
    {
      cell_type: 'code',
      id: 'b_2',
      metadata: { collapsed: false, scrolled: 'auto', jupyter: { source_hidden: true } },
      execution_count: 1,
      source: 'const width = 300;\nwidth * 2',
      outputs: [
        { output_type: 'stream', name: 'stdout', text: ['one\n', 'two\n'] },
        {
          output_type: 'execute_result',
          execution_count: 1,
          metadata: {},
          data: { 'text/plain': ['600'], 'application/json': { a: [1, null] } },
        },
      ],
    },
    {
      cell_type: 'code',
      id: 'c3',
      metadata: {},
      execution_count: null,
      source: [],
      outputs: [
        {
          output_type: 'display_data',
          metadata: { 'image/png': { width: 40 } },
          data: { 'image/png': 'iVBORw0KGgo=', 'text/html': '<b>x</b>' },
        },
        {
          output_type: 'error',
          ename: 'RangeError',
          evalue: 'no',
          traceback: ['RangeError: no', '  at cell 3'],
        },
      ],
    },
    { cell_type: 'raw', id: 'd4', metadata: { format: 'text/plain' }, source: 'as it is' },
  ],
};

/** The same as an older program left it: format 4.`minor`, no ids on cells. */
export function older(minor: number): unknown {
  const copy = structuredClone(full) as { nbformat_minor: number; cells: { id?: string }[] };
  copy.nbformat_minor = minor;
  for (const cell of copy.cells) delete cell.id;
  return copy;
}

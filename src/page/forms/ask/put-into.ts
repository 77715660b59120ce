import { ask } from '../../dialog.js';
import { el } from '../../element.js';
import { fileName } from '../../file-upload.js';
import { contentsAddress, server, type FileModel } from '../../server-api.js';

interface Listed {
  readonly notebooks: readonly { readonly path: string; readonly title: string; readonly number?: string }[];
}

interface NotebookContent {
  readonly cells: readonly Readonly<Record<string, unknown>>[];
  readonly metadata: Readonly<Record<string, unknown>>;
}

const lastKey = 'reckoner-last-notebook';

/** Asks which notebook, and writes the cell at its end. Gives the notebook's path; undefined where it was closed. */
export async function putIntoNotebook(source: string): Promise<string | undefined> {
  const { notebooks } = await server.get<Listed>('/reckoner/notebooks');
  const own = notebooks.filter(({ number }) => number === undefined);
  const last = localStorage.getItem(lastKey) ?? '';
  const select = el(
    'select',
    { id: 'put-into' },
    ...own.map(({ path }) => el('option', { value: path }, path.replace(/\.ipynb$/, ''))),
    el('option', { value: '' }, 'A new notebook'),
  );
  select.value = own.some(({ path }) => path === last) ? last : (own[0]?.path ?? '');
  const name = el('input', { type: 'text', value: 'my bench', id: 'put-name', spellcheck: 'false' });
  const nameLine = el(
    'label',
    { class: 'line', for: 'put-name', hidden: select.value !== '' },
    'Its name',
    name,
  );
  select.addEventListener('change', () => (nameLine.hidden = select.value !== ''));
  const answer = await ask({
    title: 'Put into the notebook',
    text: [el('label', { class: 'line', for: 'put-into' }, 'Notebook', select), nameLine],
    choices: [
      { value: 'put', words: 'Put it in', first: true },
      { value: 'no', words: 'Leave it' },
    ],
  });
  if (answer !== 'put') return undefined;
  const path = select.value === '' ? await makeNotebook(name.value) : select.value;
  await appendCell(path, source);
  localStorage.setItem(lastKey, path);
  return path;
}

async function makeNotebook(name: string): Promise<string> {
  const made = await server.post<FileModel>('/api/contents', {
    type: 'notebook',
    name: fileName(name.trim() || 'my bench'),
  });
  return made.path;
}

/** Adds a code cell; an empty one at the end takes it. The notebook opens as forms from then on. */
async function appendCell(path: string, source: string): Promise<void> {
  const file = await server.get<FileModel>(`${contentsAddress(path)}?hash=1&type=notebook`);
  const content = file.content as NotebookContent;
  const last = content.cells.at(-1);
  const isEmpty = last?.['cell_type'] === 'code' && [last['source']].flat().join('').trim() === '';
  const cells = isEmpty ? content.cells.slice(0, -1) : content.cells;
  const cell = {
    cell_type: 'code',
    id: crypto.randomUUID().slice(0, 8),
    metadata: {},
    execution_count: null,
    outputs: [],
    source,
  };
  await server.put(contentsAddress(path), {
    type: 'notebook',
    format: 'json',
    content: {
      ...content,
      metadata: { ...content.metadata, reckoner: { view: 'forms' } },
      cells: [...cells, cell],
    },
    expected_hash: file.hash ?? null,
  });
}

import { Worker } from 'node:worker_threads';
import { notebookToHtml } from '../notebook/export/notebook-html.js';
import { RunError, runNotebook } from '../notebook/run/run-notebook.js';

/** What the server asks of the page maker, and what it hears back. */
export interface RenderRequest {
  readonly file: string;
  readonly name: string;
}
export type RenderEvent =
  | { readonly kind: 'cell'; readonly name: string; readonly cell: number; readonly cells: number }
  | {
      readonly kind: 'page';
      readonly name: string;
      readonly html?: string;
      readonly failure?: string;
      readonly seconds: number;
    };

/**
 * The page maker: told a notebook, it runs every cell and answers with the finished page. It has a process of its own,
 * because a cell may loop without end or take all memory, and the server must go on answering.
 */
export function renderPages(parentWatch: string): void {
  // A cell that loops keeps this thread from noticing that the server is gone; a thread of its own notices.
  new Worker(parentWatch, { argv: ['--parent', String(process.ppid)] }).unref();
  process.on('message', (request: RenderRequest) => void render(request));
  process.on('disconnect', () => process.exit(0));
}

async function render({ file, name }: RenderRequest): Promise<void> {
  const began = performance.now();
  const seconds = (): number => (performance.now() - began) / 1000;
  try {
    const notebook = await runNotebook(file, {
      onProgress: ({ state, codeCell, codeCells }) => {
        if (state === 'running') tell({ kind: 'cell', name, cell: codeCell, cells: codeCells });
      },
    });
    tell({ kind: 'page', name, html: await notebookToHtml(notebook), seconds: seconds() });
  } catch (error) {
    const failure =
      (error instanceof Error ? error.message : String(error)).split('\n')[0]?.replace(file, name) ??
      'unknown';
    const html = error instanceof RunError ? await notebookToHtml(error.notebook) : undefined;
    tell({ kind: 'page', name, failure, seconds: seconds(), ...(html === undefined ? {} : { html }) });
  }
}

function tell(message: RenderEvent): void {
  process.send?.(message);
}

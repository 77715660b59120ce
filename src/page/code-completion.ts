import {
  Completer,
  CompleterModel,
  CompletionHandler,
  KernelCompleterProvider,
  ProviderReconciliator,
} from '@jupyterlab/completer';
import type { Notebook } from '@jupyterlab/notebook';
import type { IRenderMimeRegistry } from '@jupyterlab/rendermime';
import { Text } from '@jupyterlab/coreutils';
import { Tooltip } from '@jupyterlab/tooltip';
import { Widget } from '@lumino/widgets';
import type { KernelSession } from './kernel-session.js';

export interface CodeCompletion {
  /** Offers what could stand at the cursor. */
  readonly complete: () => void;
  /** Takes the chosen offer. */
  readonly take: () => void;
  /** Shows what the name at the cursor is. */
  readonly explain: () => Promise<void>;
}

/** Completion and explanation at the cursor, both asked of the kernel. */
export function codeCompletion(
  notebook: Notebook,
  kernel: KernelSession,
  rendermime: IRenderMimeRegistry,
): CodeCompletion {
  const completer = new Completer({ editor: null, model: new CompleterModel() });
  completer.showDocsPanel = true;
  completer.hide();
  Widget.attach(completer, document.body);
  const reconciliator = (): ProviderReconciliator =>
    new ProviderReconciliator({
      context: {
        widget: notebook,
        editor: notebook.activeCell?.editor ?? null,
        session: kernel.context.session,
        sanitizer: rendermime.sanitizer,
      },
      providers: [new KernelCompleterProvider()],
      timeout: 4000,
    });
  const handler = new CompletionHandler({ completer, reconciliator: reconciliator() });
  const follow = (): void => {
    const cell = notebook.activeCell;
    const update = (): void => {
      handler.editor = cell?.model.type === 'code' ? cell.editor : null;
      handler.reconciliator = reconciliator();
    };
    update();
    void cell?.ready.then(() => {
      if (cell === notebook.activeCell) update();
    });
  };
  notebook.activeCellChanged.connect(follow);
  kernel.context.sessionChanged.connect(follow);
  kernel.context.kernelChanged.connect(follow);
  follow();
  let shown: Tooltip | undefined;
  return {
    complete: () => handler.invoke(),
    take: () => completer.selectActive(),
    explain: async () => {
      shown?.dispose();
      const [editor, connection] = [notebook.activeCell?.editor, kernel.context.session?.kernel];
      if (!editor || !connection) return;
      const code = editor.model.sharedModel.getSource();
      const offset = Text.jsIndexToCharIndex(editor.getOffsetAt(editor.getCursorPosition()), code);
      const reply = await connection.requestInspect({ code, cursor_pos: offset, detail_level: 0 });
      if (reply.content.status !== 'ok' || !reply.content.found) return;
      shown = new Tooltip({ anchor: notebook, bundle: reply.content.data, editor, rendermime });
      Widget.attach(shown, document.body);
    },
  };
}

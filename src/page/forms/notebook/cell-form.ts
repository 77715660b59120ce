import type { CodeCell } from '@jupyterlab/cells';
import { el } from '../../element.js';
import type { TextEdit } from '../cell-text/edit-call.js';
import { readCell, type CellText } from '../cell-text/read-cell.js';
import type { Scope } from '../model/argument.js';
import type { Outcome } from '../model/answer.js';
import type { Figure } from '../model/figure.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { CallView } from '../view/call-view.js';

/** What a cell's form needs of its notebook. */
export interface NotebookSide {
  readonly models: ReadonlyMap<string, RecipeModel>;
  readonly scope: () => Scope;
  readonly taken: () => ReadonlySet<string>;
  readonly shop: () => unknown;
  readonly rename: (from: string, to: string) => void;
  /** A form has written into a cell: it is run once typing rests. */
  readonly written: (cell: CodeCell) => void;
  readonly showCode: (cell: CodeCell) => void;
  readonly keep: (cell: CodeCell, code: string) => void;
  readonly step: (way: 'undo' | 'redo') => void;
}

let forms = 0;

/** The form in place of a cell's code: one for each call in it, with its answer. The text of the cell stays the state. */
export class CellForm {
  readonly element: HTMLElement;
  readonly #views: CallView[];
  /** Recipes of the calls, in order: the form stands as long as they stay. */
  readonly shape: string;
  #text: CellText;

  constructor(
    readonly cell: CodeCell,
    text: CellText,
    private readonly side: NotebookSide,
  ) {
    this.#text = text;
    this.shape = shapeOf(text);
    const id = `cell-form-${forms++}`;
    this.#views = text.calls.flatMap(({ recipe }, i) => {
      const model = side.models.get(recipe);
      return model === undefined ? [] : [this.#viewOf(model, i, `${id}-${i}`)];
    });
    this.element = el(
      'div',
      { class: 'cell-form' },
      ...this.#views.flatMap((view) => [
        el('h3', { class: 'cell-question' }, view.model.question, el('small', {}, view.model.title)),
        view.element,
      ]),
    );
    // The notebook acts on keys and presses inside it; those of the form are its own.
    for (const name of ['mousedown', 'pointerdown', 'dblclick', 'keydown', 'keypress', 'contextmenu'])
      this.element.addEventListener(name, (event) => event.stopPropagation());
    this.element.addEventListener('keydown', (event) => this.#onKey(event));
  }

  focus(): void {
    this.#views[0]?.form.focusFirst();
  }

  refresh(): void {
    for (const view of this.#views) void view.refresh();
  }

  setFigures(figures: readonly Figure[]): void {
    for (const view of this.#views) view.setFigures(figures);
  }

  /** Inside a box the browser takes back its typing; outside, the notebook takes back its steps. */
  #onKey(event: KeyboardEvent): void {
    const isText = event.target instanceof HTMLInputElement && event.target.type === 'text';
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || isText) return;
    event.preventDefault();
    this.side.step(event.shiftKey ? 'redo' : 'undo');
  }

  #viewOf(model: RecipeModel, at: number, id: string): CallView {
    const code = el(
      'button',
      { type: 'button', class: 'button', onclick: () => this.side.showCode(this.cell) },
      'Show the code',
    );
    return new CallView(
      model,
      {
        now: () => {
          const text = this.#read();
          const call = text.calls[at];
          return text.isBroken || call?.recipe !== model.name ? undefined : { text: text.text, call };
        },
        write: (edits) => this.#write(edits),
        rename: (name) => {
          const old = this.#read().calls[at]?.name;
          if (old !== undefined) this.side.rename(old, name);
        },
        scope: this.side.scope,
        taken: this.side.taken,
        shop: this.side.shop,
        keep: (cellCode) => this.side.keep(this.cell, cellCode),
        shown: (outcome) => this.#shown(outcome),
        buttons: [code],
      },
      id,
    );
  }

  /** Where the answer stands on the form, the cell's own output need not repeat it. */
  #shown(outcome: Outcome): void {
    this.cell.node.classList.toggle('form-answers', outcome.state !== 'code');
  }

  #read(): CellText {
    const source = this.cell.model.sharedModel.getSource();
    if (source !== this.#text.text) this.#text = readCell(source, this.side.models);
    return this.#text;
  }

  #write(edits: readonly TextEdit[]): void {
    const shared = this.cell.model.sharedModel;
    shared.transact(() => {
      for (const { from, to, insert } of [...edits].sort((a, b) => b.from - a.from))
        shared.updateSource(from, to, insert);
    });
    this.side.written(this.cell);
  }
}

export const shapeOf = (text: CellText): string => text.calls.map(({ recipe }) => recipe).join(' ');

import { CodeCell } from '@jupyterlab/cells';
import { NotebookActions, type Notebook } from '@jupyterlab/notebook';
import { tell } from '../../dialog.js';
import { messageOf } from '../../server-api.js';
import { newCall } from '../cell-text/new-call.js';
import { freeName, renameIn } from '../cell-text/rename.js';
import { readCell, scopeOf, type CellText } from '../cell-text/read-cell.js';
import type { Scope } from '../model/argument.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { scopeWithFiles } from '../file-arguments.js';
import { recipeClient } from '../recipe-client.js';
import { readShop } from '../shop/shop-client.js';
import { shopDefaults } from '../shop/shop-defaults.js';
import { CellForm, shapeOf, type NotebookSide } from './cell-form.js';
import { CellRunner, type CellPlan } from './cell-runner.js';

export type NotebookView = 'forms' | 'code';

/** Cells that are calls of recipes, shown as forms; everything else stays as it is. */
export class NotebookForms {
  #view: NotebookView;
  readonly #forms = new Map<CodeCell, CellForm>();
  /** Cells a person wants as code while the notebook shows forms, or the other way round. */
  readonly #turned = new WeakSet<CodeCell>();
  readonly #texts = new Map<string, CellText>();
  readonly #listeners: (() => void)[] = [];
  #models: ReadonlyMap<string, RecipeModel> = new Map();
  #shop: unknown;
  #state = '';
  #frame = 0;

  constructor(
    private readonly notebook: Notebook,
    private readonly runner: CellRunner,
    view: NotebookView,
  ) {
    this.#view = view;
    notebook.modelContentChanged.connect(() => this.#later());
    if (view === 'forms') void this.#open();
  }

  get view(): NotebookView {
    return this.#view;
  }

  get models(): ReadonlyMap<string, RecipeModel> {
    return this.#models;
  }

  onView(listener: () => void): void {
    this.#listeners.push(listener);
  }

  show(view: NotebookView): void {
    this.#view = view;
    void this.#open();
    for (const listener of this.#listeners) listener();
  }

  /** A new cell that asks a question, below the one that is active. */
  async addQuestion(recipe: string, given: Readonly<Record<string, unknown>> = {}): Promise<void> {
    await this.#open();
    const model = this.#models.get(recipe);
    if (model === undefined) return;
    if (this.#view === 'code') this.show('forms');
    const active = this.notebook.activeCell;
    const isEmpty = active?.model.type === 'code' && active.model.sharedModel.getSource().trim() === '';
    if (!isEmpty) NotebookActions.insertBelow(this.notebook);
    const cell = this.notebook.activeCell;
    const name = freeName(model.noun, this.#taken());
    cell?.model.sharedModel.setSource(newCall(model, name, { ...shopDefaults(model, this.#shop), ...given }));
    this.#update();
    this.notebook.mode = 'command';
    void this.notebook.scrollToItem(this.notebook.activeCellIndex, 'smart');
    if (cell instanceof CodeCell) this.#forms.get(cell)?.focus();
  }

  async #open(): Promise<void> {
    try {
      [this.#models, this.#shop] = await Promise.all([recipeClient.models(), readShop()]);
      this.#state = '';
      this.#update();
    } catch (error) {
      tell(messageOf(error), 10);
    }
  }

  #later(): void {
    if (this.#models.size === 0) return;
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#update());
  }

  /** Forms come and go with the texts of the cells; all of them look again where a text has changed. */
  #update(): void {
    const cells = this.#cells();
    for (const [cell, form] of this.#forms)
      if (!cells.includes(cell)) {
        form.element.remove();
        this.#forms.delete(cell);
      }
    for (const cell of cells) this.#place(cell);
    const state = JSON.stringify(cells.map((cell) => cell.model.sharedModel.getSource()));
    if (state === this.#state) return;
    this.#state = state;
    for (const form of this.#forms.values()) form.refresh();
    if (this.#forms.size > 0) void this.#findFigures();
  }

  #place(cell: CodeCell): void {
    const text = this.#read(cell);
    const wanted = (this.#view === 'forms') !== this.#turned.has(cell);
    const fits = text.isCallsOnly && text.calls.every(({ isPartlyCode }) => !isPartlyCode);
    const former = this.#forms.get(cell);
    // While a cell is being typed it may be broken for a moment: its form stays and waits.
    if (former !== undefined && wanted && (text.isBroken || (fits && former.shape === shapeOf(text)))) {
      if (!former.element.isConnected) cell.node.prepend(former.element);
      return;
    }
    former?.element.remove();
    this.#forms.delete(cell);
    cell.node.classList.toggle('as-form', fits && wanted);
    if (!fits || !wanted) {
      cell.node.classList.remove('form-answers');
      return;
    }
    const form = new CellForm(cell, text, this.#side());
    this.#forms.set(cell, form);
    cell.node.prepend(form.element);
    form.refresh();
  }

  async #findFigures(): Promise<void> {
    const figures = await recipeClient.ask('figures', {
      scope: await scopeWithFiles(this.#scope()),
      shop: this.#shop,
    });
    for (const form of this.#forms.values()) form.setFigures(figures);
  }

  #side(): NotebookSide {
    return {
      models: this.#models,
      scope: () => this.#scope(),
      taken: () => this.#taken(),
      shop: () => this.#shop,
      rename: (from, to) => this.#rename(from, to),
      written: (cell) => this.runner.soon(cell, () => this.#plan(cell)),
      showCode: (cell) => this.turn(cell),
      keep: (cell, code) => this.#keep(cell, code),
      step: (way) => this.notebook.model?.sharedModel[way](),
    };
  }

  /** Shows a cell the other way: as code among forms, or as a form among code. */
  turn(cell: CodeCell): void {
    if (this.#turned.has(cell)) this.#turned.delete(cell);
    else this.#turned.add(cell);
    void this.#open();
    for (const listener of this.#listeners) listener();
  }

  /** Whether a cell could be a form and is shown as code now. */
  couldBeForm(cell: CodeCell): boolean {
    const text = this.#read(cell);
    return this.#models.size > 0 && text.isCallsOnly && !this.#forms.has(cell);
  }

  #keep(cell: CodeCell, code: string): void {
    this.notebook.activeCellIndex = this.notebook.widgets.indexOf(cell);
    NotebookActions.insertBelow(this.notebook);
    const made = this.notebook.activeCell;
    made?.model.sharedModel.setSource(code);
    if (made instanceof CodeCell) this.runner.soon(made, () => this.#plan(made));
  }

  #rename(from: string, to: string): void {
    this.notebook.model?.sharedModel.transact(() => {
      for (const cell of this.#cells()) {
        const shared = cell.model.sharedModel;
        for (const edit of renameIn(shared.getSource(), from, to).sort((a, b) => b.from - a.from))
          shared.updateSource(edit.from, edit.to, edit.insert);
      }
    });
    for (const cell of this.#cells())
      if (this.#read(cell).names.includes(to)) this.runner.soon(cell, () => this.#plan(cell));
  }

  /** What is to be run with a cell: the results it takes from, and those that take from it. */
  #plan(cell: CodeCell): CellPlan {
    const before: CodeCell[] = [];
    let wanted = this.#read(cell).text;
    for (const other of this.#cells().reverse()) {
      const text = this.#read(other);
      const used = text.names.some((name) => renameIn(wanted, name, name).length > 0);
      if (other === cell || !text.isCallsOnly || !used) continue;
      before.unshift(other);
      wanted += `\n${text.text}`;
    }
    return { before, after: this.#dependents(cell) };
  }

  /** Forms that rest on a result of this cell, in order: they are run after it. */
  #dependents(cell: CodeCell): CodeCell[] {
    const stale = new Set(this.#read(cell).names);
    const found: CodeCell[] = [];
    for (const other of this.#cells()) {
      const text = this.#read(other);
      const uses = other !== cell && [...stale].some((name) => renameIn(text.text, name, name).length > 0);
      if (!uses || !text.isCallsOnly) continue;
      found.push(other);
      for (const name of text.names) stale.add(name);
    }
    return found;
  }

  #cells(): CodeCell[] {
    return this.notebook.widgets.filter((cell) => cell instanceof CodeCell);
  }

  #read(cell: CodeCell): CellText {
    const source = cell.model.sharedModel.getSource();
    const known = this.#texts.get(source);
    if (known !== undefined) return known;
    const text = readCell(source, this.#models);
    if (this.#texts.size > 500) this.#texts.clear();
    if (this.#models.size > 0) this.#texts.set(source, text);
    return text;
  }

  #scope(): Scope {
    return scopeOf(this.#cells().map((cell) => this.#read(cell)));
  }

  #taken(): Set<string> {
    return new Set([...this.#models.keys(), ...this.#cells().flatMap((cell) => this.#read(cell).names)]);
  }
}

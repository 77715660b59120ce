import type { INotebookContent } from '@jupyterlab/nbformat';
import type { INotebookModel } from '@jupyterlab/notebook';
import { connection } from './connection.js';
import { ask, tell } from './dialog.js';
import { differs, DraftStore, withDraft } from './draft-store.js';
import { contentsAddress, server, ServerError, type FileModel } from './server-api.js';

export type SaveState = 'saved' | 'changed' | 'saving' | 'conflict' | 'failed';

/** Quiet time after the last key before the notebook is saved by itself. */
const pause = 2500;
/** Longest time that typed words stand nowhere but on the page. */
const draftPause = 300;

/**
 * The notebook's file. Each save says which text it was made from; when the disk holds another by then, the server refuses and the
 * user is asked. Neither text is lost whatever is chosen.
 */
export class NotebookFile {
  state: SaveState = 'saved';
  problem = '';
  #hash: string | undefined;
  #saved = '';
  #timer: ReturnType<typeof setTimeout> | undefined;
  #saving: Promise<void> | undefined;
  #asking = false;
  #draftTimer: ReturnType<typeof setTimeout> | undefined;
  #drafts: DraftStore;
  readonly #listeners: (() => void)[] = [];

  constructor(
    public path: string,
    readonly model: INotebookModel,
  ) {
    this.#drafts = new DraftStore(path);
  }

  onState(listener: () => void): void {
    this.#listeners.push(listener);
  }

  async load(
    reading = server.get<FileModel>(`${contentsAddress(this.path)}?hash=1&type=notebook`),
  ): Promise<void> {
    const file = await reading;
    this.model.fromJSON(file.content as INotebookContent);
    this.model.sharedModel.clearUndoHistory();
    this.model.dirty = false;
    this.#hash = file.hash;
    this.#saved = this.#text();
    this.#set('saved');
  }

  /** Words that were typed here and never reached the disk (a crash, a dead server) are offered. */
  async offerDraft(): Promise<void> {
    if (await this.#drafts.isOfOpenTab()) return;
    const draft = this.#drafts.read();
    const content = this.model.toJSON() as INotebookContent;
    if (draft === undefined || !differs(draft, content)) {
      this.#drafts.remove();
      return;
    }
    const when = new Date(draft.time).toLocaleString();
    const changed = draft.base !== undefined && draft.base !== this.#hash;
    const answer = await ask({
      title: 'There is unsaved text of this notebook',
      text: [
        `It was typed here on ${when} and did not reach the disk.${changed ? ' The file on disk was changed since then.' : ''}`,
      ],
      choices: [
        { value: 'take', words: 'Go on with the unsaved text', first: true },
        { value: 'drop', words: 'Use the file on disk', loses: true },
      ],
      class: 'draft',
    });
    if (answer === 'take') this.model.fromJSON(withDraft(content, draft));
    else if (answer === 'drop') this.#drafts.remove();
    if (answer === 'take') this.#changed();
  }

  /** From here on, changes are noticed and saved. */
  watch(): void {
    this.model.contentChanged.connect(() => this.#changed());
    connection.onReturn(() => void this.save());
    addEventListener('beforeunload', (event) => {
      if (this.#text() === this.#saved) return;
      this.#writeDraft();
      event.preventDefault();
    });
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void this.save();
      else void this.lookAtDisk();
    });
    addEventListener('focus', () => void this.lookAtDisk());
  }

  /** Saves now; `byHand` also when nothing seems changed, and says so. */
  async save(byHand = false): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#saving !== undefined) await this.#saving;
    if (this.state === 'conflict' && !byHand) return;
    if (this.#text() === this.#saved && this.state !== 'conflict') {
      this.#set('saved');
      if (byHand) tell('Saved.', 2);
      return;
    }
    this.#saving = this.#put().finally(() => (this.#saving = undefined));
    await this.#saving;
    if (byHand && this.state === 'saved') tell('Saved.', 2);
  }

  /** Is the file on disk still the one we opened? If not and nothing was typed here, it is simply read again. */
  async lookAtDisk(): Promise<void> {
    if (this.#asking || this.#saving !== undefined || this.#hash === undefined) return;
    const now = await server
      .get<FileModel>(`${contentsAddress(this.path)}?content=0&hash=1`)
      .catch(() => undefined);
    if (now === undefined || now.hash === this.#hash || this.#isSaving()) return;
    if (this.#text() === this.#saved) {
      await this.load();
      tell('The notebook was changed elsewhere; this is its new text.');
    } else await this.#askConflict();
  }

  #isSaving(): boolean {
    return this.#saving !== undefined;
  }

  async rename(to: string): Promise<void> {
    await this.save();
    const moved = await server.patch<FileModel>(contentsAddress(this.path), { path: to });
    this.#drafts.remove();
    this.path = moved.path;
    this.#drafts = new DraftStore(this.path);
  }

  #changed(): void {
    if (this.state !== 'conflict') this.#set('changed');
    this.#draftTimer ??= setTimeout(() => this.#writeDraft(), draftPause);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.save(), pause);
  }

  /** The draft of what is not on disk; none where all is. */
  #writeDraft(): void {
    clearTimeout(this.#draftTimer);
    this.#draftTimer = undefined;
    if (this.#text() === this.#saved) this.#drafts.remove();
    else this.#drafts.write(this.model.toJSON() as INotebookContent, this.#hash);
  }

  async #put(): Promise<void> {
    const text = this.#text();
    this.#set('saving');
    try {
      const saved = await server.put<FileModel>(contentsAddress(this.path), {
        type: 'notebook',
        format: 'json',
        content: JSON.parse(text) as unknown,
        expected_hash: this.#hash ?? null,
      });
      this.#hash = saved.hash;
      this.#saved = text;
      this.model.dirty = false;
      this.#writeDraft();
      this.#set(this.#text() === text ? 'saved' : 'changed');
    } catch (error) {
      if (error instanceof ServerError && error.status === 409) return this.#askConflict();
      this.#set('failed', error instanceof Error ? error.message : String(error));
      this.#timer = setTimeout(() => void this.save(), 4 * pause);
    }
  }

  async #askConflict(): Promise<void> {
    if (this.#asking) return;
    this.#asking = true;
    this.#set('conflict');
    try {
      const answer = await ask({
        title: 'This notebook was also changed elsewhere',
        text: [
          'Another tab, editor or program has saved it since you opened it here. Nothing was overwritten. Which text is to carry the name?',
          'The other one is kept beside it as a copy.',
        ],
        choices: [
          { value: 'mine', words: 'Mine, from this page', first: true },
          { value: 'theirs', words: 'The one on disk' },
          { value: 'later', words: 'Decide later' },
        ],
        class: 'conflict',
      });
      if (answer === 'mine') await this.#keepMine();
      else if (answer === 'theirs') await this.#takeTheirs();
    } catch (error) {
      this.#set('conflict', error instanceof Error ? error.message : String(error));
      tell(this.problem, 12);
    } finally {
      this.#asking = false;
    }
  }

  async #keepMine(): Promise<void> {
    const disk = await server
      .get<FileModel>(`${contentsAddress(this.path)}?hash=1&type=file`)
      .catch(() => undefined);
    if (disk !== undefined) {
      const copy = await server.post<FileModel>('/api/contents', { copy_from: this.path });
      tell(`The other text is kept as ${copy.path}.`, 10);
    }
    this.#hash = disk?.hash;
    await this.#put();
  }

  async #takeTheirs(): Promise<void> {
    const copy = await server.post<FileModel>('/api/contents', {
      type: 'notebook',
      name: this.path
        .replace(/\.ipynb$/, '-mine')
        .split('/')
        .at(-1),
    });
    await server.put(contentsAddress(copy.path), {
      type: 'notebook',
      content: JSON.parse(this.#text()) as unknown,
    });
    tell(`Your text is kept as ${copy.path}.`, 10);
    await this.load();
  }

  #text(): string {
    return JSON.stringify(this.model.toJSON());
  }

  #set(state: SaveState, problem = ''): void {
    this.state = state;
    this.problem = problem;
    for (const listener of this.#listeners) listener();
  }
}

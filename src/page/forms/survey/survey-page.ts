import { tell } from '../../dialog.js';
import { el, icon } from '../../element.js';
import { fileName } from '../../file-upload.js';
import { contentsAddress, messageOf, server } from '../../server-api.js';
import type { SurveyChoices, SurveyDoubt, SurveyReading } from '../model/survey-reading.js';
import { recipeClient } from '../recipe-client.js';
import { AnswerPicture } from '../view/answer-picture.js';

const nothing: SurveyChoices = { columns: {}, units: {}, repairs: {}, left: [] };

/** Brings in a survey: dropped or pasted, its columns matched, its doubts cleared, saved beside the notebooks. `done` is told its file. */
export function surveyPage(done: (file: string) => void): HTMLElement {
  return new SurveyPage(done).element;
}

class SurveyPage {
  readonly element: HTMLElement;
  #choices = nothing;
  #reading: SurveyReading | undefined;
  #turn = 0;
  readonly #text = el('textarea', {
    id: 'survey-text',
    rows: '7',
    spellcheck: 'false',
    placeholder: 'Board\tQty\tLength (mm)\tWidth (mm)\tThickness (mm)',
  });
  readonly #columns = el('div', { class: 'survey-columns' });
  readonly #state = el('p', { class: 'sentence', role: 'status' });
  readonly #doubts = el('ul', { class: 'survey-doubts' });
  readonly #picture = new AnswerPicture();
  readonly #name = el('input', { type: 'text', id: 'survey-name', value: 'my pile', spellcheck: 'false' });
  readonly #save = el(
    'button',
    { type: 'button', class: 'button first', disabled: true, onclick: () => void this.#bringIn() },
    'Bring it in',
  );

  constructor(private readonly done: (file: string) => void) {
    const file = el('input', { type: 'file', accept: '.csv,.tsv,.txt', id: 'survey-file' });
    file.addEventListener('change', () => void this.#readFile(file.files?.[0]));
    this.#text.addEventListener('input', () => this.#restart());
    this.element = el(
      'article',
      { class: 'question-page survey-page' },
      el('a', { href: '#', class: 'button small back' }, icon('back'), 'All questions'),
      el('h1', { tabindex: '-1' }, 'Bring in a survey'),
      el(
        'p',
        {},
        'A list of the boards you have: drop a CSV file here, choose one, or paste the cells from a spreadsheet with their headings.',
      ),
      el('p', {}, el('label', { for: 'survey-file' }, 'A file '), file),
      el('label', { class: 'line', for: 'survey-text' }, 'Or pasted', this.#text),
      this.#state,
      this.#doubts,
      this.#columns,
      this.#picture.element,
      el(
        'p',
        { class: 'survey-save' },
        el('label', { for: 'survey-name' }, 'Called '),
        this.#name,
        this.#save,
      ),
    );
    for (const name of ['dragover', 'drop'])
      this.element.addEventListener(name, (event) => {
        event.preventDefault();
        event.stopPropagation();
        void this.#readFile((event as DragEvent).dataTransfer?.files[0]);
      });
  }

  async #readFile(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    this.#text.value = await file.text();
    this.#name.value = file.name.replace(/\.\w+$/, '');
    this.#restart();
  }

  #restart(): void {
    this.#choices = nothing;
    void this.#read();
  }

  #choose(choices: Partial<SurveyChoices>): void {
    this.#choices = { ...this.#choices, ...choices };
    void this.#read();
  }

  async #read(): Promise<void> {
    const turn = ++this.#turn;
    const text = this.#text.value;
    if (text.trim() === '') return;
    try {
      const reading = await recipeClient.ask('survey', { text, choices: this.#choices });
      if (turn === this.#turn) this.#show(reading);
    } catch (error) {
      tell(messageOf(error), 8);
    }
  }

  #show(reading: SurveyReading): void {
    this.#reading = reading;
    this.#state.textContent = summary(reading, this.#choices.left.length);
    this.#save.disabled = reading.csv === undefined;
    this.#doubts.replaceChildren(...reading.doubts.map((doubt) => this.#doubt(doubt)));
    if (reading.moreDoubts > 0)
      this.#doubts.append(el('li', {}, `And ${reading.moreDoubts} more like these.`));
    this.#columns.replaceChildren(...this.#columnRows(reading));
    this.#picture.show(reading.picture);
  }

  #doubt({ message, cell, repair, row }: SurveyDoubt): HTMLElement {
    const button = (words: string, act: () => void): HTMLElement =>
      el('button', { type: 'button', class: 'button small', onclick: act }, words);
    return el(
      'li',
      {},
      el('span', {}, message),
      cell === undefined || repair === undefined
        ? undefined
        : button(`Write ${repair}`, () =>
            this.#choose({ repairs: { ...this.#choices.repairs, [cell]: repair } }),
          ),
      row === undefined
        ? undefined
        : button('Leave this row out', () => this.#choose({ left: [...this.#choices.left, row] })),
    );
  }

  #columnRows(reading: SurveyReading): HTMLElement[] {
    return reading.headings.map(({ heading, column, unit, needsUnit, sample }, i) => {
      const select = el(
        'select',
        { id: `survey-column-${i}` },
        el('option', { value: '' }, 'left out'),
        ...reading.columns.map(({ name, label }) => el('option', { value: name }, label)),
      );
      select.value = column;
      select.addEventListener('change', () =>
        this.#choose({ columns: { ...this.#choices.columns, [heading]: select.value } }),
      );
      const units = el(
        'select',
        { 'aria-label': `Unit of ${heading}`, hidden: !needsUnit },
        ...['mm', 'cm', 'm', 'in', 'ft'].map((name) => el('option', { value: name }, name)),
      );
      units.value = unit;
      units.addEventListener('change', () =>
        this.#choose({ units: { ...this.#choices.units, [heading]: units.value } }),
      );
      return el(
        'div',
        { class: 'survey-column' },
        el('label', { for: `survey-column-${i}` }, heading, el('small', {}, ` ${sample}`)),
        select,
        units,
      );
    });
  }

  async #bringIn(): Promise<void> {
    const csv = this.#reading?.csv;
    if (csv === undefined) return;
    const name = `${fileName(this.#name.value.trim() || 'my pile').replace(/\.csv$/i, '')}.csv`;
    try {
      await server.put(contentsAddress(name), { type: 'file', format: 'text', content: csv });
      tell(`The survey is in: ${name}.`);
      this.done(name);
    } catch (error) {
      tell(messageOf(error), 10);
    }
  }
}

function summary(reading: SurveyReading, left: number): string {
  if (reading.headings.length === 0) return '';
  const words = reading.columns
    .filter(({ name }) => reading.missing.includes(name))
    .map(({ label }) => label);
  if (words.length > 0) return `Which column is the ${words.join(', and which the ')}?`;
  const doubts = reading.doubts.length + reading.moreDoubts;
  const rows = `${reading.rows} ${reading.rows === 1 ? 'row' : 'rows'} read, ${reading.boards} boards.`;
  const out = left === 0 ? '' : ` ${left} left out.`;
  const ignored = reading.ignored.length === 0 ? '' : ` Not used: ${reading.ignored.slice(0, 4).join(', ')}.`;
  return `${rows}${out}${doubts === 0 ? '' : ` ${doubts} ${doubts === 1 ? 'needs' : 'need'} a look.`}${ignored}`;
}

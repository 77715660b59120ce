import { el } from './element.js';

export interface Choice<T extends string> {
  readonly value: T;
  readonly words: string;
  /** The one that Enter takes. */
  readonly first?: boolean;
  /** Loses something; drawn apart. */
  readonly loses?: boolean;
}

/** Asks one question in a dialog of the browser's own kind (focus kept inside, Escape closes). Undefined when it was closed. */
export function ask<T extends string>(question: {
  title: string;
  text: (string | Node)[];
  choices: readonly Choice<T>[];
  class?: string;
}): Promise<T | undefined> {
  return new Promise((resolve) => {
    let answer: T | undefined;
    const buttons = question.choices.map((choice) =>
      el(
        'button',
        {
          type: 'button',
          class: choice.first ? 'button first' : choice.loses ? 'button loses' : 'button',
          ...(choice.first ? { autofocus: true } : {}),
          onclick: () => {
            answer = choice.value;
            dialog.close();
          },
        },
        choice.words,
      ),
    );
    const dialog = el(
      'dialog',
      { class: `ask ${question.class ?? ''}`.trim(), 'aria-labelledby': 'ask-title' },
      el('h2', { id: 'ask-title' }, question.title),
      ...question.text.map((line) => (typeof line === 'string' ? el('p', {}, line) : line)),
      el('div', { class: 'choices' }, ...buttons),
    );
    dialog.addEventListener('close', () => {
      dialog.remove();
      resolve(answer);
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}

/** Asks for one line of text. Undefined when it was closed or left empty. */
export async function askLine(
  title: string,
  label: string,
  start: string,
  words: string,
): Promise<string | undefined> {
  const input = el('input', { type: 'text', value: start, autofocus: true, spellcheck: 'false' });
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Enter') input.closest('dialog')?.querySelector<HTMLButtonElement>('.first')?.click();
  });
  setTimeout(() => input.select());
  const answer = await ask({
    title,
    text: [el('label', { class: 'line' }, label, input)],
    choices: [
      { value: 'go', words },
      { value: 'no', words: 'Leave it' },
    ].map((c, i) => ({ ...c, first: i === 0 })),
  });
  const line = input.value.trim();
  return answer === 'go' && line !== '' ? line : undefined;
}

/** A line at the foot of the page that goes by itself. */
export function tell(text: string, seconds = 5): void {
  let shelf = document.querySelector<HTMLElement>('.notices');
  if (shelf === null)
    document.body.append((shelf = el('div', { class: 'notices', role: 'status', 'aria-live': 'polite' })));
  const line = el('p', {}, text);
  shelf.append(line);
  setTimeout(() => line.remove(), seconds * 1000);
}

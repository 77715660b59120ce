import { el } from '../../element.js';
import type { SketchModel } from '../model/recipe-model.js';
import { capitalised } from '../../../units/capitalised.js';

export interface SketchHost {
  /** A letter was pressed. */
  readonly go: (field: string) => void;
}

const rootOf = (path: string): string => path.split('.')[0] ?? path;

/** The lettered sketch of a recipe: a letter lights up with the field that it stands for, and leads to it. */
export class SketchFigure {
  readonly element: HTMLElement;
  readonly #marks: readonly SVGGElement[];

  constructor(sketch: SketchModel, host: SketchHost) {
    const drawing = el('div', { class: 'sketch-sheet' });
    // Our own picture, made from escaped text by the worker.
    drawing.innerHTML = sketch.svg;
    this.#marks = [...drawing.querySelectorAll<SVGGElement>('g[data-measures]')];
    drawing.addEventListener('click', (event) => {
      const mark = event.target instanceof Element ? event.target.closest('g[data-measures]') : null;
      const path = mark?.getAttribute('data-measures');
      if (typeof path === 'string') host.go(rootOf(path));
    });
    this.element = el(
      'figure',
      { class: 'sketch' },
      drawing,
      el(
        'details',
        { class: 'sketch-letters' },
        el('summary', {}, 'What the letters mean'),
        el(
          'dl',
          {},
          ...sketch.letters.flatMap(({ letter, isOutput, label, meaning }) => [
            el('dt', { class: isOutput ? 'letter answer' : 'letter' }, letter),
            el('dd', {}, [capitalised(label), meaning].filter((text) => text !== '').join('. ')),
          ]),
        ),
      ),
    );
  }

  /** Lights the letters of one field; none without it. */
  light(field: string | undefined): void {
    for (const mark of this.#marks)
      mark.classList.toggle('lit', rootOf(mark.getAttribute('data-measures') ?? '') === field);
  }
}

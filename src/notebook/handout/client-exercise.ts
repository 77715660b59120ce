import { checkSealed } from '../../engine/sealed-check.js';
import type { SealedExercise } from './handout-data.js';
import type { PersistedState } from './persisted-state.js';

/** Makes the printed form of an exercise check what is written in it, and remember it. Right and wrong are shown in words and by a sign. */
export function hydrateExercise(section: HTMLElement, exercise: SealedExercise, kept: PersistedState): void {
  const form = section.querySelector('form');
  const input = section.querySelector('input');
  const verdict = section.querySelector('output');
  if (form === null || input === null || verdict === null) return;
  let wrongTries = 0;
  const before = kept.get(section.id);
  if (typeof before === 'string') input.value = before;
  const show = (message: string, right?: boolean): void => {
    verdict.textContent = right === undefined ? message : `${right ? '✓' : '✗'} ${message}`;
    section.classList.toggle('right', right === true);
    section.classList.toggle('wrong', right === false);
  };
  input.addEventListener('input', () => {
    kept.set(section.id, input.value);
    show('');
  });
  const check = async (given: string): Promise<void> => {
    const found = await checkSealed(given, exercise.form, exercise.answers);
    // What was written since makes this verdict one about something else.
    if (input.value !== given) return;
    if (typeof found === 'string') {
      show(found, false);
      return;
    }
    if (found.outcome === 'right') {
      show(found.says, true);
      return;
    }
    wrongTries++;
    const hint = wrongTries > 1 && exercise.hint !== undefined ? ` Hint: ${exercise.hint}` : '';
    show(`${found.says}${hint}`, false);
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (input.value.trim() === '') show('Write your answer first.');
    else {
      show('Checking …');
      void check(input.value);
    }
  });
}

import { exerciseFrom, type ExerciseData } from '../../engine/exercise.js';
import type { PersistedState } from './persisted-state.js';

/** Makes the printed form of an exercise check what is written in it, and remember it. Right and wrong are shown in words and by a sign. */
export function hydrateExercise(section: HTMLElement, data: ExerciseData, kept: PersistedState): void {
  const form = section.querySelector('form');
  const input = section.querySelector('input');
  const verdict = section.querySelector('output');
  if (form === null || input === null || verdict === null) return;
  const exercise = exerciseFrom(data);
  const before = kept.get(section.id);
  if (typeof before === 'string') input.value = before;
  input.addEventListener('input', () => {
    kept.set(section.id, input.value);
    verdict.textContent = '';
    section.classList.remove('right', 'wrong');
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (input.value.trim() === '') {
      verdict.textContent = 'Write your answer first.';
      return;
    }
    const { right, message: label } = exercise.check(input.value);
    verdict.textContent = `${right ? '✓' : '✗'} ${label}`;
    section.classList.toggle('right', right);
    section.classList.toggle('wrong', !right);
  });
}

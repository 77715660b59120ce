import { iconButton } from './element.ts';

const changes = new EventTarget();

export const isDark = (): boolean => document.documentElement.dataset['ground'] === 'dark';

export function onGroundChange(listener: () => void): void {
  changes.addEventListener('change', listener);
}

/** Light or dark page: the system's own wish until the person says otherwise. */
export function groundSwitch(): HTMLButtonElement {
  return iconButton('sun', 'Light or dark', () => set(isDark() ? 'light' : 'dark', true), { class: 'ground' });
}

function set(ground: 'light' | 'dark', keep: boolean): void {
  document.documentElement.dataset['ground'] = ground;
  document.documentElement.dataset['jpThemeLight'] = String(ground === 'light');
  if (keep) localStorage.setItem('reckoner-ground', ground);
  changes.dispatchEvent(new Event('change'));
}

matchMedia('(prefers-color-scheme: dark)').addEventListener('change', (event) => {
  if (localStorage.getItem('reckoner-ground') === null) set(event.matches ? 'dark' : 'light', false);
});

import { iconButton } from './element.js';

const changes = new EventTarget();

export const isDark = (): boolean => document.documentElement.dataset['theme'] === 'dark';

export function onThemeChange(listener: () => void): void {
  changes.addEventListener('change', listener);
}

/** Light or dark page: the system's own wish until the person says otherwise. */
export function themeToggle(): HTMLButtonElement {
  return iconButton('sun', 'Light or dark', () => set(isDark() ? 'light' : 'dark', true), {
    class: 'theme-toggle',
  });
}

function set(theme: 'light' | 'dark', keep: boolean): void {
  document.documentElement.dataset['theme'] = theme;
  document.documentElement.dataset['jpThemeLight'] = String(theme === 'light');
  if (keep) localStorage.setItem('reckoner-theme', theme);
  changes.dispatchEvent(new Event('change'));
}

matchMedia('(prefers-color-scheme: dark)').addEventListener('change', (event) => {
  if (localStorage.getItem('reckoner-theme') === null) set(event.matches ? 'dark' : 'light', false);
});

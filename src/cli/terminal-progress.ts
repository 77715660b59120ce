import { lineReporter, setProgressReporter } from '../engine/progress.js';

/** Tells how far long work is on one line of the terminal, renewed in its place; nothing where the text goes elsewhere. */
export function progressOnTerminal(terminal: {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}): void {
  if (!terminal.isTTY) return;
  setProgressReporter({
    signal: undefined,
    start: lineReporter(() => (text, over) => void terminal.write(`\r\u001b[K${over ? '' : text}`)),
  });
}

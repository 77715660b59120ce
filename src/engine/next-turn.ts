const { setImmediate: immediate } = globalThis as {
  readonly setImmediate?: (resume: () => void) => unknown;
};

/** Gives way so that an interrupt or a page's own work comes in; in a browser, which has no `setImmediate`, by a timer. */
export const nextTurn = (): Promise<void> =>
  new Promise((resume) => {
    if (immediate) immediate(resume);
    else setTimeout(resume, 0);
  });

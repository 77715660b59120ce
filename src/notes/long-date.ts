const format = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });

/** `2026-03-08` -> `8 March 2026`; anything else stays as written. */
export function longDate(date: string): string {
  const time = /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(date) : NaN;
  return Number.isNaN(time) ? date : format.format(time);
}

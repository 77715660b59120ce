/** `2026-03-08` -> `8 March 2026`; anything else stays as written. */
export function longDate(date: string): string {
  const at = /^(\d{4})-(\d\d)-(\d\d)$/.exec(date);
  const months = [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ];
  const month = at === null ? undefined : months[Number(at[2]) - 1];
  return at === null || month === undefined ? date : `${Number(at[3])} ${month} ${at[1]}`;
}

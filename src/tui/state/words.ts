/** Dates in the few characters that fit a row. */

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Thu 12 Mar 16:40` in the memo's own zone, as its ISO text says. */
export function dayAndClock(iso: string): string {
  return `${shortDay(iso)} ${(iso.split('T')[1] ?? '').slice(0, 5)}`;
}

/** `Thu 12 Mar`, likewise. */
export function shortDay(iso: string): string {
  const [date = ''] = iso.split('T');
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const weekday = DAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()] ?? '';
  return `${weekday} ${day} ${MONTHS[month - 1] ?? ''}`;
}

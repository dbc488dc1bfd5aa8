/** Dates in the few characters that fit a row. */

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Thu 12 Mar 16:40` in the memo's own zone, as its ISO text says. */
export function dayAndClock(iso: string): string {
  const [date = '', time = ''] = iso.split('T');
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const weekday = DAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()] ?? '';
  return `${weekday} ${day} ${MONTHS[month - 1] ?? ''} ${time.slice(0, 5)}`;
}

/** Times and quantities in the few words that fit a row. */
import type { Bound } from '../../language/notes.ts';

/** `m:ss`, or `h:mm:ss` from an hour up. */
export function clock(seconds: number): string {
  const whole = Math.floor(seconds);
  const two = (n: number) => String(n).padStart(2, '0');
  const minutes = Math.floor(whole / 60);
  return minutes < 60
    ? `${minutes}:${two(whole % 60)}`
    : `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${two(whole % 60)}`;
}

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Thu 12 Mar 16:40` in the memo's own zone, as its ISO text says. */
export function dayAndClock(iso: string): string {
  const [date = '', time = ''] = iso.split('T');
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const weekday = DAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()] ?? '';
  return `${weekday} ${day} ${MONTHS[month - 1] ?? ''} ${time.slice(0, 5)}`;
}

interface Shown {
  readonly value: number;
  readonly unit: string;
  readonly bound?: Bound | undefined;
  readonly high?: number | undefined;
}

const BOUND_WORDS: Readonly<Record<Bound, string>> = {
  exact: '',
  about: 'about ',
  'at-least': 'at least ',
  'at-most': 'at most ',
  between: '',
};

/** `at most 740 mm`, `10 to 15 mm`. Values keep at most four decimals. */
export function quantityWords({ value, unit, bound = 'exact', high }: Shown): string {
  const number = (n: number) => String(Number(n.toFixed(4)));
  const amount = high === undefined ? number(value) : `${number(value)} to ${number(high)}`;
  return `${BOUND_WORDS[bound]}${amount}${unit === '1' ? '' : ` ${unit}`}`;
}

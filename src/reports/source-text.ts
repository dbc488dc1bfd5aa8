/** Memos, times and dates in words. Clip time is always an offset into a file, never a time in a finished film. */
import type { Source } from '../model/views.ts';

/** Offset into a recording, rounded down to the second: `02:17`, from an hour on `1:02:17`. */
export function clipTime(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const two = (value: number) => String(value).padStart(2, '0');
  const minutes = Math.floor(whole / 60) % 60;
  const hours = Math.floor(whole / 3600);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${two(minutes)}:${two(whole % 60)}`;
}

/** Length of a recording: `48 s`, `2 min 14 s`, `1 h 2 min`. */
export function duration(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  if (whole < 3600) return `${Math.floor(whole / 60)} min ${whole % 60} s`;
  return `${Math.floor(whole / 3600)} h ${Math.floor((whole % 3600) / 60)} min`;
}

/** `m14` as "memo 14"; `s20`, the place of a person's own word in the log, as "by hand"; other ids as they are. */
export function memoName(memoId: string): string {
  if (/^s\d+$/.test(memoId)) return 'by hand';
  return /^m\d+$/.test(memoId) ? `memo ${memoId.slice(1)}` : memoId;
}

/** Where something was said: "memo 14, 02:17"; without a recording "memo 14". */
export function placeOf(source: Pick<Source, 'memoId' | 'startSeconds'> | undefined): string {
  if (!source) return 'not spoken';
  const name = memoName(source.memoId);
  return source.startSeconds === undefined ? name : `${name}, ${clipTime(source.startSeconds)}`;
}

/** The calendar day of an instant in its own zone: the first ten characters of ISO 8601. */
export function dayOf(recordedAt: string): string {
  return recordedAt.slice(0, 10);
}

/** Whole calendar days from `from` to `to`, each ISO 8601; negative when `to` is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${dayOf(to)}T00:00Z`) - Date.parse(`${dayOf(from)}T00:00Z`)) / 86_400_000);
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

/** A date with its weekday: "Tuesday 2026-05-05". Anything else comes back as it was. */
export function dayName(date: string): string {
  const time = Date.parse(`${dayOf(date)}T00:00Z`);
  return Number.isNaN(time) ? date : `${WEEKDAYS[new Date(time).getUTCDay()]} ${dayOf(date)}`;
}

/** An instant as a clock on the wall shows it, in its own zone: "2026-05-05 17:30"; in UTC it says so. */
export function clock(instant: string): string {
  const time = /T(\d\d:\d\d)/.exec(instant)?.[1];
  if (time === undefined) return instant;
  return `${dayOf(instant)} ${time}${instant.endsWith('Z') ? ' UTC' : ''}`;
}

/** The time of day alone, as a clock on the wall shows it: "17:30"; in UTC it says so. */
export function clockTime(instant: string): string {
  const shown = clock(instant);
  return shown === instant ? instant : shown.slice(11);
}

/** A count with its noun: "1 figure", "3 figures". */
export function counted(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}

/** Days as an age: "the same day", "1 day", "12 days". */
export function age(days: number): string {
  return days === 0 ? 'the same day' : counted(Math.abs(days), 'day');
}

/** Instants as ISO 8601 with their own offset. The zone of a recording is kept: its day is the speaker's day. */

const ISO_8601 =
  /^(\d{4}-\d{2}-\d{2})(?:[T ](\d{2}:\d{2})(:\d{2}(?:\.\d+)?)?\s?(Z|[+-]\d{2}(?::?\d{2})?)?)?$/;

/** Whether `text` is an ISO 8601 day or instant that the calendar has. */
export function isInstant(text: string): boolean {
  const parts = ISO_8601.exec(text);
  if (!parts?.[1]) return false;
  const day = new Date(`${parts[1]}T00:00Z`);
  if (Number.isNaN(day.getTime()) || !day.toISOString().startsWith(parts[1])) return false;
  return !Number.isNaN(Date.parse(normal(parts)));
}

function normal(parts: RegExpExecArray): string {
  const [, day, minutes = '00:00', seconds = ':00', offset = ''] = parts;
  const full = /^[+-]\d{2}$/.test(offset) ? `${offset}:00` : offset.replace(/^([+-]\d{2})(\d{2})$/, '$1:$2');
  return `${day}T${minutes}${seconds}${full}`;
}

/** An instant with the offset that this machine's zone had then: `2026-05-03T16:00:00-05:00`. */
export function localInstant(time: Date): string {
  const minutes = -time.getTimezoneOffset();
  const shifted = new Date(time.getTime() + minutes * 60_000).toISOString().slice(0, 19);
  const two = (value: number) => String(value).padStart(2, '0');
  const size = Math.abs(minutes);
  return `${shifted}${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** Returns the instant in one spelling; its own offset stays, and without one it gets this machine's. */
export function withOffset(text: string): string {
  const parts = ISO_8601.exec(text);
  if (!parts) return text;
  const iso = normal(parts);
  return parts[4] ? iso : localInstant(new Date(iso));
}

/**
 * The same instant in this machine's zone. Containers count in UTC and say nothing of the place, so the day of a
 * recording is taken from the machine that takes it in.
 */
export function inLocalZone(utc: string): string {
  return localInstant(new Date(utc));
}

/** Now, in this machine's zone. */
export function now(): string {
  return localInstant(new Date());
}

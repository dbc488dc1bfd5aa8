/** Lines of an iCalendar file. Source: RFC 5545, sections 3.1 (content lines, folding) and 3.3.11 (TEXT). */
import { oneLine } from '../words.ts';

/** Octets of a line without its line break. */
const LINE_OCTETS = 75;

/** Words as a TEXT value: on one line, without control characters, and nothing in them ends the value. */
export function calendarText(words: string): string {
  return oneLine(words).replace(/[\\;,]/g, '\\$&');
}

/** Several lines as one TEXT value; empty ones are left out. */
export function calendarLines(lines: readonly (string | undefined)[]): string {
  return lines
    .filter((line) => line !== undefined && line !== '')
    .map((line) => calendarText(line as string))
    .join('\\n');
}

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
}

/** Cuts a line into pieces of at most 75 octets, none inside a character; each further piece starts with a blank. */
export function folded(line: string): string {
  let room = LINE_OCTETS;
  let out = '';
  for (const character of line) {
    const octets = octetsOf(character);
    if (octets > room) {
      out += '\r\n ';
      room = LINE_OCTETS - 1;
    }
    out += character;
    room -= octets;
  }
  return out;
}

/** An ISO 8601 instant in UTC, as `20260409T080000Z`; nothing when it is none. */
export function utcStamp(instant: string): string | undefined {
  const time = Date.parse(instant);
  if (Number.isNaN(time)) return undefined;
  return `${new Date(time).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
}

/** A day as `20260409`; nothing when it is none. */
export function dayStamp(day: string): string | undefined {
  return /^\d{4}-\d{2}-\d{2}$/.test(day) ? day.replaceAll('-', '') : undefined;
}

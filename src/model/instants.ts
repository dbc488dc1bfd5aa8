/** Instants as memos hold them: ISO 8601 with the offset of their place. Pure: "now" always comes as an argument. */

/** Seconds from one instant to another; negative where the second is earlier. */
export const secondsBetween = (from: string, to: string): number =>
  (Date.parse(to) - Date.parse(from)) / 1000;

/** Whether an instant is later than another by more than `slack` seconds. */
export const isLater = (one: string, other: string, slack = 0): boolean => secondsBetween(other, one) > slack;

/** The later of two instants. */
export const laterOf = (one: string, other: string): string => (isLater(one, other) ? one : other);

/** The instant so many seconds after another, in the same zone, to the second. */
export function after(instant: string, seconds: number): string {
  const zone = /(?:Z|[+-]\d\d:?\d\d)$/.exec(instant)?.[0] ?? 'Z';
  // The wall clock of its zone, counted on as if it were one without an offset.
  const wall = Date.parse(
    `${instant.slice(0, instant.length - (zone === 'Z' && !instant.endsWith('Z') ? 0 : zone.length))}Z`,
  );
  const stamp = wall + Math.round(seconds) * 1000;
  return Number.isFinite(stamp) && Math.abs(stamp) < 8e15
    ? `${new Date(stamp).toISOString().slice(0, 19)}${zone}`
    : instant;
}

/** "2026-03-02 14:00": an instant as the clock of its own place shows it. */
export const wallClock = (instant: string): string => `${instant.slice(0, 10)} ${instant.slice(11, 16)}`;

/** Puts the time of a recording right by what is known of its recorder's clock. */
import { inLocalZone, localInstant, withOffset } from './instant.ts';
import type { DeviceClock } from './model/views.ts';

const ZONE = /(?:Z|[+-]\d\d:?\d\d)$/;

/**
 * The true time of what a recorder stated, ISO 8601 with an offset. A stated zone of its own is kept; UTC and bare wall
 * time come out in this machine's zone. `stated` without a zone is wall time.
 */
export function trueTime(stated: string, clock: DeviceClock | undefined): string {
  const said = zoneFor(stated, clock?.counts);
  const inZone = /[+-]\d\d:?\d\d$/.test(said) ? withOffset(said) : inLocalZone(said);
  return clock?.offsetSeconds ? later(inZone, clock.offsetSeconds) : inZone;
}

/** What the clock counts in, whatever the file says: its digits stay, and their zone is the one that is known. */
function zoneFor(stated: string, counts: DeviceClock['counts']): string {
  if (counts === undefined) return stated;
  const digits = stated.replace(ZONE, '');
  return counts === 'utc' ? `${digits}Z` : localInstant(new Date(digits));
}

/** So many seconds later, in the same zone. */
function later(instant: string, seconds: number): string {
  const zone = /([+-])(\d\d):(\d\d)$/.exec(instant);
  const minutes = zone ? Number(`${zone[1]}1`) * (Number(zone[2]) * 60 + Number(zone[3])) : 0;
  const shifted = new Date(Date.parse(instant) + (seconds + minutes * 60) * 1000).toISOString();
  return shifted.slice(0, 19) + (zone?.[0] ?? 'Z');
}

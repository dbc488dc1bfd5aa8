/** Ranges in sentences: one number where it is known exactly, both ends where it is not. */
import type { UnitName } from '../../language/notes.ts';
import type { Range, Say } from './check.ts';

/** `24 kg`, or `13.8 kg to 24.2 kg` where both ends print differently. */
export function saidRange(say: Say, range: Range, kind: string, unit?: UnitName): string {
  const [low, high] = [say(range.low, kind, unit), say(range.high, kind, unit)];
  return low === high ? low : `${low} to ${high}`;
}

/** `3`, or `3 to 4`. For counts, which have no unit. */
export const saidCount = ({ low, high }: Range): string => (low === high ? String(low) : `${low} to ${high}`);

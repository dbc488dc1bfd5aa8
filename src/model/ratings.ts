/** A rating and what is printed on the thing: "rated at 1200 psi", "120 psi on the plate". */

import type { Arriving } from './claims.ts';
import { type Likeness, likenessOf } from './likeness.ts';
import type { StandingRow } from './rows.ts';
import type { Working } from './working.ts';

const PRINTED =
  /\b(?:plate|nameplate|label|sticker|stamp(?:ed)?|tag|stencil(?:led)?|book|manual|data ?sheet|spec|rated|rating)\b/i;
/** A point or a nought that got lost, and nothing weaker. */
const LOST_NOUGHT = 0.9;

export interface OtherRating {
  readonly row: StandingRow;
  readonly likeness: Likeness;
}

/**
 * What stands as the rating of the same thing and is a factor of ten off. A rating is an upper bound, so that the two do
 * not clash by themselves; but both tell one printed number. What the thing did ("it lifted 50 kilos") is none.
 */
export function otherRating(work: Working, { note, item, place }: Arriving): OtherRating | undefined {
  if (note.state !== 'quoted' && !PRINTED.test(place.clause)) return undefined;
  for (const row of work.draft.standingOf(item.id)) {
    if (row.attribute !== note.attribute || row.dimension !== note.dimension || row.unit !== note.unit)
      continue;
    if (row.status !== 'stands' || row.bound === note.bound || row.state !== 'quoted') continue;
    if (row.bound !== 'at-most' && note.bound !== 'at-most') continue;
    const likeness = likenessOf(row, note, work.settings.region);
    if (likeness?.kind === 'decimal' && likeness.weight >= LOST_NOUGHT) return { row, likeness };
  }
  return undefined;
}

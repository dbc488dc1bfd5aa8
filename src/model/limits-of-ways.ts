/** A size that is a limit for whatever comes by: "the door is 765 wide, so nothing bigger than that comes through". */
import type { Arriving } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import type { ClaimRow } from './rows.ts';
import { slotOf } from './rows.ts';
import { nearWords } from './talk.ts';
import type { Working } from './working.ts';

const NOTHING_OVER =
  /^[^.!?]{0,60}?[.!?]?[^.!?]{0,40}?\b(?:no|nothing|not a thing|never anything)\b(?: \w+)? (?:bigger|wider|larger|longer|taller|deeper|thicker|heavier|over|more)(?: than)? (?:that|it|this)\b([^.,;!?]{0,60})/i;
const PASSES =
  /\b(?:come|comes|coming|go|goes|going|get|gets|getting|fit|fits|pass|passes|up|down|in|through)\b/i;

/**
 * Files what was said to pass by no bigger than a figure as a limit of that size beside the figure itself. Nothing where
 * the words behind the figure set none.
 */
export function fileLimitOfWay(work: Working, { note, item, place }: Arriving, claim: ClaimRow): void {
  if (note.dimension !== 'length' && note.dimension !== 'mass') return;
  const found = NOTHING_OVER.exec(`${place.sentence.slice(place.until.length)} ${place.after}`);
  const passing = found?.[1]?.trim() ?? '';
  if (!found || !PASSES.test(passing)) return;
  const about = `anything ${passing} ${note.item}`;
  work.draft.put({
    table: 'limits',
    row: {
      id: note.id,
      itemId: item.id,
      slot: `${slotOf(item.id, note.attribute, note.dimension)}${LIMIT_MARK}`,
      said: about,
      attribute: note.attribute,
      dimension: note.dimension,
      about,
      sentence: `${nearWords(place)} ${found[0]}`.trim(),
      bound: 'at-most',
      value: note.value,
      unit: note.unit,
      source: claim.source,
      active: true,
    },
  });
}

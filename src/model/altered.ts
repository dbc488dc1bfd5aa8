/** Whether a new size is the end of a job that was to change it, and so no clash. */
import type { Span } from '../language/notes.ts';
import type { Arriving } from './claims.ts';
import { likenessOf } from './likeness.ts';
import { shapeOf, wordsOf } from './names.ts';
import type { StandingRow } from './rows.ts';
import { stemOf } from './stems.ts';
import type { Working } from './working.ts';

/**
 * "The uprights are trimmed, five ninety four": the end of a job that was to change the size is no surprise, nor is the
 * size of a part made anew that follows from others: "there's a new collar, 302".
 */
export function isAltered(work: Working, arriving: Arriving, standing: StandingRow): boolean {
  const { note } = arriving;
  const likeness = likenessOf(standing, note, work.settings.region);
  if (likeness && likeness.weight >= ALIKE) return false;
  // "It isn't 7 foot 1, it's 6 foot 11": the job did not make it so.
  if (note.replaces || note.change === 'corrected') return false;
  if (work.draft.formula(standing.slot) && isToldNew(arriving)) return true;
  const deed = work.memo.notes.done.find(
    ({ quote, span }) => ALTERS.test(quote) && isBesideIn(work.memo.text, span, note.span),
  );
  return deed !== undefined && work.draft.closedNow(deed.id);
}

/** Whether two notes stand in one clause, or with no more than a few words between them. */
function isBesideIn(text: string, a: Span, b: Span): boolean {
  const [first, second] = a.start <= b.start ? [a, b] : [b, a];
  if (second.start <= first.end) return true;
  const between = text.slice(first.end, second.start);
  return between.length <= FEW_WORDS && !/[.!?;]/.test(between);
}
/** In characters. */
const FEW_WORDS = 40;

/** "New legs are sawed", "rolled another collar": the thing itself, once more, without a word that it is still to be done. */
function isToldNew({ item, place, cue, note }: Arriving): boolean {
  if (cue.isNeeded || note.replaces || note.change) return false;
  const { head } = shapeOf(item.name);
  const [, told = ''] = /\b(?:new|another|fresh)((?: [\w'-]+){1,3})/i.exec(place.until) ?? [];
  return wordsOf(told).some((word) => stemOf(word) === head) && !STILL_TO_DO.test(place.clause);
}
const STILL_TO_DO = /\b(?:need|needs|want|wants|will|must|going to|gonna|order|ordered|i'll|to be)\b/i;

/** So much like the old one, it may have been misheard. */
const ALIKE = 0.8;
const ALTERS =
  /\b(?:trimmed|shortened|lengthened|opened|widened|narrowed|thinned|lowered|raised|moved|shifted|re-?cut|re-?made|re-?done|re-?bored|re-?set|planed|shaved|skimmed|ground|reamed|filed|bored|cut (?:down|back)|packed|lifted|dropped|extended|let out|(?:is|are|['’]s|['’]re) (?:out|down|up|back|in) to)\b/i;

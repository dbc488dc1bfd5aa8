/**
 * A size that is a limit for whatever comes by: "the door is 765 wide, so nothing bigger than that comes through", "740
 * clear, and everything has to come through it".
 */
import type { Arriving } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { shapeOf } from './names.ts';
import { isPassage } from './passages.ts';
import type { ClaimRow } from './rows.ts';
import { slotOf } from './rows.ts';
import { nearWords } from './talk.ts';
import type { Working } from './working.ts';

const NOTHING_OVER =
  /^[^.!?]{0,60}?[.!?]?[^.!?]{0,40}?\b(?:no|nothing|not a thing|never anything)\b(?: \w+)? (?:bigger|wider|larger|longer|taller|deeper|thicker|heavier|over|more)(?: than)? (?:that|it|this)\b([^.,;!?]{0,60})/i;
const PASSES =
  /\b(?:come|comes|coming|go|goes|going|get|gets|getting|fit|fits|pass|passes|up|down|in|through)\b/i;

/** "So that's the biggest thing that comes up": said behind the size of the way. */
const BIGGEST =
  /^[^.!?]{0,40}?[.!?]?[^.!?]{0,20}?\b(?:that|this)(?:'s| is| has to be| must be| will be|'ll be) (?:the )?(?:biggest|widest|largest|tallest|longest|heaviest|most)\b([^.,;!?]{0,60})/i;

const ALL =
  /\b(?:everything|whatever|anything|all of it|all of this|the lot|every \w+(?: \w+)?|all the \w+)\b/.source;
const MUST =
  /(?:has|have|'s got|'ve got|got|needs?|going|is|are|will have|'ll have) to|must|should|gotta|comes?|goes|is coming|is going/
    .source;
const BY =
  /(?:(?:come|go|get|fit|pass|be carried|be got|be brought) )?(?:\w+ ){0,3}?(?:through|past|up|down|via|by way of)/
    .source;
/** "... and everything has to come in through it": said behind the size. */
const ALL_BEHIND = new RegExp(
  `^[^.!?]{0,40}?[.!?]?[^.!?]{0,20}?${ALL}[^.,;!?]{0,40}? (?:${MUST}) (${BY}) (?:it|that|there|this|here)\\b`,
  'i',
);
/** "Everything has to come in through the hatch, and that's": said before it. */
const ALL_BEFORE = new RegExp(
  `${ALL}[^.,;!?]{0,40}? (?:${MUST}) (${BY}) (?:the|that|this|my|our) ([^.,;!?]{1,40})[^.!?]{0,40}$`,
  'i',
);

/**
 * Files what was said to pass by no bigger than a figure as a limit of that size beside the figure itself. Nothing where
 * the words around the figure set none.
 */
export function fileLimitOfWay(work: Working, arriving: Arriving, claim: ClaimRow): void {
  const { note, item, place } = arriving;
  if (note.dimension !== 'length' && note.dimension !== 'mass') return;
  const told = limitTold(arriving);
  if (!told || isOfLater(work, arriving, told)) return;
  const about = `anything ${told.passing} ${note.item}`;
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
      sentence: `${nearWords(place)} ${told.words}`.trim(),
      bound: 'at-most',
      value: note.value,
      unit: note.unit,
      source: claim.source,
      active: true,
    },
  });
}

interface Told {
  /** How things pass: "comes up", "through". */
  readonly passing: string;
  readonly words: string;
}

/** "The hearth's to be 840. The door's 765, nothing wider than that comes in": told of the later size, that of another thing. */
function isOfLater(work: Working, { note, place }: Arriving, { words }: Told): boolean {
  if (place.until.includes(words)) return false;
  const end = note.span.end + words.length;
  return work.memo.notes.figures.some(
    (other) =>
      other.item !== note.item &&
      other.dimension === note.dimension &&
      other.span.start >= note.span.end &&
      other.span.end <= end,
  );
}

/** The words that make a limit of the size, behind it or before it. */
function limitTold({ note, item, place }: Arriving): Told | undefined {
  const behind = `${place.sentence.slice(place.until.length)} ${place.after}`;
  const named = NOTHING_OVER.exec(behind) ?? BIGGEST.exec(behind);
  const passing = named?.[1]?.trim() ?? '';
  if (named && PASSES.test(passing)) return { passing, words: named[0] };
  // What must all go through a bench top is no size of it.
  const head = shapeOf(item.name).head;
  if (note.dimension !== 'length' || !isPassage(head)) return undefined;
  const all = ALL_BEHIND.exec(behind);
  if (all) return { passing: all[1] as string, words: all[0] };
  const before = ALL_BEFORE.exec(place.until.slice(0, place.until.length - note.quote.length));
  return before && isPassageNamed(before[2] as string, head)
    ? { passing: before[1] as string, words: before[0] }
    : undefined;
}

const isPassageNamed = (words: string, head: string): boolean =>
  words.split(/\s+/).some((word) => shapeOf(word).head === head);

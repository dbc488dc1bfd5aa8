/**
 * The clear sizes of an opening: "twenty three and a half clear by forty eight" is its width and then its height, as
 * openings are called in the trade (common practice, no source), and "622 clear" alone is its width.
 */
import { singular } from './lexicon/trade-nouns.ts';
import type { Attribute, FigureNote } from './notes.ts';

const OPENINGS: ReadonlySet<string> = new Set(
  'opening doorway door hatch hatchway window gate gateway companionway aperture archway arch entrance doorframe frame porthole skylight alcove passage'.split(
    ' ',
  ),
);
const isOpening = ({ item }: FigureNote) =>
  item
    .toLowerCase()
    .split(/[\s-]+/)
    .some((word) => OPENINGS.has(singular(word)));

/** Sizes that nobody has named a side of. */
const UNNAMED: ReadonlySet<Attribute> = new Set(['size', 'clearance']);
const BY = /^[\s,]*(?:clear )?(?:by|x|×)\s*$/i;
const UPRIGHT = /\b(?:high|tall|height|headroom|head room|upright)\b/i;
/** "610 clear", and not "610 clear of the wall". */
const CLEAR_BEHIND =
  /^\s*(?:mm|mil|inch(?:es)?|in)?\s*clear\b(?! (?:of|to|from|above|below|over|under|behind|all)\b)/i;
const CLEAR_WITHIN = /\bclear$/i;
const OF_A_PLACE = /^ (?:of|to|from|above|below|over|under|behind|all)\b/i;
/** "The clear opening is …", "clear width of the hatch …". */
const CLEAR_BEFORE = /\bclear (?:opening|width|size|way|hole)\b[^.;!?]{0,40}$/i;

/** Figures of a memo, the clear sizes of openings as width and height. Pure, in one pass. */
export function withClearOpenings(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  const sides = new Map<FigureNote, Attribute>();
  figures.forEach((figure, at) => {
    if (figure.dimension !== 'length' || figure.limit || !isOpening(figure) || sides.has(figure)) return;
    const next = figures[at + 1];
    if (!isClear(text, figure) && !(next && isClear(text, next))) return;
    const isPair =
      next !== undefined &&
      next.dimension === 'length' &&
      next.item === figure.item &&
      BY.test(text.slice(figure.span.end, next.span.start));
    if (isPair && (UNNAMED.has(figure.attribute) || UNNAMED.has(next.attribute))) {
      const isTurned = UPRIGHT.test(figure.quote) || next.attribute === 'width';
      sides.set(figure, isTurned ? 'height' : 'width').set(next, isTurned ? 'width' : 'height');
    } else if (
      isClear(text, figure) &&
      UNNAMED.has(figure.attribute) &&
      !UPRIGHT.test(clauseOf(text, figure))
    )
      sides.set(figure, 'width');
  });
  if (sides.size === 0) return figures;
  return figures.map((figure) => ({ ...figure, attribute: sides.get(figure) ?? figure.attribute }));
}

function isClear(text: string, { span, quote, dimension }: FigureNote): boolean {
  if (dimension !== 'length') return false;
  return (
    (CLEAR_WITHIN.test(quote) && !OF_A_PLACE.test(text.slice(span.end, span.end + 12))) ||
    CLEAR_BEHIND.test(text.slice(span.end, span.end + 40)) ||
    CLEAR_BEFORE.test(text.slice(Math.max(0, span.start - 80), span.start))
  );
}

function clauseOf(text: string, { span }: FigureNote): string {
  const before = text.slice(Math.max(0, span.start - 60), span.start);
  const after = text.slice(span.start, span.end + 30);
  return `${before.slice(before.search(/[^.;,!?]*$/))}${after.split(/[.;,!?]/)[0]}`;
}

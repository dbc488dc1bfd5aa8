/**
 * Reads that a weight is said of one of several: "four batteries at 26 kilos each", "eighteen kilos a sheet". The sum of
 * all that weighs something needs to know how many there are.
 */
import { singular } from './lexicon/trade-nouns.ts';
import type { FigureNote } from './notes.ts';
import { smallNumber } from './numbers/small-number.ts';

/** Right after the weight: "each", "apiece", "a piece", "per battery", "a sheet". */
const AFTER =
  /^[\s,]*(?:each(?! (?:side|end|way))|apiece|a[- ]?piece|a[- ]?pop|a[- ]?go|(?:per|a|an|for each) ([a-z]+))\b/i;
/** In the clause before it: "each of the two seats weighs", "every bag is", "they each weigh". */
const BEFORE =
  /(?<!\b(?:kilos?|kg|kgs|grams?|pounds?|lbs?|tonnes?|tons?|\d) )\b(?:each|every|apiece)\b(?! (?:side|end|way|day|time|week))[^.,;:!?]*$/i;
/** By length, area or room: nobody said how much there is of it. */
const PER_MEASURE =
  /^[\s,]*(?:per|a|an|to the|for (?:each|every)|\/) ?((?:(?:square|sq|cubic|running|linear) )?(?:metre|meter|foot|yard|litre|liter|gallon|m2|m3|m|ft)\b)/i;

/** Right after the weight, or right before it: that of them all. */
const TOGETHER_AFTER =
  /^[\s,]*(?:all )?(?:together|altogether|in total|in all|all told|all up|between (?:them|the \w+)|for the lot|the lot)\b/i;
const TOGETHER_BEFORE = /\b(?:together|altogether|in total|between them|the lot)\b[^.,;:!?]*$/i;

/** "26 kilos, and there are four of them", "26 kilos and I've got six": how many, said after. */
const COUNT_AFTER =
  /^[^.!?]{0,40}?\b(?:there (?:are|'re|will be)|there's|we(?:'ve| have)(?: got)?|i(?:'ve| have)(?: got)?|i need|we need) (\S+?(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)(?: of (?:them|those|these))?\s*(?:[.,;!?]|$)/i;

/** "The batteries are four at 27 kilos each": how many, said right before. */
const COUNT_BEFORE =
  /\b(?:are|'re|is|'s|got|have|need|makes?) ([a-z]+(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|\d+)(?: of (?:them|those|these))?,? (?:at|of)(?: (?:about|around|roughly))?\s*$/i;

/** Words of a sentence before and after a figure. */
function sentenceAround(text: string, { span }: FigureNote): readonly [before: string, after: string] {
  const before = text.slice(Math.max(0, span.start - 120), span.start);
  const after = text.slice(span.end, span.end + 80);
  return [before.slice(before.search(/[^.!?;]*$/)), after];
}

const headOf = ({ item }: FigureNote) => singular(item.toLowerCase().split(' ').at(-1) ?? '');

/** Whether a weight is that of several things together. */
function isOfAll(text: string, figure: FigureNote): boolean {
  const [before, after] = sentenceAround(text, figure);
  return TOGETHER_AFTER.test(after) || TOGETHER_BEFORE.test(before);
}

/** Whether a weight is that of one of several. */
function isOfEach(text: string, figure: FigureNote): boolean {
  const [before, after] = sentenceAround(text, figure);
  const found = AFTER.exec(after);
  if (!found) return BEFORE.test(before);
  const per = found[1]?.toLowerCase();
  if (per === undefined) return true;
  const head = headOf(figure);
  // "Eighteen kilos a sheet" of sheets; "ten kilos per metre" is no weight of one.
  return per === head || figure.item.toLowerCase().split(' ').map(singular).includes(per);
}

/** Figures of a memo, a weight of one of several with how many there are, where that was said. Pure, in one pass. */
export function withPieces(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  const counts = new Map<string, number>();
  const later = new Map<string, number>();
  for (const figure of figures)
    for (const name of namesOfCount(figure)) if (!later.has(name)) later.set(name, figure.value);
  return figures.map((figure) => {
    for (const name of namesOfCount(figure)) counts.set(name, figure.value);
    if (figure.dimension !== 'mass' || figure.attribute !== 'weight' || figure.limit) return figure;
    const per = PER_MEASURE.exec(text.slice(figure.span.end, figure.span.end + 40))?.[1];
    if (per !== undefined) return { ...figure, each: { per: per.toLowerCase() } };
    if (isOfAll(text, figure)) return { ...figure, each: { count: 1 } };
    if (!isOfEach(text, figure)) return figure;
    const [item, head] = [figure.item.toLowerCase(), headOf(figure)];
    // The count that was said last before it; "five lockers, nine kilos per locker" names the one shorter.
    const said =
      countBefore(text, figure) ??
      counts.get(item) ??
      later.get(item) ??
      counts.get(head) ??
      later.get(head) ??
      countAfter(text, figure);
    return { ...figure, each: isWhole(said) ? { count: said } : {} };
  });
}

const namesOfCount = (figure: FigureNote): readonly string[] =>
  figure.dimension === 'count' && figure.bound === 'exact' ? [figure.item.toLowerCase(), headOf(figure)] : [];

const isWhole = (count: number | undefined): count is number =>
  count !== undefined && Number.isInteger(count) && count > 0;

/** "They are four at 27 kilos each". */
function countBefore(text: string, figure: FigureNote): number | undefined {
  const said = COUNT_BEFORE.exec(sentenceAround(text, figure)[0])?.[1];
  return said === undefined ? undefined : smallNumber(said);
}

/** "26 kilos, and there are four of them". */
const countAfter = (text: string, { span }: FigureNote): number | undefined =>
  smallNumber(COUNT_AFTER.exec(text.slice(span.end, span.end + 90))?.[1] ?? '');

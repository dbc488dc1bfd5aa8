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
const BEFORE = /\b(?:each|every|apiece)\b(?! (?:side|end|way|day|time|week))[^.,;:!?]*$/i;
/** "26 kilos, and there are four of them", "26 kilos and I've got six": how many, said after. */
const COUNT_AFTER =
  /^[^.!?]{0,40}?\b(?:there (?:are|'re|will be)|there's|we(?:'ve| have)(?: got)?|i(?:'ve| have)(?: got)?|i need|we need) (\S+?(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)(?: of (?:them|those|these))?\s*(?:[.,;!?]|$)/i;

/** Words of a sentence before and after a figure. */
function sentenceAround(text: string, { span }: FigureNote): readonly [before: string, after: string] {
  const before = text.slice(Math.max(0, span.start - 120), span.start);
  const after = text.slice(span.end, span.end + 80);
  return [before.slice(before.search(/[^.!?;]*$/)), after];
}

const headOf = ({ item }: FigureNote) => singular(item.toLowerCase().split(' ').at(-1) ?? '');

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

/** Figures of a memo, a weight of one of several with how many there are, where that was said. Pure. */
export function withPieces(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  return figures.map((figure) => {
    if (figure.dimension !== 'mass' || figure.attribute !== 'weight' || figure.limit) return figure;
    if (!isOfEach(text, figure)) return figure;
    const count = countOf(text, figures, figure);
    return { ...figure, each: count === undefined ? {} : { count } };
  });
}

/** How many there are: the count of the same thing that stands nearest before the weight, else right after it. */
function countOf(text: string, figures: readonly FigureNote[], weight: FigureNote): number | undefined {
  const all = figures.filter(({ dimension }) => dimension === 'count');
  const same = all.filter((one) => one.item.toLowerCase() === weight.item.toLowerCase());
  // "Five lockers, nine kilos per locker": the one is named shorter than the many.
  const counts = same.length > 0 ? same : all.filter((one) => headOf(one) === headOf(weight));
  const told = counts.findLast(({ span }) => span.end <= weight.span.start) ?? counts[0];
  const said = told?.bound === 'exact' ? told.value : undefined;
  const after =
    said ?? smallNumber(COUNT_AFTER.exec(text.slice(weight.span.end, weight.span.end + 90))?.[1] ?? '');
  return after !== undefined && Number.isInteger(after) && after > 0 ? after : undefined;
}

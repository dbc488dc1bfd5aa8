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

const NUMBER = '[a-z]+(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|\\d+';
/**
 * "Eight pounds each, three of them", "eight pounds each for the crates, three in all", "eight pounds each, times three":
 * how many, said behind it with no verb. "Two of them are in the locker" counts a part of them.
 */
const COUNT_BESIDE = new RegExp(
  `^\\s*(?:each|apiece|a piece)\\b(?:(?: for| the| those| these| of)[a-z ]{0,30})?(?:[\\s,(:–-]+(?:and |that's |all |so )?(${NUMBER}) (?:of (?:them|those|these)|in all|all told|altogether|in total|off)|[\\s,]+(?:times|x|×) (${NUMBER}))(?=\\s*(?:$|[.,;:!?)]|(?:in all|all told|altogether|in total|and)\\b))`,
  'i',
);

/** "Three of the crates at 8 pounds each", "three of them, 8 pounds each": how many, said right before. */
const PART_BEFORE = new RegExp(
  `(?:^|[\\s,:])(${NUMBER}) of (?:them|those|these|(?:the|my|our|those|these) [a-z]+(?: [a-z]+)?)(?: (?:at|of)(?: (?:about|around|roughly))?|,)\\s*$`,
  'i',
);

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

const ONES = 'two|three|four|five|six|seven|eight|nine|ten|a dozen|[2-9]';
const TENS =
  '(?:ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?|[1-9]\\d)';
/** "Three twenty kilo", as it would be read for three hundred and twenty. */
const SO_MANY_OF = new RegExp(
  `^(${ONES})[ -]+(${TENS})[ -]+(?:kilo(?:gram(?:me)?)?s?|kgs?|pounds?|lbs?|lit(?:re|er)s?|gallons?|tonnes?|tons?|grams?)$`,
  'i',
);
/** Goods in pieces, right behind it: "bags of plaster". */
const IN_PIECES =
  /^[\s-]+(?:(?:paper|plastic|steel|gas|water|lead|iron|cast-iron|sand|cement|plaster|paint|feed|deck|ballast) )?(?:bags|sacks|tins|cans|drums|tubs|buckets|pails|kegs|barrels|bottles|cylinders|canisters|cartridges|boxes|crates|packs|packets|bales|rolls|coils|blocks|slabs|sheets|panes|panels|batteries|weights|ingots|bars|bricks|stones|castings|tanks|jerrycans|jerry cans|containers|cubes|loads|pallets|anchors|plates)\b/i;

/** "Three twenty kilo bags" are three of twenty, and nobody's three hundred and twenty. */
function inPieces(text: string, figure: FigureNote): FigureNote {
  if (figure.dimension !== 'mass' && figure.dimension !== 'volume') return figure;
  const found = SO_MANY_OF.exec(figure.quote.trim());
  if (!found || !IN_PIECES.test(text.slice(figure.span.end, figure.span.end + 40))) return figure;
  const [, ones = '', tens = ''] = found;
  const [count, one] = [ones === 'a dozen' ? 12 : smallNumber(ones), smallNumber(tens)];
  if (!count || !one || figure.value !== count * 100 + one) return figure;
  const start = figure.span.start + figure.quote.indexOf(tens, ones.length);
  const bare = {
    ...figure,
    value: one,
    quote: text.slice(start, figure.span.end),
    span: { start, end: figure.span.end },
  };
  return figure.dimension === 'mass' ? { ...bare, attribute: 'weight', each: { count } } : bare;
}

/** "8 pounds each, times three": the three is no weight. */
const isTimes = (text: string, { dimension, span }: FigureNote): boolean =>
  dimension === 'mass' &&
  /\b(?:each|apiece|a piece)[\s,]+(?:times|x|×)\s*$/i.test(
    text.slice(Math.max(0, span.start - 30), span.start),
  );

/** Figures of a memo, a weight of one of several with how many there are, where that was said. Pure, in one pass. */
export function withPieces(text: string, told: readonly FigureNote[]): readonly FigureNote[] {
  const figures = told.map((figure) => inPieces(text, figure)).filter((figure) => !isTimes(text, figure));
  const counts = new Map<string, number>();
  const later = new Map<string, number>();
  for (const figure of figures)
    for (const name of namesOfCount(figure)) if (!later.has(name)) later.set(name, figure.value);
  return figures.map((figure) => {
    for (const name of namesOfCount(figure)) counts.set(name, figure.value);
    if (figure.each) return figure;
    if (figure.dimension !== 'mass' || figure.attribute !== 'weight' || figure.limit) return figure;
    const per = PER_MEASURE.exec(text.slice(figure.span.end, figure.span.end + 40))?.[1];
    if (per !== undefined) return { ...figure, each: { per: per.toLowerCase() } };
    if (isOfAll(text, figure)) return { ...figure, each: { count: 1 } };
    if (!isOfEach(text, figure)) return figure;
    const [item, head] = [figure.item.toLowerCase(), headOf(figure)];
    // The count that was said last before it; "five lockers, nine kilos per locker" names the one shorter.
    const said =
      countBefore(text, figure) ??
      countBeside(text, figure) ??
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

/** Whether a figure is told of each of several ("eight watts each"), with how many there are where its sentence says it. */
export function eachIn(text: string, figure: FigureNote): { readonly count?: number } | undefined {
  if (isOfAll(text, figure) || !isOfEach(text, figure)) return undefined;
  const count = countBefore(text, figure) ?? countBeside(text, figure) ?? countAfter(text, figure);
  return isWhole(count) ? { count } : {};
}

/** "They are four at 27 kilos each", "three of the crates at 8 pounds each". */
function countBefore(text: string, figure: FigureNote): number | undefined {
  const [before] = sentenceAround(text, figure);
  const said = COUNT_BEFORE.exec(before)?.[1] ?? PART_BEFORE.exec(before)?.[1];
  return said === undefined ? undefined : smallNumber(said);
}

/** "8 pounds each, three of them". */
function countBeside(text: string, { span }: FigureNote): number | undefined {
  const [, of, times] = COUNT_BESIDE.exec(text.slice(span.end, span.end + 90)) ?? [];
  const count = smallNumber(of ?? times ?? '');
  return isWhole(count) ? count : undefined;
}

/** "26 kilos, and there are four of them". */
const countAfter = (text: string, { span }: FigureNote): number | undefined =>
  smallNumber(COUNT_AFTER.exec(text.slice(span.end, span.end + 90))?.[1] ?? '');

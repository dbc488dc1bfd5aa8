/**
 * Reads what was ordered and what came of it: how many, of what size, and other goods than those ordered. Leans on the
 * arrivals that the statements found; no sentence without one, or right after one, is a delivery.
 */
import { OWN_SIZES } from '../items/attributes.ts';
import type { Phrase } from '../items/noun-phrases.ts';
import { type Parse, tagAt, wordAt } from '../items/parse.ts';
import { FAULT_ADJECTIVES } from '../lexicon/fault-words.ts';
import { type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { ArrivalNote, Attribute, DeliveryNote, DeliverySize, FigureNote } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import {
  figuresIn,
  type Line,
  LONG_AGO,
  lineAt,
  nameInWords,
  phrasesOf,
  type RecordScene,
  wordAtOffset,
} from './scene.ts';

/** Sizes that goods are ordered by. */
const SIZES: ReadonlySet<Attribute> = new Set([
  ...OWN_SIZES,
  'weight',
  'volume',
  'voltage',
  'current',
  'power',
]);

const NO_GOODS: ReadonlySet<NounKind> = new Set(['person', 'time', 'abstract', 'measure', 'air', 'region']);

/** Reads the deliveries of one memo, in order of speech. */
export function readDeliveries(scene: RecordScene): readonly DeliveryNote[] {
  return scene.arrivals.flatMap((arrival) => deliveryOf(scene, arrival) ?? []);
}

function deliveryOf(scene: RecordScene, arrival: ArrivalNote): DeliveryNote | undefined {
  const line = lineAt(scene, arrival.span.start);
  if (!line || line.asks || LONG_AGO.test(line.words) || CAME_LOOSE.test(line.words)) return undefined;
  // "Coming Friday" of what was ordered before tells a day, and orders nothing.
  if (!arrival.received && !ORDERS.test(line.words)) return undefined;
  const goods = goodsOf(scene, line, arrival);
  const lines = linesAbout(scene, line, goods);
  const told: Told = { scene, lines, arrival, ...(goods ? { goods } : {}) };
  const counted = arrival.received ? countOfReceived(told) : countOfOrder(told);
  const sizes = uniqueSizes(lines.flatMap((one) => sizesIn(told, one)));
  const instead = arrival.received ? firstOf(lines, (one) => insteadIn(one)) : undefined;
  // A number of nobody knows what is held against nothing.
  if (!goods && counted.outOf === undefined && !instead) return undefined;
  if (counted.count === undefined && counted.short === undefined && sizes.length === 0 && !instead)
    return undefined;
  const telling = lines.findLast((one) => tells(told, one)) ?? line;
  const end = Math.max(arrival.span.end, endOf(scene, telling));
  const span = { start: arrival.span.start, end };
  return {
    kind: 'delivery',
    quote: scene.text.slice(span.start, span.end),
    span,
    item: goods ? nameOfGoods(scene, goods) : '',
    act: arrival.received ? 'received' : 'ordered',
    ...counted,
    sizes,
    ...(instead ? { instead } : {}),
  };
}

/** Whether a sentence adds to what is known of the delivery. */
function tells(told: Told, line: Line): boolean {
  if (sizesIn(told, line).length > 0) return true;
  return told.arrival.received && (countSaid(told, line) !== undefined || insteadIn(line) !== undefined);
}

/** An arrival, its goods by name, and the sentences that tell of it. */
interface Told {
  readonly scene: RecordScene;
  readonly lines: readonly Line[];
  readonly arrival: ArrivalNote;
  readonly goods?: Phrase;
}

function firstOf<T, R>(list: readonly T[], look: (one: T) => R | undefined): R | undefined {
  for (const one of list) {
    const found = look(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** "Came through", "came off": nothing was delivered. */
const CAME_LOOSE = / (?:came|come|comes|coming) (?:through|off|out|loose|undone|apart|away|unstuck) /;

const ORDERS =
  / (?:order|ordered|ordering|bought|buy|paid for|on order|reserved|put in for|sent for|sent off for|booked) /;

function endOf(scene: RecordScene, line: Line): number {
  return line.end - (/[\s.!?…,;]*$/.exec(scene.text.slice(line.start, line.end))?.[0].length ?? 0);
}

/** The goods by name: in the arrival's own words, else the thing of an earlier sentence that the arrival is known by. */
function goodsOf(scene: RecordScene, line: Line, arrival: ArrivalNote): Phrase | undefined {
  const { start, end } = arrival.span;
  const named = arrival.item.toLowerCase();
  const own = phrasesOf(scene, line).filter((phrase) => {
    const first = scene.parse.words[phrase.first]?.span.start ?? 0;
    return first >= start && first < end && isGoods(phrase);
  });
  const inItem = own.find(({ head }) => named.includes(head));
  if (inItem) return inItem;
  const listed = goodsListed(scene, line, arrival, own);
  if (listed) return listed;
  const at = line.index;
  return scene.lines
    .slice(Math.max(0, at - 2), at)
    .flatMap((one) => phrasesOf(scene, one))
    .findLast(
      (phrase) => isGoods(phrase) && (named.endsWith(phrase.head) || isOfArrival(scene, phrase, own)),
    );
}

/** "The parcel came, four hinges and two latches": what came in it is named after it. */
function goodsListed(
  scene: RecordScene,
  line: Line,
  arrival: ArrivalNote,
  own: readonly Phrase[],
): Phrase | undefined {
  if (own.length > 0 || !/\b(?:parcel|delivery|order|box|lorry|truck|pallet|post|load)\b/i.test(arrival.item))
    return undefined;
  return phrasesOf(scene, line).find((phrase) => {
    const start = scene.parse.words[phrase.first]?.span.start ?? 0;
    return start >= arrival.span.end && isGoods(phrase) && countBefore(scene, phrase) !== undefined;
  });
}

/** "The boards came. Only six of the eight turned up": the goods of the arrival just before, where no other are named. */
function isOfArrival({ parse, arrivals }: RecordScene, phrase: Phrase, own: readonly Phrase[]): boolean {
  const span = parse.words[phrase.first]?.span;
  return (
    own.length === 0 &&
    span !== undefined &&
    arrivals.some((one) => span.start >= one.span.start && span.end <= one.span.end)
  );
}

function isGoods(phrase: Phrase): boolean {
  if (phrase.pronoun !== undefined || phrase.name.length === 0) return false;
  if (
    /^(?:lorry|van|truck|courier|post|delivery|order|driver|parcel|box|pallet|merchant|merchants|yard|shop|supplier|lot|rest|load|postman)s?$/.test(
      phrase.head,
    )
  )
    return false;
  return ![...phrase.kinds].some((kind) => NO_GOODS.has(kind));
}

/** "Boards of larch" are larch boards: the complement that tells the material belongs to the name. */
function nameOfGoods(scene: RecordScene, phrase: Phrase): string {
  const of = materialOf(scene, phrase);
  const name = nameInWords(scene, phrase);
  return of ? `${nameInWords(scene, of)} ${name}` : name;
}

/** What goods are made of: "larch" in "boards of larch", "ply" in "sheets of 12 mil ply". */
function materialOf(scene: RecordScene, phrase: Phrase): Phrase | undefined {
  if (wordAt(scene.parse, phrase.last + 1) !== 'of') return undefined;
  let at = phrase.last + 2;
  while (/^(?:quantity|number|unit|dimension)$/.test(tagAt(scene.parse, at) ?? '') && !phraseAfter(scene, at))
    at++;
  const next = phraseAfter(scene, at);
  return next && next.pronoun === undefined && (next.kinds.has('material') || next.kinds.has('sheet'))
    ? next
    : undefined;
}

function phraseAfter({ parse }: RecordScene, at: number): Phrase | undefined {
  const index = parse.phraseOfWord[at];
  return index === undefined || index < 0 ? undefined : parse.phrases[index];
}

/** The sentence itself, and those right after it that go on about the goods. */
function linesAbout(scene: RecordScene, line: Line, goods: Phrase | undefined): readonly Line[] {
  const about = [line];
  for (const next of scene.lines.slice(line.index + 1, line.index + 3)) {
    if (next.asks || hasOtherArrival(scene, next)) break;
    const words = next.words.replace(
      /^ (?:(?:and|but|so|only|well|right|mind you|trouble is|problem is|thing is|,) )*/,
      ' ',
    );
    const pronoun =
      /^ (?:they|it|these|those|that|there 's|there are|there were|there 're|only|we 're|i 'm|just|one|two|three|#) /.test(
        words,
      );
    const named = goods !== undefined && phrasesOf(scene, next)[0]?.head === goods.head;
    if (!pronoun && !named) break;
    if (!/(?: # | (?:not|short|missing|only|instead|of|them) )/.test(next.words)) break;
    about.push(next);
  }
  return about;
}

const hasOtherArrival = ({ arrivals }: RecordScene, line: Line) =>
  arrivals.some(({ span }) => span.start >= line.start && span.start < line.end);

/** A small whole number in words, in digits, or read as a count. */
function numberAt(scene: RecordScene, at: number): number | undefined {
  const { parse, figures } = scene;
  const quantity = parse.words[at]?.quantity;
  if (quantity !== undefined) {
    const figure = figures[quantity];
    return figure && figure.dimension === 'count' && figure.bound === 'exact' ? figure.value : undefined;
  }
  return numberInWords(parse, at);
}

/** A whole number below a hundred, also where it takes two words; larger ones in words are left alone. */
function numberInWords(parse: Parse, at: number): number | undefined {
  const [before, word, after] = [at - 1, at, at + 1].map((k) => wordAt(parse, k)) as [string, string, string];
  if (/^(?:hundred|thousand|point)$/.test(before) || /^(?:hundred|thousand|point)$/.test(after))
    return undefined;
  if (before === 'and' && /^(?:hundred|thousand)$/.test(wordAt(parse, at - 2))) return undefined;
  const pair = smallNumber(`${word} ${after}`) ?? smallNumber(`${before} ${word}`);
  return pair ?? smallNumber(word);
}

/** A quantity that is a length by its bare number ("there are only 6 of them") is a count all the same. */
function bareNumberAt(scene: RecordScene, at: number): number | undefined {
  const known = numberAt(scene, at);
  if (known !== undefined) return known;
  const quantity = scene.parse.words[at]?.quantity;
  const figure = quantity === undefined ? undefined : scene.figures[quantity];
  return figure?.assumed?.includes('unit') && Number.isInteger(figure.value) ? figure.value : undefined;
}

type Counted = Pick<DeliveryNote, 'count' | 'outOf' | 'short' | 'shortOf'>;

const N = '(#|[a-z]+|\\d+)';
const END = '(?=(?:(?:\\.|,|!|;|and|but|so|came|here|there|arrived|turned|were|was|are) )|$)';
const THERE_ARE_ONLY = new RegExp(
  ` (?:there (?:'s|are|is|were|was|'re)|theres) (?:only|just) ${N} (?:[a-z]+s )?${END}`,
);
const ONE_COUNT: readonly RegExp[] = [
  new RegExp(
    ` (?:only|just) ${N} (?:of them |of 'em |of those )?(?:came|turned up|arrived|showed up|here|in the (?:box|pack|bundle|crate|parcel)|were|was|are|is|there|of them|\\.) `,
  ),
  new RegExp(` there (?:'s|are|is|were|was|'re) (?:only |just )?${N} (?:of them|of 'em|in (?:it|the)|not) `),
  THERE_ARE_ONLY,
];
const ALL = new RegExp(` all ${N}(?: of them| of 'em)? ${END}`);
const SHORT = new RegExp(
  ` ${N} (?:(?:[a-z]+s|box|sheet|board|length|roll|bag|tin|pack) )?(?:(?:is|are|were|was|of them (?:are |is |were )?) )?(?:short|missing|too few) `,
);
const SHORT_OF =
  / (?:#|[a-z]+|\d+) ([a-z]+s|box|sheet|board|length|roll|bag|tin|pack) (?:(?:is|are|were|was) )?(?:short|missing|too few) /;
const CAME =
  '(?:came|turned up|arrived|showed up|here|so far|in the|were there|were in|are here|is here|and|but|\\.|,|!)';
const OUT_OF = new RegExp(
  ` ${N} (?:out )?of (?:the|my|our|those) ${N} (?:(?:[a-z]+ ){0,2}[a-z]+s )?(?:(?:have|has|had|'ve) )?${CAME} `,
);
const SHOULD_BE = new RegExp(
  ` (?:should have been|should 've been|should be|supposed to be|meant to be|i ordered|i 'd ordered|i asked for|i paid for) ${N} (?=(?:\\.|,|!|and|but|so|of) )`,
);
const OF_THEM = new RegExp(` , ${N} of (?:them|'em) `);
const NOT_SO_MANY = new RegExp(` ${N} (?:[a-z]+s )?(?:, )?(?:not|instead of|rather than) ${N} `);
/** Words between the arrival and what is said of its number in the same sentence. */
const NEAR = 6;
const FAR = 14;

/** How many came, or how many did not: in the arrival's words, right after them, or in the sentence that goes on about it. */
function countOfReceived(told: Told): Counted {
  const said = firstOf(told.lines, (line) => countSaid(told, line)) ?? countThatCame(told);
  if (said.count === undefined || said.outOf !== undefined) return said;
  // "Sixteen rafters came, should have been eighteen."
  const should = firstOf(told.lines, (line) => strictNumber(told, line, SHOULD_BE));
  return should !== undefined && should !== said.count ? { ...said, outOf: should } : said;
}

/** "Two of the panes turned up broken" tells what is broken, and not how many came. */
function countThatCame(told: Told): Counted {
  const { scene, goods, arrival } = told;
  const line = lineAt(scene, arrival.span.start);
  const isPart = goods && wordAt(scene.parse, goods.first - 1) === 'of';
  const isBroken = line?.words.split(' ').some((word) => FAULT_ADJECTIVES.has(word));
  return isPart && isBroken ? {} : countOfOrder(told);
}

/** The number in front of the goods. */
function countOfOrder({ scene, goods, arrival }: Told): Counted {
  const isOwn = goods && (scene.parse.words[goods.first]?.span.start ?? 0) >= arrival.span.start;
  const count = isOwn ? countBefore(scene, goods) : undefined;
  return count === undefined ? {} : { count };
}

function countSaid(told: Told, line: Line): Counted | undefined {
  const [of, ofTotal] = numbersOf(told, line, OUT_OF, NEAR);
  if (of !== undefined && ofTotal !== undefined && of < ofTotal) return { count: of, outOf: ofTotal };
  const [some, should] = numbersOf(told, line, NOT_SO_MANY, NEAR);
  // "18 not 21" is a thickness.
  const isCount = firstNumber(told, line, NOT_SO_MANY) === some;
  if (some !== undefined && should !== undefined && some < should && isCount)
    return { count: some, outOf: should };
  const all = numbersOf(told, line, ALL, 1)[0] ?? numbersOf(told, line, OF_THEM, 2)[0];
  if (all !== undefined) return { count: all };
  for (const pattern of ONE_COUNT) {
    const count = numbersOf(told, line, pattern, pattern === THERE_ARE_ONLY ? FAR : NEAR)[0];
    if (count !== undefined) return { count };
  }
  const short = numbersOf(told, line, SHORT, NEAR)[0];
  if (short === undefined) return undefined;
  const shortOf = SHORT_OF.exec(line.words)?.[1];
  return shortOf === undefined ? { short } : { short, shortOf };
}

/** The number of a pattern where it was not read as a size. */
function strictNumber({ scene }: Told, line: Line, pattern: RegExp): number | undefined {
  const found = pattern.exec(line.words);
  return found ? numberAt(scene, wordAtOffset(line, found.index + found[0].trimEnd().length - 1)) : undefined;
}

/** The first number of a pattern where it can be no size. */
function firstNumber({ scene }: Told, line: Line, pattern: RegExp): number | undefined {
  const found = pattern.exec(line.words);
  return found ? numberAt(scene, wordAtOffset(line, found.index + 1)) : undefined;
}

/** The numbers that a pattern finds near the arrival. A number that was read as a size is none. */
function numbersOf(
  { scene, arrival }: Told,
  line: Line,
  pattern: RegExp,
  near: number,
): readonly (number | undefined)[] {
  const found = pattern.exec(line.words);
  if (!found) return [];
  const from = wordAtOffset(line, found.index + 1);
  const isLater = line.start > arrival.span.end;
  const away = wordsAfter(scene, arrival.span.end, from);
  if (!isLater && away > near) return [];
  let at = found.index;
  return found.slice(1).map((word) => {
    at = line.words.indexOf(` ${word} `, at) + 1;
    return bareNumberAt(scene, wordAtOffset(line, at));
  });
}

function wordsAfter({ parse }: RecordScene, offset: number, word: number): number {
  let count = 0;
  for (let k = word - 1; k >= 0 && (parse.words[k]?.span.start ?? 0) >= offset; k--) count++;
  return count;
}

/** "Eight larch boards": the number in front of the goods. */
function countBefore(scene: RecordScene, goods: Phrase): number | undefined {
  const { parse } = scene;
  const inside = goods.quantity === undefined ? undefined : scene.figures[goods.quantity];
  if (inside) return inside.dimension === 'count' && inside.bound === 'exact' ? inside.value : undefined;
  for (let k = goods.first; k <= goods.last; k++) {
    const own =
      tagAt(parse, k) === 'number' || tagAt(parse, k) === 'quantity' ? numberAt(scene, k) : undefined;
    if (own !== undefined && goods.plural) return own;
  }
  const isPart = wordAt(parse, goods.first - 1) === 'of';
  const before = goods.first - (isPart ? 2 : 1);
  const isNumber = tagAt(parse, before) === 'number' || tagAt(parse, before) === 'quantity';
  const count = isNumber ? numberAt(scene, before) : countThatNames(scene, goods);
  return goods.plural && count !== undefined && count > 1 ? count : undefined;
}

/** A count whose words hold the goods as well: "eight boards" is one figure. */
function countThatNames(scene: RecordScene, goods: Phrase): number | undefined {
  const span = scene.parse.words[goods.last]?.span;
  const found =
    span &&
    scene.figures.find(
      (one) =>
        one.dimension === 'count' &&
        one.bound === 'exact' &&
        one.span.start < span.start &&
        one.span.end >= span.end,
    );
  return found?.value;
}

function sizesIn({ scene, goods, arrival }: Told, line: Line): readonly DeliverySize[] {
  return figuresIn(scene, line).flatMap((figure) => {
    // In an order nothing is placed: "21 millimetres from the mill" is a size.
    const attribute = figure.attribute === 'offset' && !arrival.received ? 'size' : figure.attribute;
    if (!SIZES.has(attribute) || figure.bound !== 'exact' || figure.limit) return [];
    if (!isOfGoods(scene, figure, goods)) return [];
    // "I ordered 21": what should have come is no size of what came.
    if (arrival.received && NOT_CAME.has(figure.state ?? '')) return [];
    const shouldBe = arrival.received ? shouldBeOf(scene, figure) : undefined;
    if (arrival.received && shouldBe === undefined && !isSaidToBe(scene, line, figure, arrival)) return [];
    const { dimension, value, unit, quote } = figure;
    return [{ attribute, dimension, value, unit, quote, ...(shouldBe === undefined ? {} : { shouldBe }) }];
  });
}

const NOT_CAME: ReadonlySet<string> = new Set(['ordered', 'target', 'assumed', 'calculated', 'quoted']);

/** "They're 18 thick": the size is what the goods are. "It's in, three litres to the line" is a level. */
function isSaidToBe(scene: RecordScene, line: Line, figure: FigureNote, arrival: ArrivalNote): boolean {
  if (figure.span.end <= arrival.span.end) return true;
  const { parse } = scene;
  let at = parse.wordOfQuantity[scene.figures.indexOf(figure)] ?? -1;
  if (at < 0) return false;
  while (
    at > line.first &&
    /^(?:only|just|all|actually|about|exactly|a|at|in|now)$/.test(wordAt(parse, at - 1))
  )
    at--;
  const verb = wordAt(parse, at - 1);
  // As recognisers spell "it's" and "they're".
  if (/^(?:its|theyre)$/.test(verb)) return true;
  if (verb === ',' && isFragment(scene, arrival, at)) return true;
  // "600 by 1000": the second size goes with the first.
  if (verb === 'by' && tagAt(parse, at - 2) === 'quantity') return true;
  if (!/^(?:is|are|'s|'re|was|were|measure|measures|come|came)$/.test(verb)) return false;
  const subject = wordAt(parse, at - 2);
  return (
    /^(?:they|it|these|those|that|them|each|all|which|ones)$/.test(subject) || tagAt(parse, at - 2) === 'noun'
  );
}

/** "The slats came Monday, fourteen of them, forty wide": nothing but short phrases stands between. */
function isFragment({ parse }: RecordScene, { span }: ArrivalNote, at: number): boolean {
  let words = 0;
  for (let k = at - 1; k >= 0 && (parse.words[k]?.span.start ?? 0) >= span.end; k--) {
    if (/^(?:verb|participle|be|modal|auxiliary|conjunction)$/.test(tagAt(parse, k) ?? '')) return false;
    words++;
  }
  return words <= 8;
}

function isOfGoods(scene: RecordScene, figure: FigureNote, goods: Phrase | undefined): boolean {
  if (!goods) return false;
  const head = singular(figure.item.toLowerCase().split(/\s+/).at(-1) ?? '');
  return [goods, materialOf(scene, goods)].some((phrase) => phrase && singular(phrase.head) === head);
}

function shouldBeOf(scene: RecordScene, figure: FigureNote): number | undefined {
  if (figure.replaces && figure.replaces.unit === figure.unit) return figure.replaces.value;
  const after = scene.text.slice(figure.span.end, figure.span.end + 60);
  const found =
    /^(?: (?:mil|mm|millimetres|thick|wide|long|deep|high))*,? (?:not|instead of|rather than|and not|when (?:it|they) should (?:be|have been)|(?:(?:and|when|where|but) )?i (?:ordered|asked for|wanted))(?: the)? (\d+(?:\.\d+)?|[a-z]+)\b(?![ -](?:quarters?|eighths?|sixteenths?|half|hundred|thousand|point|foot|feet|one|two|three|four|five|six|seven|eight|nine)\b|[/\d])/i.exec(
      after,
    );
  const word = found?.[1]?.toLowerCase() ?? '';
  const value = smallNumber(word);
  return value === figure.value ? undefined : value;
}

function uniqueSizes(sizes: readonly DeliverySize[]): readonly DeliverySize[] {
  return sizes.filter(
    (size, k) =>
      size.attribute === 'size' || sizes.findIndex((one) => one.attribute === size.attribute) === k,
  );
}

/** "They've sent gloss instead of matt": other goods. Numbers are sizes and read as such. */
const INSTEAD =
  / (?:sent|delivered|brought|gave|given|got|came as|came in|it 's|they 're|that 's|is|are) (?:me |us )?(?:the |a |an |some )?((?:[a-z-]+ ){1,3})(?:instead of|rather than|not) (?:the |a |an )?((?:[a-z-]+ ){1,3}?)(?:\.|,|!|;|and|but|so|like|that|as|which|i) /;
/** ", birch instead of poplar": right after what came. */
const INSTEAD_FRAGMENT =
  / , (?:it 's |they 're )?((?:[a-z-]+ ){1,2})(?:instead of|rather than|not) (?:the )?((?:[a-z-]+ ){1,2}?)(?:\.|,|!|;|and|but|so|like) /;
const NO_PRODUCT =
  /^(?:one|ones|two|it|them|that|bad|good|great|right|here|yet|sure|what|quite|much|really|very|happy|too|the|all|them all|both|what i) ?$/;

function insteadIn(line: Line): DeliveryNote['instead'] {
  const fragment = INSTEAD_FRAGMENT.exec(line.words);
  const found = fragment ?? INSTEAD.exec(line.words);
  if (!found) return undefined;
  const [came, ordered] = [found[1]?.trim() ?? '', found[2]?.trim() ?? ''];
  const named = (words: string) =>
    words !== '' && !NO_PRODUCT.test(words) && !/\b(?:i|we|they|it|to|for|is|was)\b/.test(words);
  // "Sent the wrong one, not what I asked for" names nothing; "it's here, not at the yard" no goods.
  const isNot = found === fragment || found[0].includes(' not ');
  if (!named(came) || !named(ordered)) return undefined;
  if (isNot && ![came, ordered].every(isGoodsWord)) return undefined;
  return { came, ordered };
}

/** With a bare "not" both sides must be words for goods or for their finish. */
const isGoodsWord = (words: string) => FINISHES.has(singular(words.split(' ').at(-1) ?? ''));

const FINISHES: ReadonlySet<string> = new Set(
  `gloss matt matte satin eggshell clear white black grey gray galvanised galvanized stainless brass bronze oak ash pine spruce
  larch cedar douglas fir mahogany teak iroko sapele birch beech poplar plywood ply mdf osb acrylic glass polycarbonate copper
  steel aluminium aluminum plastic slow fast left right port starboard smooth sawn planed rough metric imperial single double`.split(
    /\s+/,
  ),
);

/**
 * Reads batches: what was mixed or put on, with what ratio, how it was metered, in what air, on what surface, at what
 * humidity, and where it went. What is only planned, supposed, asked, or read off the tin is none.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { phraseAt, tagAt, wordAt } from '../items/parse.ts';
import { isProduct, PORTIONS, productOfVerb } from '../lexicon/batch-products.ts';
import { type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { BatchFact, BatchFactKind, BatchNote, FigureNote, Span } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { mixesOther } from './mixes-other.ts';
import {
  clauseEnd,
  clauseStart,
  figuresIn,
  isReported,
  type Line,
  LONG_AGO,
  nameInWords,
  phrasesOf,
  type RecordScene,
  spanOfWords,
  wordAtOffset,
} from './scene.ts';

/** How many sentences after the one that tells of the batch may add to it. */
const FOLLOWING = 3;

/** Verbs of mixing: with a product they alone tell of a batch. */
const MIXED =
  / (?:mixed|gauged|catalysed|catalyzed|batched|(?:made|knocked|mixed|stirred|whipped) up|(?:weighed|measured) out|thinned|activated) /g;
/** Verbs of putting on: they tell of a batch when the talk says how or in what conditions. */
const APPLIED =
  / (?:put|poured|laid|rolled|brushed|sprayed|spread|trowelled|troweled|applied|slapped|wiped|rubbed|cast|pumped|injected|bedded|bonded|glued|faired|filled|coated|sealed|oiled|waxed|laminated|glassed|sheathed|wetted|wet out|went|gone|had|given|gave|used|(?:is|'s|are) (?:(?:now|just|finally|all) )*(?:on|in|down)|on) /g;
/** What must be told of a product that was put on: a ratio alone may be what the product is. */
const CONDITIONS: ReadonlySet<BatchFactKind> = new Set(['metered', 'air', 'surface', 'material', 'humidity']);

/** Words of the tin, of the data sheet and of advice: what they say is no fact of this batch. */
const QUOTED =
  / (?:says|said|sheet|datasheet|label|instructions|minimum|maximum|recommends?|recommended|supposed|should|needs?|must|at least|no less|not below|above|wants?|tin says|book|calls for|want) /;

/** Reads the batches of one memo, in order of speech. */
export function readBatches(scene: RecordScene): readonly BatchNote[] {
  const notes: BatchNote[] = [];
  let from = 0;
  for (const line of scene.lines) {
    if (line.index < from) continue;
    const start = startOf(scene, line);
    if (!start) continue;
    const facts = [...factsOf(scene, line, start)];
    let last = line;
    for (const next of scene.lines.slice(line.index + 1, line.index + 1 + FOLLOWING)) {
      if (next.asks || startOf(scene, next) || namesOther(scene, next, start.product)) break;
      const more = factsOf(scene, next, undefined).filter(
        (fact) => !facts.some((known) => known.what === fact.what),
      );
      if (more.length === 0) break;
      facts.push(...more);
      last = next;
    }
    if (!start.mixed && !facts.some(({ what }) => CONDITIONS.has(what))) continue;
    from = last.index + 1;
    const span = spanOfBatch(scene, line, facts);
    notes.push({
      kind: 'batch',
      quote: scene.text.slice(span.start, span.end),
      span,
      product: start.product,
      facts: withUnits(facts).sort((a, b) => a.span.start - b.span.start),
    });
  }
  return notes;
}

/** Degrees without a unit are those of the air that was told with one. */
function withUnits(facts: readonly BatchFact[]): BatchFact[] {
  const unit = facts.find(({ what, unit }) => what === 'air' && unit !== undefined)?.unit;
  return facts.map((fact) =>
    fact.value !== undefined && fact.unit === undefined && unit !== undefined ? { ...fact, unit } : fact,
  );
}

/** The sentence that tells of the batch, on to the last fact about it. */
function spanOfBatch(scene: RecordScene, line: Line, facts: readonly BatchFact[]): Span {
  const end = Math.max(line.end, ...facts.map(({ span }) => span.end));
  return { start: line.start, end: withoutStop(scene.text, line.start, end) };
}

function withoutStop(text: string, start: number, end: number): number {
  const trailing = /[\s.!?…,;]*$/.exec(text.slice(start, end))?.[0].length ?? 0;
  return end - trailing;
}

interface Start {
  readonly product: string;
  /** The verb of mixing or putting on. */
  readonly verb: number;
  readonly mixed: boolean;
  /** Last word of the product, where a word of its own names it. */
  readonly after: number;
}

function startOf(scene: RecordScene, line: Line): Start | undefined {
  if (line.asks) return undefined;
  const start = productStart(scene, line) ?? verbThatNames(scene, line) ?? batchThatWas(scene, line);
  return start && LONG_AGO.test(line.words) ? undefined : start;
}

/** "Mixed the epoxy", "rolled the primer on": the product is told beside its verb. */
function productStart(scene: RecordScene, line: Line): Start | undefined {
  const products = productsIn(scene, line);
  for (const [verbs, mixed] of [
    [MIXED, true],
    [APPLIED, false],
  ] as const) {
    if (!mixed && products.length === 0) continue;
    for (const verb of matches(scene, line, verbs)) {
      if (!isReported(scene, line, verb)) continue;
      if (!mixed && QUOTED.test(line.words)) continue;
      const own = products.find(
        (phrase) => belongsTo(scene, line, verb, phrase) && !isStored(scene, line, verb, phrase),
      );
      const phrase = own ?? (mixed && products.length === 0 ? portionAfter(scene, line, verb) : undefined);
      if (!phrase) continue;
      if (mixed && mixesOther(scene, verb)) continue;
      return { product: productName(scene, phrase), verb, mixed, after: phrase.last };
    }
  }
  return undefined;
}

/** "Varnished the tiller": the verb names the product. */
function verbThatNames(scene: RecordScene, line: Line): Start | undefined {
  for (let k = line.first; k < line.endWord; k++) {
    const product = productOfVerb(wordAt(scene.parse, k)) ?? concreteOf(scene, k);
    // "The painted boards" names boards.
    if (!product || /^(?:determiner|possessive|adjective)$/.test(tagAt(scene.parse, k - 1) ?? '')) continue;
    if (isReported(scene, line, k))
      return QUOTED.test(line.words) ? undefined : { product, verb: k, mixed: false, after: k };
  }
  return undefined;
}

/** "Poured the slab": what is poured in place is concrete. */
function concreteOf({ parse }: RecordScene, verb: number): string | undefined {
  if (wordAt(parse, verb) !== 'poured') return undefined;
  const object = phraseAt(parse, verb + 1);
  return object && /^(?:slab|footing|foundation|pad|plinth|kerb)$/.test(singular(object.head))
    ? 'concrete'
    : undefined;
}

function matches(scene: RecordScene, line: Line, pattern: RegExp): readonly number[] {
  const found: number[] = [];
  pattern.lastIndex = 0;
  for (let one = pattern.exec(line.words); one; one = pattern.exec(line.words)) {
    found.push(wordAtOffset(line, one.index + 1));
    // Two words of the pattern may share the space between them.
    pattern.lastIndex = one.index + 1;
  }
  return found.filter((at) => tagAt(scene.parse, at) !== 'determiner');
}

/** The products that a sentence names, those first that tell most. */
function productsIn(scene: RecordScene, line: Line): readonly Phrase[] {
  const products = phrasesOf(scene, line).filter(
    (phrase) => isProduct(phrase.name) || isCoatOf(scene, phrase),
  );
  const tells = ({ name, head }: Phrase) => {
    if (name.length > 1 && !/^parts?$/.test(name[0] ?? '')) return 2;
    return /^(?:glue|paint|adhesive|compound|finish)$/.test(head) ? 0 : 1;
  };
  return [...products].sort((a, b) => tells(b) - tells(a));
}

/** "A coat of oil": oil is a product where it is put on in coats. */
function isCoatOf({ parse }: RecordScene, { head, first }: Phrase): boolean {
  if (!/^(?:oil|wax)$/.test(singular(head)) || wordAt(parse, first - 1) !== 'of') return false;
  return /^(?:coats?|layers?)$/.test(wordAt(parse, first - 2));
}

/** "The gelcoat batch was two per cent", "the mix of mortar was four to one": a batch spoken of as mixed. */
function batchThatWas(scene: RecordScene, line: Line): Start | undefined {
  for (const phrase of phrasesOf(scene, line)) {
    if (!/^(?:batch|mix)$/.test(singular(phrase.head))) continue;
    const own = isProduct(phrase.name.slice(0, -1));
    const of =
      wordAt(scene.parse, phrase.last + 1) === 'of' ? phraseAt(scene.parse, phrase.last + 2) : undefined;
    const named = own ? phrase : of && isProduct(of.name) ? of : undefined;
    const verb = line.words.search(/ (?:was|were) /);
    if (!named || verb < 0) continue;
    const at = wordAtOffset(line, verb + 1);
    if (at < phrase.last || at > phrase.last + 8 || !isReported(scene, line, at)) continue;
    return { product: productName(scene, named), verb: at, mixed: true, after: named.last };
  }
  return undefined;
}

/** "Mixed a batch, five to one": the product was named before, or is not named at all. */
function portionAfter(scene: RecordScene, line: Line, verb: number): Phrase | undefined {
  const portion = phrasesOf(scene, line).find(
    (phrase) => phrase.first > verb && /^(?:batch|mix|pot|brew)$/.test(singular(phrase.head)),
  );
  if (!portion) return undefined;
  const at = line.index;
  const before = scene.lines.slice(Math.max(0, at - 2), at).flatMap((one) => phrasesOf(scene, one));
  return before.findLast(({ name }) => isProduct(name)) ?? portion;
}

/** "Put the paint in the shed" stores it; "mixed his own concrete" is another's. */
function isStored({ parse }: RecordScene, line: Line, verb: number, product: Phrase): boolean {
  if (/^(?:his|her|their)$/.test(product.determiner ?? '')) return true;
  if (wordAt(parse, verb) !== 'put') return false;
  const after = line.words.slice((line.starts[product.last - line.first] ?? 0) - 1);
  return !/ (?:on|onto|over|between|down|round|around|along) /.test(after);
}

/** The verb of mixing has the product for its object or subject: nothing but its own clause stands between. */
function belongsTo(scene: RecordScene, line: Line, verb: number, product: Phrase): boolean {
  if (product.first < line.first || product.last >= line.endWord) return true;
  // "The resin was warm, I mixed it five to one".
  if (product.last < verb && /^(?:it|them|that)$/.test(wordAt(scene.parse, verb + 1))) return true;
  if (product.first > verb) return clauseEnd(scene, line, verb) > product.first;
  return clauseStart(scene, line, verb) <= product.first;
}

function productName(scene: RecordScene, phrase: Phrase): string {
  return nameInWords(scene, phrase).replace(
    /^(?:parts?|first|second|third|last|new|fresh|another|more|some)\s+|\s+(?:batch|mix)$/gi,
    '',
  );
}

function namesOther(scene: RecordScene, line: Line, product: string): boolean {
  const known = product.toLowerCase().split(/\s+/);
  return phrasesOf(scene, line).some(
    ({ name }) =>
      isProduct(name) &&
      !/^(?:hardener|catalyst)$/.test(name.at(-1) ?? '') &&
      !known.includes(name.at(-1) ?? ''),
  );
}

/** The facts that one sentence tells, each kind once. */
function factsOf(scene: RecordScene, line: Line, start: Start | undefined): readonly BatchFact[] {
  const facts = [
    ratioIn(scene, line, start !== undefined),
    wordsIn(scene, line, 'metered', METERED),
    amountIn(scene, line, start),
    ...temperaturesIn(scene, line),
    surfaceInWords(scene, line),
    humidityIn(scene, line),
    start ? usedIn(scene, line, start) : usedAfter(scene, line),
    start && wordsIn(scene, line, 'when', WHEN),
  ].filter((fact) => fact !== undefined);
  const seen = new Set<BatchFactKind>();
  return facts.filter(({ what }) => {
    if (seen.has(what)) return false;
    seen.add(what);
    return true;
  });
}

const METER =
  'by weight|by volume|by eye|by the (?:bucket|shovel|spade|scoop|cup)(?:ful)?s?|(?:on|with|off|using) (?:the |my |a )?(?:digital |kitchen |little |new )*scales?|with (?:the |my )?(?:metering )?pumps?|(?:off|using|from) the pumps|(?:with|in) (?:a |the )?(?:measuring|graduated|mixing) (?:cup|jug|pot|beaker|bucket)s?|(?:with|using) (?:a |the |two )?syringes?|weighed(?: it)?(?: all)? out';
const METERED = new RegExp(`\\b(?:${METER})(?:,? (?:${METER}))*\\b`, 'i');
const WHEN =
  /\b(?:this (?:morning|afternoon|evening)|last night|yesterday(?: (?:morning|afternoon|evening))?|just now|today|tonight|at (?:half past|quarter (?:past|to)) [a-z]+|at [a-z\d:]+ (?:o'clock|am|pm|a\.m\.|p\.m\.))\b/i;

function wordsIn(
  scene: RecordScene,
  line: Line,
  what: BatchFactKind,
  pattern: RegExp,
): BatchFact | undefined {
  const found = pattern.exec(scene.text.slice(line.start, line.end));
  return found
    ? factAt(scene, what, {
        start: line.start + found.index,
        end: line.start + found.index + found[0].length,
      })
    : undefined;
}

function factAt(scene: RecordScene, what: BatchFactKind, span: Span, figure?: FigureNote): BatchFact {
  return {
    what,
    quote: scene.text.slice(span.start, span.end),
    span,
    ...(figure ? { value: figure.value, unit: figure.unit } : {}),
  };
}

const SMALL =
  '\\d+(?:\\.\\d+)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|a hundred|one hundred|hundred';
/** "Five to one", "two parts resin to one part hardener", "a hundred to forty five by weight", "1:2:4". */
const RATIO = new RegExp(
  `\\b(?:${SMALL})(?:[- ](?:${SMALL}))*(?: parts?)?(?: (?:of )?(?:the )?(?:resin|base|sand|epoxy|filler|powder|part a|a))?(?:,? ?(?::|(?:\\bto\\b)) ?(?:${SMALL})(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?(?: parts?| of)?(?: (?:of )?(?:the )?(?:hardener|catalyst|cement|thinners?|water|part b|b))?)+(?! ?(?:degrees|degree|mil|mm|millimetres|metres|inch|inches|hours|minutes|days|weeks|kilos|litres|o'clock|°|per cent|percent|%))\\b`,
  'i',
);
const STUFF =
  '(?:cement|sand|gravel|lime|ballast|aggregate|stone|clay|straw|resin|hardener|filler|microballoons|silica)';
/** "One part cement, two sand and three gravel". */
const PARTS = new RegExp(
  `\\b(?:${SMALL}) (?:parts? )?(?:of )?${STUFF}(?:,? (?:and |to )?(?:${SMALL}) (?:parts? )?(?:of )?${STUFF})+\\b`,
  'i',
);
/** "Two per cent hardener": how polyester is told. */
const PERCENT_OF =
  / (?:batch|mix|spirits?|turps|catalyst|hardener|mekp|thinners?|accelerator|plasticiser|plasticizer|dryers?|driers?) /;

function ratioIn(scene: RecordScene, line: Line, told: boolean): BatchFact | undefined {
  if (QUOTED.test(line.words)) return undefined;
  const figure = figuresIn(scene, line).find(
    ({ dimension, unit, bound }) => dimension === 'ratio' && unit === '1' && bound === 'exact',
  );
  if (figure && (told || / (?:mix|mixed|ratio|parts?) /.test(line.words)))
    return factAt(scene, 'ratio', figure.span, figure);
  const text = scene.text.slice(line.start, line.end);
  const found =
    told || / (?:mix|mixed|ratio|parts?) /.test(line.words) ? (PARTS.exec(text) ?? RATIO.exec(text)) : null;
  if (found && !/\b(?:from|ten|quarter|five|twenty|half) $/i.test(text.slice(0, found.index))) {
    const start = line.start + found.index;
    return factAt(scene, 'ratio', { start, end: start + found[0].length });
  }
  const percent = figuresIn(scene, line).find(({ unit, bound }) => unit === '%' && bound === 'exact');
  return percent && PERCENT_OF.test(line.words) ? factAt(scene, 'ratio', percent.span, percent) : undefined;
}

function amountIn(scene: RecordScene, line: Line, start: Start | undefined): BatchFact | undefined {
  if (!start?.mixed) return undefined;
  const figure = figuresIn(scene, line).find(
    ({ dimension, bound, assumed }) =>
      (dimension === 'mass' || dimension === 'volume') && bound !== 'at-most' && !assumed?.includes('unit'),
  );
  return figure && factAt(scene, 'amount', figure.span, figure);
}

const OF_SURFACE =
  / (?:surface|substrate|hull|slab|steel|timber|wood|board|boards|plank|planks|laminate|floor|panel|wall|deck|metal|skin|infrared|laser|ground|keel|bulkhead|underneath|plate|ply|concrete was|topsides) /;
const OF_MATERIAL =
  / (?:pot|bottle|bottles|resin was|resin were|resin at|hardener was|kicked|exotherm|tin was|bucket was|warmed|heated|mix was|mix got|paint was) /;

/** Degrees in the talk, each of what its clause says: the surface, the product in its pot, else the air. */
function temperaturesIn(scene: RecordScene, line: Line): readonly BatchFact[] {
  const figures = figuresIn(scene, line);
  return figures.flatMap((figure, k) => {
    const at = wordOf(scene, line, figure);
    const clause = clauseWords(scene, line, at);
    const before = figures[k - 1];
    // "The workshop was 14 degrees, the hull was 11": the unit is not said twice.
    const isDegrees =
      figure.dimension === 'temperature' ||
      (figure.assumed?.includes('unit') === true &&
        before?.dimension === 'temperature' &&
        / (?:was|is|'s|at|,|and) $/.test(wordsBefore(scene, line, at)) &&
        OF_SURFACE.test(clause));
    if (!isDegrees || figure.bound === 'at-least' || figure.bound === 'at-most') return [];
    if (figure.state === 'quoted' || figure.state === 'target' || QUOTED.test(clause)) return [];
    const what = OF_MATERIAL.test(clause) ? 'material' : OF_SURFACE.test(clause) ? 'surface' : 'air';
    const unit = figure.dimension === 'temperature' ? figure.unit : (before?.unit ?? figure.unit);
    return [factAt(scene, what, figure.span, { ...figure, unit })];
  });
}

const DEGREES =
  '(?:about )?(?:(?:twenty|thirty|forty)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|six|seven|eight|nine|\\d{1,3}(?:\\.\\d)?)';
/** "The surface was at twenty two": degrees that nobody calls so. */
const SURFACE_WAS = new RegExp(
  `\\b(?:surface|substrate|laminate|hull|steel|slab|timber|metal)(?: temperature)? (?:was|is|were|sat|read)(?: at| around)? (${DEGREES})\\b(?! ?(?:mm|mil|millimetres|metres|feet|foot|inch|inches|per|%|percent|kilos|thick|wide|long))`,
  'i',
);

function surfaceInWords(scene: RecordScene, line: Line): BatchFact | undefined {
  const found = SURFACE_WAS.exec(scene.text.slice(line.start, line.end));
  if (!found || QUOTED.test(line.words)) return undefined;
  const end = line.start + found.index + found[0].length;
  const words = found[1] as string;
  const value = smallNumber(words.replace(/^about /i, ''));
  const fact = factAt(scene, 'surface', { start: end - words.length, end });
  return value === undefined ? fact : { ...fact, value };
}

function wordOf({ parse, figures }: RecordScene, line: Line, figure: FigureNote): number {
  const at = parse.wordOfQuantity[figures.indexOf(figure)] ?? -1;
  return at < 0 ? line.first : at;
}

function clauseWords(scene: RecordScene, line: Line, at: number): string {
  let words = ' ';
  const end = clauseEnd(scene, line, at);
  for (let k = clauseStart(scene, line, at); k < end && !(k > at && wordAt(scene.parse, k) === 'and'); k++)
    words += `${wordAt(scene.parse, k)} `;
  return words;
}

function wordsBefore({ parse }: RecordScene, line: Line, at: number): string {
  let words = ' ';
  for (let k = Math.max(line.first, at - 4); k < at; k++) words += `${wordAt(parse, k)} `;
  return words;
}

function humidityIn(scene: RecordScene, line: Line): BatchFact | undefined {
  if (!/ (?:humidity|humid|rh|hygrometer|relative) /.test(line.words)) return undefined;
  const figure = figuresIn(scene, line).find(
    (one) =>
      one.unit === '%' && / (?:humidity|humid|rh|hygrometer|relative) /.test(nearWords(scene, line, one)),
  );
  if (!figure || figure.bound === 'at-most' || figure.bound === 'at-least' || figure.state === 'quoted')
    return undefined;
  return factAt(scene, 'humidity', figure.span, figure);
}

function nearWords(scene: RecordScene, line: Line, figure: FigureNote): string {
  const at = wordOf(scene, line, figure);
  let words = ' ';
  for (let k = Math.max(line.first, at - 6); k < Math.min(line.endWord, at + 5); k++)
    words += `${wordAt(scene.parse, k)} `;
  return words;
}

/** "Filled the wheel arch", "it went on the keel": where the batch of the sentence before went. */
function usedAfter(scene: RecordScene, line: Line): BatchFact | undefined {
  const found =
    / (?:(?:it|that|this|all|rest|most|batch) (?:all )?(?:went|got used|is|'s|goes)|used (?:it|that|the rest|most) |(?:filled|faired|bedded|coated|bonded|glued|sheathed) (?=the |both |my |all )) ?/.exec(
      line.words,
    );
  if (!found) return undefined;
  const verb = wordAtOffset(line, found.index + found[0].trimEnd().length - 1);
  return isReported(scene, line, verb)
    ? usedIn(scene, line, { product: '', verb, mixed: false, after: -1 })
    : undefined;
}

const NO_PLACE: ReadonlySet<NounKind> = new Set([
  'tool',
  'time',
  'person',
  'air',
  'abstract',
  'measure',
  'coating',
  'liquid',
]);
/** Verbs whose object is the thing that is coated, and not the product. */
const TAKES_SURFACE =
  /^(?:bedded|bonded|glued|faired|filled|coated|sealed|oiled|waxed|laminated|glassed|sheathed|wetted|poured)$/;
const PLACED = /^(?:on|onto|into|in|for|over|round|around|under|behind|to|through|along|across)$/;
/** Where one works is not where the batch went. */
const WORKPLACE = /^(?:shed|workshop|shop|garage|barn|yard|boatyard|house|van|rain|sun|morning|evening|end)$/;

/** Where the batch went: the first thing named after a word of place, or the object of the verb that names its product. */
function usedIn(scene: RecordScene, line: Line, start: Start): BatchFact | undefined {
  const { parse } = scene;
  for (let k = start.verb + 1; k < line.endWord; k++) {
    const phrase = phraseAt(parse, k);
    if (!phrase || phrase.first !== k || phrase.pronoun || phrase.quantity !== undefined) continue;
    const isObject =
      k === start.verb + 1 && (start.after === start.verb || TAKES_SURFACE.test(wordAt(parse, start.verb)));
    if (
      !isObject &&
      !PLACED.test(wordAt(parse, k - 1)) &&
      !/^(?:bond|glue|fill|bed|seal|fix|fillet|coat|set|stick|fair)$/.test(wordAt(parse, k - 1))
    )
      continue;
    if (
      phrase.head === 'one' ||
      [...phrase.kinds].some((kind) => NO_PLACE.has(kind)) ||
      WORKPLACE.test(phrase.head)
    )
      continue;
    if (PORTIONS.has(singular(phrase.head))) continue;
    const first = isObject ? k : k - 1;
    return factAt(scene, 'used', spanOfWords(scene, first, withComplement(scene, phrase)));
  }
  return undefined;
}

/** "The inside of the starboard locker": on to the end of what follows "of". */
function withComplement({ parse }: RecordScene, phrase: Phrase): number {
  const next = wordAt(parse, phrase.last + 1) === 'of' ? phraseAt(parse, phrase.last + 2) : undefined;
  return next && next.first === phrase.last + 2 && next.pronoun === undefined ? next.last : phrase.last;
}

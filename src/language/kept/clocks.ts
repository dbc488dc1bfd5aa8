/**
 * Reads when a product was mixed, when a coat of it went on, and that a mix is still in use: from then on its pot life,
 * its recoat window and its cure are counted. What is planned, denied, supposed or read off the tin starts no clock.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { phraseAt, wordAt } from '../items/parse.ts';
import { isProduct, productOfVerb } from '../lexicon/batch-products.ts';
import type { ClockAct, ClockNote, FigureNote, RecordNote } from '../notes.ts';
import { callers } from './called.ts';
import { thingDoneTo } from './coated-things.ts';
import { mixesOther, mixesTheirOwn } from './mixes-other.ts';
import {
  isReported,
  type Line,
  LONG_AGO,
  nameInWords,
  phrasesOf,
  type RecordScene,
  wordAtOffset,
} from './scene.ts';
import { timesSaid } from './time-of-day.ts';

const COAT =
  '(?:(?:first|second|third|fourth|next|last|final|another|other|one|two|the|a|this|that|top|finish|tack|seal|flood|hot|sealer|sealing) )*(?:coats?|layers?)(?: (?:one|two|three|four|\\d|number \\S+))?';
const ON = '(?:on|down|in|over|round|onto)';
/** What was done with it, in words between single spaces; each tells where its verb stands. */
const MIXED =
  / (?:mixed|mixing|gauged|catalysed|catalyzed|(?:knocked|stirred|made|whipped) up|(?:have|'ve|got|has) [a-z ]{0,20}mixed up|activated) /g;
/** A word of each way to tell that something was mixed. */
const isMixing = (word: string): boolean =>
  /^(?:mixed|mixing|gauged|catalysed|catalyzed|knocked|stirred|made|whipped|activated)$/.test(word);
const LAID = new RegExp(
  ` (?:${COAT} (?:of (?:\\S+ ){1,3})?(?:has |have |'s |'ve |is |are |all |just |now |both )*(?:went|gone|got|going|is|are|was|'s|on) ?${ON}?|(?:put|putting|got|getting|gave|giving|slapped|rolled|rolling|brushed|brushing|sprayed|spraying|wiped|applied|applying|laid|laying|poured|pouring|spread|trowelled|troweled) (?:\\S+ ){0,5}?(?:${COAT}|${ON})|(?:it|they|that|this|paint|primer|epoxy|resin|glue|varnish|undercoat|topcoat|gelcoat|sealant|oil) (?:all )?(?:went|has gone|'s gone|is going|'s going|is|'s) (?:all )?${ON}|re-?coated|over-?coated|(?:'s|has|have|'ve|is|are) (?:just |now |already )?(?:had|got|getting|having) (?:its|it 's|their|another|the|a) (?:\\S+ )?${COAT}|(?:first|second|third|next|last|final|top) coat (?:on|down|done)) `,
  'g',
);
const USING =
  '(?:brushing|rolling|spreading|wetting|laying|pouring|working|using|trowelling|troweling|applying|laminating|squeezing|dabbing|slapping|fairing)';
const USED = new RegExp(
  ` (?:still|'m|am|'re|are|was|were|been|carried on|kept|keep) (?:still |just |now )?${USING} `,
  'g',
);
const USING_WORD = new RegExp(`^${USING}$`);
const isUsing = (word: string): boolean => USING_WORD.test(word);
const HOLDS =
  '(?:clamps?|cramps?|props?|weights?|straps?|strapping|shuttering|formwork|shutters|moulds?|wedges|ratchets)';
const TAKES =
  '(?:took|taken|taking|pulled|had|got|knocked|struck|stripped|removed|undid|undone|loosened|released|popped|whipped|slackened)';
const UNCLAMPED = '(?:unclamped|uncramped|de-?moulded|demolded)';
/** "The clamps are off", "took the clamps off", "struck the formwork", "unclamped it". */
const FREED = new RegExp(
  ` (?:${HOLDS} (?:\\S+ ){0,2}?(?:are|is|'re|'s|came|come|have come|has come|went|off) ?(?:all |now |both |already |come |just )*(?:off|out|away|gone|undone|released|struck)|${HOLDS} off|${TAKES} (?:(?:all|both|the|my|those|its|his|our|off|out) )+${HOLDS} ?(?:off|out|away)?|${UNCLAMPED}) `,
  'g',
);
const FREED_WORD = new RegExp(`^(?:${HOLDS}|${UNCLAMPED})$`);
const isFreed = (word: string): boolean => FREED_WORD.test(word);

/** Verbs that name their product, and glue that joins. */
const QUOTED =
  / (?:says|said|sheet|datasheet|label|instructions|recommends?|recommended|supposed|should|must|at least|no less|no more|up to|within|after \S+ hours|wants|needs|tin says|window) /;
/** Work that is to come in words that sound like work that is done. */
const TO_COME =
  / (?:tomorrow|tonight|later|next week|on (?:mon|tues|wednes|thurs|fri|satur|sun)day|after that|then i|goes on|go on) /;

/** "The coat on the rail is 2 mil thick", "a coat of primer takes four hours": what a coat is like, and not that it went on. */
const LIKE_A_COAT =
  / (?:coats?|layers?) (?:\S+ ){0,6}?(?:(?:is|are|'s|was|were) (?:\S+ ){1,4}?(?:thick|thin|mil|mils|mm|microns?|thou)|takes?|needs?) /;
/** "When it's painted", "once the hull's primed": before the verb, what is to come. */
const WHEN_DONE =
  / (?:when|once|until|till|before|after|if|unless|soon as) (?:\S+ ){1,3}(?:is|'s|are|'re|gets?|has been|have been|'s been) (?:all |been |both )?$/;

/** A coat on a coat. */
const NEXT =
  / (?:(?:second|third|fourth|next|another|last|final|top|finish|other|new) (?:and (?:last|final) )?(?:coats?|layers?)|(?:coat|layer) (?:two|three|four|2|3|4|number (?:two|three|four|2|3|4))|topcoat(?:ed)?|re-?coated|over-?coated) /;

/** More than a day's work has: a text that holds nothing else is not to take longer than any other. */
const MOST = 60;

interface Act {
  readonly act: ClockAct;
  /** Word of its verb. */
  readonly at: number;
  readonly product: string;
}

/** Reads the clocks that one memo starts, in order of speech. `recordedAt` is ISO 8601 with its offset. */
export function readClocks(scene: RecordScene, recordedAt: string): readonly ClockNote[] {
  const notes: ClockNote[] = [];
  let product = '';
  for (const line of scene.lines) {
    if (notes.length >= MOST) break;
    const named = productIn(scene, line);
    const acts = line.asks ? [] : actsIn(scene, line, named ?? product, notes.length > 0);
    product = named ?? product;
    if (acts.length === 0 || LONG_AGO.test(line.words)) continue;
    const times = timesSaid(scene.text.slice(line.start, line.end), recordedAt);
    for (const [index, { act, at, product: of }] of acts.entries()) {
      const from = scene.parse.words[at]?.span.start ?? line.start;
      const next = acts[index + 1];
      const until = next ? (scene.parse.words[next.at]?.span.start ?? line.end) : line.end;
      // Said after the verb and before the next one; else before it: "at two I put the first coat on".
      const time =
        times.find((one) => line.start + one.start >= from && line.start + one.start < until) ??
        (index === 0 ? times.findLast((one) => line.start + one.end <= from) : undefined);
      const span = { start: line.start, end: endOf(scene, line) };
      const on = act === 'mixed' ? undefined : thingDoneTo(scene, line, at, next?.at ?? line.endWord);
      notes.push({
        kind: 'clock',
        quote: scene.text.slice(span.start, span.end),
        span,
        act,
        product: of,
        at: time?.at ?? recordedAt,
        isSaid: time !== undefined,
        ...(on === undefined ? {} : { on }),
        ...(act === 'laid' && NEXT.test(line.words) ? { isNext: true } : {}),
      });
    }
  }
  return notes;
}

/** Figures that are no time of a clock: "mixed it at nine oh five" gives no size. */
export function withoutClockTimes(
  text: string,
  figures: readonly FigureNote[],
  records: readonly RecordNote[],
  recordedAt: string,
): readonly FigureNote[] {
  const times = records.flatMap(({ kind, span }) =>
    kind !== 'clock'
      ? []
      : timesSaid(text.slice(span.start, span.end), recordedAt).map(({ start, end }) => ({
          start: span.start + start,
          end: span.start + end,
        })),
  );
  if (times.length === 0) return figures;
  return figures.filter(
    ({ dimension, span }) =>
      (dimension !== 'length' && dimension !== 'count') ||
      !times.some(({ start, end }) => span.start >= start && span.end <= end),
  );
}

function endOf(scene: RecordScene, line: Line): number {
  return line.start + scene.text.slice(line.start, line.end).replace(/[\s.!?…,;]*$/, '').length;
}

const FINISH = / (?:coats?|dry|dries|drying|recoat|cures?|wipe|wiped) /;

/** The product that a sentence names last; undefined where it names none. */
export function productIn(scene: RecordScene, line: Line): string | undefined {
  // Oil that goes on in coats, or dries, is a finish; other oil is for an engine.
  const isFinish = FINISH.test(line.words);
  const phrase = phrasesOf(scene, line).find(
    ({ name, head }) => isProduct(name) || (isFinish && /^(?:oil|wax)$/.test(head)),
  );
  if (phrase)
    return nameInWords(scene, phrase)
      .replace(/^[A-Z](?=[a-z])/, (first) => first.toLowerCase())
      .replace(/\s+(?:batch|mix|tin|can|tub|pot|bottle|cartridge)$/i, '');
  let before: Phrase | undefined;
  for (let k = line.first; k < line.endWord; k++) {
    // "The resin tin": what it holds stands before it.
    const inside = phraseAt(scene.parse, k);
    const first = inside === before ? [] : (inside?.name.slice(0, -1) ?? []);
    before = inside;
    if (first.length > 0 && isProduct(first)) return first.join(' ');
    const verb = productOfVerb(wordAt(scene.parse, k));
    if (verb !== undefined) return verb;
  }
  return undefined;
}

function actsIn(scene: RecordScene, line: Line, product: string, isGoingOn: boolean): readonly Act[] {
  const acts: Act[] = [];
  const called = wordsOfActs(scene, line);
  const add = (act: ClockAct, at: number) => {
    if (acts.some((one) => Math.abs(one.at - at) < 3)) return;
    // "It can be recoated", "to put the first coat on".
    if (/^(?:be|to|can|may|could)$/.test(wordAt(scene.parse, at - 1))) return;
    if (isReported(scene, line, at)) acts.push({ act, at, product });
  };
  const hasCoat = / (?:coats?|re-?coated|over-?coated) /.test(line.words);
  const isNamed = product !== '';
  if (called & MIXES && (isNamed || / (?:batch|mix|pot) /.test(line.words)))
    for (const at of verbsOf(line, MIXED))
      if (!mixesOther(scene, at) && !mixesTheirOwn(scene, at)) add('mixed', at);
  if (called & USES && (isNamed || isGoingOn)) for (const at of verbsOf(line, USED)) add('used', at);
  // What holds it is no product: whose clock it is, the glue that was spoken of tells.
  if (called & FREES) for (const at of verbsOf(line, FREED)) add('freed', at);
  if (!TO_COME.test(line.words)) {
    if ((isNamed || hasCoat) && !LIKE_A_COAT.test(line.words))
      for (const at of verbsOf(line, LAID))
        if (hasCoat || !(FASTENED.test(line.words) || putsThing(scene, at))) add('laid', at);
    for (let k = line.first; called & LAYS && k < line.endWord; k++) {
      const word = wordAt(scene.parse, k);
      const before = wordAt(scene.parse, k - 1);
      // "Laid the screed at eight", "sprayed two coats of primer".
      if (PUT_ON.test(word) && productAfter(scene, k)) add('laid', k);
      // "The painted boards" names boards.
      if (productOfVerb(word) === undefined || /^(?:the|a|an|my|that|this|of)$/.test(before)) continue;
      if (isToBeDone(scene, line, k)) continue;
      add('laid', k);
    }
  }
  // Last, as most sentences tell of nothing that the words of a tin could speak of.
  return acts.length === 0 || QUOTED.test(line.words) ? [] : acts.sort((a, b) => a.at - b.at);
}

/** Whether the words before a verb put it off: "the full bill when it's painted". */
function isToBeDone({ parse }: RecordScene, line: Line, verb: number): boolean {
  const words: string[] = [];
  for (let k = Math.max(line.first, verb - MOST_BEFORE); k < verb; k++) words.push(wordAt(parse, k));
  return WHEN_DONE.test(` ${words.join(' ')} `);
}
const MOST_BEFORE = 8;

/** "Put the oven in the housing": what is put there is a thing and no coat. */
function putsThing(scene: RecordScene, verb: number): boolean {
  const { parse } = scene;
  if (!/^(?:put|putting|got|getting)$/.test(wordAt(parse, verb)) || productAfter(scene, verb)) return false;
  const object = phraseAt(parse, verb + 1);
  if (object?.first !== verb + 1 || object.pronoun !== undefined) return false;
  return !/^(?:coat|layer)s?$/.test(object.head);
}

/** "It's down and fixed": a board, where a coat is on and drying. */
const FASTENED =
  / (?:fixed|screwed|nailed|bolted|pinned|stapled|tacked|riveted|clipped|hung|wired|plumbed|connected|clamped down|lagged|strapped|welded) /;

const PUT_ON =
  /^(?:laid|applied|sprayed|spread|poured|brushed|rolled|trowelled|troweled|bedded|pumped|cast)$/;

/** A verb that may lay a product on, or that names it. */
const isLaying = (word: string): boolean => PUT_ON.test(word) || productOfVerb(word) !== undefined;

const wordsOfActs = callers([isMixing, isUsing, isFreed, isLaying]);
const [MIXES, USES, FREES, LAYS] = [1, 2, 4, 8] as const;

const POURED = /^(?:slabs?|footings?|pads?|foundations?|plinths?|lintels?|ring-?beam|oversite)$/;

function productAfter({ parse }: RecordScene, verb: number): boolean {
  const object = phraseAt(parse, verb + 1);
  if (!object || object.first !== verb + 1) return false;
  if (isProduct(object.name)) return true;
  // What is poured of concrete has its own names.
  if (wordAt(parse, verb) === 'poured' && POURED.test(object.name.at(-1) ?? '')) return true;
  const of = wordAt(parse, object.last + 1) === 'of' ? phraseAt(parse, object.last + 2) : undefined;
  return of !== undefined && isProduct(of.name);
}

function verbsOf(line: Line, pattern: RegExp): readonly number[] {
  const found: number[] = [];
  pattern.lastIndex = 0;
  for (let one = pattern.exec(line.words); one; one = pattern.exec(line.words)) {
    found.push(wordAtOffset(line, one.index + 1));
    // Two may share the space between them.
    pattern.lastIndex = one.index + Math.max(1, one[0].length - 1);
  }
  return found;
}

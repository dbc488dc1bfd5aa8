/**
 * Figures that are said of a thing and are no new size of it: by how much it is out, its old size told behind the new
 * one, what it weighs with a load on it, what was used of what was ordered, a reading while it was tried.
 */
import type { FigureNote } from '../language/notes.ts';
import { shapeOf } from './names.ts';
import type { StandingRow } from './rows.ts';
import { stemOf } from './stems.ts';
import type { Place } from './talk.ts';

const SIZE_WORD =
  '(?:long|short|wide|narrow|tall|high|low|thick|thin|deep|shallow|big|large|small|heavy|light|much|little|far|many|tight|loose|fat|slack|generous|steep)';
const MORE =
  '(?:more|less|longer|shorter|wider|narrower|taller|higher|lower|thicker|thinner|deeper|shallower|bigger|larger|smaller|heavier|lighter|further|closer|fatter|slimmer)';
const UNIT =
  '(?:mm|mils?|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|inch(?:es)?|foot|feet|kilos?|kg|pounds?|lbs?|degrees?|lit(?:re|er)s?|amps?|volts?|psi|bar|thou|hundredths?)';

/** "… too long", "… wider than I thought", "… out of square", "… shy of it", standing behind the figure. */
const BEHIND = new RegExp(
  `^[\\s,]*(?:${UNIT})?\\s*(?:(?:too|over-?)\\s*${SIZE_WORD}|${MORE} (?:than|in|on|at|overall|all round)\\b|out (?:of|over|in|from|at|on|across|corner)\\b|(?:shy|proud of where|adrift|off where|off what|short of|over what|under what|out)\\b(?! (?:of|on|from) the (?:floor|wall|deck|ground|hull|sill|bench)))`,
  'i',
);
/** "too long by …", "out by …", "short by …", "which is … more", standing before it. */
const AHEAD = new RegExp(
  `\\b(?:too ${SIZE_WORD}|out|over|under|short|shy|off|wrong|${MORE}|down|up|adrift|grown|shrunk|sagged|dropped|moved|crept|gained|lost) by (?:about|around|nearly|some|roughly|a good|at least|only|just|maybe|exactly)?\\s*$`,
  'i',
);
/** "Three inches too wide", with the words in the quote. */
const WITHIN = new RegExp(`\\b(?:too ${SIZE_WORD}|${MORE} than)$`, 'i');

/** "Three inches too wide", "out by fourteen", "twenty more than I thought": by how much a size is wrong, and no size. */
export function isDeviation(quote: string, place: Place): boolean {
  const behind = place.sentence.slice(place.until.length);
  const before = place.until.slice(0, Math.max(0, place.until.length - quote.length));
  return BEHIND.test(behind) || AHEAD.test(before) || WITHIN.test(quote);
}

/** "…, from twenty", "… and I said two foot": how the old value is led in behind the new one. */
const LEADS_OLD =
  /(?:^|[\s,])(?:(?:(?:down|up|back|in|out),? )?from|where (?:it|they) (?:was|were)|(?:it|they|that) (?:was|were|used to be)|(?:and |but |when |where )?(?:i|we)(?:['’]d| had)? (?:said|told you|wrote|called it|thought|reckoned|planned on))(?: (?:about|the|a))?\s*$/i;

/** How the words between two figures of one sentence lead in the second as the old value of the first, if they do. */
export function oldValueBehind(between: string): 'changed' | 'recalled' | undefined {
  const found = LEADS_OLD.exec(between)?.[0];
  if (found === undefined || /[.!?]\s/.test(between)) return undefined;
  return /from\s*$/i.test(found) ? 'changed' : 'recalled';
}

const OR_ELSE = /\bor (?:about |only |just |as little as |at least )*$/i;
const GIVEN = /^[\s,]*(?:wide |high |deep |long |thick |clear )?(?:with|without|if|when|where|once)\b/i;

/** "Three hundred clear, or one fifty with a shield": what does under a condition that the first is free of. */
export function isOrElse(quote: string, place: Place): boolean {
  const before = place.until.slice(0, Math.max(0, place.until.length - quote.length));
  return OR_ELSE.test(before) && GIVEN.test(place.sentence.slice(place.until.length));
}

const LADEN =
  /\bwith (?:a |an |the |all |two |some |me |my |our |its |full )*(?:persons?|people|crew|passengers?|dogs?|water|fuel|diesel|kit|gear|tools|everything|bather|man|men|driver|load|food|stores|batteries|aboard|on board|us|both of us|in it|on it)\b|\b(?:full|loaded|laden|filled|fuelled|brimmed|all[- ]up|kitted out|ready to go|all told|all in|altogether|all together|in total|combined|put together|the (?:whole )?lot|everything in|totted|tot(?:s|ting)? up|adds? up to|added up|between them|gross)\b/i;

/** Whether the words say that a figure is of a thing with a load on it, or of several together. */
export const isOfMore = (words: string): boolean => LADEN.test(words);

const STUFF: ReadonlySet<string> = new Set(
  `oil paint varnish resin epoxy glue adhesive sealant primer filler hardener thinner solvent cement mortar concrete sand
  gravel ballast lime plaster grout screed aggregate shingle water fuel diesel petrol gas antifoul stain wax grease foam
  insulation wool rope wire cable timber wood ply plywood tape sealer lacquer undercoat putty pitch tar caulk caulking
  coolant acid cork felt membrane mesh canvas cloth fabric mat glass bronze steel lead copper soil earth topsoil clay`
    .split(/\s+/)
    .map(stemOf),
);
const AMOUNTS: ReadonlySet<string> = new Set(['volume', 'mass', 'area', 'length']);

/** "Oil's ordered, five litres", "three litres are in": how much of a stuff there is here and there is no size of it. */
export function isAmountOfStuff(
  name: string,
  note: Pick<FigureNote, 'dimension' | 'state' | 'attribute'>,
  standing: Pick<StandingRow, 'state'>,
): boolean {
  if (!AMOUNTS.has(note.dimension) || !STUFF.has(shapeOf(name).head)) return false;
  if (note.dimension === 'length' && note.attribute !== 'length') return false;
  return (note.state === 'ordered') !== (standing.state === 'ordered');
}

const TRIED =
  /\b(?:held|holds|holding|sat|sits|stood|stayed|stays|hovered|settled|crept|dropped|fell|peaked|climbed|reads?|reading|showed|shows|showing|pushed|pulled|pulls|drew|put out|puts out|made) (?:at|to|around|about|up|nearly|steady at|steady|a steady|a good|bang on|on|just|over|under|\s)*$/i;
const WHILE =
  /^[^.,;]{0,30}\b(?:all night|overnight|all day|for (?:an? |the |two |twenty |ten |half )?\w*|at noon|this morning|at idle|flat out|cold|hot|under load|in the sun|without)\b/i;
const TRIED_DIMENSIONS: ReadonlySet<string> = new Set(['pressure', 'current', 'voltage', 'power', 'speed']);

/** "Held two point eight bar overnight", "it pushed eleven amps at noon": what it did while it was tried. */
export function isTried(
  { dimension, quote }: Pick<FigureNote, 'dimension' | 'quote'>,
  place: Place,
): boolean {
  if (!TRIED_DIMENSIONS.has(dimension)) return false;
  const before = place.until.slice(0, Math.max(0, place.until.length - quote.length));
  const behind = place.sentence.slice(place.until.length);
  return TRIED.test(`${before.trim()} `) && (WHILE.test(behind) || dimension === 'pressure');
}

/** "Over the back bedroom the rafters are only four": a sentence that opens with a place tells of the part that is there. */
const AT_PLACE =
  /^(?:and |but |so |now )?(?:over|in|at|by|on|under|behind|above|below|beside|near|round|around|along|up at|down at|up in|down in|out at) (?:the|that|this|my|our) [\w' -]{3,40}?,? (?:the|they|it|those|that|these|my|our|we|i|there)\b/i;

/** The place that a sentence opens with, where it is told that only there a thing has this size. */
export function partThere(place: Place): boolean {
  return (
    AT_PLACE.test(place.sentence) &&
    /\b(?:only|just|barely|down to|up to|as (?:little|much|low|high) as|there)\b/i.test(place.clause)
  );
}

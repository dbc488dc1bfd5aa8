/** Goods: what is expected, what came, and which names mean the same ones. */
import type { ArrivalNote } from '../language/notes.ts';
import { kinship, wordsOf } from './names.ts';
import type { ArrivalRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { talkStems } from './talk-stems.ts';
import { telling } from './telling.ts';
import type { Kept, Source } from './views.ts';
import type { Working } from './working.ts';

/** Files an arrival: what came meets what was expected, and what is expected is expected once. */
export function fileArrival(work: Working, note: Kept<ArrivalNote>): void {
  const item = note.item.replace(/\s*\(arrived\)\s*$/, '');
  partsOf(item).forEach((part, at) => {
    filePart(work, note, part, at === 0 ? note.id : `${note.id}.${at + 1}`);
  });
}

function filePart(work: Working, note: Kept<ArrivalNote>, item: string, id: string): void {
  const expected = work.draft.expectedArrivals().find((arrival) => isSameGoods(item, arrival.item));
  const source = work.source(note);
  const due = note.expected === undefined ? {} : { expected: note.expected };
  if (note.received && expected) {
    receive(work, expected, source);
    return;
  }
  if (!note.received && expected) {
    // "Coming tomorrow" of something expected already: only the date is new.
    work.draft.put({ table: 'arrivals', row: { ...expected, ...due } });
    return;
  }
  const status = note.received
    ? ({ status: 'received', receivedBy: source } as const)
    : ({ status: 'expected' } as const);
  work.draft.put({ table: 'arrivals', row: { id, item, ...due, source, ...status } });
}

function receive(work: Working, expected: ArrivalRow, receivedBy: Source): void {
  work.draft.put({ table: 'arrivals', row: { ...expected, status: 'received', receivedBy } });
}

/** Ways of doing that need no goods in the hand. */
const BEFORE_GOODS: ReadonlySet<string> = new Set([
  'ask',
  'think',
  'measure',
  'show',
  'pay',
  'send',
  'clean',
]);
/** "Ordered", "booked": the goods are still to come. */
const ORDERED = /\b(?:order|reserv|book|request|chas|enquir|quot)\w*/i;

/** What was expected and is worked with has come, whether or not anybody said so: "bedded the hob". */
export function receiveUsed(work: Working): void {
  const { done } = work.memo.notes;
  if (done.length === 0) return;
  const awaited = work.draft.expectedArrivals().filter(({ source }) => source.memoId !== work.memo.id);
  if (awaited.length === 0) return;
  const heads = new Set(awaited.map((arrival) => goodsIn(arrival).at(-1)));
  for (const note of done) {
    // Most deeds name nothing that is awaited: they are not taken apart.
    if (![...talkStems(note.gist)].some((stem) => heads.has(stem))) continue;
    const { ways, name, head } = telling(note.gist, '');
    if (head === undefined || ORDERED.test(note.gist) || [...ways].some((way) => BEFORE_GOODS.has(way)))
      continue;
    const used = awaited.find((arrival) => {
      const goods = goodsIn(arrival);
      return (
        goods.at(-1) === head &&
        (name.every((stem) => goods.includes(stem)) || goods.every((stem) => name.includes(stem))) &&
        work.draft.expectedArrivals().some(({ id }) => id === arrival.id)
      );
    });
    if (used) receive(work, used, work.source(note));
  }
}

const goods = new WeakMap<ArrivalRow, readonly string[]>();

/** The stems of what is awaited, found once: it may be awaited over hundreds of memos. */
function goodsIn(arrival: ArrivalRow): readonly string[] {
  const known = goods.get(arrival);
  if (known) return known;
  const found = stemsOf(bareGoods(arrival.item));
  goods.set(arrival, found);
  return found;
}

const stemsOf = (name: string) => wordsOf(name).map(stemOf);

/** Whether two names of goods mean the same ones. */
export function isSameGoods(a: string, b: string): boolean {
  if (areSame(a, b)) return true;
  const [left, right] = [bareGoods(a), bareGoods(b)];
  return (left !== a || right !== b) && left !== '' && right !== '' && areSame(left, right);
}

function areSame(a: string, b: string): boolean {
  const kin = kinship(a, b);
  if (kin === 'same' || kin === 'shorter' || kin === 'longer' || kin === 'sort') return true;
  const [left, right] = [new Set(stemsOf(a)), new Set(stemsOf(b))];
  const shared = [...left].filter((stem) => right.has(stem)).length;
  return shared > 0 && shared * 2 > Math.min(left.size, right.size);
}

const COUNT =
  '(?:\\d[\\d.,/]*|(?:(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|dozen|half|couple|few|and|a)(?:[ -]|$))+)';
const MEASURE =
  '(?:lengths?|box(?:es)?|bags?|sheets?|rolls?|tins?|pots?|tubs?|tubes?|loads?|lots?|sets?|pairs?|bits?|pieces?|packs?|packets?|pallets?|gallons?|lit(?:re|er)s?|met(?:re|er)s?|feet|foot|yards?|kilos?|tons?|tonnes?|cubes?|buckets?|drums?|coils?|reels?|bundles?|boards?|bottles?|cans?|quarts?|pints?|pounds?)';
const AHEAD = new RegExp(
  `^(?:(?:the|a|an|my|our|his|her|their|some|any|more|another|new|other|missing|remaining|replacement|extra|last of|first of|final|last|next|first|second|third|fourth|fifth|sixth|correct|proper|wrong|same|rest of|remainder of|most of|all of|half of|right(?! (?:hand|side)))\\s+|${COUNT}\\s*(?:of\\s+)?(?=\\S)(?!gauge\\b)|${MEASURE}\\s+of\\s+)+`,
  'i',
);
const SIZES = new RegExp(`[,;(].*$|\\s+(?:at|by|in|for)\\s+${COUNT}.*$`, 'i');

/** "The missing base", "a length of larch, four by three": the goods without how many, which of them and what size. */
export function bareGoods(name: string): string {
  const bare = name
    .replace(SIZES, '')
    .replace(AHEAD, '')
    .replace(/\s+(?:too|as well|together)$/i, '')
    .trim();
  return bare === '' ? name : bare;
}

/** Two words that name one thing, or one kind of two: not to be taken apart. */
const ONE_THING =
  /\b(?:tongue and groove|nuts? and bolts?|rack and pinion|ball and socket|hook and (?:loop|eye)|lath and plaster|wattle and daub|mortise and tenon|bits and (?:bobs|pieces)|odds and ends|nut and olive|cup and cone|crown and pinion)\b/i;
const SIDE_WORD =
  /^(?:(?:the|a|an|my|our|some|both) )?(?:hot|cold|left|right|inner|outer|upper|lower|front|back|rear|top|bottom|port|starboard|positive|negative|male|female|long|short|big|small|large|thick|thin|red|black|green|brown|blue|white|grey|gray|yellow|live|neutral|new|old|first|second)$/i;

/** "Bath and basin", "a belt and a set of bearings": each of them comes or is waited for by itself. */
export function partsOf(item: string): readonly string[] {
  if (ONE_THING.test(item)) return [item];
  const parts = item.split(
    /\s*,\s*(?:and\s+)?|\s+and\s+(?!a half|a quarter|(?:\d|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|one|two|three|four|five|six|seven|eight|nine)\S*$)/i,
  );
  const named = parts.filter((part) =>
    wordsOf(bareGoods(part)).some((word) => /[a-z]{3}/.test(word) && !SIZE_WORD.test(word)),
  );
  if (named.length < 2 || named.length !== parts.length || parts.length > MOST_PARTS) return [item];
  if (parts.slice(0, -1).some((part) => SIDE_WORD.test(part))) return [item];
  return parts.map((part) => part.replace(/^(?:the|a|an|my|our|some)\s+/i, ''));
}
const MOST_PARTS = 5;
const SIZE_WORD =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|half|quarter|eighths?|inch(?:es)?|feet|foot|mil|millimetres?|metres?|long|wide|thick|deep|gauge|and|the|from)$/;

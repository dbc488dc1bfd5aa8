import type { Dimension } from '../notes.ts';
import { afterHyphen } from '../numbers/spoken.ts';
import type { Token } from '../tokens.ts';
import { UNIT_TABLE, type UnitEntry, type UnitKey } from './unit-table.ts';

/** A unit as it was said. */
export interface UnitMention {
  readonly from: number;
  readonly to: number;
  readonly key: UnitKey;
  readonly dimension?: Dimension;
  readonly factor?: number;
  /** Singular without a plural in sight: "a 40 amp supply", "an inch". */
  readonly singular: boolean;
}

interface Spelling {
  readonly words: readonly string[];
  readonly entry: UnitEntry;
  readonly short: boolean;
}

function spellingsByFirstWord(): ReadonlyMap<string, readonly Spelling[]> {
  const byFirst = new Map<string, Spelling[]>();
  const add = (text: string, entry: UnitEntry, short: boolean) => {
    const words = text.split(' ');
    const [first] = words;
    if (!first) return;
    const list = byFirst.get(first) ?? [];
    list.push({ words, entry, short });
    byFirst.set(first, list);
  };
  for (const entry of UNIT_TABLE) {
    for (const text of entry.spoken) add(text, entry, false);
    for (const text of entry.short ?? []) add(text, entry, true);
  }
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length);
  return byFirst;
}

const SPELLINGS = spellingsByFirstWord();

/** Short spellings of one letter that must be capitals unless they touch the number: "40 A supply", not "40 a day". */
const CAPITALS: ReadonlySet<string> = new Set(['a', 'v', 'w', 'f', 'c', 'h', 'j', 's', 'p']);

/** Words behind a spaced "in" that leave it a unit; before anything else it is the preposition: "24 in the box". */
const AFTER_INCHES =
  /^(?:|[^\p{L}\d]+|wide|high|long|deep|thick|tall|across|by|x|and|or|on|from|above|below|off|each|plus|minus|less|apart|max|maximum|min|minimum|square|dia|round|clear|overall|over|under|center|centers|centres|is|so|but|at|to|for|proud|gap|ply|plywood|pipe|hole|bit|board|boards|stock|plate|tube|hose|bolt|bolts|bore|drill|shaft|of)$/u;

function matches(tokens: readonly Token[], at: number, words: readonly string[]): number | undefined {
  let index = at;
  for (let k = 0; k < words.length; k++) {
    if (k > 0) index = afterHyphen(tokens, index);
    if (tokens[index]?.word !== words[k]) return undefined;
    index++;
  }
  return index;
}

const NUMBER_WORD =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}{3,}teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|half|quarter|quarters)$/u;

const TOO_FAR_IN = 60;

function shortFits(tokens: readonly Token[], at: number, spelling: Spelling): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (!before || !token) return false;
  const afterDigits = before.kind === 'number' || /^[½⅓⅔¼¾⅛⅜⅝⅞]$/.test(before.text);
  const word = spelling.words.join(' ');
  // "Sixteen mm bolts", as some write what they hear; one letter alone is no unit there.
  const afterWords =
    before.kind === 'word' && NUMBER_WORD.test(before.word) && /^(?:mm|cm|kg|km|kw|ml)$/.test(word);
  if (afterWords) return true;
  if (!afterDigits) return false;
  // "Room 12's key" is no room of 12 feet.
  const owner = /^['’]$/.test(token.text) && tokens[at + 1]?.word === 's' && !tokens[at + 1]?.spaced;
  if (owner) return false;
  if (!token.spaced) return word.length > 1 || !/^(?:h|s)$/.test(word) || /^[hs]$/.test(token.word);
  // "4 T-nuts" are no tonnes, "20 p" no pence.
  if (word === "'" || word === '"' || word === "''" || word === 'p' || word === 't') return false;
  if (CAPITALS.has(word)) return token.text === token.text.toUpperCase();
  if (word === 'in' || word === 'ins') {
    const next = tokens[at + 1];
    // "150 in from the door" goes inwards; so far in, nobody counts inches.
    if (next?.word === 'from' && Number(before.text) >= TOO_FAR_IN) return false;
    return AFTER_INCHES.test(next?.word ?? '');
  }
  if (word === 'm') return token.text === 'm';
  return true;
}

/** What must follow a unit that a recogniser got wrong: a word of size, a join or an end. */
const AFTER_HEARD =
  /^(?:|[.,;:!?]|wide|high|long|deep|thick|tall|across|clear|off|by|of|and|from|to|so|each|above|below|at|for)$/;

/** Units as recognisers mishear them, only where a unit can stand: "4.8 matters long", "five lighters of grey". */
function heardWrong(tokens: readonly Token[], from: number): UnitMention | undefined {
  const [word, next] = [tokens[from]?.word ?? '', tokens[from + 1]?.word ?? ''];
  // "newton members", "newton matters".
  if (/^newtons?$/.test(word) && /^m\p{L}+$/u.test(next)) {
    return { from, to: from + 2, key: 'N.m', dimension: 'torque', singular: false };
  }
  if (!AFTER_HEARD.test(next)) return undefined;
  const base = { from, to: from + 1, singular: false };
  if (
    word === 'matters' &&
    /^(?:wide|high|long|deep|thick|tall|across|clear|off|by|from|above|below)$/.test(next)
  )
    return { ...base, key: 'm', dimension: 'length' };
  if (word === 'lighters') return { ...base, key: 'L', dimension: 'volume' };
  if (/^(?:male|meal|meals)$/.test(word) && next !== 'for') return { ...base, key: 'mil' };
  return undefined;
}

const DIMENSIONS: ReadonlyMap<string, Dimension> = new Map(
  UNIT_TABLE.flatMap(({ key, dimension, factor }) =>
    dimension && factor === undefined ? [[key, dimension] as const] : [],
  ),
);

/** Dimension of a unit's spelling in the notes; undefined for plain numbers and spellings of several meanings. */
export function dimensionOfUnit(unit: string): Dimension | undefined {
  return DIMENSIONS.get(unit);
}

/**
 * Reads the unit that starts at token `at`, directly after a number; the longest spelling wins.
 * A hyphen between the number and the unit ("12-mil") is skipped.
 */
export function readUnit(tokens: readonly Token[], at: number): UnitMention | undefined {
  const from = afterHyphen(tokens, at);
  const first = tokens[from];
  if (!first) return undefined;
  const heard = heardWrong(tokens, from);
  if (heard) return heard;
  for (const spelling of SPELLINGS.get(first.word) ?? []) {
    const to = matches(tokens, from, spelling.words);
    if (to === undefined) continue;
    if (spelling.short && !shortFits(tokens, from, spelling)) continue;
    const { key, dimension, factor } = spelling.entry;
    const last = spelling.words[spelling.words.length - 1] ?? '';
    return {
      from,
      to,
      key,
      ...(dimension ? { dimension } : {}),
      ...(factor ? { factor } : {}),
      singular: !spelling.short && !/(?:s|feet)$/.test(last),
    };
  }
  return undefined;
}

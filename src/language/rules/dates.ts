import { isTradeNoun } from '../lexicon/trade-nouns.ts';
import { readDigits, readNumber } from '../numbers/read-number.ts';
import { readOrdinal } from '../numbers/spoken.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, Room } from './rule.ts';
import { wordAt } from './rule.ts';

const MONTH =
  /^(?:january|february|march|april|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept|sep|oct|nov|dec)$/;
/** "may" is a month only beside a day of it. */
const isMonth = (word: string) => MONTH.test(word) || word === 'may';

const skip = (to: number, why: string) => ({ skip: { to, why } });

/** "the 15th", "twenty second of May": places in a row, never sizes. */
export const ordinals: AmountRule = {
  name: 'an ordinal',
  read(room, at) {
    const to = readOrdinal(room.tokens, at);
    return to ? skip(to, 'an ordinal names a date or a place in a row') : undefined;
  },
};

/** "3 May", "March 12th, 2026", "12/05/2026", "2026-05-01". */
export const calendarDates: AmountRule = {
  name: 'a calendar date',
  read(room, at) {
    const { tokens } = room;
    const word = wordAt(room, at);
    if (isMonth(word)) {
      const day = readNumber(tokens, at + 1);
      const fits = day && day.value >= 1 && day.value <= 31 && Number.isInteger(day.value);
      if (fits && (word !== 'may' || /^\p{Lu}/u.test(tokens[at]?.text ?? ''))) {
        return skip(readOrdinal(tokens, at + 1) ?? day.to, 'a day of a month');
      }
      return undefined;
    }
    if (tokens[at]?.kind !== 'number') return undefined;
    const dated = writtenDate(room, at);
    if (dated) return skip(dated, 'a written date');
    const day = readDigits(word, false);
    const next = wordAt(room, at + 1) === 'of' ? at + 2 : at + 1;
    const month = wordAt(room, next);
    if (day && day.value <= 31 && isMonth(month) && /^\p{Lu}/u.test(tokens[next]?.text ?? '')) {
      return skip(next + 1, 'a day of a month');
    }
    return undefined;
  },
};

function writtenDate(room: Room, at: number): number | undefined {
  const [a, s1, b, s2, c] = room.tokens.slice(at, at + 5);
  if (!a || !s1 || !b) return undefined;
  if (!/^[/\-.]$/.test(s1.word) || s1.spaced || b.spaced || b.kind !== 'number') return undefined;
  if (s2 && c && s2.word === s1.word && !s2.spaced && !c.spaced && c.kind === 'number') return at + 5;
  // "by 5/8": a day after a preposition of time, unless inches follow.
  const before = wordAt(room, at - 1);
  if (s1.word === '/' && /^(?:on|by|until|till|due|since)$/.test(before)) {
    const unit = readUnit(room.tokens, at + 3);
    const thing = /^(?:thick|wide|deep|high|long|ply|hole|bit|drill)$/.test(wordAt(room, at + 3));
    return unit || thing ? undefined : at + 3;
  }
  return undefined;
}

const DECADE = /^(?:twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|noughties)$/;

const YEAR_LEAD =
  /^(?:in|since|circa|year|late|early|mid|back|built|dated|from|around|about|winter|summer|spring|autumn|model|vintage|it's)$/;

/** "in 1998", "nineteen forty eight", "the 1950s", "eighteen ninety-something". */
export const years: AmountRule = {
  name: 'a year',
  read(room, at) {
    const { tokens } = room;
    const token = tokens[at];
    if (!token) return undefined;
    // "built in the sixties", "her late eighties".
    const decade =
      wordAt(room, at - 1) === 'the' && /^(?:in|from|since|of|during)$/.test(wordAt(room, at - 2));
    if (DECADE.test(token.word) && (decade || /^(?:late|early|mid)$/.test(wordAt(room, at - 1))))
      return skip(at + 1, 'a decade');
    const number = readNumber(tokens, at);
    if (!number || number.fraction || number.decimals) return undefined;
    if (/,/.test(token.text) || number.value < 1700 || number.value > 2099) return undefined;
    const digits = token.kind === 'number';
    // "eighteen hundred and five" is a length; years are said in pairs.
    if (!digits && number.splitAfter !== 2) return undefined;
    const after = wordAt(room, number.to);
    const vague = after === '-' && /^(?:something|odd|ish)$/.test(wordAt(room, number.to + 1));
    if (vague) return skip(number.to + 2, 'a year, roughly');
    if (/^(?:'s|s)$/.test(after) && tokens[number.to]?.spaced === false && digits) {
      return skip(number.to + 1, 'a decade');
    }
    // "Built in 1957 by a man" is a year; "in 1957 by 600" a size.
    const sized = SIZE_AFTER.test(after) && !(after === 'by' && !readNumber(tokens, number.to + 1));
    if (YEAR_LEAD.test(wordAt(room, at - 1)) && !readUnit(tokens, number.to) && !sized) {
      return skip(number.to, 'a year after a word of time');
    }
    if (yearOfThing(room, at, number.to, number.value)) return skip(number.to, 'the year of a thing');
    // "it's a 2014, 140 horse": a van or an engine by its year.
    const model = digits && number.value >= 1950 && number.value <= 2035 && number.value % 50 !== 0;
    if (
      model &&
      wordAt(room, at - 1) === 'a' &&
      /^(?:|[.,;!?]|model|van|truck|bus|engine|one|with|so|and)$/.test(after)
    )
      return skip(number.to, 'the year of a vehicle');
    // "nineteen forty eight, forty nine": a year and the next one.
    const next = after === ',' ? readNumber(tokens, number.to + 1) : undefined;
    if (next && next.value === (number.value % 100) + 1) return skip(next.to, 'a year or the next');
    return undefined;
  },
};

const BEGAN =
  /^(?:built|born|launched|registered|laid|made|started|bought|opened|founded|married|retired|moved|left|died|bred|dated|smells|smelt|smelling|vintage)$/;

const withinOf = (room: Room, at: number, reach: number, words: RegExp) =>
  [...Array(reach).keys()].some(
    (back) =>
      room.tokens[at - 1 - back]?.sentence === room.tokens[at]?.sentence &&
      words.test(wordAt(room, at - 1 - back)),
  );

/** "A 1994 rosette", "this is her, nineteen fifty six, out of a hen run", "it smells of 1970". */
function yearOfThing(room: Room, at: number, to: number, value: number): boolean {
  const [before, after] = [wordAt(room, at - 1), room.tokens[to]];
  const isWritten = room.tokens[at]?.kind === 'number';
  const noun = after?.kind === 'word' && !SIZE_AFTER.test(after.word) && !readUnit(room.tokens, to);
  if (
    /^an?$/.test(before) &&
    isWritten &&
    value >= 1900 &&
    value % 10 !== 0 &&
    noun &&
    /^\p{L}{3,}$/u.test(after.word)
  )
    return (
      !isTradeNoun(after.word) &&
      !/^(?:and|but|for|with|that|because|since|from|each|over|under|off)$/.test(after.word)
    );
  if (before === 'of' && withinOf(room, at, 3, /^(?:smells|smelt|smelling|summer|winter|spring|autumn)$/))
    return true;
  if (before !== ',' || !/^[.,;]?$/.test(after?.word ?? '')) return false;
  const isHer = /^(?:her|him|she|it)$/.test(wordAt(room, at - 2)) && /^(?:is|'s)$/.test(wordAt(room, at - 3));
  return isHer || (value >= 1850 && value <= 2035 && withinOf(room, at, 4, BEGAN));
}

/** "He started her in ninety one", "back in ninety-eight": a year of the last century by its two figures. */
export const shortYears: AmountRule = {
  name: 'a year by two figures',
  atNumber: true,
  read(room, at) {
    if (wordAt(room, at - 1) !== 'in') return undefined;
    const number = readNumber(room.tokens, at);
    if (!number || number.fraction || number.decimals || number.splitAfter) return undefined;
    if (number.value < 50 || number.value > 99 || !Number.isInteger(number.value)) return undefined;
    if (!/^(?:|[.,;!?]|and|when|by|for|from)$/.test(wordAt(room, number.to))) return undefined;
    const told = wordAt(room, at - 2) === 'back' || withinOf(room, at - 1, 4, BEGAN);
    return told ? skip(number.to, 'a year by its two figures') : undefined;
  },
};

const SIZE_AFTER = /^(?:wide|high|long|deep|thick|tall|across|centres|centers|clear|by|x|overall)$/;

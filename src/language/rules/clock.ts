import type { NumberReading } from '../numbers/number.ts';
import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRead, AmountRule, Room } from './rule.ts';
import { amountOf, wordAt } from './rule.ts';

const skip = (to: number, why: string): AmountRead => ({ skip: { to, why } });

const LEAD = /^(?:at|by|until|till|before|after|around|about|since|from|for)$/;
const HALF_DAY = /^(?:am|pm|o'clock|sharp|tonight|tomorrow)$/;
const DAY_PART = /^(?:morning|afternoon|evening|night|tonight|tomorrow|today|noon)$/;

function dayPartAfter(room: Room, at: number): number | undefined {
  if (HALF_DAY.test(wordAt(room, at))) return at + 1;
  // "p.m." comes as letters and dots.
  if (/^[ap]$/.test(wordAt(room, at)) && wordAt(room, at + 1) === '.' && wordAt(room, at + 2) === 'm')
    return at + 3;
  if (/^(?:this|tomorrow|every|on)$/.test(wordAt(room, at)) && DAY_PART.test(wordAt(room, at + 1)))
    return at + 2;
  if (wordAt(room, at) === 'in' && wordAt(room, at + 1) === 'the' && DAY_PART.test(wordAt(room, at + 2)))
    return at + 3;
  if (wordAt(room, at) === 'at' && wordAt(room, at + 1) === 'night') return at + 2;
  return undefined;
}

const hourAt = (room: Room, at: number) => {
  const number = readNumber(room.tokens, at);
  const whole = number && Number.isInteger(number.value) && !number.splitAfter;
  return whole && number.value >= 1 && number.value <= 12 ? number : undefined;
};

/**
 * "6:30", "six o'clock", "half past six", "ten to six tonight". A recogniser writes "nine oh five" as 9:05, so
 * a written time without a word of time about it is the bare number 905.
 */
export const clockTimes: AmountRule = {
  name: 'a clock time, or a length written as one',
  read(room, at) {
    return written(room, at) ?? halfHours(room, at) ?? spoken(room, at);
  },
};

function written(room: Room, at: number): AmountRead | undefined {
  const [hours, colon, minutes] = [room.tokens[at], room.tokens[at + 1], room.tokens[at + 2]];
  if (!hours || colon?.word !== ':' || colon.spaced || !minutes || minutes.spaced) return undefined;
  if (!/^\d{1,2}$/.test(hours.text) || !/^\d{2}$/.test(minutes.text)) return undefined;
  const day = dayPartAfter(room, at + 3);
  if (day) return skip(day, 'a clock time');
  const sized = readUnit(room.tokens, at + 3) || SIZED.test(wordAt(room, at + 3));
  if (!sized && LEAD.test(wordAt(room, at - 1))) return skip(at + 3, 'a clock time after a word of time');
  const value = Number(hours.text) * 100 + Number(minutes.text);
  const number = { from: at, to: at + 3, value, form: 'digits' as const, splitAfter: hours.text.length };
  const unit = readUnit(room.tokens, at + 3);
  const to = unit?.to ?? at + 3;
  return { amount: amountOf('a length written as a clock time', number, { from: at, to }, value, unit) };
}

const SIZED = /^(?:wide|high|long|deep|thick|tall|across|by|overall|clear|centres|centers)$/;

function halfHours(room: Room, at: number): AmountRead | undefined {
  const word = wordAt(room, at);
  if (!/^(?:half|quarter)$/.test(word)) return undefined;
  const dash = wordAt(room, at + 1) === '-' ? 1 : 0;
  const between = wordAt(room, at + 1 + dash);
  if (/^(?:past|to)$/.test(between)) {
    const hour = hourAt(room, at + 2 + dash);
    return hour ? skip(hour.to, 'a clock time') : undefined;
  }
  const hour = word === 'half' ? hourAt(room, at + 1) : undefined;
  if (!hour || readUnit(room.tokens, hour.to)) return undefined;
  return /^(?:inch|mil|by)$/.test(wordAt(room, hour.to))
    ? undefined
    : skip(hour.to, '"half seven" is a clock time');
}

const CAME =
  /^(?:left|came|come|comes|arrived|arrives|started|starts|start|finished|opens|opened|closes|closed|here|home|bed|knocked|packed|quit|stopped|landed|rang|called|woke|delivered|booked)$/;

/** "the last one left at ten", "oil turned up at nine", "I started at seven thirty". */
function comesAt(room: Room, at: number, number: NumberReading): boolean {
  if (wordAt(room, at - 1) !== 'at' || number.fraction || number.decimals) return false;
  const [verb, first] = [wordAt(room, at - 2), wordAt(room, at - 3)];
  const came = CAME.test(verb) || (verb === 'up' && /^(?:turned|got|was|were|'m|'s)$/.test(first));
  const hour = number.value >= 1 && number.value <= 12;
  const minutes = number.splitAfter !== undefined && number.value % 100 < 60 && number.value % 5 === 0;
  // "I started at fourteen thirty": of a person; "the tiles start at fourteen thirty" is a place.
  const isPerson = /^(?:i|we|he|she|they)$/.test(first);
  const past = minutes && number.value >= 100 && number.value < (isPerson ? 2400 : 1300);
  // "Inspector's booked, Friday at ten."
  const onADay = /^(?:mon|tues|wednes|thurs|fri|satur|sun)day$|^(?:tomorrow|tonight|today)$/.test(verb);
  if (!(came || onADay) || (!hour && !past)) return false;
  return !readUnit(room.tokens, number.to) && !SIZED.test(wordAt(room, number.to));
}

/** "at twenty to five", "by twenty five to nine": the hour is less than the minutes, so that it is no range. */
function minutesTo(room: Room, at: number, number: NumberReading): boolean {
  if (!/^(?:20|25)$/.test(String(number.value)) || wordAt(room, number.to) !== 'to') return false;
  if (!/^(?:at|by|before|until|till|it's|'s|now|gone|nearly|nearer)$/.test(wordAt(room, at - 1)))
    return false;
  const hour = hourAt(room, number.to + 1);
  return hour?.to === number.to + 2 && !readUnit(room.tokens, hour.to);
}

function spoken(room: Room, at: number): AmountRead | undefined {
  const number = readNumber(room.tokens, at);
  if (!number || number.value < 1 || number.value > 24 * 60) return undefined;
  const day = dayPartAfter(room, number.to);
  const hour = hourAt(room, at);
  if (/^(?:am|pm|o'clock)$/.test(wordAt(room, number.to)) && day) return skip(day, 'a clock time');
  const isMinutes = Number.isInteger(number.value) && number.value < 60 && !number.splitAfter;
  if (isMinutes && /^(?:past)$/.test(wordAt(room, number.to))) {
    const after = hourAt(room, number.to + 1);
    if (after) return skip(after.to, 'minutes past an hour');
  }
  if (comesAt(room, at, number)) return skip(number.to, 'an hour that somebody came or went at');
  if (minutesTo(room, at, number)) return skip(number.to + 2, 'minutes to an hour');
  if (!hour || !LEAD.test(wordAt(room, at - 1))) return undefined;
  if (day) return skip(day, 'an hour of the day');
  const to = wordAt(room, number.to) === 'to' ? hourAt(room, number.to + 1) : undefined;
  if (to && wordAt(room, at - 1) === 'at' && !readUnit(room.tokens, to.to))
    return skip(to.to, 'minutes to an hour');
  return undefined;
}

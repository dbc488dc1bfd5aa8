/**
 * Reads when something was done today or the day before, to the minute: "at ten past nine", "at two", "half an hour
 * ago", "just now", "last night at ten". An hour alone is the latest one that had come when the memo was recorded.
 */
import { allMatches } from '../all-matches.ts';
import { smallNumber } from '../numbers/small-number.ts';

/** A time as it was said, with its place in the text. */
export interface SaidTime {
  /** Offset into the text, end exclusive. */
  readonly start: number;
  readonly end: number;
  /** ISO 8601 in the zone of the memo. */
  readonly at: string;
}

const NUMBER =
  '(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|(?:twenty|thirty|forty|fifty)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)';
const HOUR =
  '(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|noon|midday|midnight)';
const LEAD = '(?:at|about|around|just after|just before|just gone|gone|by|since|from)';
const PART =
  "(?: ?(?:am|pm|a\\.m\\.|p\\.m\\.|o'clock|in the (?:morning|afternoon|evening)|this (?:morning|afternoon|evening)|at night|last night|yesterday(?: (?:morning|afternoon|evening))?))*";
const DAY =
  '(?:(?:this (?:morning|afternoon|evening)|last night|yesterday(?: (?:morning|afternoon|evening))?|today|tonight),? )?';

/** Each way of saying it: minutes of the day on a twelve hour clock, or minutes before the memo. */
type Read = (found: RegExpExecArray) => { readonly minutes: number } | { readonly ago: number } | undefined;
interface Way {
  readonly pattern: RegExp;
  readonly read: Read;
}

const numberOf = (text: string | undefined): number | undefined => {
  if (text === undefined) return undefined;
  const said = text.toLowerCase();
  if (said === 'noon' || said === 'midday') return 12;
  if (said === 'midnight') return 0;
  if (said === 'a quarter' || said === 'quarter') return 15;
  if (said === 'half') return 30;
  return smallNumber(said);
};

const clock = (hour: number | undefined, minute: number | undefined) =>
  hour === undefined || minute === undefined || hour > 24 || minute > 59
    ? undefined
    : { minutes: hour * 60 + minute };

/** Words before it that make it a time. */
const LED =
  /^(?:at|about|around|just|gone|by|since|from|it's|is now|now|this|last|yesterday|today|tonight)\b/i;

/** A size after the hour makes it none: "at two metres", "at twenty degrees". */
const NO_UNIT =
  '(?!\\s*(?:%|°|mm\\b|mil|metre|meter|inch|feet|foot|kilo|degree|litre|percent|per cent|hour|minute|day|week|volt|amp|bar|coat|part|to one|point|by \\d|and a|hundred|thousand))';

const WAYS: readonly Way[] = [
  {
    pattern: new RegExp(
      `\\b${DAY}(?:${LEAD} |it's |is now |now )?(${NUMBER}|(?:a )?quarter|half)(?: minutes)? (past|to) (${HOUR})\\b${PART}`,
      'gi',
    ),
    read: ([whole, minute, side, hour]) => {
      const [hours, minutes] = [numberOf(hour), numberOf(minute)];
      if (hours === undefined || minutes === undefined) return undefined;
      if (side?.toLowerCase() === 'past') return clock(hours, minutes);
      // "Five to one", "ten to one by weight" is how a product is mixed; "at ten to four" is a time.
      const isRound = minutes >= 15;
      if (hours === 1 ? !isRound : !isRound && !LED.test(whole)) return undefined;
      return clock((hours + 23) % 24, 60 - minutes);
    },
  },
  {
    pattern: new RegExp(`\\b${DAY}(?:${LEAD} )half (${HOUR})\\b${PART}`, 'gi'),
    read: ([, hour]) => clock(numberOf(hour), 30),
  },
  {
    pattern: new RegExp(
      `\\b${DAY}(?:${LEAD} )?(\\d{1,2})[:.h](\\d{2})\\b(?!\\s*(?:mm|m\\b|in\\b|kg|x))${PART}`,
      'gi',
    ),
    read: ([, hour, minute]) => clock(numberOf(hour), numberOf(minute)),
  },
  {
    pattern: new RegExp(
      `\\b${DAY}${LEAD} (${HOUR}) (oh[ -](?:five)|five|ten|fifteen|twenty(?:[ -]five)?|thirty(?:[ -]five)?|forty(?:[ -]five)?|fifty(?:[ -]five)?)\\b${NO_UNIT}${PART}`,
      'gi',
    ),
    read: ([, hour, minute]) => clock(numberOf(hour), numberOf(minute?.replace(/^oh[ -]/i, ''))),
  },
  {
    pattern: new RegExp(`\\b${DAY}${LEAD} (${HOUR})\\b${NO_UNIT}${PART}`, 'gi'),
    read: ([, hour]) => clock(numberOf(hour), 0),
  },
  {
    pattern: new RegExp(`\\b(${HOUR}) ?(?:o'clock|am|pm|a\\.m\\.|p\\.m\\.)${PART}`, 'gi'),
    read: ([, hour]) => clock(numberOf(hour), 0),
  },
  {
    pattern: new RegExp(
      `\\b(?:about |around |roughly )?(half an|an|a|${NUMBER}|(?:a )?quarter of an|a couple of)(?: and a half)? (hour|minute|min)s?(?: and a half)? (?:and (${NUMBER}) minutes )?ago\\b`,
      'gi',
    ),
    read: (found) => agoOf(found),
  },
  {
    pattern: /\b(?:just now|right now|this minute|as we speak)\b|\b(?:just|now)\b/gi,
    read: () => ({ ago: 0 }),
  },
];

function agoOf([whole, count, unit, more]: RegExpExecArray): { readonly ago: number } | undefined {
  const said = (count ?? '').toLowerCase();
  const number = /^half an$/.test(said)
    ? 0.5
    : /quarter of an$/.test(said)
      ? 0.25
      : /^an?$/.test(said)
        ? 1
        : said === 'a couple of'
          ? 2
          : smallNumber(said);
  if (number === undefined) return undefined;
  const all = number + (/ and a half\b/i.test(whole) ? 0.5 : 0);
  return { ago: all * (/^h/i.test(unit ?? '') ? 60 : 1) + (smallNumber(more ?? '') ?? 0) };
}

/** The times that a stretch of text says, in order, none within another. `recordedAt` is ISO 8601 with its offset. */
export function timesSaid(text: string, recordedAt: string): readonly SaidTime[] {
  const found: SaidTime[] = [];
  for (const { pattern, read } of WAYS) {
    for (const match of allMatches(pattern, text)) {
      const [start, end] = [match.index, match.index + match[0].length];
      if (found.some((one) => start < one.end && end > one.start)) continue;
      const told = read(match);
      const at = told && instantOf(told, match[0].toLowerCase(), recordedAt);
      if (at !== undefined) found.push({ start, end, at });
    }
  }
  return found.sort((a, b) => a.start - b.start);
}

const MINUTE = 60_000;
/** A memo may be begun a little before the time that it tells. */
const SLACK_MINUTES = 20;

function instantOf(
  told: { readonly minutes: number } | { readonly ago: number },
  words: string,
  recordedAt: string,
): string | undefined {
  const zone = /(?:Z|[+-]\d\d:?\d\d)$/.exec(recordedAt)?.[0] ?? 'Z';
  const now = Date.parse(recordedAt);
  const local = Date.parse(`${recordedAt.slice(0, 16)}Z`);
  if (Number.isNaN(now) || Number.isNaN(local)) return undefined;
  const inZone = (stamp: number) => `${new Date(stamp).toISOString().slice(0, 19)}${zone}`;
  if ('ago' in told) return inZone(local - told.ago * MINUTE);
  const isDayBefore = /yesterday|last night/.test(words);
  const midnight = Date.parse(`${recordedAt.slice(0, 10)}T00:00Z`) - (isDayBefore ? 24 * 60 * MINUTE : 0);
  const hours = hoursOf(told.minutes, words, isDayBefore);
  const all = hours.map((minutes) => midnight + minutes * MINUTE);
  const past = all.filter((stamp) => stamp <= local + SLACK_MINUTES * MINUTE);
  // None of today has come yet: it was the evening before.
  const stamp = past.length > 0 ? Math.max(...past) : Math.max(...all.map((one) => one - 24 * 60 * MINUTE));
  return inZone(stamp);
}

const NOON = 12 * 60;

/** Minutes of the day that an hour may stand for: those of the morning, those of the afternoon, or either. */
function hoursOf(minutes: number, words: string, isDayBefore: boolean): readonly number[] {
  if (minutes >= 13 * 60 || /midnight/.test(words)) return [minutes];
  const morning = minutes % NOON;
  const afternoon = morning + NOON;
  if (/\bam\b|a\.m\.|morning/.test(words)) return [morning];
  if (/\bpm\b|p\.m\.|afternoon|evening|night|noon|midday/.test(words)) return [afternoon];
  // Of another day nobody knows how late it was: work hours.
  if (isDayBefore) return [morning < 7 * 60 ? afternoon : morning];
  return [morning, afternoon];
}

import { casual, GB } from 'chrono-node/en';
import { allMatches } from './all-matches.ts';
import type { Span } from './notes.ts';

/** A day named in speech. */
export interface DateMention extends Span {
  /** ISO 8601 day in the memo's own zone. */
  readonly day: string;
  /** Name of the rule that read it. */
  readonly rule: string;
}

export interface DateContext {
  /** When the memo was recorded: ISO 8601 with its own offset. The day written there is "today". */
  readonly recordedAt: string;
  /** ISO 3166 country code: settles the order of day and month in written dates. Day first by default. */
  readonly region?: string;
  /** Which way a bare weekday or day of the month points. */
  readonly lean?: 'ahead' | 'back';
}

/** A calendar day, counted in days since 1970-01-01. */
type Day = number;

interface Scene {
  readonly today: Day;
  /** Hour of the day when the memo was recorded. */
  readonly hour: number;
  readonly ahead: boolean;
  readonly monthFirst: boolean;
}

interface DateRule {
  readonly name: string;
  readonly pattern: RegExp;
  readonly read: (found: RegExpMatchArray, scene: Scene) => Day | undefined;
}

const MS_PER_DAY = 86_400_000;
const dayOf = (year: number, month: number, date: number): Day =>
  Math.round(Date.UTC(year, month, date) / MS_PER_DAY);
const calendar = (day: Day) => new Date(day * MS_PER_DAY);
const isoOf = (day: Day) => calendar(day).toISOString().slice(0, 10);
/** 0 is Monday, as in ISO 8601. */
const weekdayOf = (day: Day) => (((day + 3) % 7) + 7) % 7;
const mondayOf = (day: Day) => day - weekdayOf(day);

const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const WEEKDAY =
  '(monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tues?|weds?|thurs?|thur|fri|sat|sun)';
const MONTH =
  '(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)';
const PART_OF_DAY = '(?: (?:first thing|morning|afternoon|evening|night|lunchtime|dinnertime|teatime))?';

const weekdayNamed = (name: string) => WEEKDAYS.findIndex((each) => each.startsWith(name.slice(0, 3)));

const CARDINALS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const ORDINALS =
  'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );
const COUNT = String.raw`(\d{1,3}|an?(?: couple of| few)?|a couple|a few|${CARDINALS.slice(1).join('|')}|thirty|forty|fifty|sixty|ninety)`;
const ORDINAL_WORD = `(?:thirty[ -]first|thirtieth|twenty[ -](?:${ORDINALS.slice(1, 10).join('|')})|${ORDINALS.slice(1).join('|')})`;
const ORDINAL = String.raw`(\d{1,2}(?:st|nd|rd|th)|${ORDINAL_WORD})`;

function countNamed(words: string): number | undefined {
  if (/^\d+$/.test(words)) return Number(words);
  if (/couple/.test(words)) return 2;
  if (/few/.test(words)) return 3;
  if (/^an?$/.test(words)) return 1;
  const tens = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].indexOf(words);
  if (tens >= 0) return (tens + 2) * 10;
  const n = CARDINALS.indexOf(words);
  return n < 0 ? undefined : n;
}

function ordinalNamed(words: string): number | undefined {
  const digits = /^(\d{1,2})/.exec(words);
  if (digits) return Number(digits[1]);
  if (words === 'thirtieth') return 30;
  const [tens, unit] = words.split(/[ -]/);
  if (tens === 'twenty' && unit) return 20 + ORDINALS.indexOf(unit);
  if (tens === 'thirty' && unit) return 30 + ORDINALS.indexOf(unit);
  const n = ORDINALS.indexOf(words);
  return n < 1 ? undefined : n;
}

const UNIT_DAYS: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14 };

function plusUnits(from: Day, count: number | undefined, unit: string): Day | undefined {
  if (count === undefined) return undefined;
  const name = unit.replace(/s$/, '');
  const days = UNIT_DAYS[name];
  if (days !== undefined) return from + count * days;
  const base = calendar(from);
  const months = name === 'month' ? count : name === 'year' ? count * 12 : undefined;
  if (months === undefined) return undefined;
  return dayInMonth(base.getUTCFullYear(), base.getUTCMonth() + months, base.getUTCDate());
}

/** The day `date` of a month, or that month's last day where it is shorter. */
function dayInMonth(year: number, month: number, date: number): Day {
  return Math.min(dayOf(year, month, date), dayOf(year, month + 1, 0));
}

/** The weekday's next (or last) occurrence; today itself counts as neither. */
function weekdayFrom(today: Day, name: string, ahead: boolean): Day {
  const ahead7 = (weekdayNamed(name) - weekdayOf(today) + 7) % 7 || 7;
  return ahead ? today + ahead7 : today + ahead7 - 7 - (ahead7 === 7 ? 7 : 0);
}

/** The nearest month in the direction of speech that has that day of the month. */
function dayOfMonth(date: number | undefined, { today, ahead }: Scene): Day | undefined {
  if (date === undefined || date < 1 || date > 31) return undefined;
  const base = calendar(today);
  for (let k = 0; k < 4; k++) {
    const month = base.getUTCMonth() + (ahead ? k : -k);
    const day = dayOf(base.getUTCFullYear(), month, date);
    const exists = calendar(day).getUTCDate() === date;
    if (exists && (ahead ? day >= today : day <= today)) return day;
  }
  return undefined;
}

/** Hands chrono-node one short string that is known to hold a written-out date, and nothing else. */
function readWritten(said: string, { today, ahead, monthFirst }: Scene): Day | undefined {
  const instant = new Date(today * MS_PER_DAY + MS_PER_DAY / 2);
  const plain = said.replace(/\b(?:the|of|in) /g, ' ').replace(/ +/g, ' ');
  // The day-first parser misses "June 15"; only figures alone leave the order to the country.
  const parser = monthFirst || /[a-z]/.test(plain) ? casual : GB;
  // "12 may fit", "march 40 of them up": a bare numeral beside a word that is a verb as well.
  if (/^(?:\d{1,2} (?:may|march|mar)|(?:may|march|mar) \d{1,2})$/.test(said)) return undefined;
  const [found] = parser.parse(plain, { instant, timezone: 0 }, { forwardDate: ahead });
  if (!found?.start.isCertain('day')) return undefined;
  const [year, month, day] = [found.start.get('year'), found.start.get('month'), found.start.get('day')];
  return year && month && day ? dayOf(year, month - 1, day) : undefined;
}

const rule = (name: string, pattern: string, read: DateRule['read']): DateRule => ({
  name,
  // "Tomorrow's job", "Monday's the plan" name the day all the same.
  pattern: new RegExp(String.raw`\b(?:${pattern})(?!(?!'s\b)[\w'-]|[./]\d)`, 'g'),
  read,
});

/** In a relative phrase a bare ordinal is a day of the month only when the phrase ends there. */
const ENDS = String.raw`(?=\s*(?:$|[.,;:!?)–—]|(?:at|by|if|and|or|so|but|though|because|since|ideally|latest|now|instead|or so|for|as|which|when|to|then)\b))`;

/**
 * Ordered: a longer way of speaking stands before the shorter one that it contains. Each reads one way of naming a
 * day. Times of day, bare numbers and fractions are nobody's here: "5/8" and "nine oh five" stay measurements.
 */
const RULES: readonly DateRule[] = [
  rule('<year>-<month>-<day>', String.raw`(\d{4})-(\d{2})-(\d{2})`, ([, y, m, d]) =>
    dayOf(Number(y), Number(m) - 1, Number(d)),
  ),
  rule('<day>/<month>/<year>', String.raw`\d{1,2}[/.]\d{1,2}[/.](?:19|20)\d{2}`, ([said], scene) =>
    readWritten(said, scene),
  ),
  rule(
    '<ordinal> of <month>',
    String.raw`(?:the )?(?:${ORDINAL}|\d{1,2})(?: of)? ${MONTH}(?:,? (?:of |in )?(?:19|20)\d{2})?`,
    ([said], scene) => readWritten(spellOrdinals(said), scene),
  ),
  rule(
    '<month> <ordinal>',
    String.raw`${MONTH} (?:the )?(?:${ORDINAL}|\d{1,2})(?:,? (?:of |in )?(?:19|20)\d{2})?(?! (?:mil|mm|inch|inches|foot|feet|by)\b)`,
    ([said], scene) => readWritten(spellOrdinals(said), scene),
  ),
  rule('<weekday> the <ordinal>', `${WEEKDAY},? the ${ORDINAL}`, ([, , date], scene) =>
    dayOfMonth(ordinalNamed(date as string), scene),
  ),
  rule('day after tomorrow', '(?:the )?day after tomorrow', (_, { today }) => today + 2),
  rule('day before yesterday', '(?:the )?day before yesterday', (_, { today }) => today - 2),
  rule(
    '<count> weeks from <day>',
    `${COUNT} (week|fortnight|day|month)s? (?:from |after )?(today|tomorrow|now|tonight)`,
    ([, n, unit, from], { today }) =>
      plusUnits(today + (from === 'tomorrow' ? 1 : 0), countNamed(n as string), unit as string),
  ),
  rule(
    '<count> weeks on <weekday>',
    `(?:${COUNT} )?(week|fortnight)s? (?:on |from |come )(?:next )?${WEEKDAY}`,
    ([, n, unit, name], { today }) =>
      plusUnits(weekdayFrom(today, name as string, true), countNamed(n ?? 'a'), unit as string),
  ),
  rule('<weekday> week', `${WEEKDAY} (week|fortnight)`, ([, name, unit], { today }) =>
    plusUnits(weekdayFrom(today, name as string, true), 1, unit as string),
  ),
  rule('today week', '(today|tomorrow) (week|fortnight)', ([, from, unit], { today }) =>
    plusUnits(today + (from === 'tomorrow' ? 1 : 0), 1, unit as string),
  ),
  rule(
    '<weekday> of last week',
    `${WEEKDAY}${PART_OF_DAY}(?: of)? last week|last week(?: on)? ${WEEKDAY}`,
    ([, a, b], { today }) => mondayOf(today) - 7 + weekdayNamed((a ?? b) as string),
  ),
  rule(
    '<weekday> of this week',
    `${WEEKDAY}${PART_OF_DAY}(?: of)? this week|this week(?: on)? ${WEEKDAY}`,
    ([, a, b], { today }) => mondayOf(today) + weekdayNamed((a ?? b) as string),
  ),
  rule(
    '<weekday> after next',
    `${WEEKDAY} after next`,
    ([, name], { today }) => mondayOf(today) + 14 + weekdayNamed(name as string),
  ),
  rule(
    '<weekday> of next week',
    `${WEEKDAY}${PART_OF_DAY}(?: of)? next week|next week(?: on)? ${WEEKDAY}`,
    ([, a, b], { today }) => mondayOf(today) + 7 + weekdayNamed((a ?? b) as string),
  ),
  rule(
    'next <weekday>',
    `next ${WEEKDAY}${PART_OF_DAY}`,
    ([, name], { today }) => mondayOf(today) + 7 + weekdayNamed(name as string),
  ),
  rule('last <weekday>', `(?:last|past|previous|this past) ${WEEKDAY}${PART_OF_DAY}`, ([, name], { today }) =>
    weekdayFrom(today, name as string, false),
  ),
  rule('this <weekday>', `(?:this|this coming|come) ${WEEKDAY}${PART_OF_DAY}`, ([, name], { today }) =>
    weekdayOf(today) === weekdayNamed(name as string) ? today : weekdayFrom(today, name as string, true),
  ),
  rule('end of next week', '(?:the )?end of next week', (_, { today }) => mondayOf(today) + 11),
  // The working week ends on Friday; from Friday on only the calendar week is left. Common practice, no source.
  rule('end of the week', "(?:the )?(?:end|back end) of (?:the|this) week|week's end", (_, { today }) =>
    weekdayOf(today) < 4 ? mondayOf(today) + 4 : mondayOf(today) + 6,
  ),
  rule('end of the month', '(?:the )?end of (?:the|this) month|month end', (_, { today }) =>
    dayOf(calendar(today).getUTCFullYear(), calendar(today).getUTCMonth() + 1, 0),
  ),
  rule('end of next month', '(?:the )?end of next month', (_, { today }) =>
    dayOf(calendar(today).getUTCFullYear(), calendar(today).getUTCMonth() + 2, 0),
  ),
  rule('next weekend', 'next weekend', (_, { today }) => mondayOf(today) + 12),
  rule('last weekend', 'last weekend', (_, { today }) => mondayOf(today) - 2),
  rule('the weekend', '(?:this|the|at the|over the|come the) weekend', (_, { today, ahead }) =>
    ahead ? Math.max(today, mondayOf(today) + 5) : mondayOf(today) - 2,
  ),
  rule('the other week', '(?:the other|last) week', () => undefined),
  rule('tomorrow', `to-?morrow${PART_OF_DAY}`, (_, { today }) => today + 1),
  rule('yesterday', `yesterday${PART_OF_DAY}|last night`, (_, { today }) => today - 1),
  rule(
    '<weekday>',
    `(?:(?:first thing|end of play|close of play) )?(?:on |by |come )?${WEEKDAY}${PART_OF_DAY}`,
    ([said, name], { today, ahead }) =>
      // "sat", "sun" and "wed" are words of the workshop too.
      /\b(?:sat|sun|wed|mon)\b/.test(said) ? undefined : weekdayFrom(today, name as string, ahead),
  ),
  rule(
    'today',
    'to-?day|to-?night|this (?:morning|afternoon|evening)|later on today|end of (?:the day|play)',
    (_, { today }) => today,
  ),
  // Said after breakfast, "in the morning" is the next one.
  // "The first thing we make" is no time of day.
  rule(
    'in the morning',
    "in the morning|(?<!\\bthe )first thing(?! (?:i|we|you|he|she|they|that|to|is|was|on the list|we['’]re|i['’]m)\\b)",
    (_, { today, hour }) => (hour >= 9 ? today + 1 : today),
  ),
  rule(
    'in <count> weeks',
    `(?:in|within|inside) (?:the next |about |around |another |under )?${COUNT} (day|week|fortnight|month|year)s?(?:['’]? time)?`,
    ([, n, unit], { today }) => plusUnits(today, countNamed(n as string), unit as string),
  ),
  rule(
    '<count> weeks away',
    `${COUNT} (day|week|fortnight|month)s?(?:['’]? time| away| off| out| lead time)`,
    ([, n, unit], { today }) => plusUnits(today, countNamed(n as string), unit as string),
  ),
  rule('<count> weeks ago', `${COUNT} (day|week|fortnight|month)s? ago`, ([, n, unit], { today }) => {
    const count = countNamed(n as string);
    return count === undefined ? undefined : plusUnits(today, -count, unit as string);
  }),
  rule('the <numeral>', String.raw`the (\d{1,2}(?:st|nd|rd|th))${ENDS}`, ([, date], scene) =>
    dayOfMonth(ordinalNamed(date as string), scene),
  ),
  rule(
    'by the <ordinal>',
    `(?:by|on|for|until|till|before|from|about|around|due|coming|is|it's) the ${ORDINAL}${ENDS}`,
    ([, date], scene) => dayOfMonth(ordinalNamed(date as string), scene),
  ),
  // From the tenth on an ordinal is seldom a place in a row: "the twenty second at the latest".
  rule('the <late ordinal>', `the (${ORDINAL_WORD})${ENDS}`, ([, words], scene) => {
    const date = ordinalNamed(words as string);
    return date !== undefined && date > 10 ? dayOfMonth(date, scene) : undefined;
  }),
];

/** Chrono knows ordinal words only where a month follows at once: digits are safe in both orders. */
function spellOrdinals(said: string): string {
  return said.replace(new RegExp(ORDINAL_WORD, 'g'), (words) => String(ordinalNamed(words) ?? words));
}

/** Cheap test that spares most text the rules. Looks at the text as it stands: folded, most of it would be for nothing. */
const HINT =
  /day\b|days?\b|week|fortnight|month|tonight|morrow|this\s(?:morning|afternoon|evening)|first\sthing|in\sthe\smorning|last\snight|the\s\d{1,2}(?:st|nd|rd|th)|\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)|the\s(?:(?:twenty|thirty)[\s-])?\w+(?:st|nd|rd|th)\b|\d{4}-\d\d|[/.]\d{4}|end\sof\splay/i;

/** Keeps offsets: one character for each. */
const fold = (text: string) =>
  text
    .replace(/[A-Z]/g, (letter) => letter.toLowerCase())
    .replace(/[’ʼ]/g, "'")
    .replace(/\s/g, ' ');

function sceneOf(context: DateContext): Scene | undefined {
  const found = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}))?/.exec(context.recordedAt);
  if (!found) return undefined;
  const [, year, month, date, hour] = found;
  return {
    today: dayOf(Number(year), Number(month) - 1, Number(date)),
    hour: Number(hour ?? 12),
    ahead: context.lean !== 'back',
    monthFirst: context.region === 'US' || context.region === 'PH',
  };
}

/**
 * Finds the days named in `text`, in order and without overlaps; offsets count from its start. Returns nothing when
 * `recordedAt` is no ISO date. Vague times ("next week", "soon") name no day and are left out.
 */
export function findDates(text: string, context: DateContext): readonly DateMention[] {
  if (!HINT.test(text)) return [];
  const scene = sceneOf(context);
  if (!scene) return [];
  const said = fold(text);
  const found: DateMention[] = [];
  for (const { name, pattern, read } of RULES) {
    for (const match of allMatches(pattern, said)) {
      const span = { start: match.index, end: match.index + match[0].length };
      if (found.some((other) => other.start < span.end && span.start < other.end)) continue;
      const day = read(match, scene);
      if (day !== undefined && Number.isFinite(day)) found.push({ ...span, day: isoOf(day), rule: name });
    }
  }
  return found.sort((a, b) => a.start - b.start);
}

/**
 * The day a lead time ends ("eight weeks", "a fortnight"): only for text that is known to speak of a delivery, since
 * elsewhere a bare stretch of time is a duration.
 */
export function findLeadTime(text: string, context: DateContext): DateMention | undefined {
  const scene = sceneOf(context);
  const match = LEAD_TIME.exec(fold(text));
  if (!scene || !match) return undefined;
  const day = plusUnits(scene.today, countNamed(match[1] as string), match[2] as string);
  if (day === undefined) return undefined;
  return { start: match.index, end: match.index + match[0].length, day: isoOf(day), rule: 'lead time' };
}
const LEAD_TIME = new RegExp(
  String.raw`\b${COUNT} (day|week|fortnight|month)s?\b(?! (?:late|early|ago|ahead|behind))`,
);

/** Today in the memo's own zone, as an ISO day; empty when `recordedAt` is no ISO date. */
export function dayRecorded(recordedAt: string): string {
  return /^\d{4}-\d{2}-\d{2}/.exec(recordedAt)?.[0] ?? '';
}

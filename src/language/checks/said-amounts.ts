/**
 * Amounts in a few words of talk that are no figure of a thing: how long a load runs, where a taper ends. Each is read
 * from its words alone.
 */
import type { HouseUnits, Quantity } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { readQuantities } from '../quantities.ts';
import { tokenise } from '../tokens.ts';

/** Nothing measured ever takes more words. */
const MOST_WORDS = 9;
/** The end of a taper that is none. */
const NOTHING =
  /^(?:a |an )?(?:nothing|nought|naught|zero|nil|a point|point|feather edge|feather|knife edge|sharp edge|0)$/i;

/**
 * The length that a few words say, in the unit that was said, else that of the house: "two and a half inches", "60".
 * Nought for "nothing" and "a point". Undefined where they hold no length or more than one amount.
 */
export function lengthSaid(words: string, units: HouseUnits): Quantity | undefined {
  const said = words.trim();
  if (NOTHING.test(said)) return { value: 0, unit: units === 'us' ? 'in' : 'mm' };
  if (said.split(/\s+/).length > MOST_WORDS) return undefined;
  const context = { units, recordedAt: '2000-01-01T00:00:00Z' };
  // A bare number in words is a length only beside a word of size.
  const { quantities } = readQuantities(`${said} long`, tokenise(`${said} long`), context);
  const [first] = quantities;
  if (quantities.length !== 1 || first?.dimension !== 'length' || first.high !== undefined) return undefined;
  return { value: first.value, unit: first.unit };
}

const NUMBER =
  '(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[ -])?(?:\\d+(?:\\.\\d+)?|[a-z]+)';
const HALF_OF = /(?:half|quarter|three quarters) (?:of )?an? hour|half hour/;
const DURATION = new RegExp(
  `\\b(${HALF_OF.source}|an hour and a half|(?:${NUMBER}) and a half hours?|(?:${NUMBER}) (?:hours?|hrs?|h|minutes?|mins?)|all day and (?:all )?night|round the clock|day and night|twenty four seven|24 ?/ ?7)(?![a-z])`,
  'gi',
);
const WHOLE_DAY = /^(?:all day|round|day and|twenty four seven|24 ?\/)/;

/** A time said in words, in hours or minutes, and where it stands. */
export interface SaidTime extends Quantity {
  readonly start: number;
  readonly end: number;
}

/** Every time that a stretch of talk says, "round the clock" as a day. Linear in its length. */
export function timesSaid(words: string): readonly SaidTime[] {
  return [...words.matchAll(DURATION)].flatMap((found) => {
    const said = (found[1] ?? '').toLowerCase();
    const time = timeOf(said);
    return time ? [{ ...time, start: found.index, end: found.index + said.length }] : [];
  });
}

function timeOf(said: string): Quantity | undefined {
  if (WHOLE_DAY.test(said)) return { value: 24, unit: 'h' };
  if (HALF_OF.test(said))
    return { value: said.startsWith('quarter') ? 15 : said.startsWith('three') ? 45 : 30, unit: 'min' };
  if (said === 'an hour and a half') return { value: 90, unit: 'min' };
  const [count = '', rest = ''] = said.split(/ (?=(?:and a half|hours?|hrs?|h|minutes?|mins?)\b)/);
  const number = count === 'an' || count === 'a' ? 1 : smallNumber(count);
  if (number === undefined || number <= 0) return undefined;
  const isMinutes = /min/.test(said);
  const value = /half/.test(rest) ? number + 0.5 : number;
  return { value, unit: isMinutes ? 'min' : 'h' };
}

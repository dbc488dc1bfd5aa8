/** Words of time beside a thing: they tell when, and are no part of its name. */
import { wordSet } from '../word-table.ts';
import type { Word } from './words.ts';

/** When something was or will be: no part of a thing's name. */
const CALENDAR =
  wordSet(`night morning evening afternoon week weekend fortnight month day nights mornings evenings afternoons weeks
  weekends fortnights months days`);
const BY_ITSELF =
  wordSet(`monday tuesday wednesday thursday friday saturday sunday mondays tuesdays wednesdays thursdays fridays
  saturdays sundays today tonight yesterday tomorrow`);
const WHICH_ONE = wordSet('last next this that each every other');
/** Things that are named for the time when they serve. Common practice, no source. */
const SERVES_BY =
  wordSet(`store stores storage tank tanks bed beds berth berths latch latches light lights lamp lamps
  heater heaters head heads cabin cabins boat boats sail sails room rooms signal signals mark marks shape shapes shift`);

const isTime = (word: Word | undefined) =>
  word?.tag === 'noun' && (CALENDAR.has(word.lower) || BY_ITSELF.has(word.lower));

/** "Night store", "day tank": the word of time belongs to the thing behind it. */
const isServedBy = (words: readonly Word[], at: number) =>
  CALENDAR.has(words[at]?.lower ?? '') &&
  words[at + 1]?.tag === 'noun' &&
  SERVES_BY.has(words[at + 1]?.lower ?? '');

/** "The legs last night", "the treads Thursday": what follows a thing tells when, and begins a phrase of its own. */
export function tellsWhen(words: readonly Word[], at: number): boolean {
  const next = WHICH_ONE.has(words[at]?.lower ?? '') ? at + 1 : at;
  return isTime(words[next]) && !isTime(words[at - 1]) && !isServedBy(words, next);
}

/** "Monday, inverters" run together, "last week's boards": the thing behind the time is a phrase of its own. */
export function endsWithTime(words: readonly Word[], at: number, determiner: string | undefined): boolean {
  if (!isTime(words[at]) || isTime(words[at + 1]) || isServedBy(words, at)) return false;
  const before = words[at - 1]?.lower ?? determiner ?? '';
  return BY_ITSELF.has(words[at]?.lower ?? '') || WHICH_ONE.has(before) || isTime(words[at - 1]);
}

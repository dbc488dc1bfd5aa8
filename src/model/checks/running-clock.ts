/**
 * The clocks of a product beside its check: when it was mixed or laid, by the talk, and from that when its times begin
 * and end. A coat that went on outside the window, and a mix in use after its pot life, break the check; a time that is
 * only running, or over, is told.
 */
import { after, isLater, secondsBetween, wallClock } from '../instants.ts';
import type { ClockRow } from '../kept/record-rows.ts';
import type { ModelReader } from '../rows.ts';
import type { CheckState, CheckWindow } from './check-rows.ts';
import { isSameThing, mayBeSame, productOfCheck } from './products.ts';

/** What has been done with the product of a check, up to now. */
export interface RunningClock {
  readonly start: ClockRow;
  /** Clamps, props or formwork that were told to be off since. */
  readonly freed?: ClockRow;
  /** The coat before, where the one that started the clock was said to go on it. */
  readonly before?: ClockRow;
  /** The mix in use, the latest that was told. */
  readonly used?: ClockRow;
}

/** Checks that a clock runs for, by what starts it, best first. */
const STARTED_BY: Readonly<Record<string, readonly ClockRow['act'][]>> = {
  'pot life': ['mixed'],
  'recoat window': ['laid'],
  'cure time': ['laid', 'mixed'],
  'drying time': ['laid'],
};

export const hasClock = (check: string): boolean => STARTED_BY[check] !== undefined;

/** Checks whose time is of one coat or joint; a pot is used wherever it is wanted. */
const BY_THING: ReadonlySet<string> = new Set(['recoat window', 'cure time', 'drying time']);

/**
 * The clocks that run for a check at `now`, one for each thing that the product was put on, the one that was begun last
 * at the end; none where the talk started none, or left open of which product. Costs by the clocks and the data sheets
 * on record.
 */
export function clocksFor(
  reader: Pick<ModelReader, 'records' | 'checksWatching'>,
  check: string,
  product: string | undefined,
  now: string,
): readonly RunningClock[] {
  const isAlone = isOnlyProduct(reader, product);
  const told = reader
    .records('clock')
    .filter((row) => !isLater(row.at, now, SLACK))
    // "The second coat is on", without a name, is of the only product that there is; of several nobody knows.
    .filter((row) => (product && row.product ? mayBeSame(product, row.product) : isAlone))
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const groups = BY_THING.has(check) ? byThing(told) : [told];
  return groups
    .flatMap((group) => clockOfGroup(check, group) ?? [])
    .sort((a, b) => Date.parse(a.start.at) - Date.parse(b.start.at));
}

/** The clock of what was done with a product in one place, in order of time. */
function clockOfGroup(check: string, told: readonly ClockRow[]): RunningClock | undefined {
  const start = (STARTED_BY[check] ?? [])
    .map((act) => told.findLast((row) => row.act === act))
    .find((row) => row !== undefined);
  if (!start) return undefined;
  const same = told.filter((row) => mayBeSame(start.product, row.product));
  const before = start.isNext
    ? same.findLast((row) => row.act === 'laid' && isLater(start.at, row.at))
    : undefined;
  const used = same.findLast(
    (row) => row.act !== 'mixed' && row.act !== 'freed' && isLater(row.at, start.at),
  );
  const freed = same.find((row) => row.act === 'freed' && isLater(row.at, start.at));
  return { start, ...(before ? { before } : {}), ...(used ? { used } : {}), ...(freed ? { freed } : {}) };
}

/**
 * What was done with a product, by the things it was done to. What names none goes on with what was done last; the first
 * name that is told after that is its name.
 */
function byThing(told: readonly ClockRow[]): readonly (readonly ClockRow[])[] {
  const groups: { on: string; rows: ClockRow[] }[] = [];
  let last: (typeof groups)[number] | undefined;
  for (const row of told) {
    const { on } = row;
    const own =
      on === undefined
        ? last
        : (groups.findLast((group) => group.on !== '' && isSameThing(group.on, on)) ??
          (last?.on === '' ? last : undefined));
    const group = own ?? { on: '', rows: [] };
    if (!own) groups.push(group);
    group.rows.push(row);
    if (on !== undefined && group.on === '') group.on = on;
    last = group;
  }
  return groups.map(({ rows }) => rows);
}

/** Whether all data sheets with times that stand may be of one product; two that name none are of two. */
function isOnlyProduct(reader: Pick<ModelReader, 'checksWatching'>, product: string | undefined): boolean {
  const sheets = reader.checksWatching(['@clock']);
  const [first] = sheets;
  return sheets.every((row) => {
    const other = productOfCheck(row);
    if (product === undefined) return other === undefined && row.source.memoId === first?.source.memoId;
    return other !== undefined && mayBeSame(product, other);
  });
}

/** A memo may be begun a little before the time that it tells. */
const SLACK = 20 * 60;

/** Seconds that a run gave, at their worst: `from` the latest that it may begin, `until` the earliest that it may end. */
export interface Times {
  readonly from?: number;
  readonly until?: number;
}

export interface ClockWords {
  /** What it makes of the verdict. */
  readonly state: CheckState;
  readonly why: string;
  readonly window: CheckWindow;
}

/** What the clock of a check says at `now`, with `times` from its run. */
export function readClock(check: string, clock: RunningClock, times: Times, now: string): ClockWords {
  const { start, used } = clock;
  const opens = times.from === undefined ? {} : { opens: after(start.at, times.from) };
  const closes = times.until === undefined ? {} : { closes: after(start.at, times.until) };
  const { product, act, on, at: startedAt, source } = start;
  const last = check === 'pot life' ? used : check === 'cure time' ? clock.freed : undefined;
  const usedSource = last ? { usedSource: last.source } : {};
  const thing = on === undefined ? {} : { on };
  const window = { product, ...thing, act, startedAt, source, ...usedSource, ...opens, ...closes };
  return { ...wordsOf(check, clock, times, window, now), window };
}

function wordsOf(
  check: string,
  clock: RunningClock,
  times: Times,
  window: CheckWindow,
  now: string,
): Omit<ClockWords, 'window'> {
  if (check === 'pot life') return potLife(clock, times, window, now);
  if (check === 'recoat window') return recoat(clock, times, window, now);
  return freedEarly(check, clock, times, window) ?? ready(check, window, now);
}

/** "5 h 20 min": so long a time in the two largest units that it has, to the minute. */
export function span(seconds: number): string {
  const minutes = Math.max(0, Math.round(seconds / 60));
  const [days, hours] = [Math.floor(minutes / 1440), Math.floor(minutes / 60)];
  if (days >= 2) return joinedUnits([days, 'd'], [hours % 24, 'h']);
  return hours >= 1 ? joinedUnits([hours, 'h'], [minutes % 60, 'min']) : `${minutes} min`;
}

const joinedUnits = (...parts: readonly (readonly [number, string])[]) =>
  parts
    .filter(([value], index) => index === 0 || value > 0)
    .map(([value, unit]) => `${value} ${unit}`)
    .join(' ');

const startedWords = ({ product, on, act, startedAt }: CheckWindow) =>
  `${product === '' ? (act === 'mixed' ? 'the mix' : 'the coat') : product}${on === undefined ? '' : ` (${on})`} ${act} ${wallClock(startedAt)}`;

/** After three pot lives it is another mix that is in use, whose mixing was not told. Our own bound. */
const OTHER_MIX = 3;

function potLife({ start, used }: RunningClock, { until = 0 }: Times, window: CheckWindow, now: string) {
  const end = wallClock(window.closes ?? now);
  const gone = used ? secondsBetween(start.at, used.at) : 0;
  if (used && gone > until && gone <= until * OTHER_MIX) {
    const over = `in use ${wallClock(used.at)}, ${span(gone - until)} over at worst`;
    return { state: 'broken', why: `${startedWords(window)}, usable until ${end}; ${over}` } as const;
  }
  const left = until - secondsBetween(start.at, now);
  const rest = left >= 0 ? `${span(left)} left at worst` : 'over since then';
  return { state: 'told', why: `${startedWords(window)}, usable until ${end}; ${rest}` } as const;
}

function recoat(
  { start, before }: RunningClock,
  { from = 0, until }: Times,
  window: CheckWindow,
  now: string,
) {
  const { opens = now, closes } = window;
  const next = `the next coat from ${wallClock(opens)}${closes === undefined ? '' : ` until ${wallClock(closes)}`}`;
  const judged = before && heldAgainst(before, start, from, until, window);
  if (judged === 'within') {
    const told = gapWords(before as ClockRow, start, window);
    return { state: 'holds', why: `${told}, within its times; ${next}` } as const;
  }
  if (judged !== undefined) return { state: 'broken', why: judged } as const;
  const gone = secondsBetween(start.at, now);
  const rest =
    gone < from
      ? `, ${span(from - gone)} to wait at worst`
      : until === undefined
        ? ''
        : gone <= until
          ? `, ${span(until - gone)} left at worst`
          : ', over since then';
  return { state: 'told', why: `${startedWords(window)}; ${next}${rest}` } as const;
}

const gapWords = (before: ClockRow, start: ClockRow, window: CheckWindow): string =>
  `${startedWords(window)}, ${span(secondsBetween(before.at, start.at))} after the coat of ${wallClock(before.at)}`;

/**
 * Why a coat was outside the times after the one before, or that it was within them. A coat of which no time was said
 * was on by the memo that told of it, and nobody knows since when: then only what holds at any time before is judged.
 */
function heldAgainst(
  before: ClockRow,
  start: ClockRow,
  from: number,
  until: number | undefined,
  window: CheckWindow,
): string | 'within' | undefined {
  const gone = secondsBetween(before.at, start.at);
  const told = gapWords(before, start, window);
  if (gone < from && before.isSaid) return `${told}: ${span(from - gone)} too early at worst`;
  if (until !== undefined && gone > until && start.isSaid)
    return `${told}: ${span(gone - until)} too late at worst`;
  return before.isSaid && start.isSaid ? 'within' : undefined;
}

/** Told without a time, the work may have been begun so long before the memo. Our own bound: half a working day. */
const BEGUN_BEFORE = 4 * 3600;

/** "The clamps are off", before the time of the data sheet was over. */
function freedEarly(check: string, { start, freed }: RunningClock, { from = 0 }: Times, window: CheckWindow) {
  if (check !== 'cure time' || !freed) return undefined;
  const gone = secondsBetween(start.at, freed.at);
  if (gone + (start.isSaid ? 0 : BEGUN_BEFORE) >= from) return undefined;
  const since = start.isSaid ? '' : ', counted from the memo that told of it';
  const why = `${startedWords(window)}, clamps or formwork off ${wallClock(freed.at)}, ${span(gone)} after it${since}: ${span(from - gone)} too early at worst`;
  return { state: 'broken', why } as const;
}

const READY: Readonly<Record<string, string>> = { 'cure time': 'cured', 'drying time': 'dry' };

function ready(check: string, window: CheckWindow, now: string) {
  const { opens = now } = window;
  const toGo = secondsBetween(now, opens);
  const told = `${startedWords(window)}, by the data sheet's time ${READY[check]} ${wallClock(opens)}`;
  return toGo > 0
    ? ({ state: 'told', why: `${told}, ${span(toGo)} to go at worst` } as const)
    : ({ state: 'holds', why: `${told}: that time is over` } as const);
}

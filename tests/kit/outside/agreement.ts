/** How far our reading of a published sentence agrees with what its set says. */
import { findDates } from '../../../src/language/dates.ts';
import type { ReadContext } from '../../../src/language/notes.ts';
import { readQuantities } from '../../../src/language/quantities.ts';
import { tokenise } from '../../../src/language/tokens.ts';
import type { Gold, OutsideCase } from './sets.ts';
import { type Atom, type OutsideKind, ourAtom } from './units.ts';

/** A value that was read; `kept` when it also counts as a figure of a build. */
export interface Answer extends Atom {
  readonly kept: boolean;
}

export interface Agreement {
  readonly right: readonly Answer[];
  readonly missed: readonly Gold[];
  readonly extra: readonly Answer[];
}

/**
 * Refiners that drop a well-read quantity for what it is about: a stretch of the calendar, a person, a supposition.
 * The sets ask what was said, not whether it is a figure of a build.
 */
const ABOUT_SOMETHING_ELSE: ReadonlySet<string> = new Set([
  'times of a process, not of the calendar',
  'a person, not the build',
  'supposed, or said for the sake of argument',
  'an age to come',
]);

function contextOf({ region, recordedAt }: OutsideCase): ReadContext {
  return {
    units: 'mixed',
    ...(region ? { region } : {}),
    recordedAt: recordedAt ?? '2016-11-07T00:00:00',
  };
}

function measuresIn(one: OutsideCase): readonly Answer[] {
  const { quantities, trace } = readQuantities(one.text, tokenise(one.text), contextOf(one));
  const kept = quantities.flatMap(({ value, high, unit }) => [
    ...answer(value, unit, true),
    ...(high === undefined ? [] : answer(high, unit, true)),
  ]);
  const other = trace.flatMap(({ outcome, rule, value, unit }) =>
    outcome === 'dropped' && ABOUT_SOMETHING_ELSE.has(rule) && value !== undefined && unit
      ? answer(value, unit, false)
      : [],
  );
  return [...kept, ...other];
}

function answer(value: number, unit: string, kept: boolean): readonly Answer[] {
  const found = ourAtom(value, unit);
  return found ? [{ ...found, kept }] : [];
}

function daysIn(one: OutsideCase): readonly Answer[] {
  return findDates(one.text, contextOf(one)).map(({ day }) => ({ kind: 'date', key: day, kept: true }));
}

/** Compares value and unit strictly; each published value takes one answer. */
export function agreementOn(one: OutsideCase): Agreement {
  const answers = one.kinds.includes('date') ? daysIn(one) : measuresIn(one);
  const left = answers.filter(({ kind }) => one.kinds.includes(kind));
  const right: Answer[] = [];
  const missed: Gold[] = [];
  for (const gold of one.gold) {
    const at = left.findIndex(({ key }) => gold.keys.includes(key));
    if (at < 0) missed.push(gold);
    else right.push({ ...(left.splice(at, 1)[0] as Answer), kind: gold.kind });
  }
  return { right, missed, extra: left };
}

/** True when everything that the set labels was read, and nothing else of those kinds. */
export function agrees(one: OutsideCase): boolean {
  const { missed, extra } = agreementOn(one);
  return missed.length + extra.length === 0;
}

export interface KindScore {
  readonly set: string;
  readonly kind: OutsideKind | 'all';
  readonly gold: number;
  readonly right: number;
  readonly extra: number;
  readonly kept: number;
}

/** Precision, recall and their harmonic mean; 0 where nothing is counted. */
export function ratesOf({ gold, right, extra }: Pick<KindScore, 'gold' | 'right' | 'extra'>) {
  const precision = right / Math.max(1, right + extra);
  const recall = right / Math.max(1, gold);
  return { precision, recall, f1: (2 * precision * recall) / Math.max(1e-9, precision + recall) };
}

/** Scores by set and kind, with a line for each whole set; only kinds that the set labels. */
export function scoreOutside(cases: readonly OutsideCase[]): readonly KindScore[] {
  const rows = new Map<string, KindScore>();
  const add = (set: string, kind: KindScore['kind'], more: Partial<KindScore>) => {
    const id = `${set}\n${kind}`;
    const row = rows.get(id) ?? { set, kind, gold: 0, right: 0, extra: 0, kept: 0 };
    rows.set(id, {
      ...row,
      gold: row.gold + (more.gold ?? 0),
      right: row.right + (more.right ?? 0),
      extra: row.extra + (more.extra ?? 0),
      kept: row.kept + (more.kept ?? 0),
    });
  };
  for (const one of cases) {
    const { right, missed, extra } = agreementOn(one);
    for (const { kind } of missed) for (const name of [kind, 'all'] as const) add(one.set, name, { gold: 1 });
    for (const { kind, kept } of right)
      for (const name of [kind, 'all'] as const)
        add(one.set, name, { gold: 1, right: 1, kept: kept ? 1 : 0 });
    for (const { kind } of extra) for (const name of [kind, 'all'] as const) add(one.set, name, { extra: 1 });
  }
  return [...rows.values()];
}

/** What a reading of the talk so far says that was not told before. Pure. */
import type { FindingView, MemoView } from '../model/views.ts';

type Notes = MemoView['notes'];
export type FigureHeard = Notes['figures'][number];
/** A task, a choice, a delivery, or whatever else was heard beside figures. */
export type NoteHeard = Exclude<Notes[keyof Notes][number], FigureHeard>;

/** The talk so far, read and held against the project, without anything being kept of it. */
export interface LookAhead {
  readonly figures: readonly FigureHeard[];
  /** Everything else, in the order of speech. */
  readonly notes: readonly NoteHeard[];
  readonly findings: readonly FindingView[];
  /** The words of each sentence that was taken back ("scratch that"). */
  readonly takenBack: readonly string[];
  /** Of those the one that the last words took back. */
  readonly takenBackNow?: string;
}

/** What was told of a recording: how often each figure and note, which clashes, and what was taken back. */
export interface Told {
  readonly figures: ReadonlyMap<string, number>;
  readonly notes: ReadonlyMap<string, number>;
  readonly findings: ReadonlySet<string>;
  readonly takenBack: ReadonlyMap<string, number>;
}

export const NOTHING_TOLD: Told = {
  figures: new Map(),
  notes: new Map(),
  findings: new Set(),
  takenBack: new Map(),
};

/** What has come since. */
export type News = Omit<LookAhead, 'takenBackNow'>;

/**
 * Figures, notes and clashes that were not told yet, what was taken back since, and what is told with them. A figure that
 * was put right is new; one that is only heard better, in other words or a little later, is not.
 */
export function whatIsNew(ahead: LookAhead, told: Told): News & { readonly told: Told } {
  const takenBack = newOf(ahead.takenBack, (words) => words, told.takenBack);
  const figures = newOf(ahead.figures, figureKey, told.figures);
  const notes = newOf(ahead.notes, noteKey, told.notes);
  const findings = ahead.findings.filter((finding) => !told.findings.has(findingKey(finding)));
  // What was taken back and is said again is told again.
  const isLess = takenBack.fresh.length > 0;
  return {
    figures: figures.fresh,
    notes: notes.fresh,
    findings,
    takenBack: takenBack.fresh,
    told: {
      figures: isLess ? figures.said : figures.counts,
      notes: isLess ? notes.said : notes.counts,
      findings: new Set([...told.findings, ...findings.map(findingKey)]),
      takenBack: takenBack.counts,
    },
  };
}

/** Those that were told less often than they are said now. */
function newOf<T>(all: readonly T[], keyOf: (one: T) => string, told: ReadonlyMap<string, number>) {
  const said = new Map<string, number>();
  const fresh = all.filter((one) => {
    const key = keyOf(one);
    const count = (said.get(key) ?? 0) + 1;
    said.set(key, count);
    return count > (told.get(key) ?? 0);
  });
  const counts = new Map(told);
  for (const [key, count] of said) counts.set(key, Math.max(count, counts.get(key) ?? 0));
  return { fresh, said, counts };
}

function figureKey({ item, attribute, value, unit, bound, high }: FigureHeard): string {
  return JSON.stringify([item, attribute, value, unit, bound, high]);
}

/** By its gist; what has none, by its words. Capitals and marks change from one hearing to the next. */
function noteKey(note: NoteHeard): string {
  const words = 'gist' in note ? note.gist : note.quote;
  return JSON.stringify([
    note.kind,
    words
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim(),
  ]);
}

function findingKey({ kind, item, attribute, was, now, why }: FindingView): string {
  return JSON.stringify([kind, item, attribute, was.value, was.unit, now.value, now.unit, why]);
}

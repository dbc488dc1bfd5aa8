/** What stands on the screen while somebody records at the bench. Pure. */
import type { FindingView, MemoView } from '../../model/views.ts';
import { plainText } from '../../plain-text.ts';
import type { ListenEvent } from '../../project-api.ts';
import { subjectOf } from '../../reports/finding-text.ts';
import { bothSystems } from '../../reports/live-text.ts';
import { otherReadings } from '../../reports/note-doubts.ts';
import { wordsOfNote } from '../../reports/note-words.ts';
import { clipTime } from '../../reports/source-text.ts';
import type { SoundLevel } from '../../speech/microphone/level.ts';
import { recordingLine } from '../../speech/microphone/recording-line.ts';
import type { TakeProgress } from '../../speech/transcript.ts';

type Notes = MemoView['notes'];
type Figure = Notes['figures'][number];
type Note = Notes[keyof Notes][number];

export interface Bench {
  readonly phase: 'opening' | 'recording' | 'finishing' | 'over';
  readonly seconds: number;
  /** Words are heard until here. */
  readonly heardSeconds: number;
  readonly level?: SoundLevel;
  /** Of the last stretch of talk. */
  readonly words: string;
  /** The figure that was said last; undefined before the first, and where it was taken back. */
  readonly latest?: Figure | undefined;
  /** All that was heard of the memo that is being recorded, the newest first. */
  readonly notes: readonly Note[];
  /** The words that "scratch that" took back, until the talk goes on. */
  readonly takenBack?: string | undefined;
  /** Clashes of this recording that nobody settled, newest first. */
  readonly clashes: readonly FindingView[];
  /** What was last read aloud. */
  readonly readBack?: string;
  /** Of the part that is being taken in. */
  readonly progress?: TakeProgress | undefined;
}

export const OPENING: Bench = {
  phase: 'opening',
  seconds: 0,
  heardSeconds: 0,
  words: '',
  notes: [],
  clashes: [],
};

/** Whether a recording is under way: being opened, running, or being taken in. */
export function isRunning(bench: Bench | undefined): boolean {
  return bench !== undefined && bench.phase !== 'over';
}

/** More than any screen shows. */
const MOST_NOTES = 60;

/** What an event of the recording changes. */
export function benchAfter(bench: Bench, event: ListenEvent): Bench {
  switch (event.kind) {
    case 'started':
      return { ...bench, phase: 'recording' };
    case 'level': {
      const { seconds, heardSeconds, level } = event;
      return { ...bench, seconds, heardSeconds, level };
    }
    case 'heard':
      return {
        ...bench,
        words: event.words,
        latest: event.soFar.at(-1),
        notes: newestNotes(event.soFar, event.notesSoFar),
        takenBack: event.takenBackNow,
        clashes: newestFirst(event.open, bench.clashes),
      };
    case 'stopped':
      return { ...bench, phase: 'finishing', seconds: event.seconds };
    case 'progress':
      return { ...bench, progress: event.progress };
    case 'taken':
      return { ...bench, progress: undefined };
    case 'read-back':
      return { ...bench, readBack: event.words };
    case 'not-read-back':
    case 'not-heard':
    case 'failed':
      return bench;
  }
}

/** By their place in the talk. */
function newestNotes(figures: readonly Note[], others: readonly Note[]): readonly Note[] {
  return [...figures, ...others].sort((a, b) => b.span.start - a.span.start).slice(0, MOST_NOTES);
}

/** Clashes that were there keep their order, behind those that have come. */
function newestFirst(open: readonly FindingView[], before: readonly FindingView[]): readonly FindingView[] {
  const place = (finding: FindingView) =>
    before.findIndex((one) => one.id === finding.id && one.why === finding.why);
  return [...open].reverse().sort((a, b) => place(a) - place(b));
}

/** Longer than this behind the talk is worth telling. */
const LAG_SECONDS = 8;

/** The line that says that a recording runs; undefined when none does. */
export function benchLine(bench: Bench | undefined, columns: number): string | undefined {
  switch (bench?.phase) {
    case 'opening':
      return 'opening the microphone';
    case 'recording': {
      if (!bench.level) return 'RECORDING 00:00';
      const lag = bench.seconds - bench.heardSeconds;
      const behind = lag > LAG_SECONDS ? `heard until ${clipTime(bench.heardSeconds)}` : '';
      return recordingLine({ seconds: bench.seconds, level: bench.level }, behind, columns);
    }
    case 'finishing': {
      const share = bench.progress ? `  ${Math.round(bench.progress.fraction * 100)} %` : '';
      return `stopped at ${clipTime(bench.seconds)}, hearing the last words${share}`;
    }
    default:
      return undefined;
  }
}

/** A figure in the parts that are shown large. */
export interface LargeFigure {
  readonly subject: string;
  /** Number alone, for large signs; empty where the value is more than a number. */
  readonly number: string;
  /** What follows the number, or the whole value. */
  readonly rest: string;
  /** In the other system of units. */
  readonly other: string | undefined;
}

export function largeFigure(figure: Figure): LargeFigure {
  const [said, other] = bothSystems(figure);
  const parts = /^(\D*?)(-?[\d,]+(?:\.\d+)?(?: \d+\/\d+|\/\d+)?) ?(\D*)$/.exec(said);
  const subject = subjectOf(figure);
  if (!parts) return { subject, number: '', rest: said, other };
  const [, bound = '', number = '', unit = ''] = parts;
  return { subject: bound === '' ? subject : `${subject}, ${bound.trim()}`, number, rest: unit, other };
}

/** One line for what was heard: `to do     Order more screws`; a figure in both unit systems. */
export function heardRow(note: Note): string {
  const [kind, words] = wordsOfNote(note);
  if (note.kind !== 'figure') return plainText(`${kind.padEnd(9)} ${words}`);
  const [said, other] = bothSystems(note);
  const both = other === undefined ? said : `${said} (${other})`;
  const what = [`${subjectOf(note)}: ${both}`, otherReadings(note)].filter(Boolean).join(', ');
  return plainText(`${kind.padEnd(9)} ${what}`);
}

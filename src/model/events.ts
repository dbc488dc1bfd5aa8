/**
 * The project's log: what happened, in order, never changed or deleted. Everything else is rebuilt from it.
 * Undo is an event too: it takes an earlier one out of the replay and both stay in the log.
 */
import type {
  Attribute,
  HeardRepair,
  HouseUnits,
  MemoNotes,
  Quantity,
  SpokenInput,
  WordCorrection,
} from '../language/notes.ts';
import type { NumberedNotes } from './keep-notes.ts';
import type { RecordByHand } from './kept/record-rows.ts';
import type {
  ClockPutRight,
  DeviceClock,
  DroppedSpeech,
  MemoSource,
  MemoSummary,
  Utterance,
} from './views.ts';

interface EventBase {
  /** Position in the log, from 1, without gaps. */
  readonly seq: number;
  /** ISO 8601 instant at which it was written. */
  readonly at: string;
}

export interface ProjectMade extends EventBase {
  readonly kind: 'project-made';
  readonly name: string;
  readonly units: HouseUnits;
  readonly region?: string;
}

/** The original bytes are safe in the project's folder. */
export interface RecordingKept extends EventBase {
  readonly kind: 'recording-kept';
  readonly memoId: string;
  readonly source: MemoSource;
  /** Path of the kept original, relative to the project folder. */
  readonly file: string;
  readonly recordedAt: string;
  readonly recordedAtFrom: MemoSummary['recordedAtFrom'];
  /** Where the time was put right by what is known of the recorder's clock: that, and what the recorder stated. */
  readonly putRight?: ClockPutRight;
}

/** The words of a memo; for a text memo the text itself, without utterances. */
export interface SpokenText {
  readonly text: string;
  /** Engine and model that heard it; absent for text memos. */
  readonly engine?: string;
  readonly utterances?: readonly Utterance[];
  /** Recogniser output that was dropped for want of speech. */
  readonly dropped?: readonly DroppedSpeech[];
}

export interface TranscriptMade extends EventBase {
  readonly kind: 'transcript-made';
  readonly memoId: string;
  readonly transcript: SpokenText;
}

export interface NotesRead extends EventBase {
  readonly kind: 'notes-read';
  readonly memoId: string;
  readonly notes: MemoNotes;
  /** What was read otherwise than it was written down. */
  readonly repairs?: readonly HeardRepair[];
  /** Version of the reader that made them. */
  readonly reader: string;
}

/** The same recording, heard again by another engine, and what was read from that. It stands beside what was heard before. */
export interface HeardAgain extends EventBase {
  readonly kind: 'heard-again';
  readonly memoId: string;
  /** From 2 on: the first transcript is that of `transcript-made`. */
  readonly version: number;
  readonly transcript: SpokenText;
  readonly notes: MemoNotes;
  readonly repairs?: readonly HeardRepair[];
  readonly reader: string;
}

/** Which transcript of a memo counts: the model is what it would be, had that one been heard first. */
export interface TranscriptChosen extends EventBase {
  readonly kind: 'transcript-chosen';
  readonly memoId: string;
  readonly version: number;
  /** A person's own choice is not changed by a newer transcript. */
  readonly by: 'person' | 'newest';
}

/**
 * A person said what heard words are, or that they were right: that holds for every memo heard after. With a memo, that
 * one was read again.
 */
export interface WordsLearned extends EventBase, WordCorrection {
  readonly kind: 'words-learned';
  readonly memoId?: string;
  readonly reading?: Pick<NotesRead, 'notes' | 'repairs' | 'reader'>;
}

/** A person agreed with a note. */
export interface NoteAccepted extends EventBase {
  readonly kind: 'note-accepted';
  readonly noteId: string;
}

/** A person put some of a note's fields right; the quote stays as it was said. */
export interface NoteAmended extends EventBase {
  readonly kind: 'note-amended';
  readonly noteId: string;
  readonly fields: Readonly<Record<string, unknown>>;
}

export interface NoteRejected extends EventBase {
  readonly kind: 'note-rejected';
  readonly noteId: string;
}

/** A person agreed with several notes at once. */
export interface NotesAccepted extends EventBase {
  readonly kind: 'notes-accepted';
  readonly noteIds: readonly string[];
}

/** A person put misheard words of a memo right; the sentence was read again. The whole memo as it is since then. */
export interface WordsCorrected extends EventBase {
  readonly kind: 'words-corrected';
  readonly memoId: string;
  /** Of which transcript, where it is not the first. */
  readonly version?: number;
  /** The words that were put right, as they stood and as they were to be. */
  readonly was: string;
  readonly now: string;
  readonly text: string;
  readonly utterances?: readonly Utterance[];
  readonly repairs?: readonly HeardRepair[];
  readonly notes: NumberedNotes;
  /** Version of the reader that read the sentence again. */
  readonly reader: string;
}

/** Two names mean one thing; `from` becomes another name of `into`. */
export interface ItemsMerged extends EventBase {
  readonly kind: 'items-merged';
  readonly from: string;
  readonly into: string;
}

/** The name stands for a thing of its own from now on, whatever words it shares. */
export interface ItemsSplit extends EventBase {
  readonly kind: 'items-split';
  readonly name: string;
}

export interface FigureSet extends EventBase {
  readonly kind: 'figure-set';
  readonly item: string;
  readonly attribute: Attribute;
  readonly quantity: Quantity;
  /** How far it may be off, either way. */
  readonly plusMinus?: Quantity;
  readonly reason?: string;
}

export interface FormulaSet extends EventBase {
  readonly kind: 'formula-set';
  readonly item: string;
  readonly attribute: Attribute;
  /** Expression over item names; empty takes the formula away. */
  readonly formula: string;
}

export interface LimitSet extends EventBase {
  readonly kind: 'limit-set';
  readonly item: string;
  readonly attribute: Attribute;
  readonly about: string;
  readonly bound: 'at-least' | 'at-most' | 'between';
  readonly quantity: Quantity;
  readonly high?: number;
}

export interface TaskAdded extends EventBase {
  readonly kind: 'task-added';
  readonly gist: string;
  readonly due?: string;
  readonly waitsFor?: readonly string[];
}

export interface TaskClosed extends EventBase {
  readonly kind: 'task-closed';
  readonly taskId: string;
}

export interface TaskReopened extends EventBase {
  readonly kind: 'task-reopened';
  readonly taskId: string;
}

/** By when a task is to be done; without a date it is due no more. */
export interface TaskDueSet extends EventBase {
  readonly kind: 'task-due-set';
  readonly taskId: string;
  readonly due?: string;
}

/** Something more that a task waits for; with nothing given it waits for nothing any more. */
export interface TaskWaitsSet extends EventBase {
  readonly kind: 'task-waits-set';
  readonly taskId: string;
  readonly waits: readonly HandWait[];
}

/** What a person says that a task waits for, by its kind. */
export interface HandWait {
  /** What must come first, in words. */
  readonly words: string;
  /** Another task, by its id. */
  readonly taskId?: string;
  /** Ready from that day on, YYYY-MM-DD. */
  readonly until?: string;
  /** From the moment that this is said. */
  readonly hours?: number;
  readonly reading?: Quantity & { readonly bound: 'at-least' | 'at-most' };
}

/** A task comes before another one in the working order. */
export interface TaskPlaced extends EventBase {
  readonly kind: 'task-placed';
  readonly taskId: string;
  readonly before: string;
}

/** A snag is put right. */
export interface ProblemSolved extends EventBase {
  readonly kind: 'problem-solved';
  readonly problemId: string;
}

export interface ProblemReopened extends EventBase {
  readonly kind: 'problem-reopened';
  readonly problemId: string;
}

export interface FindingSettled extends EventBase {
  readonly kind: 'finding-settled';
  readonly findingId: string;
  /** What the finding said when it was settled; an id alone may come to mean another one. */
  readonly finding?: {
    readonly item: string;
    readonly attribute: Attribute;
    readonly was: Quantity;
    readonly now: Quantity;
  };
  readonly choice: 'keep-old' | 'take-new' | 'both-right' | 'correct';
  readonly reason?: string;
  /** The right value, for `correct`. */
  readonly value?: Quantity;
}

export interface ToleranceSet extends EventBase {
  readonly kind: 'tolerance-set';
  readonly dimension: string;
  readonly quantity: Quantity;
}

/** A person kept a batch, what is behind a panel, a pair or a delivery on record. */
export interface RecordKept extends EventBase {
  readonly kind: 'record-kept';
  readonly record: RecordByHand;
}

/** A sum that a person wants to hold from now on. Inputs are expressions, as in `CheckNote`. */
export interface CheckAdded extends EventBase {
  readonly kind: 'check-added';
  readonly check: string;
  readonly inputs: readonly SpokenInput[];
  readonly options?: Readonly<Record<string, string>>;
  /** Why it matters, in the person's words. */
  readonly note?: string;
}

/** How the clock of a recorder goes. It holds for what is taken from then on; with nothing given the device is forgotten. */
export interface DeviceSet extends EventBase {
  readonly kind: 'device-set';
  readonly name: string;
  readonly clock?: DeviceClock;
}

export interface CheckRemoved extends EventBase {
  readonly kind: 'check-removed';
  readonly checkId: string;
}

export interface Undone extends EventBase {
  readonly kind: 'undone';
  /** The event that no longer counts. */
  readonly undoes: number;
}

export type ProjectEvent =
  | ProjectMade
  | RecordingKept
  | TranscriptMade
  | NotesRead
  | HeardAgain
  | TranscriptChosen
  | WordsLearned
  | NoteAccepted
  | NoteAmended
  | NoteRejected
  | NotesAccepted
  | WordsCorrected
  | ItemsMerged
  | ItemsSplit
  | FigureSet
  | FormulaSet
  | LimitSet
  | TaskAdded
  | TaskClosed
  | TaskReopened
  | TaskDueSet
  | TaskWaitsSet
  | TaskPlaced
  | ProblemSolved
  | ProblemReopened
  | FindingSettled
  | ToleranceSet
  | RecordKept
  | CheckAdded
  | CheckRemoved
  | DeviceSet
  | Undone;

type WithoutSeq<E> = E extends ProjectEvent ? Omit<E, 'seq'> : never;
/** An event before the log has given it its place. */
export type NewEvent = WithoutSeq<ProjectEvent>;

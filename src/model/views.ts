/**
 * What the project looks like from outside: plain data for the command line, the screen and the pages.
 * Every view is a projection of the event log; none is a source of truth.
 */
import type { HeardDoubt } from '../language/heard/heard-doubts.ts';
import type {
  Attribute,
  Bound,
  ClockAct,
  Dimension,
  EachOfMany,
  FigureNote,
  FigureState,
  HeardRepair,
  HouseUnits,
  MemoNotes,
  Quantity,
  UnitName,
} from '../language/notes.ts';

import type { ChecksOfDay, CheckView } from './checks/check-views.ts';
import type { KeptAnswer, KeptForNext, KeptOfDay } from './kept/kept-views.ts';

/** Where in the talk something was said. */
export interface Source {
  readonly memoId: string;
  /** ISO 8601 with the memo's own offset. */
  readonly recordedAt: string;
  /** Verbatim words. */
  readonly quote: string;
  /** Seconds into the recording; absent for text memos and hand-set facts. */
  readonly startSeconds?: number;
}

export interface Utterance {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
  /** Each word of the text with its time, where the recogniser gives them. */
  readonly words?: readonly SpokenWord[];
  /** What the recogniser held to be nearly as likely, by its place in the text; absent where it does not tell. */
  readonly doubts?: readonly HeardDoubt[];
}

/** Output of the recogniser that was dropped, with the reason. */
export interface DroppedSpeech extends Utterance {
  readonly why?: string;
}

export interface SpokenWord {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
}

/** A note as the project keeps it: what was read, its id, its place in the recording, and what became of it. */
export type Kept<N> = N & {
  /** Stable id: memo id, a letter for the kind, a number in order of speech: `m1.t2`. */
  readonly id: string;
  readonly startSeconds?: number;
  readonly endSeconds?: number;
  /** Set when a person went over it; `amended` means the fields are theirs. */
  readonly review?: 'accepted' | 'amended' | 'rejected';
};

export interface MemoSource {
  /** File name as given, without its folder. */
  readonly name: string;
  readonly kind: 'text' | 'recording';
  /** Of the original bytes. */
  readonly sha256: string;
  readonly bytes: number;
  readonly durationSeconds?: number;
  /** The recorder, as the file names it: maker and model. */
  readonly device?: string;
}

/** How the clock of a recorder goes, as a person told it. */
export interface DeviceClock {
  /** Seconds that are added to what the recorder states. */
  readonly offsetSeconds: number;
  /**
   * What its clock counts in, whatever its files say: many cameras write the local time into a place that is for UTC, and
   * some recorders write UTC where local time is meant.
   */
  readonly counts?: 'utc' | 'local';
  /** Patterns of file names that it writes, with `*` and `?`. */
  readonly files?: readonly string[];
}

/** What was made of a recorder's time. */
export interface ClockPutRight {
  readonly device: string;
  /** ISO 8601 as the recorder stated it. */
  readonly stated: string;
  readonly offsetSeconds: number;
  readonly counts?: 'utc' | 'local';
}

export interface DeviceView extends DeviceClock {
  readonly name: string;
}

export interface MemoSummary {
  readonly id: string;
  readonly recordedAt: string;
  /** How `recordedAt` is known. */
  readonly recordedAtFrom: 'given' | 'container' | 'file';
  readonly putRight?: ClockPutRight;
  readonly source: MemoSource;
  /** `kept`: original saved, not yet transcribed; `read`: notes stand. */
  readonly status: 'kept' | 'read';
  readonly words: number;
  readonly noteCount: number;
  readonly findingCount: number;
  /** Of those, the ones that nobody settled. */
  readonly openFindingCount: number;
}

type KeptNotes = {
  readonly [K in keyof MemoNotes]: readonly Kept<MemoNotes[K][number]>[];
};

export interface MemoView extends MemoSummary {
  readonly text: string;
  readonly utterances?: readonly Utterance[];
  readonly notes: KeptNotes;
  /** A person put its words right; what was heard at first stands in the log. */
  readonly isReworded?: true;
  /** What heard it, which transcript that is, and of how many. */
  readonly heard?: { readonly engine: string; readonly version: number; readonly of: number };
  /** Words that were read as others than those written down, each with its id (`m3.h1`). */
  readonly repairs?: readonly (HeardRepair & { readonly id: string })[];
  /** Recogniser output that was dropped for want of speech, with its time. */
  readonly droppedSpeech?: readonly DroppedSpeech[];
}

export const FINDING_KINDS = [
  'decided',
  'remeasured',
  'slip',
  'stale',
  'limit',
  'cycle',
  'unit-clash',
  'not-run',
  'received',
  'hand',
  'task-cycle',
  'check',
] as const;
export type FindingKind = (typeof FINDING_KINDS)[number];

/** A quantity with the words it came from. */
export interface SourcedQuantity extends Quantity {
  readonly bound?: Bound;
  readonly state?: FigureState;
  /** Absent when it was worked out and never spoken. */
  readonly source?: Source;
}

export interface Tolerance extends Quantity {
  /** Where it comes from: said with the figure, set by the project, how finely it was said, or its formula. */
  readonly from: 'said' | 'project' | 'precision' | 'formula';
  /** Of a sum of three or more independent parts: their tolerances by root-sum-square. `value` is the worst case. */
  readonly rootSumSquare?: number;
  /** Of a formula: the figures in it that no tolerance was stated for, by name; they do not count in `value`. */
  readonly leftOut?: readonly string[];
}

/** Something already done on the strength of a figure. */
export interface Consequence {
  readonly act: 'ordered' | 'made' | 'closed-in' | 'filmed' | 'promised' | 'derived' | 'planned';
  readonly what: string;
  readonly source?: Source;
  /** For a derived figure: before and after. */
  readonly before?: Quantity;
  readonly after?: Quantity;
}

export interface FindingView {
  readonly id: string;
  readonly kind: FindingKind;
  /** The memo that brought it to light. */
  readonly memoId: string;
  readonly foundAt: string;
  readonly item: string;
  readonly attribute: Attribute;
  readonly was: SourcedQuantity;
  readonly now: SourcedQuantity;
  /** Of an open slip: what stands by now, where later talk has told neither of the two. */
  readonly standsNow?: SourcedQuantity;
  readonly difference?: Quantity;
  readonly tolerance?: Tolerance;
  /** For a slip: which likeness, as in "fifteen and fifty sound alike". */
  readonly likeness?: string;
  /** One sentence: why this kind. */
  readonly why: string;
  /** What to do next, one sentence. */
  readonly next: string;
  readonly consequences: readonly Consequence[];
  readonly status: 'open' | 'settled';
  readonly settledBy?: {
    readonly choice: string;
    readonly at: string;
    readonly reason?: string;
    /** The right value, when neither side was it. */
    readonly value?: Quantity;
  };
  /** Higher is dearer to get wrong: orders first, irreversible before reversible. */
  readonly cost: number;
  /** Of a broken check: its id. Nothing stands on either side then. */
  readonly checkId?: string;
  /** Ids of tasks that wait for each other: each waits for the next, the last for the first. */
  readonly path?: readonly string[];
}

export interface ClaimView extends SourcedQuantity {
  readonly id: string;
  readonly item: string;
  readonly attribute: Attribute;
  readonly bound: Bound;
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: UnitName;
  readonly datum?: string;
  readonly condition?: string;
  /** A weight of one of several. */
  readonly each?: EachOfMany;
  /** `agrees`: another figure stands, and this one says the same within its tolerance. */
  readonly status: 'standing' | 'agrees' | 'superseded' | 'doubted' | 'rejected' | 'series';
}

export interface StandingFigure {
  readonly item: string;
  readonly attribute: Attribute;
  readonly dimension: Dimension;
  readonly value: number;
  readonly unit: UnitName;
  readonly bound: Bound;
  readonly high?: number;
  readonly state?: FigureState;
  readonly tolerance?: Tolerance;
  /** A weight of one of several. */
  readonly each?: EachOfMany;
  readonly formula?: string;
  readonly status: 'stands' | 'in-doubt' | 'stale' | 'series';
  /** The rule that chose this claim: "measured beats assumed". */
  readonly rule: string;
  readonly source?: Source;
  readonly history: readonly ClaimView[];
  /** Items and attributes whose formulas read this figure. */
  readonly dependents: readonly string[];
}

/** A standing figure as a list shows it: without its history and what hangs on it, which cost a look-up each. */
export type ListedFigure = Omit<StandingFigure, 'history' | 'dependents' | 'tolerance' | 'formula'>;

export interface LimitView {
  readonly id: string;
  readonly item: string;
  readonly attribute: Attribute;
  readonly about: string;
  readonly bound: 'at-least' | 'at-most' | 'between';
  readonly value: number;
  readonly high?: number;
  readonly unit: UnitName;
  readonly source: Source;
}

/** What a task can wait for: `event` is anything that has to be said to have happened. */
export const WAIT_KINDS = ['task', 'arrival', 'date', 'reading', 'hours', 'event'] as const;
export type WaitKind = (typeof WAIT_KINDS)[number];

/** One thing that must come first, and whether it has. */
export interface WaitView {
  readonly kind: WaitKind;
  /** In the speaker's words: "foam laid". */
  readonly words: string;
  readonly isMet: boolean;
  /** What is known of it: "24 h since “glued the steps”", "expected 2026-05-06", "latest 12 °C". */
  readonly why?: string;
  /** Id of the task or arrival that it is linked to, or the name of what is read. */
  readonly on?: string;
  /** `date`: YYYY-MM-DD. `hours`: the instant at which they are over, once they run. */
  readonly until?: string;
  readonly hours?: number;
  /** `reading`: what it must reach. */
  readonly bound?: 'at-least' | 'at-most';
  readonly reach?: Quantity;
  /** `reading`: what was read last. */
  readonly latest?: Quantity;
  /** Where it was said to have happened, or was begun. */
  readonly source?: Source;
}

/** A task that has to be done before another one covers it up. */
export interface FirstTask {
  readonly id: string;
  readonly gist: string;
  readonly isDone: boolean;
  readonly source: Source;
}

/** A task is open until it is done: `waiting` while something it waits for has not happened, else `ready`. */
export interface TaskView {
  readonly id: string;
  readonly gist: string;
  readonly status: 'ready' | 'waiting' | 'done';
  readonly due?: string;
  readonly waitsFor: readonly string[];
  /** `waitsFor`, each with its kind and whether it has happened. */
  readonly waits?: readonly WaitView[];
  /** What must not be done until this is: "the wall is closed in". */
  readonly before?: string;
  /** Where that was said to be done, though this is open: whether it was left out is the person's to say. */
  readonly overtakenBy?: Source;
  /** Tasks of which that was said of this one, open ones first. */
  readonly first?: readonly FirstTask[];
  /** Why it stands where it does in the working order, most weighty first. */
  readonly why?: readonly string[];
  /** Where the same task was said again. */
  readonly again?: readonly (Source & { readonly noteId: string })[];
  readonly source: Source;
  /** Whole days since it was opened, at the time asked about; 0 on its own day. */
  readonly carriedDays: number;
  readonly closedBy?: Source;
}

/** A snag: open until it is said to be put right, or a person says so. */
export interface ProblemView {
  readonly id: string;
  readonly gist: string;
  readonly cause?: string;
  readonly status: 'open' | 'solved';
  readonly source: Source;
  readonly solvedBy?: Source;
}

export interface PromiseView {
  readonly id: string;
  readonly gist: string;
  readonly due?: string;
  readonly status: 'open' | 'kept';
  readonly source: Source;
  readonly keptBy?: Source;
}

export interface ExpectedArrival {
  /** Stable, as that of a note. */
  readonly id?: string;
  readonly item: string;
  readonly expected?: string;
  readonly status: 'expected' | 'received';
  readonly source: Source;
  readonly receivedBy?: Source;
}

export interface Caution {
  readonly id: string;
  readonly caution: string;
  readonly defer: string;
  readonly source: string;
}

/** One day of talk, in the zone of its memos. */
export interface DayView {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly memos: readonly MemoView[];
  readonly findings: readonly FindingView[];
  readonly tasksOpened: readonly TaskView[];
  readonly tasksClosed: readonly TaskView[];
  readonly openTasksBefore: readonly TaskView[];
  readonly changes: readonly FigureChange[];
  /** What was ordered, made or closed in against figures. */
  readonly acts?: readonly ActOfDay[];
  /** What the day put on record. */
  readonly kept?: KeptOfDay;
  /** Checks that broke, and those that hold again. */
  readonly checks?: ChecksOfDay;
  readonly cautions: readonly Caution[];
}

/** Something that was ordered, made or closed in, and what stood for its sizes when it was told. */
export interface ActOfDay {
  readonly act: 'ordered' | 'made' | 'closed-in';
  readonly what: string;
  readonly source: Source;
  /** At least one; each with the words it was told in. */
  readonly against: readonly (SourcedQuantity & {
    /** Of the note. */
    readonly id: string;
    readonly item: string;
    readonly attribute: Attribute;
    readonly dimension: Dimension;
    readonly high?: number;
  })[];
}

/** What a day did to the figures. */
export interface FigureChange {
  readonly kind: 'new' | 'changed' | 'confirmed';
  readonly figure: Kept<FigureNote>;
  readonly memoId: string;
  readonly old?: SourcedQuantity;
  /** The clash that this change is, settled or open. */
  readonly findingId?: string;
}

/** What is open now, for next steps and "where was I". */
export interface NextView {
  /** YYYY-MM-DD the view is made for. */
  readonly date: string;
  readonly ready: readonly TaskView[];
  readonly waiting: readonly TaskView[];
  /** Open snags, latest first. */
  readonly problems?: readonly ProblemView[];
  readonly arrivals: readonly ExpectedArrival[];
  readonly promises: readonly PromiseView[];
  /** Open findings worth asking about today, dearest first, at most five. */
  readonly questions: readonly FindingView[];
  /** What is behind the panels that ready work goes through, and the sizes it lacks. */
  readonly kept?: KeptForNext;
  /** Checks that say nothing now: an input is missing, makes no sense, or is to be measured again. At most five. */
  readonly checks?: readonly CheckView[];
  /** Checks of products whose times begin or end on this date or after it, by the clocks that the talk started. */
  readonly windows?: readonly CheckView[];
  readonly cautions: readonly Caution[];
}

/** Something that was told, with its place. */
export interface ToldWork {
  readonly gist: string;
  readonly source: Source;
}

/** When a product was mixed, laid or used, where no sum with its times runs. */
export interface UntimedClock {
  readonly product: string;
  readonly act: ClockAct;
  /** ISO 8601. */
  readonly at: string;
  readonly source: Source;
}

/** Where one was when the talk stopped, for the return after days or months. */
export interface WhereView {
  /** ISO 8601 day or instant that the view is made for. */
  readonly now: string;
  /** The last day with talk and how many days ago that is; absent while nothing was taken. */
  readonly lastTalk?: {
    readonly date: string;
    readonly daysAgo: number;
    readonly memoIds: readonly string[];
  };
  /** Told to be begun and not told to be done since, latest first. */
  readonly begun: readonly ToldWork[];
  /** Done on the last day on which anything was done, latest first. */
  readonly done: readonly ToldWork[];
  /** Likewise decided. */
  readonly decided: readonly ToldWork[];
  /** Told to be filmed, latest first, at most three. */
  readonly filmed: readonly ToldWork[];
  /** Checks of products whose times end after the last talk began, by the clocks that the talk started. */
  readonly windows: readonly CheckView[];
  /** Started on the last days, with no sum that knows for how long. */
  readonly untimed: readonly UntimedClock[];
  /** Tasks that wait, or waited until after the last talk, for hours to go by. */
  readonly hours: readonly { readonly task: TaskView; readonly wait: WaitView }[];
  /** Not received yet. */
  readonly arrivals: readonly ExpectedArrival[];
  /** Open tasks that have a date, or wait for one. */
  readonly dated: readonly TaskView[];
  /** Open ones, longest ago first. */
  readonly promises: readonly PromiseView[];
  /** Open ones, dearest first, at most ten. */
  readonly findings: readonly FindingView[];
  readonly openFindings: number;
  /** Open snags, latest first. */
  readonly problems: readonly ProblemView[];
  /** Ready tasks in working order. */
  readonly ready: readonly TaskView[];
  readonly waiting: number;
}

/** The days between two dates, for an episode outline. */
export interface SpanView {
  readonly from: string;
  readonly to: string;
  readonly days: readonly DayView[];
  readonly promises: readonly PromiseView[];
  readonly next: NextView;
  /** Where the talk before the span had left things; absent where nothing was said before it. */
  readonly last?: LastTime;
  /** Snags that were told in the span, in order, with what put them right, even if that came later. */
  readonly problems?: readonly ProblemView[];
  /** Memos before the span that its days point back to: their recordings, by memo id. */
  readonly earlier?: Readonly<Record<string, MemoSource>>;
}

/** The end of the last day with talk before some days. */
export interface LastTime {
  /** YYYY-MM-DD */
  readonly date: string;
  /** What was done on that day. */
  readonly done: readonly ToldWork[];
  /** What its own outline would have named as next, in working order. */
  readonly ready: readonly TaskView[];
  readonly waiting: readonly TaskView[];
}

export interface ProjectInfo {
  readonly name: string;
  /** When the project was made: ISO 8601. With its name it tells one project from another. */
  readonly madeAt?: string;
  readonly units: HouseUnits;
  readonly region?: string;
  /** Per dimension: the difference that is let pass. */
  readonly tolerances: Readonly<Record<string, Quantity>>;
}

export interface Answer {
  readonly question: string;
  /** What is on record of it. */
  readonly kept?: KeptAnswer;
  readonly figures: readonly StandingFigure[];
  /** Talk that holds the words, best first. */
  readonly said: readonly (Source & { readonly rank: number })[];
  readonly findings: readonly FindingView[];
  /** Checks that stand on what is asked about, or that it names. */
  readonly checks?: readonly CheckView[];
  /** What was ordered, made, closed in, filmed or promised of the things asked about. */
  readonly onIt?: readonly Consequence[];
  /** A measure was asked for, and none is on record. */
  readonly isUnknown?: boolean;
}

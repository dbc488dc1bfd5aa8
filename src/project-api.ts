/** What the shells may ask of a project. `project.ts` implements it over the store, the reader and the speech. */
import type { BackedUp } from './backup/back-up.ts';
import type { HouseUnits, Quantity, WordCorrection } from './language/notes.ts';
import type { FigureHeard, NoteHeard } from './listening/what-is-new.ts';
import type { AskedCheck } from './model/checks/check-rows.ts';
import type { CheckView } from './model/checks/check-views.ts';
import type { WorkedCheck } from './model/checks/work-check.ts';
import type { ProjectEvent } from './model/events.ts';
import type { FigureAround, FigurePlace } from './model/figure-around.ts';
import type { BatchView, BehindWork, HiddenView, OrderView, PairView } from './model/kept/kept-views.ts';
import type { Wording } from './model/reword.ts';
import type { TranscriptView } from './model/transcripts.ts';
import type {
  Answer,
  DayView,
  DeviceView,
  FindingView,
  LimitView,
  ListedFigure,
  MemoSummary,
  MemoView,
  NextView,
  ProblemView,
  ProjectInfo,
  PromiseView,
  SpanView,
  StandingFigure,
  TaskView,
  WhereView,
} from './model/views.ts';
import type { Problem, Result } from './problem.ts';
import type { SoundLevel } from './speech/microphone/level.ts';
import type { KnownDevice } from './speech/microphone/open-microphone.ts';
import type { TakeProgress, Transcript } from './speech/transcript.ts';
import type { WatchOptions } from './watching/folder-watch.ts';

/** A stretch of a recording, in seconds from its beginning. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface TakeOptions {
  /** ISO 8601 of the recording. Without it: the container's creation time, else the file's modification time. */
  readonly at?: string;
  readonly onProgress?: (progress: TakeProgress) => void;
  readonly signal?: AbortSignal;
  /** The name that the memo goes by, instead of the file's own. */
  readonly name?: string;
  /** Stretches that hold no talk, in seconds: what a voice of ours said there. They are heard as silence. */
  readonly silences?: readonly Stretch[];
  /** What was heard already, while the recording was made: it is not heard again. */
  readonly heard?: Pick<Transcript, 'engine' | 'utterances' | 'dropped'>;
  /** Name or path of the engine that hears it; without it the default one. */
  readonly engine?: string;
  /** The recorder that made it, as `devices` names it, where neither the file nor its name tells. */
  readonly device?: string;
}

export type TakeManyOptions = Omit<TakeOptions, 'onProgress' | 'heard' | 'name'> & {
  /** Several files may be under way at once. */
  readonly onProgress?: (file: string, progress: TakeProgress) => void;
};

export interface TakenFile {
  readonly file: string;
  readonly result: Result<Taken>;
}

/** What came of hearing a memo by another engine. */
export interface HeardMemo {
  readonly transcript: TranscriptView;
  /** True when this engine had heard it before: nothing was added. */
  readonly already: boolean;
  /** The memo as it stands now, by the transcript that counts. */
  readonly memo: MemoView;
  readonly findings: readonly FindingView[];
}

/** What happens while the microphone is open. Seconds count from the beginning of the recording. */
export type ListenEvent =
  | { readonly kind: 'started'; readonly microphone: string }
  /** Some ten times a second; words are heard until `heardSeconds`. */
  | {
      readonly kind: 'level';
      readonly seconds: number;
      readonly heardSeconds: number;
      readonly level: SoundLevel;
    }
  /**
   * A stretch of talk has ended: its words, the figures, other notes and clashes that are new with them, what they took
   * back, and all figures, notes and open clashes of the memo that is being recorded. Nothing of it is kept yet: ids hold
   * only until it is taken in.
   */
  | {
      readonly kind: 'heard';
      readonly words: string;
      readonly figures: readonly FigureHeard[];
      readonly notes: readonly NoteHeard[];
      /** The words of sentences that were taken back since the last event. */
      readonly takenBack: readonly string[];
      /** The words that the last ones took back; absent once the talk has gone on. */
      readonly takenBackNow?: string;
      readonly clashes: readonly FindingView[];
      readonly soFar: readonly FigureHeard[];
      readonly notesSoFar: readonly NoteHeard[];
      readonly open: readonly FindingView[];
    }
  /** These words are read aloud; what is heard meanwhile is not taken for talk. */
  | { readonly kind: 'read-back'; readonly words: string }
  /** Nothing can be read aloud; the recording goes on. */
  | { readonly kind: 'not-read-back'; readonly problem: Problem }
  /** Words are not heard at once; the recording goes on and is heard afterwards. */
  | { readonly kind: 'not-heard'; readonly reason: string }
  | { readonly kind: 'stopped'; readonly seconds: number }
  | { readonly kind: 'progress'; readonly name: string; readonly progress: TakeProgress }
  | { readonly kind: 'taken'; readonly taken: Taken }
  | { readonly kind: 'failed'; readonly problem: Problem };

export interface ListenOptions {
  /** As `microphones` names it; without it the system's own choice. */
  readonly device?: string;
  /** Ends by itself after so much sound. */
  readonly seconds?: number;
  /** Each figure is read aloud when it is heard, with what it clashes with. */
  readonly readBack?: boolean;
  readonly onEvent: (event: ListenEvent) => void;
}

/** What came of a recording. */
export interface Listened {
  readonly seconds: number;
  /** One memo for each part between long silences. */
  readonly taken: readonly Taken[];
  readonly problems: readonly Problem[];
  /** Sound without talk at the end, behind a cut: kept as a file, no memo. */
  readonly silentRest?: { readonly file: string; readonly seconds: number };
}

export interface OpenListening {
  /** Stops recording. What was recorded is then taken in. */
  stop(): void;
  /** From now on figures are read aloud, or are not. */
  readBack(isOn: boolean): void;
  readonly finished: Promise<Listened>;
}

export interface Taken {
  readonly memoId: string;
  /** True when the same bytes were taken before: nothing was added. */
  readonly already: boolean;
  /** True when the memo's original was missing or damaged, and is whole again by this taking. */
  readonly originalBack?: boolean;
  readonly memo: MemoView;
  readonly findings: readonly FindingView[];
  /** What is behind the panels that the memo works through. */
  readonly behindWork?: readonly BehindWork[];
  /** Open tasks that were to come before work which the memo says is done. */
  readonly overtaken?: readonly OvertakenTask[];
}

export interface OvertakenTask {
  readonly id: string;
  readonly gist: string;
  /** What was to wait for it. */
  readonly before: string;
}

export type SettleChoice = 'keep-old' | 'take-new' | 'both-right' | 'correct';

type WithoutPlace<E> = E extends ProjectEvent ? Omit<E, 'seq' | 'at'> : never;

/** What a person may say beside settling clashes: a word on a note, a figure, a name, a task, a tolerance. */
export type HandChange = WithoutPlace<
  Extract<
    ProjectEvent,
    {
      kind:
        | 'note-accepted'
        | 'note-amended'
        | 'note-rejected'
        | 'transcript-chosen'
        | 'notes-accepted'
        | 'items-merged'
        | 'items-split'
        | 'figure-set'
        | 'formula-set'
        | 'limit-set'
        | 'task-added'
        | 'task-closed'
        | 'task-reopened'
        | 'record-kept'
        | 'check-added'
        | 'check-removed'
        | 'device-set'
        | 'task-due-set'
        | 'task-waits-set'
        | 'task-placed'
        | 'problem-solved'
        | 'problem-reopened'
        | 'tolerance-set';
    }
  >
>;

/** What `verify` found. */
export interface ProjectCheck {
  /** One line per fault, plain words. */
  readonly faults: readonly string[];
  readonly events: number;
  readonly originals: number;
  /** Names of recordings whose sound was never here: an import left it behind. No fault. */
  readonly absent: readonly string[];
}

/** Views of which many are asked for in one go. */
export type ManyViews = Pick<ProjectApi, 'figures' | 'day' | 'span'>;

export interface ProjectApi {
  readonly folder: string;
  /** Set where opening brought a project of an older format up to date: that format, and where the copy of it stands. */
  readonly upgraded?: { readonly fromFormat: number; readonly copy?: string } | undefined;
  readonly info: ProjectInfo;
  /** Takes one file in: original bytes kept first, then heard, read and reconciled. */
  take(file: string, options?: TakeOptions): Promise<Result<Taken>>;
  /** Takes many files in: they become memos in their order, and are heard beside each other. */
  takeMany(files: readonly string[], options?: TakeManyOptions): AsyncIterable<TakenFile>;
  /** Hears and reads memos that were kept but not finished, and recordings that were cut off (a kill, a crash). */
  resume(options?: Pick<TakeOptions, 'onProgress' | 'signal' | 'engine'>): Promise<readonly Result<Taken>[]>;
  /**
   * Gives the path of each file that is in a folder or comes into it, once it is whole, until the signal. Throws a Problem
   * when there is no such folder.
   */
  watch(folder: string, options: WatchOptions): Promise<AsyncIterable<string>>;
  /** Records from a microphone until it is stopped. The problem says why no microphone could be opened. */
  listen(options: ListenOptions): Promise<Result<OpenListening>>;
  microphones(): Promise<readonly KnownDevice[]>;
  /** Recorders whose clocks were told of. */
  devices(): readonly DeviceView[];
  memos(): readonly MemoSummary[];
  /** How many memos are kept and not read yet: after a kill, or while another call reads them. */
  unreadCount(): number;
  /** The newest ones, of whole days, at least so many where there are so many; in the order in which they were taken. */
  latestMemos(least: number): readonly MemoSummary[];
  memoCount(): number;
  memo(id: string): MemoView | undefined;
  /** What each engine heard in a memo, oldest first. */
  transcripts(memoId: string): readonly TranscriptView[];
  /**
   * Hears a memo's recording by another engine. The new transcript stands beside the others, and counts unless a person
   * chose one. `undo` gives the word back to the one before.
   */
  hearAgain(
    memoId: string,
    options: Pick<TakeOptions, 'engine' | 'onProgress' | 'signal'>,
  ): Promise<Result<HeardMemo>>;
  /**
   * Plays a stretch of a memo's recording, to its end or until the signal; what hinders it is a problem. Resolves when it
   * has sounded.
   */
  playClip(memoId: string, stretch: Stretch, signal?: AbortSignal): Promise<Result<null>>;
  /** Pictures a second of a memo's kept original; nothing where it has no picture. */
  framesPerSecond(memoId: string): Promise<number | undefined>;
  findings(filter?: {
    readonly status?: 'open' | 'settled';
    readonly memoId?: string;
  }): readonly FindingView[];
  figures(item?: string): readonly StandingFigure[];
  /** The same figures as a list shows them, one after the other: each is looked up when it is asked for. */
  figureList(): Iterable<ListedFigure>;
  /** Of the figures that stand, those that something was said of in these memos. */
  figuresToldIn(memoIds: readonly string[]): readonly StandingFigure[];
  /** One figure with everything around it; checks as they are at `now`. Nothing when it does not stand any more. */
  figureAround(place: FigurePlace, now?: string): FigureAround | undefined;
  limits(): readonly LimitView[];
  tasks(now: string): readonly TaskView[];
  /** Open tasks in working order, then those done on the day of `now`. */
  currentTasks(now: string): readonly TaskView[];
  problems(): readonly ProblemView[];
  promises(): readonly PromiseView[];
  /** Batches of resin, paint, glue, concrete, oldest first. */
  batches(): readonly BatchView[];
  /** What is behind panels; with words, behind the panels they name. */
  behind(panel?: string): readonly HiddenView[];
  /** Parts that are made once for each hand. */
  hands(): readonly PairView[];
  /** Orders with what came of them. */
  orders(): readonly OrderView[];
  /** Checks that run by themselves, each with what it comes to now. */
  checks(now?: string): readonly CheckView[];
  /** Works a check out on the project's figures. Changes nothing. */
  workOut(asked: AskedCheck, units?: HouseUnits): WorkedCheck;
  /** Dates with talk, ascending. */
  days(): readonly string[];
  day(date: string): DayView | undefined;
  next(now: string): NextView;
  /** Where one was when the talk stopped. */
  where(now: string): WhereView;
  span(from: string, to: string): SpanView;
  /** The same views for many days at once: what they share is read once. Holds only while nothing is written. */
  many(): ManyViews;
  ask(question: string): Answer;
  settle(
    findingId: string,
    choice: SettleChoice,
    details?: { readonly reason?: string; readonly value?: Quantity },
  ): void;
  /** Writes what a person says of the project into the log. `undo` takes it back. */
  setByHand(change: HandChange): void;
  /**
   * Puts misheard words of a memo right: those at `span` of its text become `words`, and their sentence is read again.
   * `undo` takes it back. Throws a Problem where there is no such memo, or nothing was read from it yet.
   */
  reword(memoId: string, wording: Wording): Promise<Taken>;
  /**
   * Learns what words are that were heard; the same words mean that they were heard right. With a memo, that one is read
   * again. The problem says why it cannot be.
   */
  correctWords(correction: WordCorrection, memoId?: string): Promise<Result<MemoView | undefined>>;
  /** What was learned of heard words, oldest first. */
  corrections(): readonly WordCorrection[];
  /**
   * Takes one fact out of the model by its id: a note that was read (`m3.f2`), or something set by hand (`s12`). Says
   * what it was; nothing when no fact that counts goes by this id. `undo` takes it back.
   */
  withdraw(id: string): string | undefined;
  /** Takes back the last thing a person set or settled; says what it was, or nothing when there is none. */
  undo(): string | undefined;
  /**
   * Does again what `undo` took back last, as long as nothing else was done by hand since; says what it was, or nothing
   * when there is none. It is one more event of the log, and `undo` takes it back in turn.
   */
  redo(): string | undefined;
  /** Checks the log, the model that follows from it, and the kept originals. Changes nothing. */
  verify(): Promise<ProjectCheck>;
  /**
   * Writes the project into one file, as it is at one instant, while others use it. A file that is there is written over
   * only when it is a backup and `replace` is set.
   */
  backUp(file: string, options?: { readonly replace?: boolean }): Promise<BackedUp>;
  /** The contract's JSON document. */
  exportDocument(): unknown;
  close(): void;
}

/** What the shells may ask of a project. `project.ts` implements it over the store, the reader and the speech. */
import type { HouseUnits, Quantity } from './language/notes.ts';
import type { AskedCheck } from './model/checks/check-rows.ts';
import type { CheckView } from './model/checks/check-views.ts';
import type { WorkedCheck } from './model/checks/work-check.ts';
import type { ProjectEvent } from './model/events.ts';
import type { BatchView, BehindWork, HiddenView, OrderView, PairView } from './model/kept/kept-views.ts';
import type {
  Answer,
  DayView,
  FindingView,
  LimitView,
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
import type { Result } from './problem.ts';
import type { TakeProgress } from './speech/transcript.ts';

export interface TakeOptions {
  /** ISO 8601 of the recording. Without it: the container's creation time, else the file's modification time. */
  readonly at?: string;
  readonly onProgress?: (progress: TakeProgress) => void;
  readonly signal?: AbortSignal;
}

export interface Taken {
  readonly memoId: string;
  /** True when the same bytes were taken before: nothing was added. */
  readonly already: boolean;
  readonly memo: MemoView;
  readonly findings: readonly FindingView[];
  /** What is behind the panels that the memo works through. */
  readonly behindWork?: readonly BehindWork[];
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
}

export interface ProjectApi {
  readonly folder: string;
  readonly info: ProjectInfo;
  /** Takes one file in: original bytes kept first, then heard, read and reconciled. */
  take(file: string, options?: TakeOptions): Promise<Result<Taken>>;
  /** Hears and reads memos that were kept but not finished (a kill, a crash). */
  resume(options?: Pick<TakeOptions, 'onProgress' | 'signal'>): Promise<readonly Result<Taken>[]>;
  memos(): readonly MemoSummary[];
  memo(id: string): MemoView | undefined;
  findings(filter?: {
    readonly status?: 'open' | 'settled';
    readonly memoId?: string;
  }): readonly FindingView[];
  figures(item?: string): readonly StandingFigure[];
  limits(): readonly LimitView[];
  tasks(now: string): readonly TaskView[];
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
  ask(question: string): Answer;
  settle(
    findingId: string,
    choice: SettleChoice,
    details?: { readonly reason?: string; readonly value?: Quantity },
  ): void;
  /** Writes what a person says of the project into the log. `undo` takes it back. */
  setByHand(change: HandChange): void;
  /**
   * Takes one fact out of the model by its id: a note that was read (`m3.f2`), or something set by hand (`s12`). Says
   * what it was; nothing when no fact that counts goes by this id. `undo` takes it back.
   */
  withdraw(id: string): string | undefined;
  /** Takes back the last thing a person set or settled; says what it was, or nothing when there is none. */
  undo(): string | undefined;
  /** Checks the log, the model that follows from it, and the kept originals. Changes nothing. */
  verify(): Promise<ProjectCheck>;
  /** The contract's JSON document. */
  exportDocument(): unknown;
  close(): void;
}

/** All that the screen knows between two keys. Plain data: the reducer makes the next one, the view draws it. */
import type { Quantity } from '../../language/notes.ts';
import type { CheckView } from '../../model/checks/check-views.ts';
import type { FigureAround, FigurePlace } from '../../model/figure-around.ts';
import type { Wording } from '../../model/reword.ts';
import type { TranscriptView } from '../../model/transcripts.ts';
import type {
  FindingView,
  LimitView,
  ListedFigure,
  MemoSummary,
  MemoView,
  NextView,
  TaskView,
  WhereView,
} from '../../model/views.ts';
import type { HandChange, ListenEvent, SettleChoice, Stretch } from '../../project-api.ts';
import type { TakeProgress } from '../../speech/transcript.ts';
import type { UnderWay } from '../key-order.ts';
import type { Bench } from './bench.ts';

export const VIEWS = [
  'memos',
  'heard',
  'transcripts',
  'clashes',
  'figures',
  'figure',
  'rules',
  'tasks',
  'day',
  'next',
  'where',
  'bench',
  'keys',
] as const;
export type View = (typeof VIEWS)[number];

/** What was last read from the project. */
export interface ScreenData {
  readonly projectName: string;
  /** ISO 3166 code of its country, where one was given: what is typed is read by it. */
  readonly region?: string;
  /** Newest first. As the screen opens, the newest alone: the others follow. */
  readonly memos: readonly MemoSummary[];
  /** Open ones, dearest first; as the screen opens, the dearest alone. */
  readonly findings: readonly FindingView[];
  /** How many there are of each, where more are on their way. */
  readonly counts?: { readonly memos: number; readonly findings: number };
  readonly next: NextView;
}

/** What the screen is given as it opens. */
export interface ScreenOpening {
  readonly data: ScreenData;
  /** Where one was, after a gap. */
  readonly where?: WhereView | undefined;
}

/** The figures that stand; read when their list is opened. */
export interface FigureBook {
  readonly figures: readonly ListedFigure[];
  /** More are on their way. */
  readonly isPart?: boolean;
}

/** One figure at length. */
export interface OpenedFigure {
  /** As in the list: shown until the rest has come. */
  readonly listed: ListedFigure;
  /** Null where the figure does not stand any more; undefined until it is read. */
  readonly around?: FigureAround | null | undefined;
  readonly limits: readonly LimitView[];
}

/** Limits and checks with their state. */
export interface Rules {
  readonly limits: readonly LimitView[];
  readonly checks: readonly CheckView[];
}

/** A page as it will be written. */
export interface DayPage {
  readonly title: string;
  /** File name, without a folder. */
  readonly file: string;
  readonly text: string;
}

/** What is being typed, and what for. */
export interface Typing {
  readonly what:
    | 'file'
    | 'find'
    | 'task'
    | 'wait'
    | 'due'
    | 'amend'
    | 'kind'
    | 'reword'
    | 'join'
    | 'set'
    | 'right-size';
  readonly text: string;
  /** Where the next character goes, from the end of the text: 0 is behind it. */
  readonly back?: number;
  /** What it is typed for, where that is marked in a list: a note, a clash, a thing. */
  readonly about?: string;
}

/** A file on its way in. */
export interface Job {
  readonly file: string;
  /** It came into the watched folder: nobody asked for this one file. */
  readonly isFound?: true;
  readonly progress?: TakeProgress;
}

export interface ScreenState {
  readonly view: View;
  /** Where `back` leads from the list of keys. */
  readonly viewBefore: View;
  readonly data: ScreenData;
  /** Chosen row per view, of a text the first line in sight; clamped when the data changes. */
  readonly chosen: Readonly<Record<View, number>>;
  /** The memo under `heard`. */
  readonly memo?: MemoView | undefined;
  /** The person went elsewhere: a memo that was asked for before is not shown when it comes. */
  readonly isMemoLeft?: boolean;
  /** What each engine heard in that memo; undefined until it is read. */
  readonly transcripts?: readonly TranscriptView[] | undefined;
  /** Of its notes only those that are unsure are listed. */
  readonly unsureAlone: boolean;
  /** Undefined until the figures are first looked at; likewise the tasks and the pages. */
  readonly book?: FigureBook | undefined;
  /** Words that the listed figures hold; empty for all. */
  readonly find: string;
  /** The figure under `figure`. */
  readonly opened?: OpenedFigure | undefined;
  /** Undefined until they are first looked at. */
  readonly rules?: Rules | undefined;
  /** In working order, done ones last. */
  readonly tasks?: readonly TaskView[] | undefined;
  /** Journal, next steps and outline; none when nothing was taken yet. */
  readonly pages?: readonly DayPage[] | undefined;
  /** Days with talk, ascending, and the one whose pages are shown: the newest until another is chosen. */
  readonly days?: readonly string[] | undefined;
  readonly day?: string | undefined;
  /** Where one was; read when the view is opened. */
  readonly where?: WhereView | undefined;
  /** Which of the pages is shown, from 0. */
  readonly page: number;
  /** Undefined when nothing is asked. */
  readonly typing?: Typing | undefined;
  /** First is being worked on, the rest wait. */
  readonly jobs: readonly Job[];
  /** The folder whose files are taken in as they come. */
  readonly watched?: string | undefined;
  /** The recording that runs, or the last one; undefined before the first. */
  readonly bench?: Bench | undefined;
  /** Figures are read aloud as they are heard. */
  readonly readsBack: boolean;
  /** What was asked for and is not there yet. */
  readonly underWay: UnderWay;
  /** One line about what just happened. */
  readonly message?: { readonly tone: 'good' | 'bad'; readonly lines: readonly string[] } | undefined;
}

/** A key as the terminal gave it, told by name. */
export interface KeyPress {
  /** Printable characters typed (a paste may bring several); empty for a named key. */
  readonly text: string;
  readonly name?:
    | 'up'
    | 'down'
    | 'left'
    | 'right'
    | 'page-up'
    | 'page-down'
    | 'home'
    | 'end'
    | 'clear'
    | 'enter'
    | 'back'
    | 'erase'
    | 'interrupt'
    | 'suspend'
    | undefined;
}

export type ScreenEvent =
  | { readonly kind: 'key'; readonly key: KeyPress }
  | { readonly kind: 'data'; readonly data: ScreenData }
  | { readonly kind: 'memo'; readonly memo: MemoView }
  | { readonly kind: 'transcripts'; readonly memoId: string; readonly transcripts: readonly TranscriptView[] }
  | { readonly kind: 'progress'; readonly progress: TakeProgress }
  /** Without lines there is nothing to say of it: a picture beside the memos, or what was taken before. */
  | { readonly kind: 'taken'; readonly lines?: readonly string[] }
  | { readonly kind: 'failed'; readonly lines?: readonly string[] }
  /** A folder is watched, or none any more. */
  | { readonly kind: 'watching'; readonly folder?: string; readonly lines?: readonly string[] }
  /** A file has come into the watched folder. */
  | { readonly kind: 'found'; readonly file: string }
  | { readonly kind: 'settled'; readonly lines: readonly string[] }
  | { readonly kind: 'refused'; readonly lines: readonly string[] }
  /** A clip has sounded, or was ended. */
  | { readonly kind: 'played' }
  | { readonly kind: 'book'; readonly book: FigureBook }
  | {
      readonly kind: 'figure';
      readonly place: FigurePlace;
      readonly around: FigureAround | null;
      readonly limits: readonly LimitView[];
    }
  | { readonly kind: 'rules'; readonly rules: Rules }
  /** What was asked for is done, or has begun. */
  | { readonly kind: 'performed'; readonly effect: Effect['do'] }
  /** The way out is free: everything that was on its way is kept. */
  | { readonly kind: 'gone' }
  | { readonly kind: 'tasks'; readonly tasks: readonly TaskView[] }
  | { readonly kind: 'pages'; readonly pages: readonly DayPage[]; readonly days: readonly string[] }
  | { readonly kind: 'where'; readonly where: WhereView }
  | { readonly kind: 'bench'; readonly event: ListenEvent; readonly lines?: readonly string[] }
  /** The recording is over; with lines it could not be made. */
  | { readonly kind: 'bench-over'; readonly lines?: readonly string[] };

/** What the shell around the reducer has to do. */
export type Effect =
  | { readonly do: 'open-memo'; readonly id: string }
  | { readonly do: 'read-transcripts'; readonly memoId: string }
  /** A folder is watched. */
  | { readonly do: 'take'; readonly file: string; readonly isFound?: true }
  | { readonly do: 'unwatch' }
  | { readonly do: 'cancel' }
  | { readonly do: 'settle'; readonly id: string; readonly choice: SettleChoice; readonly value?: Quantity }
  | { readonly do: 'read-data' }
  /** With `firstSoon` the first screenful comes ahead of the rest. */
  | { readonly do: 'read-book'; readonly firstSoon: boolean }
  | { readonly do: 'read-figure'; readonly place: FigurePlace }
  | { readonly do: 'read-rules' }
  | { readonly do: 'read-tasks' }
  /** Of the newest day, where none is named. */
  | { readonly do: 'read-pages'; readonly day?: string }
  | { readonly do: 'read-where' }
  /** Takes what was read or set under this id out of the model. `line` says so, once it is. */
  | { readonly do: 'withdraw'; readonly id: string; readonly line: string }
  /** Takes back the last thing done by hand. */
  | { readonly do: 'undo' }
  /** Does again what was taken back last. */
  | { readonly do: 'redo' }
  /** `line` says what was done, once it is. */
  | { readonly do: 'by-hand'; readonly change: HandChange; readonly line: string }
  /** Puts words of a memo right. */
  | { readonly do: 'reword'; readonly memoId: string; readonly wording: Wording }
  | { readonly do: 'write'; readonly pages: readonly DayPage[] }
  | { readonly do: 'record'; readonly readBack: boolean }
  | { readonly do: 'read-back'; readonly isOn: boolean }
  /** Plays where a note was said; a second time while it sounds, ends it. */
  | { readonly do: 'play'; readonly memoId: string; readonly stretch: Stretch }
  | { readonly do: 'stop-recording' }
  | { readonly do: 'leave' };

export interface Step {
  readonly state: ScreenState;
  readonly effects: readonly Effect[];
}

/** The screen as it opens: the list of memos; after a gap, where one was. */
export function openingState(data: ScreenData, where?: WhereView): ScreenState {
  return {
    view: where ? 'where' : 'memos',
    where,
    viewBefore: 'memos',
    data,
    chosen: {
      memos: 0,
      heard: 0,
      transcripts: 0,
      clashes: 0,
      figures: 0,
      figure: 0,
      rules: 0,
      tasks: 0,
      day: 0,
      next: 0,
      where: 0,
      bench: 0,
      keys: 0,
    },
    unsureAlone: false,
    find: '',
    page: 0,
    jobs: [],
    readsBack: false,
    underWay: { readings: 0, writings: 0 },
  };
}

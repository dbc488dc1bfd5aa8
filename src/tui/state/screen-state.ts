/** All that the screen knows between two keys. Plain data: the reducer makes the next one, the view draws it. */
import type { FindingView, MemoSummary, MemoView, NextView } from '../../model/views.ts';
import type { SettleChoice } from '../../project-api.ts';
import type { TakeProgress } from '../../speech/transcript.ts';

export const VIEWS = ['memos', 'heard', 'clashes', 'next', 'keys'] as const;
export type View = (typeof VIEWS)[number];

/** What was last read from the project. */
export interface ScreenData {
  readonly projectName: string;
  /** Newest first. */
  readonly memos: readonly MemoSummary[];
  /** Open ones, dearest first. */
  readonly findings: readonly FindingView[];
  readonly next: NextView;
}

/** A file on its way in. */
export interface Job {
  readonly file: string;
  readonly progress?: TakeProgress;
}

export interface ScreenState {
  readonly view: View;
  /** Where `back` leads from the list of keys. */
  readonly viewBefore: View;
  readonly data: ScreenData;
  /** Chosen row per view; clamped when the data changes. */
  readonly chosen: Readonly<Record<View, number>>;
  /** The memo under `heard`. */
  readonly memo?: MemoView | undefined;
  /** What is being typed after `t`; undefined when nothing is asked. */
  readonly typed?: string | undefined;
  /** First is being worked on, the rest wait. */
  readonly jobs: readonly Job[];
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
    | 'page-up'
    | 'page-down'
    | 'enter'
    | 'back'
    | 'erase'
    | 'interrupt'
    | undefined;
}

export type ScreenEvent =
  | { readonly kind: 'key'; readonly key: KeyPress }
  | { readonly kind: 'data'; readonly data: ScreenData }
  | { readonly kind: 'memo'; readonly memo: MemoView }
  | { readonly kind: 'progress'; readonly progress: TakeProgress }
  | { readonly kind: 'taken'; readonly lines: readonly string[] }
  | { readonly kind: 'failed'; readonly lines: readonly string[] }
  | { readonly kind: 'settled'; readonly lines: readonly string[] };

/** What the shell around the reducer has to do. */
export type Effect =
  | { readonly do: 'open-memo'; readonly id: string }
  | { readonly do: 'take'; readonly file: string }
  | { readonly do: 'cancel' }
  | { readonly do: 'settle'; readonly id: string; readonly choice: SettleChoice }
  | { readonly do: 'leave' };

export interface Step {
  readonly state: ScreenState;
  readonly effects: readonly Effect[];
}

/** The screen as it opens: the list of memos. */
export function openingState(data: ScreenData): ScreenState {
  return {
    view: 'memos',
    viewBefore: 'memos',
    data,
    chosen: { memos: 0, heard: 0, clashes: 0, next: 0, keys: 0 },
    jobs: [],
  };
}

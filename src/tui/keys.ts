/** Which key does what in which view, and the words for it. The one place: reducer, footer and `?` read this. */
import { type KeyPress, VIEWS, type View } from './state/screen-state.ts';

export type Intent =
  | 'up'
  | 'down'
  | 'earlier-day'
  | 'later-day'
  | 'page-up'
  | 'page-down'
  | 'open'
  | 'back'
  | 'take'
  | 'record'
  | 'see-bench'
  | 'read-back'
  | 'play'
  | 'cancel'
  | 'see-memos'
  | 'see-clashes'
  | 'see-figures'
  | 'see-rules'
  | 'see-tasks'
  | 'see-day'
  | 'see-next'
  | 'see-where'
  | 'see-keys'
  | 'old-holds'
  | 'new-holds'
  | 'both-right'
  | 'right-size'
  | 'note-right'
  | 'other-reading'
  | 'note-wrong'
  | 'accept-sure'
  | 'unsure-alone'
  | 'amend-note'
  | 'note-kind'
  | 'reword'
  | 'earlier-memo'
  | 'see-transcripts'
  | 'choose-transcript'
  | 'later-memo'
  | 'join'
  | 'apart'
  | 'set-figure'
  | 'find'
  | 'close-task'
  | 'reopen-task'
  | 'sooner'
  | 'later'
  | 'set-due'
  | 'no-task'
  | 'undo'
  | 'redo'
  | 'add-task'
  | 'add-wait'
  | 'journal'
  | 'next-steps'
  | 'outline'
  | 'write'
  | 'leave';

export interface KeyBinding {
  /** A character, or the name of a key. */
  readonly key: string;
  readonly shown: string;
  readonly intent: Intent;
  readonly words: string;
  /** Instead of `words` where room is scarce. */
  readonly brief?: string;
  readonly views: readonly View[] | 'all';
  /** Left out at the foot of the screen: it moves about, or does what another key there does. */
  readonly isQuiet?: true;
}

/** Named early in the footers of the views where most is set by hand. */
const UNDO = {
  key: 'u',
  shown: 'u',
  intent: 'undo',
  words: 'undo the last change by hand',
  brief: 'undo',
} as const;
const UNDONE_OFTEN: readonly View[] = ['heard', 'transcripts', 'clashes', 'tasks'];

export const KEYS: readonly KeyBinding[] = [
  { key: 'enter', shown: 'Enter', intent: 'open', words: 'open', views: ['memos', 'figures'] },
  { key: '1', shown: '1', intent: 'note-right', words: 'it is right', brief: 'right', views: ['heard'] },
  {
    key: 'enter',
    shown: 'Enter',
    intent: 'note-right',
    words: 'it is right',
    brief: 'right',
    views: ['heard'],
    isQuiet: true,
  },
  {
    key: '2',
    shown: '2',
    intent: 'other-reading',
    words: 'its other reading is right ("or 80 mm?")',
    brief: 'the other',
    views: ['heard'],
    isQuiet: true,
  },
  {
    key: '-',
    shown: '-',
    intent: 'note-wrong',
    words: 'nothing of the kind was said: take it out',
    brief: 'out',
    views: ['heard'],
  },
  {
    key: 'a',
    shown: 'a',
    intent: 'accept-sure',
    words: 'agree with all that are sure',
    brief: 'all sure',
    views: ['heard'],
  },
  {
    key: 's',
    shown: 's',
    intent: 'unsure-alone',
    words: 'the unsure ones alone, or all',
    brief: 'unsure',
    views: ['heard'],
  },
  {
    key: 'e',
    shown: 'e',
    intent: 'amend-note',
    words: 'put the note right',
    brief: 'amend',
    views: ['heard'],
  },
  {
    key: 'h',
    shown: 'h',
    intent: 'reword',
    words: 'put misheard words right',
    brief: 'misheard',
    views: ['heard'],
  },
  { key: 'p', shown: 'p', intent: 'play', words: 'play where it was said', brief: 'play', views: ['heard'] },
  {
    key: 'y',
    shown: 'y',
    intent: 'note-kind',
    words: 'it is of another kind',
    brief: 'kind',
    views: ['heard'],
  },
  {
    key: 'l',
    shown: 'l',
    intent: 'see-transcripts',
    words: 'what each engine heard, and which one counts',
    brief: 'engines',
    views: ['heard'],
  },
  { key: '1', shown: '1', intent: 'choose-transcript', words: 'let this one count', views: ['transcripts'] },
  {
    key: 'left',
    shown: '←',
    intent: 'earlier-memo',
    words: 'the memo before',
    brief: 'earlier',
    views: ['heard'],
  },
  {
    key: 'right',
    shown: '→',
    intent: 'later-memo',
    words: 'the memo after',
    brief: 'later',
    views: ['heard'],
  },
  {
    key: 'e',
    shown: 'e',
    intent: 'set-figure',
    words: 'set the figure by hand',
    brief: 'set',
    views: ['figures', 'figure'],
  },
  {
    key: 'j',
    shown: 'j',
    intent: 'join',
    words: 'the name means another thing: join them',
    brief: 'join',
    views: ['heard', 'figures', 'figure'],
  },
  {
    key: 'o',
    shown: 'o',
    intent: 'apart',
    words: 'the name means a thing of its own',
    brief: 'own thing',
    views: ['heard', 'figures', 'figure'],
  },
  { key: '1', shown: '1', intent: 'old-holds', words: 'old holds', views: ['clashes'] },
  { key: '2', shown: '2', intent: 'new-holds', words: 'new holds', views: ['clashes'] },
  { key: '3', shown: '3', intent: 'both-right', words: 'both right', views: ['clashes'] },
  {
    key: '4',
    shown: '4',
    intent: 'right-size',
    words: 'neither: type the size',
    brief: 'neither',
    views: ['clashes'],
  },
  { key: '/', shown: '/', intent: 'find', words: 'find', views: ['figures'] },
  { key: '1', shown: '1', intent: 'close-task', words: 'close', views: ['tasks'] },
  { key: '2', shown: '2', intent: 'reopen-task', words: 'reopen', views: ['tasks'] },
  { key: 'a', shown: 'a', intent: 'add-task', words: 'add', views: ['tasks'] },
  {
    key: 'h',
    shown: 'h',
    intent: 'add-wait',
    words: 'has to wait for',
    brief: 'waits for',
    views: ['tasks'],
  },
  { key: 'b', shown: 'b', intent: 'set-due', words: 'by when', views: ['tasks'] },
  { key: 's', shown: 's', intent: 'sooner', words: 'sooner', views: ['tasks'] },
  { key: 'l', shown: 'l', intent: 'later', words: 'later', views: ['tasks'] },
  {
    key: '-',
    shown: '-',
    intent: 'no-task',
    words: 'is no task: take it out',
    brief: 'no task',
    views: ['tasks'],
  },
  { key: '1', shown: '1', intent: 'journal', words: 'journal', views: ['day'] },
  { key: '2', shown: '2', intent: 'next-steps', words: 'next steps', views: ['day'] },
  { key: '3', shown: '3', intent: 'outline', words: 'outline', views: ['day'] },
  {
    key: 'left',
    shown: '←',
    intent: 'earlier-day',
    words: 'the day before',
    brief: 'earlier',
    views: ['day'],
  },
  { key: 'right', shown: '→', intent: 'later-day', words: 'the day after', brief: 'later', views: ['day'] },
  {
    key: 'p',
    shown: 'p',
    intent: 'write',
    words: 'write all three pages',
    brief: 'write all',
    views: ['day'],
  },
  { ...UNDO, views: UNDONE_OFTEN },
  {
    key: 'back',
    shown: 'Esc',
    intent: 'back',
    words: 'back',
    views: [
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
    ],
  },
  {
    key: 'r',
    shown: 'r',
    intent: 'record',
    words: 'start and stop recording',
    brief: 'rec',
    views: 'all',
  },
  {
    key: 'v',
    shown: 'v',
    intent: 'see-bench',
    words: 'what is being recorded',
    brief: 'recording',
    views: 'all',
  },
  {
    key: 'g',
    shown: 'g',
    intent: 'read-back',
    words: 'read figures aloud as they are heard, or not',
    brief: 'aloud',
    views: 'all',
  },
  {
    key: 't',
    shown: 't',
    intent: 'take',
    words: 'take a file in, or watch a folder',
    brief: 'take',
    views: 'all',
  },
  {
    key: 'x',
    shown: 'x',
    intent: 'cancel',
    words: 'stop taking in, or watching',
    brief: 'stop',
    views: 'all',
  },
  { key: 'm', shown: 'm', intent: 'see-memos', words: 'memos', views: 'all' },
  { key: 'c', shown: 'c', intent: 'see-clashes', words: 'clashes', views: 'all' },
  { key: 'f', shown: 'f', intent: 'see-figures', words: 'figures', views: 'all' },
  { key: 'w', shown: 'w', intent: 'see-tasks', words: 'tasks', views: 'all' },
  { key: 'd', shown: 'd', intent: 'see-day', words: 'day', views: 'all' },
  { key: 'n', shown: 'n', intent: 'see-next', words: 'next', views: 'all' },
  { key: '?', shown: '?', intent: 'see-keys', words: 'keys', views: 'all' },
  { key: 'up', shown: '↑', intent: 'up', words: 'up', views: 'all', isQuiet: true },
  { key: 'down', shown: '↓', intent: 'down', words: 'down', views: 'all', isQuiet: true },
  { key: 'page-up', shown: 'PgUp', intent: 'page-up', words: 'a page up', views: 'all', isQuiet: true },
  { key: 'page-down', shown: 'PgDn', intent: 'page-down', words: 'a page down', views: 'all', isQuiet: true },
  { key: 'q', shown: 'q', intent: 'leave', words: 'quit', views: 'all' },
  { key: 'k', shown: 'k', intent: 'see-rules', words: 'limits and checks', brief: 'checks', views: 'all' },
  { key: 'i', shown: 'i', intent: 'see-where', words: 'where was I', views: 'all' },
  { ...UNDO, views: VIEWS.filter((view) => !UNDONE_OFTEN.includes(view)) },
  {
    key: 'z',
    shown: 'z',
    intent: 'redo',
    words: 'do again what was undone last',
    views: 'all',
    isQuiet: true,
  },
  { key: 'interrupt', shown: 'Ctrl-C', intent: 'leave', words: 'quit', views: 'all', isQuiet: true },
];

/** The bindings that count in a view. */
export function keysOf(view: View): readonly KeyBinding[] {
  return KEYS.filter((binding) => binding.views === 'all' || binding.views.includes(view));
}

/** What a key press means in a view; undefined when it means nothing there. */
export function intentOf(view: View, key: KeyPress): Intent | undefined {
  const pressed = key.name ?? key.text.toLowerCase();
  return keysOf(view).find((binding) => binding.key === pressed)?.intent;
}

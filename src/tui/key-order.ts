/**
 * Which keys may be acted on while something is still being read or written. Fast fingers and a slow line bring keys
 * ahead of what they are meant for: those wait, in their order; those that lead elsewhere never do.
 */
import { type Intent, intentOf } from './keys.ts';
import { listLength } from './state/rows.ts';
import type { Effect, KeyPress, ScreenState } from './state/screen-state.ts';

const READINGS: ReadonlySet<Effect['do']> = new Set([
  'open-memo',
  'read-transcripts',
  'read-book',
  'read-figure',
  'read-rules',
  'read-tasks',
  'read-pages',
  'read-where',
]);
const WRITINGS: ReadonlySet<Effect['do']> = new Set([
  'settle',
  'withdraw',
  'undo',
  'redo',
  'by-hand',
  'reword',
  'write',
]);

/** Whether an effect keeps keys waiting, and as what. */
export function kindOfEffect({ do: what }: Pick<Effect, 'do'>): 'reading' | 'writing' | undefined {
  return READINGS.has(what) ? 'reading' : WRITINGS.has(what) ? 'writing' : undefined;
}

/** What is under way. */
export interface UnderWay {
  readonly readings: number;
  readonly writings: number;
}

const MOVES: ReadonlySet<Intent> = new Set(['up', 'down', 'page-up', 'page-down']);

function leadsElsewhere(intent: Intent): boolean {
  return intent.startsWith('see-') || ELSEWHERE.has(intent);
}
const ELSEWHERE: ReadonlySet<Intent> = new Set([
  'back',
  'take',
  'record',
  'read-back',
  'cancel',
  'find',
  'leave',
]);

/** Whether a key has to wait for what is under way. */
export function hasToWait(state: ScreenState, key: KeyPress, { readings, writings }: UnderWay): boolean {
  if (readings + writings === 0 || key.name === 'interrupt' || key.name === 'suspend') return false;
  // What is typed is only looked at; where it is to be done, what it is done to must stand.
  if (state.typing !== undefined) return key.name === 'enter';
  const intent = intentOf(state.view, key);
  if (intent === undefined || leadsElsewhere(intent)) return false;
  if (!MOVES.has(intent)) return true;
  // A row that is marked is another one once something was written; and in a list that is not there yet none is marked.
  return writings > 0 || listLength(state) === 0;
}

/** The screen's next state, and what the shell has to do. No Ink, no project, no clock. */
import { type Intent, intentOf } from '../keys.ts';
import { listLength, noteLines } from './rows.ts';
import type { Effect, KeyPress, ScreenEvent, ScreenState, Step, View } from './screen-state.ts';

const PAGE = 10;
const stay = (state: ScreenState): Step => ({ state, effects: [] });
const doing = (state: ScreenState, effect: Effect): Step => ({ state, effects: [effect] });

/** Takes one event in. */
export function reduce(state: ScreenState, event: ScreenEvent): Step {
  switch (event.kind) {
    case 'key':
      return state.typed === undefined ? press(state, event.key) : type(state, state.typed, event.key);
    case 'data':
      return stay(clamp({ ...state, data: event.data }));
    case 'memo':
      return stay({
        ...state,
        view: 'heard',
        memo: event.memo,
        chosen: { ...state.chosen, heard: 0 },
      });
    case 'progress':
      return stay({
        ...state,
        jobs: state.jobs.map((job, index) => (index === 0 ? { ...job, progress: event.progress } : job)),
      });
    case 'taken':
      return nextJob({ ...state, message: { tone: 'good', lines: event.lines } });
    case 'failed':
      return nextJob({ ...state, message: { tone: 'bad', lines: event.lines } });
    case 'settled':
      return stay({ ...state, message: { tone: 'good', lines: event.lines } });
  }
}

/** The job at the head is over; the one behind it starts. */
function nextJob(state: ScreenState): Step {
  const [, ...waiting] = state.jobs;
  const [first] = waiting;
  const next = { ...state, jobs: waiting };
  return first ? doing(next, { do: 'take', file: first.file }) : stay(next);
}

function type(state: ScreenState, typed: string, key: KeyPress): Step {
  if (key.name === 'interrupt') return doing(state, { do: 'leave' });
  if (key.name === 'back') return stay({ ...state, typed: undefined });
  if (key.name === 'erase') return stay({ ...state, typed: [...typed].slice(0, -1).join('') });
  if (key.name !== 'enter') return stay({ ...state, typed: typed + key.text });
  const file = typed.trim();
  const closed = { ...state, typed: undefined };
  if (file === '') return stay(closed);
  const queued = { ...closed, jobs: [...state.jobs, { file }], message: undefined };
  return state.jobs.length === 0 ? doing(queued, { do: 'take', file }) : stay(queued);
}

function press(state: ScreenState, key: KeyPress): Step {
  const intent = intentOf(state.view, key);
  return intent ? act(state, intent) : stay(state);
}

function act(state: ScreenState, intent: Intent): Step {
  switch (intent) {
    case 'up':
      return stay(move(state, -1));
    case 'down':
      return stay(move(state, 1));
    case 'page-up':
      return stay(move(state, -PAGE));
    case 'page-down':
      return stay(move(state, PAGE));
    case 'open': {
      const memo = state.data.memos[state.chosen.memos];
      return memo ? doing(state, { do: 'open-memo', id: memo.id }) : stay(state);
    }
    case 'back':
      return stay(see(state, state.view === 'keys' ? state.viewBefore : 'memos'));
    case 'take':
      return stay({ ...state, typed: '', message: undefined });
    case 'cancel':
      return state.jobs.length > 0 ? doing(state, { do: 'cancel' }) : stay(state);
    case 'see-memos':
      return stay(see(state, 'memos'));
    case 'see-clashes':
      return stay(see(state, 'clashes'));
    case 'see-next':
      return stay(see(state, 'next'));
    case 'see-keys':
      return stay(see(state, 'keys'));
    case 'old-holds':
      return settle(state, 'keep-old');
    case 'new-holds':
      return settle(state, 'take-new');
    case 'both-right':
      return settle(state, 'both-right');
    case 'leave':
      return doing(state, { do: 'leave' });
  }
}

function settle(state: ScreenState, choice: 'keep-old' | 'take-new' | 'both-right'): Step {
  const finding = state.data.findings[state.chosen.clashes];
  return finding ? doing(state, { do: 'settle', id: finding.id, choice }) : stay(state);
}

function see(state: ScreenState, view: View): ScreenState {
  if (view === state.view) return state;
  return { ...state, view, viewBefore: state.view, message: undefined };
}

function move(state: ScreenState, by: number): ScreenState {
  const last = Math.max(0, listLength(state) - 1);
  const row = Math.min(last, Math.max(0, state.chosen[state.view] + by));
  return { ...state, chosen: { ...state.chosen, [state.view]: row } };
}

/** Keeps the chosen rows inside lists that have become shorter. */
function clamp(state: ScreenState): ScreenState {
  const within = (row: number, length: number) => Math.min(row, Math.max(0, length - 1));
  return {
    ...state,
    chosen: {
      ...state.chosen,
      memos: within(state.chosen.memos, state.data.memos.length),
      clashes: within(state.chosen.clashes, state.data.findings.length),
      heard: within(state.chosen.heard, state.memo ? noteLines(state.memo).length : 0),
    },
  };
}

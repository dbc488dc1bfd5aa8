/** Why a key did nothing: said, so that nobody takes it for a screen that does not answer. */
import type { Intent } from '../keys.ts';
import { chosenNote } from './rows.ts';
import type { KeyPress, ScreenState } from './screen-state.ts';
import { chosenProblem, chosenTask } from './task-rows.ts';

/** Of a key that is bound to nothing in the present view; nothing for those that only move about. */
export function whyUnknown({ text, name }: KeyPress): string | undefined {
  if (name === 'enter') return 'Enter opens nothing here: ? lists the keys';
  if (name !== undefined || text.trim() === '') return undefined;
  return `"${text}" is no key here: ? lists the keys`;
}

/** Of a key whose intent changed nothing and asked for nothing; nothing where that is plain to see. */
export function whyNothing(state: ScreenState, intent: Intent): string | undefined {
  switch (intent) {
    case 'open':
      return state.view === 'memos' ? 'no memo is there yet: r records, t takes a file in' : NO_FIGURE;
    case 'note-right':
    case 'note-wrong':
    case 'amend-note':
    case 'note-kind':
    case 'reword':
    case 'play':
    case 'accept-sure':
      return NO_NOTE;
    case 'other-reading':
      return chosenNote(state) ? 'this note has no other reading: e puts it right' : NO_NOTE;
    case 'earlier-memo':
      return 'this is the oldest memo';
    case 'later-memo':
      return 'this is the newest memo';
    case 'join':
    case 'apart':
      return state.view === 'heard' ? 'only a figure or a delivery names a thing' : NO_FIGURE;
    case 'set-figure':
      return NO_FIGURE;
    case 'old-holds':
    case 'new-holds':
    case 'both-right':
      return 'nothing clashes: there is nothing to settle';
    case 'right-size':
      return state.data.findings.length === 0
        ? 'nothing clashes: there is nothing to settle'
        : 'this one has no size: 1, 2 and 3 settle it';
    case 'choose-transcript':
      return state.transcripts?.length ? 'this one counts already' : 'there is no transcript to choose';
    case 'earlier-day':
      return 'this is the first day with talk';
    case 'later-day':
      return 'this is the last day with talk';
    case 'write':
      return 'nothing was taken in yet: there is nothing to write';
    case 'cancel':
      return 'nothing is on its way, and no folder is watched';
    case 'record':
      return state.bench?.phase === 'opening'
        ? 'the microphone is being opened'
        : 'the last words are still being heard';
    default:
      return whyNoTask(state, intent);
  }
}

const NO_NOTE = 'no note is marked';
const NO_FIGURE = 'no figure is marked';

/** What is asked of a task: of one that is closed, of a snag, or where none is marked. */
function whyNoTask(state: ScreenState, intent: Intent): string | undefined {
  const task = chosenTask(state);
  const isDone = task?.status === 'done';
  switch (intent) {
    case 'close-task':
      return isDone ? 'it is closed already: 2 opens it again' : 'no task is marked';
    case 'reopen-task':
      return task ? 'it is open' : onlyTasks(state, 'is opened again here');
    case 'sooner':
    case 'later':
      if (!task) return onlyTasks(state, 'has an order');
      if (isDone) return 'it is closed: only open ones have an order';
      return `it is the ${intent === 'sooner' ? 'first' : 'last'} of those that are ${task.status}`;
    case 'set-due':
      return isDone ? CLOSED : onlyTasks(state, 'has a day');
    case 'add-wait':
      return isDone ? CLOSED : onlyTasks(state, 'waits');
    case 'no-task':
      return 'no task is marked';
    default:
      return undefined;
  }
}

const CLOSED = 'it is closed: 2 opens it again';

const onlyTasks = (state: ScreenState, does: string) =>
  chosenProblem(state) ? `this is a snag: only a task ${does}` : 'no task is marked';

/** The screen's next state, and what the shell has to do. No Ink, no project, no clock. */
import type { MemoView, TaskView } from '../../model/views.ts';
import { kindOfEffect } from '../key-order.ts';
import { type Intent, intentOf } from '../keys.ts';
import { benchOver, record, turnReadBack, withBench } from './bench-steps.ts';
import { figureLines } from './figure-lines.ts';
import { foundFigures, isSamePlace, placeOfFigure } from './figure-rows.ts';
import { acceptSure, judge, play, played, takeOther, turnMemo, turnUnsure } from './review-steps.ts';
import { listLength, shownNotes } from './rows.ts';
import { ruleLines } from './rule-lines.ts';
import type { Effect, KeyPress, ScreenEvent, ScreenState, Step, Typing, View } from './screen-state.ts';
import { chosenProblem, chosenTask, shownTasks, taskLines } from './task-rows.ts';
import { chooseTranscript, withTranscripts } from './transcript-steps.ts';
import { askNote } from './typed-note.ts';
import { askJoin, askSet, standApart } from './typed-thing.ts';
import { openFigure, queued, takeOf, typeKey } from './typing.ts';
import { whyNothing, whyUnknown } from './why-nothing.ts';

const PAGE = 10;
const stay = (state: ScreenState): Step => ({ state, effects: [] });
const doing = (state: ScreenState, effect: Effect): Step => ({ state, effects: [effect] });

/** Takes one event in. What it asks for is under way until it is told to be performed. */
export function reduce(state: ScreenState, event: ScreenEvent): Step {
  const step = next(state, event);
  const kinds = step.effects.map(kindOfEffect);
  const count = (kind: 'reading' | 'writing') => kinds.filter((one) => one === kind).length;
  const [readings, writings] = [count('reading'), count('writing')];
  if (readings + writings === 0) return step;
  const { underWay } = step.state;
  return {
    ...step,
    state: {
      ...step.state,
      underWay: { readings: underWay.readings + readings, writings: underWay.writings + writings },
    },
  };
}

function performed(state: ScreenState, effect: Effect['do']): ScreenState {
  const kind = kindOfEffect({ do: effect });
  const { readings, writings } = state.underWay;
  if (kind === 'reading') return { ...state, underWay: { readings: Math.max(0, readings - 1), writings } };
  if (kind === 'writing') return { ...state, underWay: { readings, writings: Math.max(0, writings - 1) } };
  return state;
}

function next(state: ScreenState, event: ScreenEvent): Step {
  switch (event.kind) {
    case 'key':
      return state.typing === undefined ? press(state, event.key) : typeKey(state, state.typing, event.key);
    case 'data':
      return reading(clamp({ ...state, data: event.data }));
    case 'memo':
      return stay(withMemo(state, event.memo));
    case 'transcripts':
      return stay(withTranscripts(state, event.memoId, event.transcripts));
    case 'progress':
      return stay({
        ...state,
        jobs: state.jobs.map((job, index) => (index === 0 ? { ...job, progress: event.progress } : job)),
      });
    case 'taken':
      return nextJob(saying(state, 'good', event.lines));
    case 'failed':
      return nextJob(saying(state, 'bad', event.lines));
    case 'watching':
      return stay({ ...saying(state, 'good', event.lines), watched: event.folder });
    case 'found':
      return queued(state, [{ file: event.file, isFound: true }]);
    case 'settled':
      return stay({ ...state, message: { tone: 'good', lines: event.lines } });
    case 'refused':
      return stay({ ...state, message: { tone: 'bad', lines: event.lines } });
    case 'played':
      return stay(played(state));
    case 'book':
      return stay(clamp({ ...state, book: event.book }));
    case 'figure':
      return stay(withOpened(state, event));
    case 'rules':
      return stay(clamp({ ...state, rules: event.rules }));
    case 'performed':
      return stay(performed(state, event.effect));
    case 'gone':
      return stay(state);
    case 'tasks':
      return stay(withTasks(state, event.tasks));
    case 'pages':
      return stay(clamp({ ...state, pages: event.pages, days: event.days }));
    case 'where':
      return stay(clamp({ ...state, where: event.where }));
    case 'bench':
      return stay(withBench(state, event.event, event.lines));
    case 'bench-over':
      return stay(benchOver(state, event.lines));
  }
}

const saying = (
  state: ScreenState,
  tone: 'good' | 'bad',
  lines: readonly string[] | undefined,
): ScreenState => (lines ? { ...state, message: { tone, lines } } : state);

/** The mark stays in a memo that is shown already, unless its rows are those of another one. */
function withMemo(state: ScreenState, memo: MemoView): ScreenState {
  const isAnother = state.memo?.id !== memo.id;
  if (state.view === 'heard' && !isAnother) return clamp({ ...state, memo });
  // A slow answer does not draw back who went elsewhere meanwhile.
  if (state.isMemoLeft) return isAnother ? state : { ...state, memo };
  return {
    ...state,
    view: 'heard',
    memo,
    unsureAlone: isAnother ? false : state.unsureAlone,
    chosen: { ...state.chosen, heard: 0 },
  };
}

/** The job at the head is over; the one behind it starts. */
function nextJob(state: ScreenState): Step {
  const [, ...waiting] = state.jobs;
  const [first] = waiting;
  const without = { ...state, jobs: waiting };
  return first ? doing(without, takeOf(first)) : stay(without);
}

/** What is looked at is read anew, because it may have changed. */
function reading(state: ScreenState): Step {
  switch (state.view) {
    case 'heard':
      return state.memo ? doing(state, { do: 'open-memo', id: state.memo.id }) : stay(state);
    case 'transcripts':
      return state.memo ? doing(state, { do: 'read-transcripts', memoId: state.memo.id }) : stay(state);
    case 'figures':
      return doing(state, { do: 'read-book', firstSoon: state.book === undefined });
    case 'figure':
      return state.opened
        ? doing(state, { do: 'read-figure', place: placeOfFigure(state.opened.listed) })
        : stay(state);
    case 'rules':
      return doing(state, { do: 'read-rules' });
    case 'tasks':
      return doing(state, { do: 'read-tasks' });
    case 'day':
      return doing(state, readPages(state));
    case 'where':
      return doing(state, { do: 'read-where' });
    default:
      return stay(state);
  }
}

/** What was read of a figure; an answer for one that was left meanwhile is not wanted any more. */
function withOpened(
  state: ScreenState,
  { place, around, limits }: Extract<ScreenEvent, { kind: 'figure' }>,
): ScreenState {
  const { opened } = state;
  if (!opened || !isSamePlace(opened.listed, place)) return state;
  return clamp({ ...state, opened: { listed: around?.figure ?? opened.listed, around, limits } });
}

const readPages = ({ day }: ScreenState): Effect => ({ do: 'read-pages', ...(day ? { day } : {}) });

/** The mark stays on its task while that keeps its state; else on the row, where the next task has come. */
function withTasks(state: ScreenState, tasks: readonly TaskView[]): ScreenState {
  const marked = chosenTask(state);
  const next = { ...state, tasks };
  const row = shownTasks(next).findIndex(({ id, status }) => id === marked?.id && status === marked.status);
  return row < 0 ? clamp(next) : { ...next, chosen: { ...next.chosen, tasks: row } };
}

function press(state: ScreenState, key: KeyPress): Step {
  const intent = intentOf(state.view, key);
  if (!intent) return because(state, whyUnknown(key));
  const step = act(state, intent);
  const isNothing = step.state === state && step.effects.length === 0;
  return isNothing ? because(state, whyNothing(state, intent)) : step;
}

/** Nothing is done, and it is said why; without words there is nothing to say, and what was said goes. */
const because = (state: ScreenState, why: string | undefined): Step =>
  stay({ ...state, message: why === undefined ? undefined : { tone: 'good', lines: [why] } });

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
    case 'open':
      return open(state);
    case 'back':
      return back(state);
    case 'take':
      return ask(state, 'file');
    case 'record':
      return record(state);
    case 'read-back':
      return turnReadBack(state);
    case 'play':
      return play(state);
    case 'see-bench':
      return see(state, 'bench');
    case 'find':
      return ask(state, 'find');
    case 'add-task':
      return ask(state, 'task');
    case 'add-wait':
      return isOpen(chosenTask(state)) ? ask(state, 'wait') : stay(state);
    case 'cancel':
      return cancel(state);
    case 'see-memos':
      return see(state, 'memos');
    case 'see-clashes':
      return see(state, 'clashes');
    case 'see-figures':
      return see(state, 'figures');
    case 'see-rules':
      return see(state, 'rules');
    case 'see-tasks':
      return see(state, 'tasks');
    case 'see-day':
      return see(state, 'day');
    case 'see-next':
      return see(state, 'next');
    case 'see-where':
      return see(state, 'where');
    case 'see-keys':
      return see(state, 'keys');
    case 'old-holds':
      return settle(state, 'keep-old');
    case 'new-holds':
      return settle(state, 'take-new');
    case 'both-right':
      return settle(state, 'both-right');
    case 'right-size':
      return askRightSize(state);
    case 'note-right':
      return judge(state, 'accepted');
    case 'other-reading':
      return takeOther(state);
    case 'note-wrong':
      return judge(state, 'rejected');
    case 'accept-sure':
      return acceptSure(state);
    case 'unsure-alone':
      return turnUnsure(state);
    case 'amend-note':
      return askNote(state, 'amend');
    case 'note-kind':
      return askNote(state, 'kind');
    case 'reword':
      return askNote(state, 'reword');
    case 'see-transcripts':
      return state.memo ? see({ ...state, transcripts: undefined }, 'transcripts') : stay(state);
    case 'choose-transcript':
      return chooseTranscript(state);
    case 'earlier-memo':
      return turnMemo(state, -1);
    case 'later-memo':
      return turnMemo(state, 1);
    case 'join':
      return askJoin(state);
    case 'apart':
      return standApart(state);
    case 'set-figure':
      return askSet(state);
    case 'close-task':
      return closeTask(state);
    case 'reopen-task':
      return reopenTask(state);
    case 'sooner':
      return sooner(state);
    case 'later':
      return later(state);
    case 'set-due':
      return isOpen(chosenTask(state)) ? ask(state, 'due') : stay(state);
    case 'no-task':
      return noTask(state);
    case 'undo':
      return doing(state, { do: 'undo' });
    case 'redo':
      return doing(state, { do: 'redo' });
    case 'earlier-day':
      return turnDay(state, -1);
    case 'later-day':
      return turnDay(state, 1);
    case 'journal':
      return page(state, 0);
    case 'next-steps':
      return page(state, 1);
    case 'outline':
      return page(state, 2);
    case 'write':
      return state.pages && state.pages.length > 0
        ? doing(state, { do: 'write', pages: state.pages })
        : stay(state);
    case 'leave':
      return doing(state, { do: 'leave' });
  }
}

/** The file that is on its way first; when there is none, the watching of a folder. */
function cancel(state: ScreenState): Step {
  if (state.jobs.length > 0) return doing(state, { do: 'cancel' });
  return state.watched === undefined ? stay(state) : doing(state, { do: 'unwatch' });
}

function settle(state: ScreenState, choice: 'keep-old' | 'take-new' | 'both-right'): Step {
  const finding = state.data.findings[state.chosen.clashes];
  return finding ? doing(state, { do: 'settle', id: finding.id, choice }) : stay(state);
}

/** Asks for the size where neither of the two holds. */
function askRightSize(state: ScreenState): Step {
  const finding = state.data.findings[state.chosen.clashes];
  if (!finding || finding.now.unit === '') return stay(state);
  return stay({
    ...state,
    typing: { what: 'right-size', text: '', about: finding.id },
    message: undefined,
  });
}

function closeTask(state: ScreenState): Step {
  const problem = chosenProblem(state);
  if (problem) {
    const change = { kind: 'problem-solved', problemId: problem.id } as const;
    return doing(state, { do: 'by-hand', change, line: `put right: ${problem.gist}` });
  }
  const task = chosenTask(state);
  if (!task || task.status === 'done') return stay(state);
  const change = { kind: 'task-closed', taskId: task.id } as const;
  return doing(state, { do: 'by-hand', change, line: `closed: ${task.gist}` });
}

function reopenTask(state: ScreenState): Step {
  const task = chosenTask(state);
  if (task?.status !== 'done') return stay(state);
  const change = { kind: 'task-reopened', taskId: task.id } as const;
  return doing(state, { do: 'by-hand', change, line: `open again: ${task.gist}` });
}

/** Puts the chosen task before the one above it, where both stand in the same list. */
function sooner(state: ScreenState): Step {
  const task = chosenTask(state);
  const above = shownTasks(state)[state.chosen.tasks - 1];
  if (!task || task.status === 'done' || above?.status !== task.status) return stay(state);
  const change = { kind: 'task-placed', taskId: task.id, before: above.id } as const;
  return doing(state, { do: 'by-hand', change, line: `${task.gist}: before ${above.gist}` });
}

/** Puts the one below before the chosen task, where both stand in the same list. */
function later(state: ScreenState): Step {
  const task = chosenTask(state);
  const below = shownTasks(state)[state.chosen.tasks + 1];
  if (!task || task.status === 'done' || below?.status !== task.status) return stay(state);
  const change = { kind: 'task-placed', taskId: below.id, before: task.id } as const;
  return doing(state, { do: 'by-hand', change, line: `${task.gist}: after ${below.gist}` });
}

/** What was misheard as a task, or as a snag, is taken out of the model; its words stay in the memo. */
function noTask(state: ScreenState): Step {
  const one = chosenTask(state) ?? chosenProblem(state);
  if (!one) return stay(state);
  return doing(state, { do: 'withdraw', id: one.id, line: `taken out: ${one.gist}` });
}

const isOpen = (task: TaskView | undefined) => task !== undefined && task.status !== 'done';

/** The pages of the next day with talk, that way; nothing at the ends. */
function turnDay(state: ScreenState, by: -1 | 1): Step {
  const { days = [], day = days.at(-1) } = state;
  const turned = day === undefined ? undefined : days[days.indexOf(day) + by];
  if (turned === undefined) return stay(state);
  const next = { ...state, day: turned, chosen: { ...state.chosen, day: 0 }, message: undefined };
  return doing(next, readPages(next));
}

function page(state: ScreenState, number: number): Step {
  return stay({ ...state, page: number, chosen: { ...state.chosen, day: 0 }, message: undefined });
}

function ask(state: ScreenState, what: Typing['what']): Step {
  const text = what === 'find' ? state.find : '';
  return stay({ ...state, typing: { what, text }, message: undefined });
}

function open(state: ScreenState): Step {
  if (state.view === 'figures') return openFigure(state);
  const memo = state.data.memos[state.chosen.memos];
  return memo ? doing({ ...state, isMemoLeft: false }, { do: 'open-memo', id: memo.id }) : stay(state);
}

/** One step back: to where the keys were asked for, to the list of a figure, to all figures, to the memos. */
function back(state: ScreenState): Step {
  if (state.view === 'keys') return see(state, state.viewBefore);
  if (state.view === 'figure') return see(state, 'figures');
  if (state.view === 'transcripts') return see(state, 'heard');
  if (state.view === 'figures' && state.find !== '')
    return stay({ ...state, find: '', chosen: { ...state.chosen, figures: 0 } });
  return see(state, 'memos');
}

function see(state: ScreenState, view: View): Step {
  if (view === state.view) return stay(state);
  const isMemoLeft = view !== 'heard';
  return reading({ ...state, view, viewBefore: state.view, isMemoLeft, message: undefined });
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
      figures: within(state.chosen.figures, foundFigures(state).length),
      tasks: within(state.chosen.tasks, taskLines(state).length),
      figure: within(state.chosen.figure, figureLines(state).length),
      rules: within(state.chosen.rules, ruleLines(state).length),
      heard: within(state.chosen.heard, shownNotes(state).length),
    },
  };
}

/** What a typed line does: a file to take in, words to find, a task, its date, what it waits for. */
import { foundFigures, placeOfFigure } from './figure-rows.ts';
import type { Effect, Job, KeyPress, ScreenState, Step, Typing } from './screen-state.ts';
import { chosenTask } from './task-rows.ts';
import { lineAfter } from './typed-line.ts';
import { finishNote } from './typed-note.ts';
import { setDue, setWait } from './typed-task.ts';
import { finishClash, finishThing } from './typed-thing.ts';

const stay = (state: ScreenState): Step => ({ state, effects: [] });

/** Takes one key into the line that is being typed. */
export function typeKey(state: ScreenState, typing: Typing, key: KeyPress): Step {
  switch (key.name) {
    case 'interrupt':
      return { state, effects: [{ do: 'leave' }] };
    case 'back':
      return stay(withText({ ...state, typing: undefined }, { ...typing, text: '' }));
    case 'enter':
      // With nothing found there is nothing to open: the words are still to be put right.
      if (typing.what === 'find' && foundFigures(state).length === 0) return stay(state);
      return finish({ ...state, typing: undefined }, typing);
    case 'up':
    case 'down':
      return stay(typing.what === 'find' ? moved(state, key.name) : state);
    default:
      return stay(typed(state, lineAfter(typing, key)));
  }
}

const typed = (state: ScreenState, typing: Typing) => withText({ ...state, typing }, typing);

/** Figures are found while their words are typed. */
function withText(state: ScreenState, { what, text }: Typing): ScreenState {
  if (what !== 'find' || text === state.find) return state;
  return { ...state, find: text, chosen: { ...state.chosen, figures: 0 } };
}

function moved(state: ScreenState, way: 'up' | 'down'): ScreenState {
  const last = Math.max(0, foundFigures(state).length - 1);
  const figures = Math.min(last, Math.max(0, state.chosen.figures + (way === 'up' ? -1 : 1)));
  return { ...state, chosen: { ...state.chosen, figures } };
}

function finish(state: ScreenState, typing: Typing): Step {
  const { what } = typing;
  const text = typing.text.trim();
  if (what === 'find') return openFigure(state);
  if (text === '') return stay(state);
  switch (what) {
    case 'file':
      // Several are dropped at once: each stands in a line.
      return queued(
        { ...state, message: undefined },
        text.split('\n').map((file) => ({ file })),
      );
    case 'task': {
      const change = { kind: 'task-added', gist: text } as const;
      return { state, effects: [{ do: 'by-hand', change, line: `added: ${text}` }] };
    }
    case 'amend':
    case 'kind':
    case 'reword':
      return finishNote(state, typing, text);
    case 'join':
    case 'set':
      return finishThing(state, typing, text);
    case 'right-size':
      return finishClash(state, typing, text);
    default: {
      const task = chosenTask(state);
      if (!task) return stay(state);
      return what === 'due' ? setDue(state, task, text) : setWait(state, task, text);
    }
  }
}

/** Files are taken in at once, or behind the ones that are on their way. */
export function queued(state: ScreenState, jobs: readonly Job[]): Step {
  const next = { ...state, jobs: [...state.jobs, ...jobs] };
  const [first] = jobs;
  return { state: next, effects: state.jobs.length === 0 && first ? [takeOf(first)] : [] };
}

export const takeOf = ({ file, isFound }: Job): Effect => ({
  do: 'take',
  file,
  ...(isFound ? { isFound } : {}),
});

/** Shows the chosen figure at length; nothing where none is chosen. */
export function openFigure(state: ScreenState): Step {
  const figure = foundFigures(state)[state.chosen.figures];
  if (!figure) return stay(state);
  return {
    state: {
      ...state,
      view: 'figure',
      opened: { listed: figure, limits: [] },
      chosen: { ...state.chosen, figure: 0 },
      message: undefined,
    },
    effects: [{ do: 'read-figure', place: placeOfFigure(figure) }],
  };
}

/** What is typed of a task: by when it is to be done, and what it waits for. Read as the command line reads it. */
import type { HandWait } from '../../model/events.ts';
import type { TaskView } from '../../model/views.ts';
import { readWrittenReading } from '../../model/written.ts';
import { isWrittenDay } from '../../model/written-day.ts';
import { oneLine } from '../../reports/words.ts';
import type { Effect, ScreenState, Step } from './screen-state.ts';

const byHand = (state: ScreenState, effect: Omit<Extract<Effect, { do: 'by-hand' }>, 'do'>): Step => ({
  state,
  effects: [{ do: 'by-hand', ...effect }],
});

/** A day, or "none", which takes the date away. Anything else is asked again. */
export function setDue(state: ScreenState, task: TaskView, text: string): Step {
  const gist = oneLine(task.gist);
  if (text.toLowerCase() === 'none')
    return byHand(state, { change: { kind: 'task-due-set', taskId: task.id }, line: `no date: ${gist}` });
  if (!isWrittenDay(text)) {
    const lines = [`expected a day such as 2026-05-03, or none; got "${oneLine(text)}"`];
    return {
      state: { ...state, typing: { what: 'due', text }, message: { tone: 'bad', lines } },
      effects: [],
    };
  }
  return byHand(state, {
    change: { kind: 'task-due-set', taskId: task.id, due: text },
    line: `due ${text}: ${gist}`,
  });
}

/** What the task waits for: "nothing" takes all away. */
export function setWait(state: ScreenState, task: TaskView, text: string): Step {
  const waits = waitsTyped(text, state.tasks ?? []);
  const told = waits.map(({ words }) => oneLine(words)).join(', ') || 'nothing';
  return byHand(state, {
    change: { kind: 'task-waits-set', taskId: task.id, waits },
    line: `${oneLine(task.gist)}: waits for ${told}`,
  });
}

/**
 * "until 2026-05-06" or a day alone, "24 hours", "workshop at least 15 degC", the id of another task; else words for
 * what has to happen.
 */
function waitsTyped(text: string, tasks: readonly TaskView[]): readonly HandWait[] {
  if (text.toLowerCase() === 'nothing') return [];
  const day = text.replace(/^until\s+/i, '');
  if (isWrittenDay(day)) return [{ words: day, until: day }];
  const hours = /^(\d+(?:\.\d+)?)\s*(?:h|hours?)$/i.exec(text)?.[1];
  if (hours !== undefined && Number(hours) > 0) return [{ words: `${hours} hours`, hours: Number(hours) }];
  const other = tasks.find(({ id }) => id === text);
  if (other) return [{ words: other.gist, taskId: other.id }];
  const reading = readWrittenReading(text);
  if (reading.ok) return [{ words: text, reading: reading.value }];
  return [{ words: text }];
}

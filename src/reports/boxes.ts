/**
 * Boxes that a person ticks on a page: `- [ ] words \[m2.t1\]`. The id at the end of the line says which task it is, so
 * that a tick stays with its task when the page is written anew. Words of a memo never make a box: their brackets are
 * escaped.
 */
import type { TaskView } from '../model/views.ts';
import { escapeMarkdown } from './markdown.ts';
import { taskEntry } from './page-notes.ts';
import { oneLine } from './words.ts';

const BOX = /^((?:[-*+]|\d{1,9}[.)]) )\[([ xX])\](?= .*\\\[([^[\]\\\s]+)\\\][ \t\r]*$)/gm;

/** A task with a box before it and its id behind it. */
export function boxEntry(task: TaskView): string {
  const [first = '', ...more] = taskEntry(task).split('\n');
  return [`${first.replace(/^- /, '- [ ] ')} ${escapeMarkdown(`[${oneLine(task.id)}]`)}`, ...more].join('\n');
}

/** Ids of the tasks whose boxes are ticked on a page. */
export function ticksOf(page: string): ReadonlySet<string> {
  const ticked = [...page.matchAll(BOX)].filter(([, , mark]) => mark !== ' ');
  return new Set(ticked.map(([, , , id = '']) => id));
}

/** The page with those boxes ticked, and no others. */
export function withTicks(page: string, ids: ReadonlySet<string>): string {
  return page.replace(
    BOX,
    (_box, mark: string, _was: string, id: string) => `${mark}[${ids.has(id) ? 'x' : ' '}]`,
  );
}

/** The page as it is before anyone ticks a box. */
export function withoutTicks(page: string): string {
  return withTicks(page, new Set());
}

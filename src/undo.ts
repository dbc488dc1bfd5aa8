/** What undo takes back, and what redo brings back. */
import type { ProjectEvent } from './model/events.ts';
import type { RecordByHand } from './model/kept/record-rows.ts';
import { eventsThatCount, isUndoable } from './model/replay.ts';

function recordWords(record: RecordByHand): string {
  switch (record.kind) {
    case 'batch':
      return `the batch of ${record.product}`;
    case 'hidden':
      return `what is behind "${record.panel}": ${record.what}`;
    case 'pair':
      return `"${record.part}" as a pair of hands`;
    case 'clock':
      return `when ${record.product || 'the coat'} was ${record.act}`;
    case 'delivery':
      return `"${record.item}" as ${record.act}`;
  }
}

/** What a person did, in a few words. */
function wordsFor(event: ProjectEvent): string {
  switch (event.kind) {
    case 'finding-settled':
      return `settling ${event.findingId} with ${event.choice}`;
    case 'note-accepted':
    case 'note-amended':
    case 'note-rejected':
      return `the word on note ${event.noteId}`;
    case 'transcript-chosen':
      return `transcript ${event.version} as the one that counts for memo ${event.memoId.slice(1)}`;
    case 'notes-accepted':
      return `the word on ${event.noteIds.length} notes`;
    case 'words-corrected':
      return `"${event.now}" for "${event.was}" in memo ${event.memoId.slice(1)}`;
    case 'words-learned':
      return event.heard === event.means
        ? `"${event.heard}" as heard right`
        : `"${event.heard}" as "${event.means}"`;
    case 'items-merged':
      return `"${event.from}" as another name of "${event.into}"`;
    case 'items-split':
      return `"${event.name}" as a thing of its own`;
    case 'figure-set':
      return `the ${event.attribute} set for "${event.item}"`;
    case 'formula-set':
      return `the formula for the ${event.attribute} of "${event.item}"`;
    case 'limit-set':
      return `the limit on the ${event.attribute} of "${event.item}"`;
    case 'task-added':
      return `the task "${event.gist}"`;
    case 'task-closed':
      return `closing task ${event.taskId}`;
    case 'task-reopened':
      return `reopening task ${event.taskId}`;
    case 'task-due-set':
      return `the date of task ${event.taskId}`;
    case 'task-waits-set':
      return `what task ${event.taskId} waits for`;
    case 'task-placed':
      return `task ${event.taskId} before ${event.before}`;
    case 'problem-solved':
      return `problem ${event.problemId} as put right`;
    case 'problem-reopened':
      return `problem ${event.problemId} as open`;
    case 'tolerance-set':
      return `the tolerance on ${event.dimension}`;
    case 'record-kept':
      return recordWords(event.record);
    case 'device-set':
      return `the clock of "${event.name}"`;
    case 'check-added':
      return `the check "${event.check}"`;
    case 'check-removed':
      return `taking check ${event.checkId} away`;
    default:
      return event.kind;
  }
}

/** The last thing done by hand that still counts, if any. */
export function lastByHand(
  log: readonly ProjectEvent[],
): { readonly seq: number; readonly words: string } | undefined {
  const last = eventsThatCount(log).findLast(isUndoable);
  return last && { seq: last.seq, words: wordsFor(last) };
}

/** What a person set under this id (`s12`), if it still counts. */
export function setByHandWith(
  log: readonly ProjectEvent[],
  id: string,
): { readonly seq: number; readonly words: string } | undefined {
  const event = eventsThatCount(log).find((one) => `s${one.seq}` === id && isUndoable(one));
  return event && { seq: event.seq, words: wordsFor(event) };
}

/**
 * The last undo that may be taken back, and what it undid. Whatever a person does meanwhile closes the way: what they did
 * may rest on what is not there any more.
 */
export function lastTakenBack(
  log: readonly ProjectEvent[],
): { readonly seq: number; readonly words: string } | undefined {
  const bySeq = new Map(log.map((event) => [event.seq, event]));
  let undone: { readonly seq: number; readonly words: string }[] = [];
  for (const event of log) {
    if (event.kind === 'undone') {
      const target = bySeq.get(event.undoes);
      if (target?.kind === 'undone') undone = undone.filter(({ seq }) => seq !== target.seq);
      else if (target) undone.push({ seq: event.seq, words: wordsFor(target) });
    } else if (isUndoable(event)) undone = [];
  }
  return undone.at(-1);
}

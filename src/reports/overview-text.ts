/** Where a project stands, in a few lines. */
import type { MemoSummary, NextView, ProjectInfo } from '../model/views.ts';
import { findingLine } from './finding-text.ts';
import { counted } from './source-text.ts';
import { oneLine, sentence } from './words.ts';

const SHOWN = 5;

/** Counts, the questions and the first tasks that are ready. */
export function overviewText(info: ProjectInfo, memos: readonly MemoSummary[], next: NextView): string {
  const notes = memos.reduce((sum, memo) => sum + memo.noteCount, 0);
  const unread = memos.filter((memo) => memo.status === 'kept').length;
  const ready = next.ready.slice(0, SHOWN).map((task) => `  ${oneLine(sentence(task.gist))}`);
  return [
    `${oneLine(info.name)}: ${counted(memos.length, 'memo')}, ${counted(notes, 'note')}`,
    ...(unread > 0 ? [`${counted(unread, 'memo')} kept and not read yet: hearwright resume`] : []),
    ...(next.questions.length > 0
      ? ['Clashes', ...next.questions.map((finding) => `  ${findingLine(finding)}`)]
      : []),
    ...(ready.length > 0 ? ['Ready', ...ready] : []),
    `${counted(next.waiting.length, 'task')} waiting, ${counted(next.promises.filter((promise) => promise.status === 'open').length, 'promise')} open`,
    '',
  ].join('\n');
}

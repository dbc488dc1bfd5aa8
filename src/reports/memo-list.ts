/** Memos for the terminal: the list, and what was read from one. */
import type { MemoNotes } from '../language/notes.ts';
import type { MemoSummary, MemoView } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { boundedText } from './quantity-text.ts';
import { counted, duration, memoName } from './source-text.ts';
import { textTable } from './text-table.ts';
import { oneLine } from './words.ts';

const KINDS: readonly (readonly [keyof MemoNotes, string, string?])[] = [
  ['figures', 'figure'],
  ['decisions', 'decision'],
  ['tasks', 'task'],
  ['done', 'thing done', 'things done'],
  ['arrivals', 'arrival'],
  ['problems', 'problem'],
  ['promises', 'promise'],
  ['corrections', 'correction'],
];

/** "5 figures, 1 decision"; "nothing to note" when there is none. */
export function noteCounts(notes: { readonly [K in keyof MemoNotes]: readonly unknown[] }): string {
  const parts = KINDS.filter(([kind]) => notes[kind].length > 0).map(([kind, one, many]) =>
    counted(notes[kind].length, one, many),
  );
  return parts.length > 0 ? parts.join(', ') : 'nothing to note';
}

/** "memo 7  loom-1.m4a  2 min 14 s, 212 words: 5 figures, 1 decision". */
export function memoLine(memo: MemoView): string {
  const { durationSeconds } = memo.source;
  const length = durationSeconds === undefined ? '' : `${duration(durationSeconds)}, `;
  return `${memoName(memo.id)}  ${oneLine(memo.source.name)}  ${length}${counted(memo.words, 'word')}: ${noteCounts(memo.notes)}`;
}

/** All memos in the order they were taken. */
export function memoTable(memos: readonly MemoSummary[]): string {
  if (memos.length === 0) return 'No memo has been taken yet.\n';
  return textTable(
    memos.map((memo) => [
      memoName(memo.id),
      memo.recordedAt,
      memo.source.name,
      memo.source.durationSeconds === undefined ? 'text' : duration(memo.source.durationSeconds),
      memo.status === 'read' ? counted(memo.noteCount, 'note') : 'kept, not read yet',
      memo.findingCount > 0 ? counted(memo.findingCount, 'clash', 'clashes') : '',
    ]),
  );
}

/** Every note of one reading, a line each, with its words. */
export function notesText(notes: MemoNotes): string {
  const rows: string[][] = [];
  for (const figure of notes.figures) {
    const state = figure.state ? `, ${figure.state}` : '';
    rows.push(['figure', `${subjectOf(figure)}: ${boundedText(figure)}${state}`, `"${figure.quote}"`]);
  }
  for (const note of notes.decisions) {
    rows.push([
      'decision',
      note.reason && !note.gist.includes(note.reason) ? `${note.gist}, because ${note.reason}` : note.gist,
      `"${note.quote}"`,
    ]);
  }
  for (const note of notes.tasks) {
    const details = [
      ...(note.due ? [`due ${note.due}`] : []),
      ...(note.waitsFor.length > 0 ? [`waits for ${note.waitsFor.join(', ')}`] : []),
    ];
    rows.push(['task', [note.gist, ...details].join('; '), `"${note.quote}"`]);
  }
  for (const note of notes.done) rows.push(['done', note.gist, `"${note.quote}"`]);
  for (const note of notes.arrivals) {
    const when = note.received ? 'received' : note.expected ? `expected ${note.expected}` : 'expected';
    rows.push(['arrival', `${note.item}: ${when}`, `"${note.quote}"`]);
  }
  for (const note of notes.problems) rows.push(['problem', note.gist, `"${note.quote}"`]);
  for (const note of notes.promises) rows.push(['promise', note.gist, `"${note.quote}"`]);
  for (const note of notes.corrections) rows.push(['correction', note.gist, `"${note.quote}"`]);
  return rows.length > 0 ? textTable(rows) : 'Nothing to note was read.\n';
}

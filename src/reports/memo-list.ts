/** Memos for the terminal: the list, and what was read from one. */
import type {
  ArrivalNote,
  DecisionNote,
  FigureNote,
  MemoNotes,
  Note,
  RecordNote,
  TaskNote,
} from '../language/notes.ts';
import type { MemoSummary, MemoView } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { repairsText } from './heard-text.ts';
import { deliveryWords } from './kept-words.ts';
import { otherReadings } from './note-doubts.ts';
import { boundedText } from './quantity-text.ts';
import { clipTime, clock, counted, duration, memoName } from './source-text.ts';
import { textTable } from './text-table.ts';
import { productWords } from './window-words.ts';
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

/** What is kept on record goes by what it is: a person looks for the batch, not for a record. */
const RECORDS: readonly (readonly [RecordNote['kind'], string, string?])[] = [
  ['batch', 'batch', 'batches'],
  ['hidden', 'thing behind a panel', 'things behind panels'],
  ['hand', 'pair of hands', 'pairs of hands'],
  ['delivery', 'delivery', 'deliveries'],
  ['check', 'check'],
];

/** "5 figures, 1 decision"; "nothing to note" when there is none. */
export function noteCounts(notes: MemoNotes | MemoView['notes']): string {
  const records: readonly RecordNote[] = notes.records;
  const parts = [
    ...KINDS.map(([kind, one, many]) => [notes[kind].length, one, many] as const),
    ...RECORDS.map(
      ([kind, one, many]) => [records.filter((note) => note.kind === kind).length, one, many] as const,
    ),
  ].flatMap(([count, one, many]) => (count > 0 ? [counted(count, one, many)] : []));
  return parts.length > 0 ? parts.join(', ') : 'nothing to note';
}

/** "memo 7  loom-1.m4a  2 min 14 s, 212 words: 5 figures, 1 decision". */
export function memoLine(memo: MemoView): string {
  const { durationSeconds } = memo.source;
  const length = durationSeconds === undefined ? '' : `${duration(durationSeconds)}, `;
  const heard =
    memo.words === 0 && memo.source.kind === 'recording'
      ? 'no speech was heard in it'
      : `${counted(memo.words, 'word')}: ${noteCounts(memo.notes)}`;
  return `${memoName(memo.id)}  ${oneLine(memo.source.name)}  ${length}${heard}`;
}

/** All memos in the order they were taken. */
export function memoTable(memos: readonly MemoSummary[]): string {
  if (memos.length === 0) return 'No memo has been taken yet.\n';
  return textTable(
    memos.map((memo) => [
      memoName(memo.id),
      clock(memo.recordedAt),
      memo.source.name,
      memo.source.durationSeconds === undefined ? 'text' : duration(memo.source.durationSeconds),
      memo.status === 'read' ? counted(memo.noteCount, 'note') : 'kept, not read yet',
      clashWords(memo),
    ]),
  );
}

/** "2 clashes", and how many of them are open where some are settled. */
function clashWords({ findingCount, openFindingCount }: MemoSummary): string {
  if (findingCount === 0) return '';
  const all = counted(findingCount, 'clash', 'clashes');
  if (openFindingCount === findingCount) return all;
  return openFindingCount === 0 ? `${all}, settled` : `${all}, ${openFindingCount} open`;
}

/** A note as a row: kind, what it says, its words. */
export function noteRows(notes: MemoNotes): readonly (readonly [note: Note, words: string])[] {
  return [
    ...notes.figures.map((note) => [note, figureWords(note)] as const),
    ...notes.decisions.map((note) => [note, decisionWords(note)] as const),
    ...notes.tasks.map((note) => [note, taskWords(note)] as const),
    ...notes.done.map((note) => [note, note.gist] as const),
    ...notes.arrivals.map((note) => [note, arrivalWords(note)] as const),
    ...notes.problems.map((note) => [note, note.gist] as const),
    ...notes.promises.map((note) => [note, note.gist] as const),
    ...notes.corrections.map((note) => [note, note.gist] as const),
    ...notes.records.map((note) => [note, recordWords(note)] as const),
  ];
}

function figureWords(note: FigureNote): string {
  return [`${subjectOf(note)}: ${boundedText(note)}`, otherReadings(note), note.state]
    .filter(Boolean)
    .join(', ');
}

function decisionWords({ gist, reason }: DecisionNote): string {
  return reason && !gist.includes(reason) ? `${gist}, because ${reason}` : gist;
}

function taskWords({ gist, due, waitsFor }: TaskNote): string {
  const wait = waitsFor.length > 0 ? [`waits for ${waitsFor.join(', ')}`] : [];
  return [gist, ...(due ? [`due ${due}`] : []), ...wait].join('; ');
}

function arrivalWords({ item, received, expected }: ArrivalNote): string {
  return `${item}: ${received ? 'received' : expected ? `expected ${expected}` : 'expected'}`;
}

/** What one record says, on one line. */
export function recordWords(note: RecordNote): string {
  switch (note.kind) {
    case 'batch':
      return [note.product, ...note.facts.map(({ what, quote }) => `${what} ${quote}`)].join('; ');
    case 'hidden':
      return `behind the ${note.panel}: ${note.what}`;
    case 'hand':
      return `${note.part}: ${note.sides ? note.sides.join(' and ') : 'one for each hand'}`;
    case 'delivery':
      return `${note.item || 'goods'} ${note.act}: ${deliveryWords(note)}`;
    case 'clock':
      return `${productWords(note) || 'coat'} ${note.act} ${note.isSaid ? '' : 'about '}${clock(note.at)}`;
    case 'check':
      return [note.check, ...note.inputs.map(({ input, expression }) => `${input} ${expression}`)].join('; ');
  }
}

/** Every note of one reading, a line each, with its words; with its id and review where it is kept. */
export function notesText(notes: MemoNotes | MemoView['notes']): string {
  const rows = noteRows(notes).map(([note, words]) => {
    const kept: { readonly id?: string; readonly review?: string } = note as Note & { id?: string };
    return [
      ...(kept.id === undefined ? [] : [kept.id]),
      note.kind,
      kept.review ? `${words} (${kept.review})` : words,
      `"${note.quote}"`,
    ];
  });
  return rows.length > 0 ? textTable(rows) : 'Nothing to note was read.\n';
}

/** One memo: its line, what heard it where that is not plain, its notes with their ids, what was left out. */
export function memoText(memo: MemoView): string {
  const { heard, droppedSpeech = [] } = memo;
  const by =
    heard && heard.of > 1
      ? `heard by ${oneLine(heard.engine)}: transcript ${heard.version} of ${heard.of}\n`
      : '';
  const dropped = droppedSpeech.map(({ startSeconds, endSeconds, text, why = '' }) => [
    `${clipTime(startSeconds)} to ${clipTime(endSeconds)}`,
    `"${text}"`,
    why,
  ]);
  const left = dropped.length > 0 ? `\nLeft out for want of speech:\n${textTable(dropped)}` : '';
  const repairs = repairsText(memo);
  const otherwise = repairs === '' ? '' : `\nRead otherwise than it was heard:\n${repairs}`;
  return `${memoLine(memo)}\n${by}\n${notesText(memo.notes)}${otherwise}${left}`;
}

import type { Database } from 'better-sqlite3';
import type { MemoRow } from '../model/rows.ts';
import type { Source } from '../model/views.ts';
import { prepared } from './prepared.ts';

/**
 * Files a memo's words for search: by utterance, or by sentence where there are none. `seq` is the event that gives
 * them; words of an earlier one are kept in the journal. Call inside a transaction.
 */
export function fileWords(db: Database, memo: MemoRow, seq: number): void {
  const old = saidBy(db, memo.id);
  if (old.some(({ since }) => since < seq)) {
    prepared(db, "INSERT OR IGNORE INTO journal (seq, kind, key, body) VALUES (?, 'said', ?, ?)").run(
      seq,
      memo.id,
      JSON.stringify(old),
    );
  }
  dropWords(db, old);
  const pieces =
    memo.utterances?.map(({ text, startSeconds }) => ({ text, startSeconds })) ??
    sentencesOf(memo.text ?? '').map((text) => ({ text, startSeconds: null }));
  const { id: last } = prepared(db, 'SELECT coalesce(max(id), 0) AS id FROM said').get() as { id: number };
  putWords(
    db,
    pieces.map(({ text, startSeconds }, index) => {
      return { id: last + 1 + index, memoId: memo.id, text, startSeconds, since: seq };
    }),
  );
}

/** One piece of what was said, as it is filed. */
export interface SaidRow {
  readonly id: number;
  readonly memoId: string;
  readonly text: string;
  readonly startSeconds: number | null;
  readonly since: number;
}

export function saidBy(db: Database, memoId: string): readonly SaidRow[] {
  return prepared(db, 'SELECT * FROM said WHERE memoId = ? ORDER BY id').all(memoId) as SaidRow[];
}

export function putWords(db: Database, rows: readonly SaidRow[]): void {
  const say = prepared(db, 'INSERT INTO said (id, memoId, text, startSeconds, since) VALUES (?, ?, ?, ?, ?)');
  const index = prepared(db, 'INSERT INTO said_words (rowid, text) VALUES (?, ?)');
  for (const { id, memoId, text, startSeconds, since } of rows) {
    say.run(id, memoId, text, startSeconds, since);
    index.run(id, text);
  }
}

export function dropWords(db: Database, rows: readonly SaidRow[]): void {
  const unindex = prepared(db, "INSERT INTO said_words (said_words, rowid, text) VALUES ('delete', ?, ?)");
  const drop = prepared(db, 'DELETE FROM said WHERE id = ?');
  for (const { id, text } of rows) {
    unindex.run(id, text);
    drop.run(id);
  }
}

let segmenter: Intl.Segmenter | undefined;

function sentencesOf(text: string): readonly string[] {
  // Made at the first use: it reads the rules of the language, which costs as much as opening the project.
  segmenter ??= new Intl.Segmenter('en', { granularity: 'sentence' });
  return [...segmenter.segment(text)].map((piece) => piece.segment.trim()).filter((piece) => piece !== '');
}

export interface Said extends Source {
  /** 1 is best. */
  readonly rank: number;
}

/**
 * Finds talk that holds these words, best first: talk with all of them, else with any of those that name something.
 * The words are only words: nothing in them is read as search syntax.
 */
export function searchSaid(
  db: Database,
  words: readonly string[],
  limit: number,
  naming: readonly string[] = words,
): readonly Said[] {
  const quoted = quotedWords(words);
  if (quoted.length === 0) return [];
  const find = db.prepare(`
    SELECT said.memoId, said.text, said.startSeconds, memos.body
    FROM said_words JOIN said ON said.id = said_words.rowid JOIN memos ON memos.key = said.memoId
    WHERE said_words MATCH ? ORDER BY bm25(said_words), said.id LIMIT ?`);
  const either = naming.length > 0 ? quotedWords(naming) : quoted;
  const all = find.all(quoted.join(' AND '), limit) as SaidLine[];
  const found = all.length > 0 ? all : (find.all(either.join(' OR '), limit) as SaidLine[]);
  return found.map((line, index) => ({
    memoId: line.memoId,
    recordedAt: (JSON.parse(line.body) as MemoRow).recordedAt,
    quote: line.text,
    ...(line.startSeconds === null ? {} : { startSeconds: line.startSeconds }),
    rank: index + 1,
  }));
}

const quotedWords = (words: readonly string[]): readonly string[] =>
  words.flatMap((word) => word.match(/[\p{L}\p{N}]+/gu) ?? []).map((word) => `"${word}"`);

interface SaidLine {
  readonly memoId: string;
  readonly text: string;
  readonly startSeconds: number | null;
  readonly body: string;
}

import type { Database } from 'better-sqlite3';
import type { MemoRow } from '../model/rows.ts';
import type { Source } from '../model/views.ts';

/** Files a memo's words for search: by utterance, or by sentence where there are none. Call inside a transaction. */
export function fileWords(db: Database, memo: MemoRow): void {
  db.prepare(
    "INSERT INTO said_words (said_words, rowid, text) SELECT 'delete', id, text FROM said WHERE memoId = ?",
  ).run(memo.id);
  db.prepare('DELETE FROM said WHERE memoId = ?').run(memo.id);
  const pieces =
    memo.utterances?.map(({ text, startSeconds }) => ({ text, startSeconds })) ??
    sentencesOf(memo.text ?? '').map((text) => ({ text, startSeconds: null }));
  const say = db.prepare('INSERT INTO said (memoId, text, startSeconds) VALUES (?, ?, ?)');
  const index = db.prepare('INSERT INTO said_words (rowid, text) VALUES (?, ?)');
  for (const { text, startSeconds } of pieces) {
    const { lastInsertRowid } = say.run(memo.id, text, startSeconds);
    index.run(lastInsertRowid, text);
  }
}

function sentencesOf(text: string): readonly string[] {
  return [...new Intl.Segmenter('en', { granularity: 'sentence' }).segment(text)]
    .map((piece) => piece.segment.trim())
    .filter((piece) => piece !== '');
}

export interface Said extends Source {
  /** 1 is best. */
  readonly rank: number;
}

/**
 * Finds talk that holds these words, best first: talk with all of them, else with any. The words are only words:
 * nothing in them is read as search syntax.
 */
export function searchSaid(db: Database, words: readonly string[], limit: number): readonly Said[] {
  const quoted = words.flatMap((word) => word.match(/[\p{L}\p{N}]+/gu) ?? []).map((word) => `"${word}"`);
  if (quoted.length === 0) return [];
  const find = db.prepare(`
    SELECT said.memoId, said.text, said.startSeconds, memos.body
    FROM said_words JOIN said ON said.id = said_words.rowid JOIN memos ON memos.key = said.memoId
    WHERE said_words MATCH ? ORDER BY bm25(said_words), said.id LIMIT ?`);
  const all = find.all(quoted.join(' AND '), limit) as SaidLine[];
  const found = all.length > 0 ? all : (find.all(quoted.join(' OR '), limit) as SaidLine[]);
  return found.map((line, index) => ({
    memoId: line.memoId,
    recordedAt: (JSON.parse(line.body) as MemoRow).recordedAt,
    quote: line.text,
    ...(line.startSeconds === null ? {} : { startSeconds: line.startSeconds }),
    rank: index + 1,
  }));
}

interface SaidLine {
  readonly memoId: string;
  readonly text: string;
  readonly startSeconds: number | null;
  readonly body: string;
}

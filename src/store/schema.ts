import type { Database } from 'better-sqlite3';
import type { TableName } from '../model/rows.ts';

/** Marks the file as ours: "Hear" in ASCII. */
export const APPLICATION_ID = 0x48656172;
/** Raised whenever older programs could no longer read the file rightly. */
export const FORMAT = 2;

/** The log may only grow: SQLite itself refuses to change or delete what is in it. */
const LOG = `
CREATE TABLE log (
  seq  INTEGER PRIMARY KEY,
  at   TEXT NOT NULL,
  kind TEXT NOT NULL,
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE TRIGGER log_is_kept BEFORE DELETE ON log BEGIN SELECT RAISE(ABORT, 'the log is never deleted'); END;
CREATE TRIGGER log_stands BEFORE UPDATE ON log BEGIN SELECT RAISE(ABORT, 'the log is never changed'); END;
`;

/**
 * Columns that a projection is searched by. A row's whole shape is its `body`, owned by the types in
 * src/model/rows.ts; these are copies of parts of it.
 */
export const SEARCHED = {
  project: [],
  memos: ['sha256'],
  names: [],
  reviews: [],
  items: [],
  claims: ['itemId', 'memoId', 'slot'],
  standing: ['itemId'],
  limits: ['dimension', 'active'],
  formulas: [],
  tasks: ['status'],
  promises: ['status'],
  arrivals: ['status'],
  acts: [],
  closings: [],
  findings: ['slot', 'status', 'memoId'],
  records: ['kind'],
} as const satisfies Readonly<Record<TableName, readonly string[]>>;
export const TABLES = Object.keys(SEARCHED) as readonly TableName[];

/** Words by which rows are found: stems of items and acts, input slots of formulas. */
export const WORD_TABLES = ['item_words', 'act_words', 'formula_inputs'] as const;

function projection(table: TableName): string {
  const searched: readonly string[] = SEARCHED[table];
  const columns = searched.map((name) => `, ${name} TEXT`).join('');
  const indexes = searched
    .map((name) => `CREATE INDEX ${table}_by_${name} ON ${table} (${name});`)
    .join('\n');
  return `CREATE TABLE ${table} (
  ord  INTEGER PRIMARY KEY,
  key  TEXT NOT NULL UNIQUE${columns},
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
${indexes}`;
}

function wordTable(name: string): string {
  return `CREATE TABLE ${name} (
  word TEXT NOT NULL,
  key  TEXT NOT NULL,
  PRIMARY KEY (word, key)
) STRICT, WITHOUT ROWID;
CREATE INDEX ${name}_by_key ON ${name} (key);`;
}

/** What was said, sentence by sentence or utterance by utterance, for full-text search. */
const SAID = `
CREATE TABLE said (
  id        INTEGER PRIMARY KEY,
  memoId    TEXT NOT NULL REFERENCES memos (key) DEFERRABLE INITIALLY DEFERRED,
  text      TEXT NOT NULL,
  startSeconds REAL
) STRICT;
CREATE INDEX said_by_memo ON said (memoId);
CREATE VIRTUAL TABLE said_words USING fts5 (text, content = 'said', content_rowid = 'id', tokenize = 'porter unicode61');
`;

/** Lays out an empty database. Call inside a transaction. */
export function layOut(db: Database): void {
  db.exec(LOG);
  for (const table of TABLES) db.exec(projection(table));
  for (const name of WORD_TABLES) db.exec(wordTable(name));
  db.exec(SAID);
}

/** Lays out the projections that an older format did not have. Call inside a transaction. */
export function layOutMissing(db: Database): void {
  const known = new Set(
    (db.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").all() as { name: string }[]).map(
      ({ name }) => name,
    ),
  );
  for (const table of TABLES) if (!known.has(table)) db.exec(projection(table));
}

/** Empties every projection; the log stays. */
export function clearProjections(db: Database): void {
  db.exec("INSERT INTO said_words (said_words) VALUES ('delete-all'); DELETE FROM said;");
  for (const name of [...WORD_TABLES, ...TABLES]) db.exec(`DELETE FROM ${name};`);
}

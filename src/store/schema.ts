import type { Database } from 'better-sqlite3';
import type { TableName } from '../model/rows.ts';

/** Marks the file as ours: "Hear" in ASCII. */
export const APPLICATION_ID = 0x48656172;
/** Raised whenever older programs could no longer read the file rightly; upgrade.ts has the step that leads there. */
export const FORMAT = 7;

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

/** What people did by hand: all of the log but memos and what was read from them. */
export const BY_HAND = "kind NOT IN ('recording-kept', 'transcript-made', 'notes-read')";
/** Undo asks for what was done by hand; without it the whole log would be gone through. */
export const LOG_INDEX = `CREATE INDEX IF NOT EXISTS log_by_hand ON log (seq) WHERE ${BY_HAND};`;

/**
 * Which program worked the model out (see made-by.ts), and which originals were never here: sound that an import could
 * not bring along. Neither follows from the log.
 */
export const BESIDE_THE_LOG = `
CREATE TABLE IF NOT EXISTS made_by (print TEXT NOT NULL) STRICT;
CREATE TABLE IF NOT EXISTS absent_originals (sha256 TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;
`;

/**
 * Columns that a projection is searched by. A row's whole shape is its `body`, owned by the types in
 * src/model/rows.ts; these are copies of parts of it.
 */
export const SEARCHED = {
  project: [],
  memos: ['sha256', 'day'],
  names: [],
  reviews: [],
  hearings: ['memoId'],
  choices: [],
  rewordings: [],
  items: [],
  claims: ['itemId', 'memoId', 'slot'],
  standing: ['itemId', 'dimension'],
  limits: ['dimension', 'active'],
  formulas: [],
  tasks: ['status'],
  problems: ['status'],
  promises: ['status'],
  arrivals: ['status'],
  acts: [],
  closings: [],
  findings: ['slot', 'status', 'memoId', 'asks'],
  records: ['kind'],
  checks: [],
  devices: [],
} as const satisfies Readonly<Record<TableName, readonly string[]>>;
export const TABLES = Object.keys(SEARCHED) as readonly TableName[];

/** Words by which rows are found: stems of items and acts, input slots of formulas, keys of checks. */
export const WORD_TABLES = ['item_words', 'act_words', 'formula_inputs', 'check_keys'] as const;

/** `since` is the place in the log of the event that made the row; rows made later have a higher `ord`. */
function projection(table: TableName): string {
  const searched: readonly string[] = SEARCHED[table];
  const columns = searched.map((name) => `, ${name} TEXT`).join('');
  const indexes = searched
    .map((name) => `CREATE INDEX ${table}_by_${name} ON ${table} (${name});`)
    .join('\n');
  return `CREATE TABLE ${table} (
  ord  INTEGER PRIMARY KEY,
  key  TEXT NOT NULL UNIQUE,
  since INTEGER NOT NULL${columns},
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
${indexes}`;
}

function wordTable(name: string): string {
  // Of items also how many words a longer name must share with each: it tells likely ones without reading them.
  const least = name === 'item_words' ? '\n  least INTEGER NOT NULL,' : '';
  return `CREATE TABLE ${name} (
  word TEXT NOT NULL,
  key  TEXT NOT NULL,${least}
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
  startSeconds REAL,
  since     INTEGER NOT NULL
) STRICT;
CREATE INDEX said_by_memo ON said (memoId);
CREATE INDEX unread_memos ON memos (ord) WHERE json_extract(body, '$.notes') IS NULL;
CREATE VIRTUAL TABLE said_words USING fts5 (text, content = 'said', content_rowid = 'id', tokenize = 'porter unicode61');
`;

/**
 * What is needed to go back to an earlier place in the log: rows as they were before an event changed them (for words
 * of memos, `said`, all of them in one), and when each name of a thing was first looked for.
 */
const WAY_BACK = `
CREATE TABLE journal (
  seq  INTEGER NOT NULL,
  kind TEXT NOT NULL,
  key  TEXT NOT NULL,
  body TEXT NOT NULL CHECK (json_valid(body)),
  PRIMARY KEY (seq, kind, key)
) STRICT, WITHOUT ROWID;
CREATE TABLE asked (
  key TEXT PRIMARY KEY,
  seq INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX asked_by_seq ON asked (seq);
`;

/** Lays out an empty database. Call inside a transaction. */
export function layOut(db: Database): void {
  db.exec(LOG);
  db.exec(LOG_INDEX);
  db.exec(BESIDE_THE_LOG);
  layOutProjections(db);
}

function layOutProjections(db: Database): void {
  for (const table of TABLES) db.exec(projection(table));
  for (const name of WORD_TABLES) db.exec(wordTable(name));
  db.exec(SAID);
  db.exec(WAY_BACK);
}

/** Lays out every projection anew, empty, as this format has them. Call inside a transaction. */
export function layOutAnew(db: Database): void {
  for (const name of ['said_words', 'said', 'journal', 'asked', ...WORD_TABLES, ...TABLES])
    db.exec(`DROP TABLE IF EXISTS ${name}`);
  layOutProjections(db);
}

/** Empties every projection; the log stays. */
export function clearProjections(db: Database): void {
  db.exec("INSERT INTO said_words (said_words) VALUES ('delete-all'); DELETE FROM said;");
  for (const name of ['journal', 'asked', ...WORD_TABLES, ...TABLES]) db.exec(`DELETE FROM ${name};`);
}

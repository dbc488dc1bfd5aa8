/**
 * Projects that older programs wrote, opened by this one. The databases are those that the programs of their time made:
 * older/SOURCE.md names them.
 */
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { Database } from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openDatabase } from '../../src/store/open.ts';
import { FORMAT } from '../../src/store/schema.ts';
import { Sqlite } from '../../src/store/sqlite.ts';
import { openStore } from '../../src/store/store.ts';
import { STEPS, upgrade } from '../../src/store/upgrade.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

const OLDER = join(import.meta.dirname, 'older');
const FORMATS = Array.from({ length: FORMAT - 1 }, (_, index) => index + 1);

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
});
afterEach(() => place.remove());

const home = () => join(place.folder, '.hearwright');
const database = () => join(home(), 'project.db');

/** Lays a project of that format out in the folder, with its two originals. */
function layOut(format: number): void {
  mkdirSync(join(home(), 'originals'), { recursive: true });
  writeFileSync(database(), gunzipSync(readFileSync(join(OLDER, `format-${format}.db.gz`))));
  for (const name of ['first.txt', 'second.txt']) {
    const hash = createHash('sha256')
      .update(readFileSync(join(OLDER, name)))
      .digest('hex');
    copyFileSync(join(OLDER, name), join(home(), 'originals', `${hash}.txt`));
  }
}

function inDatabase<T>(file: string, look: (db: Database) => T): T {
  const db = new Sqlite(file);
  try {
    return look(db);
  } finally {
    db.close();
  }
}

const formatOf = (file: string) => inDatabase(file, (db) => db.pragma('user_version', { simple: true }));
const logOf = (file: string) =>
  inDatabase(file, (db) => db.prepare('SELECT * FROM log ORDER BY seq').all()) as readonly object[];

test('the steps lead from the first format to this one, none left out', () => {
  expect(STEPS.map(({ to }) => to)).toEqual(FORMATS.map((format) => format + 1));
});

test.each(FORMATS)('a project of format %i opens whole, and its copy is what it was', (format) => {
  layOut(format);
  const before = logOf(database());
  expect(place.call(['verify'])).toEqual({
    out: 'Whole: 15 events, 2 originals.\n',
    err: `The project was of format ${format} and is up to date now. As it was before: DIR/.hearwright/project.format-${format}.db\n`,
    code: 0,
  });
  expect(formatOf(database())).toBe(FORMAT);
  expect(logOf(database())).toEqual(before);
  const copy = join(home(), `project.format-${format}.db`);
  expect([formatOf(copy), statSync(copy).mode & 0o777]).toEqual([format, 0o600]);
  expect(logOf(copy)).toEqual(before);
  expect(readdirSync(home()).sort()).toEqual(['originals', 'project.db', `project.format-${format}.db`]);

  const figures = JSON.parse(place.call(['figures', '--json']).out) as {
    item: string;
    attribute: string;
    value: number;
  }[];
  const value = (item: string, attribute: string) =>
    figures.find((figure) => figure.item === item && figure.attribute === attribute)?.value;
  expect([
    value('gangway', 'width'),
    value('hatch coaming', 'height'),
    value('gangway', 'height'),
    value('sole', 'length'),
  ]).toEqual([615, 95, 1.9, 1.8]);
  expect(place.call(['tasks']).out).toContain('grease the winch');
  expect(place.call(['tasks']).out).not.toContain('paint the bilge');
  // Said once: the project is of this format now.
  expect(place.call(['verify']).err).toBe('');
});

test('the copy that is kept opens as a project too', () => {
  layOut(1);
  place.call(['verify']);
  const now = place.call(['export', '--json']).out;
  copyFileSync(join(home(), 'project.format-1.db'), database());
  expect(place.call(['verify'])).toMatchObject({
    err: expect.stringContaining('project.format-1-2.db'),
    code: 0,
  });
  expect(place.call(['export', '--json']).out).toBe(now);
});

test('older-not-copied: without the copy nothing is changed', () => {
  layOut(3);
  const before = readFileSync(database());
  const db = openDatabase(database());
  try {
    expect(() => upgrade(db, join(home(), 'no such folder', 'project.db'))).toThrow(
      expect.objectContaining({
        code: 'older-not-copied',
        exitCode: 1,
        message: expect.stringContaining('there is no such folder'),
        kept: 'the project, in its older format',
      }),
    );
  } finally {
    db.close();
  }
  expect(formatOf(database())).toBe(3);
  expect(logOf(database())).toHaveLength(15);
  expect(readFileSync(database()).subarray(100).equals(before.subarray(100))).toBe(true);
});

test('a model that another program worked out is built anew from the log, and no copy is needed', () => {
  layOut(5);
  openStore(database()).close();
  rmSync(join(home(), 'project.format-5.db'));
  inDatabase(database(), (db) => {
    db.exec("UPDATE made_by SET print = 'a program with other rules'");
    db.exec("UPDATE standing SET body = json_set(body, '$.value', 1)");
    db.exec('DELETE FROM tasks');
  });
  const store = openStore(database());
  expect(store.upgraded).toBeUndefined();
  expect(store.verify()).toMatchObject({ ok: true, faults: [], events: 15 });
  store.close();
  expect(readdirSync(home()).sort()).toEqual(['originals', 'project.db']);
});

test('a model that this program worked out is taken as it is', () => {
  layOut(5);
  openStore(database()).close();
  inDatabase(database(), (db) => db.exec('DELETE FROM tasks'));
  const store = openStore(database());
  expect(store.verify().ok).toBe(false);
  store.close();
});

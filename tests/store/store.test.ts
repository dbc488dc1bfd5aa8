import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import { Sqlite } from '../../src/store/sqlite.ts';
import { createStore, openStore } from '../../src/store/store.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'store-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const made = { name: 'loom', units: 'metric', at: '2026-03-01T08:00:00Z' } as const;

function problemOf(work: () => unknown): Problem {
  try {
    work();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}

test('a project can be closed and opened again, and only its owner may read the file', () => {
  const file = join(folder, 'project.db');
  createStore(file, made).close();
  const store = openStore(file);
  expect(store.rows.get('project', 'project')).toMatchObject({ name: 'loom', units: 'metric' });
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  store.close();
  expect(statSync(file).mode & 0o777).toBe(0o600);
});

test('a second project in the same place is refused and the first one stays', () => {
  const file = join(folder, 'project.db');
  createStore(file, made).close();
  expect(problemOf(() => createStore(file, { ...made, name: 'other' }))).toMatchObject({
    code: 'project-exists',
    exitCode: 2,
  });
  const store = openStore(file);
  expect(store.rows.get('project', 'project')?.name).toBe('loom');
  store.close();
});

test('a file that is no database, a stranger`s database and a newer format are told apart', () => {
  const text = join(folder, 'text.db');
  writeFileSync(text, 'not a database at all, only some words');
  const empty = join(folder, 'empty.db');
  writeFileSync(empty, '');
  const stranger = join(folder, 'stranger.db');
  const other = new Sqlite(stranger);
  other.exec('CREATE TABLE recipes (name TEXT)');
  other.close();
  const newer = join(folder, 'newer.db');
  createStore(newer, made).close();
  const raised = new Sqlite(newer);
  raised.pragma('user_version = 99');
  raised.close();
  const found = [text, stranger, newer, join(folder, 'none.db'), empty].map((file) => {
    const { code, exitCode } = problemOf(() => openStore(file));
    return [code, exitCode];
  });
  expect(found).toEqual([
    ['not-a-project', 4],
    ['not-a-project', 4],
    ['format-too-new', 4],
    ['project-missing', 4],
    ['project-missing', 4],
  ]);
});

test('the log can be neither changed nor shortened', () => {
  const file = join(folder, 'project.db');
  createStore(file, made).close();
  const db = new Sqlite(file);
  expect(() => db.exec("UPDATE log SET kind = 'other'")).toThrow('never changed');
  expect(() => db.exec('DELETE FROM log')).toThrow('never deleted');
  db.close();
});

test('what another process writes is seen, whatever was read before', () => {
  const file = join(folder, 'project.db');
  const one = createStore(file, made);
  const other = openStore(file);
  const names = () => one.rows.itemsLike(['bench']).map(({ name }) => name);
  const set = (item: string, unit = 'mm') =>
    other.append([
      { kind: 'figure-set', at: made.at, item, attribute: 'width', quantity: { value: 300, unit } },
    ]);
  expect(names()).toEqual([]);
  set('bench');
  expect(names()).toEqual(['bench']);
  set('port bench');
  expect(names()).toEqual(['bench', 'port bench']);
  expect(one.rows.item('i2')?.name).toBe('port bench');
  other.close();
  one.close();
});

test('a look ahead shows what would come of events, and nothing of them stays', () => {
  const store = createStore(join(folder, 'project.db'), made);
  const at = '2026-03-02T08:00:00Z';
  const source = { name: 'a.txt', kind: 'text', sha256: 'a', bytes: 1 } as const;
  const kept = { kind: 'recording-kept', at, memoId: 'm1', source, file: 'a', recordedAt: at } as const;
  const seen = store.lookAhead([{ ...kept, recordedAtFrom: 'given' }], (rows) => rows.get('memos', 'm1'));
  expect(seen).toMatchObject({ id: 'm1', source });
  expect(store.rows.get('memos', 'm1')).toBeUndefined();
  expect(store.memoCount()).toBe(0);
  expect(store.lastSeq()).toBe(1);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  expect(() =>
    store.lookAhead([], () => {
      throw new TypeError('it cannot be looked at');
    }),
  ).toThrow(TypeError);
  store.close();
});

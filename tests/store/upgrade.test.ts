/** A database of an older format is brought up to date when it is opened. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { FORMAT } from '../../src/store/schema.ts';
import { createStore, openStore } from '../../src/store/store.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hearwright-upgrade-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('the table that format 1 lacks is laid out, and the model is built anew', () => {
  const file = join(folder, 'project.db');
  const at = '2026-02-02T08:00:00Z';
  const made = createStore(file, { name: 'barge', units: 'metric', at });
  made.append([
    { kind: 'record-kept', at, record: { kind: 'hidden', panel: 'sole', what: 'hose', service: 'pipe' } },
  ]);
  made.close();
  const old = new Sqlite(file);
  old.exec('DROP TABLE records');
  old.pragma('user_version = 1');
  old.close();
  const store = openStore(file);
  expect(store.rows.records('hidden').map(({ what }) => what)).toEqual(['hose']);
  expect(store.verify()).toMatchObject({ ok: true, faults: [] });
  store.close();
  const after = new Sqlite(file, { readonly: true });
  expect(after.pragma('user_version', { simple: true })).toBe(FORMAT);
  after.close();
});

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { bindingFor, isNotBuilt, Sqlite } from '../../src/store/sqlite.ts';

const folder = mkdtempSync(join(tmpdir(), 'sqlite-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each([
  ['9', 'better-sqlite3'],
  ['10', 'better-sqlite3-node-api'],
  ['137', 'better-sqlite3-node-api'],
  [undefined, 'better-sqlite3'],
])('under Node-API %s SQLite is reached by %s', (nodeApi, name) => {
  expect(bindingFor(nodeApi)).toBe(name);
});

test.each([
  [new Error('Could not locate the bindings file. Tried:\n → /a/b.node'), true],
  [
    Object.assign(new Error('was compiled against a different Node.js version'), {
      code: 'ERR_DLOPEN_FAILED',
    }),
    true,
  ],
  [new Error('file is not a database'), false],
  ['no error at all', false],
])('%s: a compiled part is not built is %s', (thrown, is) => {
  expect(isNotBuilt(thrown)).toBe(is);
});

test('a database whose compiled part does not load says what to do, and other failures stay as they are', () => {
  const options = { nativeBinding: '/nowhere/better_sqlite3.node' };
  writeFileSync(join(folder, 'broken.node'), 'no library');
  expect(() => new Sqlite(':memory:', { nativeBinding: join(folder, 'broken.node') })).toThrow(
    expect.objectContaining({ code: 'binding-not-built', next: expect.stringContaining('npm ci') }),
  );
  expect(() => new Sqlite(':memory:', options)).toThrow(/Cannot find module/);
  expect(() => new Sqlite(join(folder, 'absent.db'), { fileMustExist: true })).toThrow(Sqlite.SqliteError);
});

test('statements that are thrown away take nothing with them', () => {
  const db = new Sqlite(':memory:');
  try {
    let sum = 0;
    for (let at = 0; at < 30_000; at++)
      sum += db
        .prepare(`SELECT ${at % 7}`)
        .pluck()
        .get() as number;
    expect(sum).toBe(Array.from({ length: 30_000 }, (_, at) => at % 7).reduce((a, b) => a + b, 0));
  } finally {
    db.close();
  }
});

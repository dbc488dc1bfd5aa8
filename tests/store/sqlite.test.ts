import { expect, test } from 'vitest';
import { bindingFor, Sqlite } from '../../src/store/sqlite.ts';

test.each([
  ['9', 'better-sqlite3'],
  ['10', 'better-sqlite3-node-api'],
  ['137', 'better-sqlite3-node-api'],
  [undefined, 'better-sqlite3'],
])('under Node-API %s SQLite is reached by %s', (nodeApi, name) => {
  expect(bindingFor(nodeApi)).toBe(name);
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

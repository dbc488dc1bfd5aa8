import { setFlagsFromString } from 'node:v8';
import { expect, test } from 'vitest';
import { withMore } from '../../src/model/with-more.ts';

test('fields stand in the order of a copy with more, and the later value holds', () => {
  const first = { id: 'm1', status: 'open', gist: 'fit the lid' };
  const more = { status: 'done', by: 'm2' };
  expect(JSON.stringify(withMore(first, more))).toBe(JSON.stringify({ ...first, ...more }));
  expect(first).toEqual({ id: 'm1', status: 'open', gist: 'fit the lid' });
});

test('what is put together alike shares one hidden shape', () => {
  setFlagsFromString('--allow-natives-syntax');
  const isOneShape = new Function('a', 'b', 'return %HaveSameMap(a, b)') as (a: object, b: object) => boolean;
  const made = Array.from({ length: 50 }, (_, at) =>
    withMore({ id: `m${at}`, value: at }, { gist: `no ${at}` }),
  );
  const last = made[49] as object;
  expect(made.slice(10).every((one) => isOneShape(one, last))).toBe(true);
});

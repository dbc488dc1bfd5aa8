/** By how much one thing differs from another, and sizes that stand beside such words. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

test.each([
  ['The bench is forty mil wider than the drawing.', ['bench offset 40 mm']],
  ['The lid is 4 longer than the box.', ['lid offset 4 mm']],
  ['The post is 12 mil thicker than the one I ordered.', ['post offset 12 mm']],
  ['The bench is 900 wide.', ['bench width 900 mm']],
  ['The bench has to be wider than 900 mil.', ['bench width 900 mm']],
])('%s', (text, read) => {
  const { figures } = readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes;
  expect(figures.map(({ item, attribute, value, unit }) => `${item} ${attribute} ${value} ${unit}`)).toEqual(
    read,
  );
});

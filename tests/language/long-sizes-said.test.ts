/** Long sizes in millimetres as they are said on site. Source of the words: http://www.ausdesign.com.au/articles/article41.html */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

test.each([
  ['The joist is thirty six hundred long.', 3600],
  ['The wall is eight five seventy three long.', 8573],
  ['The slab is thirteen eight eighty five long.', 13885],
])('"%s" is %d mm', (said, millimetres) => {
  const { notes } = readMemo(said, { units: 'metric', recordedAt: '2026-03-02T18:00:00+00:00' });
  expect(notes.figures).toMatchObject([{ attribute: 'length', value: millimetres, unit: 'mm' }]);
});

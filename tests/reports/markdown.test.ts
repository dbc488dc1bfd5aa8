import { expect, test } from 'vitest';
import { escapeMarkdown } from '../../src/reports/markdown.ts';

test.each([
  ['4.8 metres', '4.8 metres'],
  ['-5 degrees', '-5 degrees'],
  ['half (of it)', 'half (of it)'],
  ['4. of May', '4\\. of May'],
  ['4) of May', '4\\) of May'],
  ['- a list', '\\- a list'],
  ['2 * 3 [mm] <b>', '2 \\* 3 \\[mm\\] \\<b\\>'],
  ['Tom & Anna &amp;', 'Tom & Anna \\&amp;'],
])('"%s" is written as "%s"', (words, written) => {
  expect(escapeMarkdown(words)).toBe(written);
});

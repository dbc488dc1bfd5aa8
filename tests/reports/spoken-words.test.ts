import { expect, test } from 'vitest';
import type { FindingView, MemoView } from '../../src/model/views.ts';
import { amountWords, spokenWords } from '../../src/reports/spoken-words.ts';
import { FINDING, MEMO } from '../kit/views.ts';

test.each([
  ['820 mm', '820 millimetres'],
  ['3 1/8 in', '3 and an eighth inches'],
  ['5/16 in', '5 sixteenths inches'],
  ['at most 12 h', 'at most 12 hours'],
  ['1,240 mm', '1240 millimetres'],
  ['45 mm ± 1 mm', '45 millimetres plus or minus 1 millimetres'],
  ['18 °C', '18 degrees'],
  ['12 zz', '12 zz'],
])('"%s" is read "%s"', (text, words) => {
  expect(amountWords(text)).toBe(words);
});

const [BEAM] = MEMO.notes.figures as [MemoView['notes']['figures'][number]];

test('the thing, the amount, and shortly what it clashes with', () => {
  expect(spokenWords([BEAM], [])).toBe('hoist beam length, 2150 millimetres.');
  expect(spokenWords([{ ...BEAM, value: 2115 }], [FINDING])).toBe(
    'hoist beam length, 2115 millimetres. Clash with 2150 millimetres.',
  );
});

test('a clash of another figure says which', () => {
  const other: FindingView = { ...FINDING, item: 'ridge' };
  expect(spokenWords([BEAM], [other])).toBe(
    'hoist beam length, 2150 millimetres. ridge length: clash with 2150 millimetres.',
  );
});

test('what was settled is not read, and nothing is read of nothing', () => {
  expect(spokenWords([], [{ ...FINDING, status: 'settled' }])).toBe('');
});

test('signs that a voice or its caller could take for orders are not in the words', () => {
  const hostile = { ...BEAM, item: '--output=/etc/x; $(reboot) <speak>' };
  expect(spokenWords([hostile], [])).toBe(
    'output  etc x    reboot   speak  length, 2150 millimetres.'.replace(/ +/g, ' '),
  );
});

import { expect, test } from 'vitest';
import { WordPieces } from '../../../src/speech/recogniser/moonshine/word-pieces.ts';

const line = (piece: string, id: number) => `${Buffer.from(piece).toString('base64')}\t${id}`;
/** Numbered as they were joined: "si" before "il", "▁si" before "sil". */
const PIECES = ['<s>', '<0x0A>', '▁', 's', 'i', 'l', 'si', 'll', '▁si', 'sill', '▁sill', '▁s'];
const pieces = new WordPieces(PIECES.map(line).join('\n'));

test('a word is cut into pieces by the joins with the lowest numbers first', () => {
  expect(pieces.idsOf('sill')).toEqual([PIECES.indexOf('▁sill')]);
  expect(pieces.idsOf('sil')).toEqual([PIECES.indexOf('▁si'), PIECES.indexOf('l')]);
});

test('a letter that is in no piece makes the word unwritable', () => {
  expect(pieces.idsOf('silk')).toBeUndefined();
});

test('pieces give back what they add to the text', () => {
  expect([8, 7].map((id) => pieces.textOf(id)).join('')).toBe(' sill');
  expect(pieces.textOf(1)).toBe('\n');
});

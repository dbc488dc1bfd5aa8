import { describe, expect, test } from 'vitest';
import { asText, Cursor, fieldsOf, fieldWith, textField, textIn } from '../../src/speech/protobuf.ts';

/** Examples of Google's guide to the encoding: a number 150 in field 1, "testing" in field 2. */
const A_NUMBER = Uint8Array.of(0x08, 0x96, 0x01);
const A_TEXT = Uint8Array.of(0x12, 0x07, 0x74, 0x65, 0x73, 0x74, 0x69, 0x6e, 0x67);

const outline = (bytes: Uint8Array) =>
  [...fieldsOf(bytes)].map(({ number, content }) => [number, content.length]);

describe('fields', () => {
  test('are read as the published guide writes them', () => {
    expect(new Cursor(A_NUMBER.subarray(1)).varint()).toBe(150);
    expect(textIn(A_TEXT, 2)).toBe('testing');
    expect(textIn(A_TEXT, 1)).toBe('');
    expect(Buffer.from(textField(2, 'testing'))).toEqual(Buffer.from(A_TEXT));
  });

  test('of every wire type are stepped over', () => {
    const bytes = Buffer.concat([
      A_NUMBER,
      Uint8Array.of(0x19, 1, 2, 3, 4, 5, 6, 7, 8),
      A_TEXT,
      Uint8Array.of(0x2d, 1, 2, 3, 4),
    ]);
    expect(outline(bytes)).toEqual([
      [1, 0],
      [3, 8],
      [2, 7],
      [5, 4],
    ]);
  });

  test('put together are read back, however long', () => {
    const long = 'a'.repeat(300);
    const field = fieldWith(7, [textField(1, long), textField(15, 'short'), textField(16, '')]);
    const [back] = [...fieldsOf(field.whole)];
    expect(back?.number).toBe(7);
    expect([...fieldsOf(back?.content ?? new Uint8Array())].map((one) => [one.number, asText(one)])).toEqual([
      [1, long],
      [15, 'short'],
      [16, ''],
    ]);
    expect(Buffer.from(field.content)).toEqual(Buffer.from(back?.content ?? []));
  });

  test('end where the bytes are no message any more', () => {
    expect(outline(Buffer.concat([A_TEXT, Uint8Array.of(0x0b, 1)]))).toEqual([[2, 7]]);
    expect(outline(Uint8Array.of(0x08))).toEqual([]);
    expect(outline(Uint8Array.of(0xff, 0xff))).toEqual([]);
  });
});

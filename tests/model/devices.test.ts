import { expect, test } from 'vitest';
import { deviceOf, fits } from '../../src/model/devices.ts';

const DEVICES = [
  { name: 'camera', offsetSeconds: 1, files: ['GX*.MP4', 'clip-??.mov'] },
  { name: 'Ridge 4', offsetSeconds: 2 },
  { name: 'ridge', offsetSeconds: 3 },
] as const;

test.each([
  ['its name stands in the file', { fileName: 'a.mp4', device: 'Fernwick RIDGE 5' }, 3],
  ['of several that fit, the one told of last', { fileName: 'a.mp4', device: 'Fernwick Ridge 4' }, 3],
  ['its file names', { fileName: 'gx010045.mp4' }, 1],
  ['its file names, a character each', { fileName: 'clip-07.mov' }, 1],
  ['no name of its', { fileName: 'clip-107.mov' }, undefined],
  ['another recorder', { fileName: 'a.mp4', device: 'Fernwick Bridge' }, undefined],
  ['nothing at all', { fileName: 'a.mp4' }, undefined],
])('a file tells its recorder by %s', (_, made, offset) => {
  expect(deviceOf(DEVICES, made)?.offsetSeconds).toBe(offset);
});

test.each([
  ['*', '', true],
  ['*', 'anything', true],
  ['a*b*c', 'a-b-b-c', true],
  ['a*b*c', 'a-c-b', false],
  ['?', '', false],
  ['a.(b)', 'a.(b)', true],
  ['a.b', 'axb', false],
])('"%s" and "%s": %s', (pattern, name, expected) => {
  expect(fits(pattern, name)).toBe(expected);
});

test('a pattern of many stars takes no longer for it', () => {
  expect(fits(`${'*a'.repeat(500)}b`, 'a'.repeat(4000))).toBe(false);
});

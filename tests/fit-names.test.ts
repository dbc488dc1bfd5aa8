import { expect, test } from 'vitest';
import { whyUnfit } from '../src/fit-names.ts';

test.each([
  ['journal 10:30.md', 'Windows has no ":" in the names of files'],
  ['C:\\pages\\what?.md', 'Windows has no "?" in the names of files'],
  ['out/nul', 'Windows keeps the name nul for itself'],
  ['AUX.md', 'Windows keeps the name AUX.md for itself'],
  ['pages/week.', 'Windows drops the dot at the end of a name'],
  ['pages /week.md', 'Windows drops the blank at the end of a name'],
])('on Windows %s is no name for a page', (path, reason) => {
  expect(whyUnfit(path, 'win32')).toBe(reason);
});

test.each([
  'C:\\pages\\week.md',
  'c:week.md',
  '..\\pages\\.\\week.md',
  'console.md',
  'auxiliary.md',
  'com10',
  'naïve — "no"'.replaceAll('"', "'"),
])('on Windows %s is a name like any other', (path) => {
  expect(whyUnfit(path, 'win32')).toBeUndefined();
});

test.each(['journal 10:30.md', 'nul', 'week.'])('elsewhere %s is a name like any other', (path) => {
  expect([whyUnfit(path, 'linux'), whyUnfit(path, 'darwin')]).toEqual([undefined, undefined]);
});

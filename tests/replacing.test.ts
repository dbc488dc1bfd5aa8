import { expect, test } from 'vitest';
import { replaceFile } from '../src/replacing.ts';

/** A disk that refuses so many times, with what it was asked and how long was waited. */
function disk(refusals: number, code: string) {
  const asked: string[] = [];
  let waited = 0;
  const rename = (from: string, to: string) => {
    asked.push(`${from} ${to}`);
    if (asked.length <= refusals) throw Object.assign(new Error('refused'), { code });
  };
  const pause = (ms: number) => {
    waited += ms;
  };
  return { asked, ways: { rename, pause }, waited: () => waited };
}

test.each(['EPERM', 'EACCES', 'EBUSY'])('on Windows a file that is held (%s) is tried again', (code) => {
  const { asked, ways } = disk(3, code);
  replaceFile('page.tmp', 'page.md', { ...ways, isWindows: true });
  expect(asked).toEqual(Array(4).fill('page.tmp page.md'));
});

test('what stays held fails after two seconds, with what the system said', () => {
  const { ways, waited } = disk(100, 'EPERM');
  expect(() => replaceFile('a', 'b', { ...ways, isWindows: true })).toThrow('refused');
  expect(waited()).toBe(2000);
});

test.each([
  ['another failure on Windows', true, 'ENOSPC'],
  ['any failure elsewhere', false, 'EPERM'],
])('%s is told at once', (_, isWindows, code) => {
  const { asked, ways, waited } = disk(1, code);
  expect(() => replaceFile('a', 'b', { ...ways, isWindows })).toThrow('refused');
  expect([asked.length, waited()]).toEqual([1, 0]);
});

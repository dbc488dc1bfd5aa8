import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix, win32 } from 'node:path';
import { expect, test } from 'vitest';
import { asOnDisk, isInside } from '../src/inside.ts';

test.each([
  ['/build/own', '/build/own', true],
  ['/build/own', '/build/own/page.md', true],
  ['/build/own', '/build/own/..page.md', true],
  ['/build/own', '/build/page.md', false],
  ['/build/own', '/build/own-pages/page.md', false],
  ['/build/own', '/page.md', false],
])('in %s lies %s: %s', (folder, path, inside) => {
  expect(isInside(folder, path, posix)).toBe(inside);
});

test.each([
  ['C:\\build\\own', 'C:\\build\\own\\page.md', true],
  ['C:\\build\\own', 'c:\\BUILD\\Own\\page.md', true],
  ['C:\\build\\own', 'D:\\pages\\page.md', false],
  ['C:\\build\\own', 'C:\\build\\page.md', false],
  ['C:\\build\\own', '\\\\server\\pages\\page.md', false],
])('on Windows in %s lies %s: %s', (folder, path, inside) => {
  expect(isInside(folder, path, win32)).toBe(inside);
});

test('a link leads where the disk says, also for a file that is not there yet', () => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'hearwright-inside-')));
  try {
    mkdirSync(join(folder, 'own'));
    symlinkSync(join(folder, 'own'), join(folder, 'elsewhere'));
    expect(asOnDisk(join(folder, 'elsewhere', 'new', 'page.md'))).toBe(join(folder, 'own', 'new', 'page.md'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

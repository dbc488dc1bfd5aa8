/** Every check tells its formula and where it comes from beside its code, as it tells them to whoever asks. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CHECKS } from '../../../src/model/checks/all-checks.ts';

const FOLDER = new URL('../../../src/model/checks/', import.meta.url);
const FILES = readdirSync(FOLDER).flatMap((name) => {
  const text = readFileSync(new URL(name, FOLDER), 'utf8');
  const at = text.search(/^export const [A-Z_]+: Check = /m);
  return at < 0 ? [] : [{ name, docstring: text.slice(text.lastIndexOf('/**', at), at) }];
});

test.each(FILES)('$name has a docstring with its formula and source', ({ docstring }) => {
  expect(docstring).toMatch(/^\/\*\*[\s\S]*\bFormulas?: [\s\S]*\bSources?: [\s\S]*\*\/\n$/);
});

test('there is a file for each check', () => {
  expect(FILES).toHaveLength(CHECKS.length);
});

test('the table of ways in docs/checks.md names every check, with the number that a formula reads of it', () => {
  const page = readFileSync(new URL('../../../docs/checks.md', import.meta.url), 'utf8');
  const table = page.slice(page.indexOf('## Every check, every way'), page.indexOf('## Where they show'));
  const rows = [...table.matchAll(/^\| (.+?) +\| yes +\| yes +\| (yes: (.+?)|no: .+?) +\| .+ \|$/gm)];
  expect(rows.map(([, name, , gives]) => [name, gives])).toEqual(
    CHECKS.map(({ name, gives }) => [name, gives]),
  );
});

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { reportProblem } from '../../src/cli/report-problem.ts';
import { EXIT, Problem } from '../../src/problem.ts';

let printed = '';
beforeEach(() => {
  printed = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

test("'unexpected': a bug is named, the person is told that nothing is lost, and no stack is shown", () => {
  expect(reportProblem(new Error('the mast fell\u001b[2J'), false)).toBe(EXIT.unexpected);
  expect(printed).toBe(
    `hearwright: something unexpected went wrong: the mast fell
  kept   everything taken before is in the project folder
  next   try again; with --verbose the place of the failure is printed
`,
  );
});

test('with --verbose the stack of what caused it follows', () => {
  reportProblem(new Error('the mast fell'), true);
  expect(printed).toMatch(/\nError: the mast fell\n {4}at .*report-problem\.test\.ts/);
});

test('a problem keeps its exit code, and prints only the parts that it has', () => {
  expect(reportProblem(new Problem('the tide is out', { code: 'x', exitCode: EXIT.partly }), true)).toBe(3);
  expect(printed).toBe('hearwright: the tide is out\n');
});

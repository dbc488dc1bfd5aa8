import { expect, test } from 'vitest';
import { episodePage } from '../../src/reports/episode.ts';
import { journalOfDays, journalPage } from '../../src/reports/journal.ts';
import { nextStepsPage } from '../../src/reports/next-steps.ts';
import { wherePage } from '../../src/reports/where-was-i.ts';
import { DAY_1, DAY_2, FIGURES, NEXT, PROJECT, SPAN, TASK, WEEK } from '../kit/bakery-wagon.ts';
import { WHERE } from '../kit/views.ts';

// The pages beside this file are whole and were gone over by hand: every byte counts.
test.each([
  ['journal-monday.md', () => journalPage(DAY_1, PROJECT)],
  ['journal-wednesday.md', () => journalPage(DAY_2, PROJECT)],
  ['journal-week.md', () => journalOfDays([DAY_1, DAY_2], PROJECT, { from: '2026-02-02', to: '2026-02-08' })],
  ['next-steps.md', () => nextStepsPage(NEXT, PROJECT)],
  ['where-was-i.md', () => wherePage(WHERE, PROJECT)],
  ['episode-week.md', () => episodePage(WEEK, PROJECT, FIGURES)],
  ['episode-wednesday.md', () => episodePage(SPAN, PROJECT, FIGURES)],
])('%s is written byte for byte, twice the same', async (file, write) => {
  const page = write();
  expect(write()).toBe(page);
  await expect(page).toMatchFileSnapshot(`pages/${file}`);
});

test('a project of one system prints no second unit', () => {
  const page = journalPage(DAY_2, { ...PROJECT, units: 'metric' });
  expect(page).toContain('oven ledge height: 905 mm → 915 mm, decided');
  expect(page).not.toContain(' in)');
});

test('no page prints a chapter stamp: every time is named as an offset into a clip', () => {
  const page = episodePage(WEEK, PROJECT, FIGURES);
  const chapters = page.slice(page.indexOf('## Proposed chapter titles'), page.indexOf('## Clips'));
  expect(chapters).not.toMatch(/\d:\d\d/);
  for (const line of page.split('\n').filter((one) => /\b\d?\d:\d\d\b/.test(one))) {
    expect(line).toMatch(/wagon-1\.m4a|memo 1, |\(memo 1/);
  }
});

test('a goal that was opened and reached in the span names the memo that reached it', () => {
  const task = { ...TASK, id: 'm1.t3', gist: 'clear the yard' };
  const { closedBy: _later, ...open } = task;
  const closedBy = { memoId: 'm2', recordedAt: '2026-02-04T18:05:00+01:00', quote: 'The yard is clear' };
  const days = [
    { ...DAY_1, tasksOpened: [open] },
    { ...DAY_2, tasksClosed: [{ ...task, status: 'done' as const, closedBy }] },
  ];
  expect(episodePage({ ...WEEK, days }, PROJECT, FIGURES)).toContain(
    '- Clear the yard (memo 1, 00:27): reached (memo 2)',
  );
});

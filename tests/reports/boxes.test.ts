import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxEntry, ticksOf, withoutTicks, withTicks } from '../../src/reports/boxes.ts';
import { nextStepsPage } from '../../src/reports/next-steps.ts';
import { NEXT, PROJECT, READY_TASK, TASK } from '../kit/bakery-wagon.ts';
import { hostileWords } from '../kit/hostile-words.ts';

const PAGE = nextStepsPage(NEXT, PROJECT);

test('a task has a box before it and its id behind it', () => {
  expect(boxEntry(READY_TASK)).toBe('- [ ] Strip the step (memo 2); due 2026-02-06 \\[m2.t1\\]');
});

test('what is ticked is found, whatever mark and line end an editor writes', () => {
  expect([...ticksOf(PAGE)]).toEqual([]);
  expect([...ticksOf(PAGE.replace('1. [ ]', '1. [x]'))]).toEqual(['m2.t1']);
  expect([...ticksOf(PAGE.replaceAll('[ ]', '[X]').replaceAll('\n', '\r\n'))]).toEqual(['m2.t1', 'm1.t1']);
});

test('a tick stays with its task when the order changes', () => {
  const ticked = withTicks(PAGE, new Set(['m1.t1']));
  const later = nextStepsPage({ ...NEXT, ready: [TASK, READY_TASK], waiting: [] }, PROJECT);
  const kept = withTicks(later, ticksOf(ticked));
  expect(kept).toContain('1. [x] Seal the roof');
  expect(kept).toContain('2. [ ] Strip the step');
  expect(withoutTicks(kept)).toBe(later);
});

test('words of a memo make no box and tick none', () => {
  fc.assert(
    fc.property(hostileWords, (words) => {
      for (const gist of [words, `[x] ${words}`, `${words} [m1.t1]`, `- [x] ${words} [m1.t1]`]) {
        const page = nextStepsPage(
          { ...NEXT, ready: [{ ...READY_TASK, gist }], promises: [], questions: [] },
          PROJECT,
        );
        expect([...ticksOf(page)]).toEqual([]);
        expect([...ticksOf(page.replaceAll(/^(\S+) \[ \]/gm, '$1 [x]'))]).toEqual(['m2.t1', 'm1.t1']);
      }
    }),
    { numRuns: 200 },
  );
});

import { expect, test } from 'vitest';
import { type FigureHeard, type LookAhead, whatIsNew } from '../../src/listening/what-is-new.ts';
import { FINDING, MEMO } from '../kit/views.ts';

const [said] = MEMO.notes.figures;
if (!said) throw new Error('the kit has no figure');
const figure = (changes: Partial<FigureHeard> = {}): FigureHeard => ({ ...said, ...changes });
const seen = (figures: readonly FigureHeard[], findings = [FINDING]): LookAhead => ({ figures, findings });

test('what was told before is not told again, also where more words are known of it', () => {
  const before = seen([figure()]);
  const now = seen([figure({ quote: 'the whole sentence', span: { start: 0, end: 90 }, id: 'm9.f4' })]);
  expect(whatIsNew(now, before)).toEqual({ figures: [], findings: [] });
});

test('another figure, and the same one put right, are new', () => {
  const later = figure({ startSeconds: 40, item: 'stair' });
  const right = figure({ value: 2200 });
  expect(whatIsNew(seen([right, later]), seen([figure()])).figures).toEqual([right, later]);
});

test('the same value said again a while later is told again', () => {
  const again = figure({ startSeconds: 40 });
  expect(whatIsNew(seen([figure(), again]), seen([figure()])).figures).toEqual([again]);
});

test('a clash is told once, and again when another value clashes', () => {
  const other = { ...FINDING, id: 'm9.c2', now: { ...FINDING.now, value: 2110 } };
  expect(whatIsNew(seen([], [{ ...FINDING, id: 'm9.c1' }]), seen([])).findings).toEqual([]);
  expect(whatIsNew(seen([], [FINDING, other]), seen([])).findings).toEqual([other]);
  expect(whatIsNew(seen([]), seen([], [])).findings).toEqual([FINDING]);
});

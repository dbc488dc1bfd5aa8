import { expect, test } from 'vitest';
import {
  type FigureHeard,
  type LookAhead,
  NOTHING_TOLD,
  whatIsNew,
} from '../../src/listening/what-is-new.ts';
import { FINDING, MEMO } from '../kit/views.ts';

const [said] = MEMO.notes.figures;
if (!said) throw new Error('the kit has no figure');
const figure = (changes: Partial<FigureHeard> = {}): FigureHeard => ({ ...said, ...changes });
const ahead = (
  figures: readonly FigureHeard[],
  findings: LookAhead['findings'] = [],
  more: Partial<LookAhead> = {},
): LookAhead => ({ figures, findings, notes: [], takenBack: [], ...more });

/** What each of these readings, one after the other, has to tell. */
function tellings(...readings: readonly LookAhead[]): readonly LookAhead[] {
  let told = NOTHING_TOLD;
  return readings.map((reading) => {
    const { told: now, ...news } = whatIsNew(reading, told);
    told = now;
    return news;
  });
}

test('what was told is not told again, also where it is heard in other words or at another second', () => {
  const better = figure({ quote: 'the whole sentence', span: { start: 0, end: 90 }, startSeconds: 3 });
  expect(tellings(ahead([figure()]), ahead([better]))).toEqual([ahead([figure()]), ahead([])]);
});

test('another figure, and the same one put right, are new', () => {
  const later = figure({ item: 'stair' });
  const right = figure({ value: 2200 });
  expect(tellings(ahead([figure()]), ahead([right, later])).at(-1)).toEqual(ahead([right, later]));
});

test('the same value said a second time is told a second time', () => {
  const again = figure({ startSeconds: 40 });
  expect(tellings(ahead([figure()]), ahead([figure(), again])).at(-1)).toEqual(ahead([again]));
});

test('a figure that is missing from one reading is not told anew by the next', () => {
  expect(tellings(ahead([figure()]), ahead([]), ahead([figure()])).at(-1)).toEqual(ahead([]));
});

test('a clash is told once, and again when another value clashes', () => {
  const other = { ...FINDING, id: 'm9.c2', now: { ...FINDING.now, value: 2110 } };
  expect(
    tellings(ahead([], [FINDING]), ahead([], [{ ...FINDING, id: 'm9.c3' }]), ahead([], [FINDING, other])),
  ).toEqual([ahead([], [FINDING]), ahead([]), ahead([], [other])]);
});

const [task] = MEMO.notes.tasks;
if (!task) throw new Error('the kit has no task');

test('a task is told once, also where it is heard again with other marks', () => {
  const again = { ...task, gist: `${task.gist.toUpperCase()}.` };
  expect(tellings(ahead([], [], { notes: [task] }), ahead([], [], { notes: [again] }))).toEqual([
    ahead([], [], { notes: [task] }),
    ahead([]),
  ]);
});

test('what was taken back is told once, and told anew when it is said again', () => {
  const takenBack = [task.quote];
  expect(
    tellings(
      ahead([figure()], [], { notes: [task] }),
      ahead([], [], { takenBack }),
      ahead([], [], { takenBack }),
      ahead([figure()], [], { notes: [task], takenBack }),
    ),
  ).toEqual([
    ahead([figure()], [], { notes: [task] }),
    ahead([], [], { takenBack }),
    ahead([]),
    ahead([figure()], [], { notes: [task] }),
  ]);
});

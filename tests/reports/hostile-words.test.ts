import { type Node, Parser } from 'commonmark';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DayView, MemoView } from '../../src/model/views.ts';
import { episodePage } from '../../src/reports/episode.ts';
import { findingsText } from '../../src/reports/finding-text.ts';
import { journalOfDays, journalPage } from '../../src/reports/journal.ts';
import { escapeMarkdown } from '../../src/reports/markdown.ts';
import { nextStepsPage } from '../../src/reports/next-steps.ts';
import { wherePage } from '../../src/reports/where-was-i.ts';
import { oneLine } from '../../src/reports/words.ts';
import { DAY_2, FIGURES, MEMO_2, NEXT, PROJECT, SPAN, STALE } from '../kit/bakery-wagon.ts';
import { toldIn } from '../kit/told-in.ts';
import { WHERE } from '../kit/views.ts';

/** Node types of a parsed page, in order, and its words. */
function parsed(markdown: string): { readonly shape: string; readonly words: string } {
  const walker = new Parser().parse(markdown).walker();
  const shape: string[] = [];
  let words = '';
  for (let step = walker.next(); step; step = walker.next()) {
    const node: Node = step.node;
    if (node.type === 'text') words += node.literal ?? '';
    else if (node.type === 'softbreak') words += ' ';
    else shape.push(`${step.entering ? '+' : '-'}${node.type}`);
  }
  return { shape: shape.join(' '), words };
}

const ACTIVE = [
  '<script>alert(1)</script>',
  '<!-- ',
  '![x](http://e.org/a.png)',
  '[y](javascript:alert(1))',
  '[z]: http://e.org',
  '**bold**',
  '_so_',
  '`code`',
  '~~~',
  '# head',
  '1. one',
  '- item',
  '---',
  '===',
  '> quote',
  '&lt;&#x41;',
  '<http://e.org>',
  'a@b.org',
  '\\',
  '|',
  '\n\n',
  '\u001b[31m',
  '\u001b]52;c;aGk=\u0007',
  '\u202e',
  '"',
  "'",
];
const hostile = fc
  .array(fc.oneof(fc.constantFrom(...ACTIVE), fc.string({ unit: 'binary' }), fc.string()), {
    minLength: 1,
    maxLength: 5,
  })
  .map((parts) => parts.join(' '))
  .filter((words) => /[\p{L}\p{N}]/u.test(oneLine(words)));

/** A day in which every word from outside is `words`. */
function dayOf(words: string): DayView {
  const { notes } = MEMO_2;
  const memo: MemoView = {
    ...MEMO_2,
    source: { ...MEMO_2.source, name: words },
    notes: {
      ...notes,
      figures: notes.figures.map((note) => ({ ...note, item: words, quote: words, condition: words })),
      decisions: notes.decisions.map((note) => ({ ...note, gist: words, reason: words, turnedDown: words })),
      problems: notes.problems.map((note) => ({ ...note, gist: words, quote: words, cause: words })),
      arrivals: notes.arrivals.map((note) => ({ ...note, item: words })),
      done: notes.done.map((note) => ({ ...note, gist: words })),
      corrections: notes.corrections.map((note) => ({ ...note, gist: words, quote: words })),
    },
  };
  const task = (one: DayView['tasksOpened'][number]) => ({ ...one, gist: words, waitsFor: [words] });
  return {
    ...DAY_2,
    memos: [memo],
    findings: [
      {
        ...STALE,
        id: words,
        item: words,
        why: words,
        next: words,
        consequences: [{ act: 'ordered', what: words }],
      },
    ],
    tasksOpened: DAY_2.tasksOpened.map(task),
    tasksClosed: DAY_2.tasksClosed.map(task),
    openTasksBefore: DAY_2.openTasksBefore.map(task),
    changes: [
      {
        kind: 'changed',
        figure: memo.notes.figures[0] as MemoView['notes']['figures'][number],
        memoId: words,
      },
    ],
    acts: (DAY_2.acts ?? []).map((act) => ({
      ...act,
      what: words,
      source: { ...act.source, memoId: words },
      against: act.against.map((one) => ({ ...one, item: words })),
    })),
    cautions: [],
  };
}

const pagesOf = (words: string): readonly string[] => {
  const day = dayOf(words);
  const project = { ...PROJECT, name: words };
  const [task] = day.tasksOpened;
  const next = {
    ...NEXT,
    ready: task ? [task] : [],
    questions: day.findings,
    promises: NEXT.promises.map((promise) => ({ ...promise, gist: words })),
    arrivals: NEXT.arrivals.map((arrival) => ({ ...arrival, item: words })),
  };
  return [
    journalPage(day, project),
    journalOfDays([day, day], project, { from: day.date, to: day.date }),
    wherePage(toldIn(WHERE, words), project),
    nextStepsPage(next, project),
    episodePage({ ...SPAN, days: [day], next }, project, FIGURES),
  ];
};

test('no word from a memo changes the structure of a page', () => {
  const plain = pagesOf('plain').map((page) => parsed(page).shape);
  fc.assert(
    fc.property(hostile, (words) => {
      expect(pagesOf(words).map((page) => parsed(page).shape)).toEqual(plain);
    }),
    { numRuns: 150 },
  );
});

test('a strict reader shows escaped words exactly as they were, less control characters', () => {
  fc.assert(
    fc.property(hostile, (words) => {
      const { words: shown, shape } = parsed(escapeMarkdown(words));
      expect(shape).toBe('+document +paragraph -paragraph -document');
      expect(shown).toBe(oneLine(words));
    }),
    { numRuns: 500 },
  );
});

test('no control character reaches a page or a terminal', () => {
  fc.assert(
    fc.property(hostile, (words) => {
      const texts = [...pagesOf(words), findingsText(dayOf(words).findings)];
      for (const text of texts) expect(text).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
    }),
    { numRuns: 100 },
  );
});

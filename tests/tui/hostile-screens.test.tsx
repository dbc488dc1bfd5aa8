/** Whatever is said, a screen keeps its columns and its rows, and no order reaches the terminal. */
import fc from 'fast-check';
import { renderToString } from 'ink';
import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { NO_NOTES } from '../../src/language/notes.ts';
import type { MemoView } from '../../src/model/views.ts';
import { Screen } from '../../src/tui/screen.tsx';
import { openingState, type ScreenState, VIEWS } from '../../src/tui/state/screen-state.ts';
import { AROUND, CHECKS, FIGURES, FINDING, LIMITS, MEMO, MEMOS, NEXT, TASKS, WHERE } from '../kit/views.ts';

/** Words that break columns, from several scripts, and orders to the terminal. */
const WORDS = [
  'beam',
  '栈板',
  'ひらがな',
  '한글',
  '👩‍🔧',
  '🇬🇧',
  '❤️',
  '1️⃣',
  'e\u0301\u0302\u0303\u0304\u0305\u0306',
  'नमस्ते',
  'ไทย',
  'לוח',
  'خشب',
  'ｶﾞ',
  '\u200d',
  '\u200b',
  '\u202e907\u202c',
  '\u2067x',
  '\ud83d',
  '\u001b[2J',
  '\u001b]0;evil\u0007',
  '\u009b31m',
  '\u009d52;c;ZXZpbA==\u009c',
  '\u0007',
  '\r\n',
  '\t',
  '\0',
  '𝟙',
  '﷽',
  'ﬀ',
  'x'.repeat(90),
  '漢'.repeat(60),
  'ש'.repeat(90),
  '👷🏽'.repeat(30),
  '-'.repeat(120),
];
const hostile = fc
  .array(fc.oneof(fc.constantFrom(...WORDS), fc.string({ unit: 'binary', maxLength: 6 })), { maxLength: 8 })
  .chain((parts) => fc.constantFrom('', ' ').map((joint) => parts.join(joint)));

/** Plain data with the same text in every field that comes from talk or from a file name. */
function spoiled<T>(value: T, text: string): T {
  const SPOKEN = new Set(
    'item gist quote name subject expression why next words reason condition rule formula text about cause product waitsFor what likeness dependents projectName file'.split(
      ' ',
    ),
  );
  const walk = (node: unknown, key: string): unknown => {
    if (typeof node === 'string') return SPOKEN.has(key) ? `${node} ${text}` : node;
    if (Array.isArray(node)) return node.map((one) => walk(one, key));
    if (node === null || typeof node !== 'object') return node;
    return Object.fromEntries(Object.entries(node).map(([name, one]) => [name, walk(one, name)]));
  };
  return walk(value, '') as T;
}

/** A memo whose only note is the text itself, between other words of it. */
function memoOf(text: string): MemoView {
  const whole = `${text} before ${text} after ${text}`;
  const start = text.length + 8;
  return {
    ...MEMO,
    text: whole,
    source: { ...MEMO.source, name: text },
    notes: {
      ...NO_NOTES,
      tasks: [
        {
          kind: 'task',
          id: 'm1.t1',
          gist: text,
          quote: text,
          span: { start, end: start + text.length },
          waitsFor: [],
        },
      ],
    },
  };
}

function stateWith(text: string): ScreenState {
  const of = <T,>(value: T): T => spoiled(value, text);
  const data = of({
    projectName: 'Mill loft',
    memos: [...MEMOS].reverse(),
    findings: [FINDING, { ...FINDING, id: 'm2.k2', kind: 'check' as const, was: { value: 0, unit: '' } }],
    next: NEXT,
  });
  const around = of(AROUND[0] as (typeof AROUND)[number]);
  const limits = of(LIMITS);
  return {
    ...openingState(data),
    memo: memoOf(text),
    book: { figures: of(FIGURES) },
    opened: { listed: around.figure, around, limits },
    rules: { limits, checks: of(CHECKS) },
    tasks: of(TASKS),
    where: of(WHERE),
    pages: [{ title: 'journal', file: 'j.md', text: `# ${text}\n\n- ${text} and ${text}\n` }],
    days: ['2026-03-09'],
    bench: of({
      phase: 'recording' as const,
      seconds: 42,
      heardSeconds: 20,
      level: { rms: -30, peak: -18 },
      words: text,
      latest: MEMO.notes.figures[0],
      notes: [...MEMO.notes.tasks, ...MEMO.notes.figures, ...MEMO.notes.decisions],
      takenBack: text,
      readBack: text,
      clashes: [FINDING],
    }),
    jobs: [
      { file: `/barn/${text}`, progress: { stage: 'transcribing', fraction: 0.5, words: text } },
      { file: text },
    ],
    message: { tone: 'bad', lines: [text, `in /barn/${text}`] },
  };
}

const frameOf = (state: ScreenState, columns: number, rows: number) =>
  renderToString(<Screen state={state} columns={columns} rows={rows} />, { columns });

/** Marks of direction that the screens put in themselves may stay; they take no column. */
const ORDERS = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/u;

test.each(
  VIEWS.flatMap((view) => [
    [view, 80, 24],
    [view, 40, 16],
  ]) as [ScreenState['view'], number, number][],
)('%s at %i×%i keeps columns and rows whatever was said', { timeout: 60_000 }, (view, columns, rows) => {
  fc.assert(
    fc.property(hostile, fc.boolean(), (text, isTyping) => {
      const typing = isTyping ? ({ what: 'find', text } as const) : undefined;
      const lines = frameOf({ ...stateWith(text), view, typing }, columns, rows).split('\n');
      expect(lines.length).toBeLessThan(rows);
      for (const line of lines) {
        expect(stringWidth(line), JSON.stringify(line)).toBeLessThanOrEqual(columns);
        expect(line).not.toMatch(ORDERS);
        expect(line).not.toContain('evil');
      }
    }),
    { numRuns: 50, seed: 20261126 },
  );
});

test('columns behind names of any script begin at the same place', () => {
  const [figure] = FIGURES;
  if (!figure) throw new Error('the kit has no figure');
  const names = ['beam', '栈板', '👩‍🔧 saw', 'e\u0301tage', 'לוח', 'نجارة', 'ｶﾞ', '漢'.repeat(40)];
  const book = { figures: names.map((item) => ({ ...figure, item })) };
  const data = { projectName: 'Mill loft', memos: [], findings: [], next: NEXT };
  const state = { ...openingState(data), view: 'figures' as const, book };
  const rows = frameOf(state, 100, 30)
    .split('\n')
    .filter((line) => line.includes('IN DOUBT 3 days'));
  expect(rows).toHaveLength(names.length);
  const starts = rows.map((line) => stringWidth(line.slice(0, line.indexOf('2150 mm'))));
  expect(new Set(starts).size).toBe(1);
});

test('what runs from right to left is closed, so that a number behind it stays behind it', () => {
  const [figure] = FIGURES;
  if (!figure) throw new Error('the kit has no figure');
  const book = { figures: [{ ...figure, item: 'לוח' }] };
  const data = { projectName: 'Mill loft', memos: [], findings: [], next: NEXT };
  const state = { ...openingState(data), view: 'figures' as const, book };
  for (const columns of [80, 40]) expect(frameOf(state, columns, 24)).toMatch(/לוח length\u200e? +.*2150 mm/);
});

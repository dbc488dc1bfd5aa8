import { describe, expect, test } from 'vitest';
import type { ListenEvent } from '../../src/project-api.ts';
import {
  type Bench,
  benchAfter,
  benchLine,
  isRunning,
  largeFigure,
  OPENING,
} from '../../src/tui/state/bench.ts';
import { reduce } from '../../src/tui/state/reduce.ts';
import { openingState, type ScreenState } from '../../src/tui/state/screen-state.ts';
import { FINDING, MEMO, MEMOS, NEXT } from '../kit/views.ts';

const [said] = MEMO.notes.figures;
if (!said) throw new Error('the kit has no figure');
const figure = (changes: Partial<typeof said> = {}) => ({ ...said, ...changes });

const benchOf = (events: readonly ListenEvent[], from: Bench = OPENING) => events.reduce(benchAfter, from);
const STARTED: ListenEvent = { kind: 'started', microphone: 'bench' };
const level = (seconds: number, heardSeconds = seconds): ListenEvent => ({
  kind: 'level',
  seconds,
  heardSeconds,
  level: { rms: -30, peak: -18 },
});
const heard = (changes: Partial<Extract<ListenEvent, { kind: 'heard' }>> = {}): ListenEvent => ({
  kind: 'heard',
  words: 'The beam is 2150 long.',
  figures: [figure()],
  notes: [],
  takenBack: [],
  clashes: [],
  soFar: [figure()],
  notesSoFar: [],
  open: [],
  ...changes,
});

describe('the line of a recording', () => {
  test.each<[string, readonly ListenEvent[], string | undefined]>([
    ['before the microphone answers', [], 'opening the microphone'],
    ['before the first sound', [STARTED], 'RECORDING 00:00'],
    ['while it runs', [STARTED, level(42)], 'RECORDING 00:42 ██████████████░░░░░░ -18 dB'],
    [
      'where hearing lags behind',
      [STARTED, level(72, 42)],
      'RECORDING 01:12 ██████████████░░░░░░ -18 dB heard until 00:42',
    ],
    [
      'when it was stopped',
      [STARTED, level(42), { kind: 'stopped', seconds: 43 }],
      'stopped at 00:43, hearing the last words',
    ],
    [
      'while it is heard from the file',
      [
        STARTED,
        { kind: 'stopped', seconds: 43 },
        { kind: 'progress', name: 'talk.wav', progress: { stage: 'transcribing', fraction: 0.62 } },
      ],
      'stopped at 00:43, hearing the last words  62 %',
    ],
  ])('%s', (_, events, line) => {
    expect(benchLine(benchOf(events), 80)).toBe(line);
  });

  test('there is none before the first recording and after it', () => {
    expect(benchLine(undefined, 80)).toBeUndefined();
    expect(benchLine({ ...OPENING, phase: 'over' }, 80)).toBeUndefined();
    expect([isRunning(undefined), isRunning(OPENING), isRunning({ ...OPENING, phase: 'over' })]).toEqual([
      false,
      true,
      false,
    ]);
  });

  test('at 40 columns it is no wider', () => {
    expect(benchLine(benchOf([STARTED, level(4000, 42)]), 40)).toBe('RECORDING 1:06:40 ██████░░ -18 dB…');
  });
});

test('what was said last stands first, figures and others, and so many stay that a screen holds', () => {
  const at = (start: number) => ({ span: { start, end: start + 1 } });
  const soFar = Array.from({ length: 90 }, (_, value) => figure({ value, ...at(2 * value) }));
  const [task] = MEMO.notes.tasks;
  const notesSoFar = task ? [{ ...task, ...at(177) }] : [];
  const { latest, notes } = benchOf([heard({ soFar, notesSoFar })]);
  expect(latest?.value).toBe(89);
  expect(notes.slice(0, 3).map(({ id }) => id)).toEqual(['m1.f1', 'm1.t1', 'm1.f1']);
  expect(notes).toHaveLength(60);
});

test('a clash that has come stands first; one that was taken back in the next breath goes', () => {
  const first = { ...FINDING, id: 'm9.c1' };
  const second = { ...FINDING, id: 'm9.c2', why: 'another reason' };
  expect(benchOf([heard({ open: [first] }), heard({ open: [first, second] })]).clashes).toEqual([
    second,
    first,
  ]);
  expect(benchOf([heard({ open: [first] }), heard({ open: [] })]).clashes).toEqual([]);
});

test.each([
  [
    { value: 2150, unit: 'mm' },
    { number: '2150', rest: 'mm', other: '≈ 84 5/8 in' },
  ],
  [
    { value: 24.4375, unit: 'in' },
    { number: '24 7/16', rest: 'in', other: '≈ 620.7 mm' },
  ],
  [
    { value: 2.5, unit: 'm', bound: 'about' as const },
    { number: '2.5', rest: 'm', other: '≈ 8.2 ft' },
  ],
  [
    { value: 10, high: 12, bound: 'between' as const, unit: 'mm' },
    { number: '', rest: '10 to 12 mm' },
  ],
  [
    { value: 4, unit: '1' },
    { number: '4', rest: '', other: undefined },
  ],
])('%o is shown large in its parts', (changes, parts) => {
  expect(largeFigure(figure(changes))).toMatchObject(parts);
});

test('what bounds a value stands with its name, since it has no large sign', () => {
  expect(largeFigure(figure({ bound: 'at-most' })).subject).toBe('hoist beam length, at most');
});

describe('keys', () => {
  const state = openingState({ projectName: 'Loft', memos: MEMOS, findings: [FINDING], next: NEXT });
  const press = (from: ScreenState, text: string) => reduce(from, { kind: 'key', key: { text } });
  const told = (from: ScreenState, event: ListenEvent) => reduce(from, { kind: 'bench', event }).state;
  const opening = press(state, 'r').state;
  const recording = told(opening, STARTED);

  test('r opens the bench and records, r stops, from any view', () => {
    expect(press(state, 'r')).toMatchObject({ state: { view: 'bench' }, effects: [{ do: 'record' }] });
    const away = press(recording, 'f').state;
    expect(press(away, 'r')).toMatchObject({
      state: { view: 'figures' },
      effects: [{ do: 'stop-recording' }],
    });
  });

  test('while the microphone is opened, or the last words are heard, r does nothing and says why', () => {
    const again = press(opening, 'r');
    expect(again.effects).toEqual([]);
    expect(again.state.message?.lines).toEqual(['the microphone is being opened']);
    const finishing = told(recording, { kind: 'stopped', seconds: 3 });
    expect(press(finishing, 'r').effects).toEqual([]);
    const over = reduce(finishing, { kind: 'bench-over' }).state;
    expect(press(over, 'r').effects).toEqual([{ do: 'record', readBack: false }]);
  });

  test('v leads back to the bench', () => {
    expect(press(press(recording, 'm').state, 'v').state.view).toBe('bench');
  });

  test('a recording that could not be made says why, and the screen is where it was', () => {
    const { state: back } = reduce(press(press(state, 'n').state, 'r').state, {
      kind: 'bench-over',
      lines: ['cannot record: no microphone answers'],
    });
    expect(back).toMatchObject({
      view: 'next',
      message: { tone: 'bad', lines: ['cannot record: no microphone answers'] },
    });
    expect(back.bench).toBeUndefined();
  });

  test('who looks at something else is told of figures and clashes in a line', () => {
    const away = press(recording, 'n').state;
    expect(told(away, heard()).message).toEqual({
      tone: 'good',
      lines: ['heard  00:02  hoist beam length: 2150 mm (≈ 84 5/8 in)   "2150 long"'],
    });
    expect(told(away, heard({ figures: [], clashes: [FINDING] })).message).toEqual({
      tone: 'bad',
      lines: ['CLASH  hoist beam length 2150 mm → 2115 mm: a slip is likely [just said]: press v'],
    });
    expect(told(recording, heard()).message).toBeUndefined();
    const { tasks } = MEMO.notes;
    const more = { figures: [], notes: tasks, takenBack: ['The gate\n wants hanging.'] };
    expect(told(away, heard(more)).message?.lines).toEqual([
      'taken back: "The gate wants hanging."',
      'heard  00:14  to do: Oil the hoist beam, by 2026-03-13   "I need to oil it by Friday"',
    ]);
  });
});

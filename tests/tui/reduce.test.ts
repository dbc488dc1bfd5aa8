import { expect, test } from 'vitest';
import { reduce } from '../../src/tui/state/reduce.ts';
import { type KeyPress, openingState, type ScreenState } from '../../src/tui/state/screen-state.ts';
import { FINDING, MEMO, MEMOS, NEXT } from '../kit/views.ts';

const data = { projectName: 'Mill loft', memos: [...MEMOS].reverse(), findings: [FINDING], next: NEXT };
const opened = openingState(data);
const typed = (text: string): KeyPress => ({ text });
const named = (name: NonNullable<KeyPress['name']>): KeyPress => ({ text: '', name });
const after = (state: ScreenState, ...keys: KeyPress[]) =>
  keys.reduce((step, key) => reduce(step.state, { kind: 'key', key }), {
    state,
    effects: [] as readonly unknown[],
  });

test('down stops at the last memo, up at the first', () => {
  expect(after(opened, named('down'), named('down'), named('down')).state.chosen.memos).toBe(1);
  expect(after(opened, named('up')).state.chosen.memos).toBe(0);
});

test('enter opens the chosen memo, and it is shown when it comes', () => {
  const step = after(opened, named('down'), named('enter'));
  expect(step.effects).toEqual([{ do: 'open-memo', id: 'm1' }]);
  expect(reduce(step.state, { kind: 'memo', memo: MEMO }).state).toMatchObject({
    view: 'heard',
    memo: { id: 'm1' },
  });
});

test.each([
  ['1', 'keep-old'],
  ['2', 'take-new'],
  ['3', 'both-right'],
])('%s on a clash settles it: %s', (key, choice) => {
  expect(after(opened, typed('c'), typed(key)).effects).toEqual([{ do: 'settle', id: 'm2.k1', choice }]);
});

test('settling keys mean nothing in the list of memos', () => {
  expect(after(opened, typed('1'))).toEqual({ state: opened, effects: [] });
});

test('a typed file name is taken in; keys that mean something elsewhere are letters there', () => {
  const step = after(opened, typed('t'), typed('quick.wavx'), named('erase'), named('enter'));
  expect(step.effects).toEqual([{ do: 'take', file: 'quick.wav' }]);
  expect(step.state).toMatchObject({ typed: undefined, jobs: [{ file: 'quick.wav' }] });
});

test('a second file waits for the first, and starts when that one is over, taken or not', () => {
  const first = after(opened, typed('t'), typed('a.wav'), named('enter')).state;
  const second = after(first, typed('t'), typed('b.wav'), named('enter'));
  expect(second.effects).toEqual([]);
  const over = reduce(second.state, { kind: 'failed', lines: ['cannot take a.wav'] });
  expect(over.effects).toEqual([{ do: 'take', file: 'b.wav' }]);
  expect(over.state.message).toEqual({ tone: 'bad', lines: ['cannot take a.wav'] });
});

test('nothing typed takes nothing', () => {
  expect(after(opened, typed('t'), typed('  '), named('enter')).effects).toEqual([]);
});

test('the chosen clash stays in the list when it has become shorter', () => {
  const two = openingState({ ...data, findings: [FINDING, { ...FINDING, id: 'm2.k2' }] });
  const onSecond = after(two, typed('c'), named('down')).state;
  expect(onSecond.chosen.clashes).toBe(1);
  expect(reduce(onSecond, { kind: 'data', data }).state.chosen.clashes).toBe(0);
});

test('? shows the keys, Esc goes back to where it was pressed', () => {
  const keys = after(opened, typed('c'), typed('?')).state;
  expect(keys).toMatchObject({ view: 'keys', viewBefore: 'clashes' });
  expect(after(keys, named('back')).state.view).toBe('clashes');
});

test.each([typed('q'), named('interrupt')])('%j leaves', (key) => {
  expect(after(opened, key).effects).toEqual([{ do: 'leave' }]);
});

test('Ctrl-C leaves even while typing', () => {
  expect(after(opened, typed('t'), typed('half'), named('interrupt')).effects).toEqual([{ do: 'leave' }]);
});

import { expect, test } from 'vitest';
import { doubtsInText, type HeardDoubt } from '../../../src/language/heard/heard-doubts.ts';
import { readMemo } from '../../../src/language/pipeline.ts';
import { reworded } from '../../../src/model/reword.ts';

const text = 'Luckily the winter orders not locked.';
const winter = (odds: number) => ({
  start: text.indexOf('winter'),
  end: text.indexOf('winter') + 6,
  chance: 0.4,
  others: [{ means: 'window', odds }],
});
const read = (
  doubts: readonly HeardDoubt[],
  isHeard = true,
  knownItems: readonly string[] = ['kitchen window'],
) =>
  readMemo(text, {
    units: 'metric',
    recordedAt: '2026-03-04T09:00:00Z',
    knownItems,
    isHeard,
    doubts,
  }).repairs?.map(({ quote, means }) => `${quote} > ${means}`) ?? [];

/** The same in a project that knows no window. */
const readWithout = (doubts: readonly HeardDoubt[]) => read(doubts, true, []);

test('what the recogniser held to be as likely is read where the project speaks of it', () => {
  expect(read([winter(-0.4)])).toEqual(['winter > window']);
});

test('of two that are as likely by the sound, the one stays out that talk alone made likely', () => {
  const often = { ...winter(-0.6), others: [{ means: 'window', odds: -0.6, habit: 9 }] };
  const seldom = { ...winter(-0.6), others: [{ means: 'window', odds: -0.6, habit: -4 }] };
  expect(read([seldom])).toEqual(['winter > window']);
  expect(readWithout([often])).toEqual([]);
  expect(readWithout([seldom])).toEqual(['winter > window']);
});

test('a word that the recogniser was sure of stays', () => {
  expect(read([])).toEqual([]);
});

test('typed words have no doubts', () => {
  expect(read([winter(-0.4)], false)).toEqual([]);
});

test('doubts of sentences are placed in the text that they make together', () => {
  const doubt = { start: 4, end: 8, chance: 0.3, others: [{ means: 'sill', odds: -0.1 }] };
  const sentences = [
    { text: 'Bolt it.', doubts: [] },
    { text: 'The silk is off.', doubts: [doubt] },
  ];
  const [moved] = doubtsInText(sentences) ?? [];
  expect('Bolt it. The silk is off.'.slice(moved?.start, moved?.end)).toBe('silk');
  expect(doubtsInText([{ text: 'Bolt it.' }])).toBeUndefined();
});

test('what is a hundred and fifty times less likely is no doubt', () => {
  const others = (...odds: readonly number[]) => odds.map((one) => ({ means: `sill ${one}`, odds: one }));
  const sentence = (...odds: readonly number[]) => ({
    text: 'The silk is off.',
    doubts: [{ start: 4, end: 8, chance: 0.3, others: others(...odds) }],
  });
  expect(doubtsInText([sentence(-5.01, -5, 1)])?.[0]?.others).toEqual(others(-5, 1));
  expect(doubtsInText([sentence(-5.01)])).toEqual([]);
});

test('words that a person put right are in doubt no longer', () => {
  const utterances = [{ startSeconds: 0, endSeconds: 2, text, doubts: [winter(-0.4)] }];
  const start = text.indexOf('winter');
  const { utterances: now } = reworded(
    { text, utterances },
    { span: { start, end: start + 6 }, words: 'window' },
  );
  expect(now?.[0]?.text).toBe('Luckily the window orders not locked.');
  expect(now?.[0]?.doubts).toBeUndefined();
});

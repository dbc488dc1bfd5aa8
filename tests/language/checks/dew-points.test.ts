import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const dewPoints = (said: string) =>
  readMemo(said, { units: 'metric', recordedAt: '2026-03-03T14:20:00Z' }).notes.records.flatMap((note) =>
    note.kind === 'check' && note.check === 'dew point'
      ? [Object.fromEntries(note.inputs.map(({ input, expression }) => [input, expression]))]
      : [],
  );

test.each([
  [
    "It's eighteen degrees in the shed and seventy percent humidity, the steel is at fourteen degrees.",
    { air: '18 degC', humidity: '70 %', surface: '14 degC' },
  ],
  ["Humidity's at eighty percent. The hull is nine degrees.", { humidity: '80 %', surface: '9 degC' }],
  [
    'Relative humidity is seventy five percent and it is sixteen degrees in the barn.',
    { air: '16 degC', humidity: '75 %' },
  ],
  ['RH is 65 percent.', { humidity: '65 %' }],
])('"%s" is held against the dew point', (said, inputs) => {
  expect(dewPoints(said)).toEqual([inputs]);
});

test.each([
  'The moisture in the oak is twelve percent.',
  'The tin says no more than 85 percent humidity.',
  'Forecast is ninety percent humidity tomorrow.',
  'Is the humidity seventy percent?',
  'If the humidity drops to sixty percent we can paint.',
  'The battery is at seventy percent.',
])('"%s" asks for no dew point', (said) => {
  expect(dewPoints(said)).toEqual([]);
});

test('what somebody wants to do is no wish of the tin', () => {
  const said =
    "It's sixteen degrees in the hut and eighty percent humidity, the steel chassis is at 14 degrees, I want to get the paint on.";
  expect(dewPoints(said)).toEqual([{ air: '16 degC', humidity: '80 %', surface: '14 degC' }]);
});

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { findDates, findLeadTime } from '../../src/language/dates.ts';

/** A Wednesday. */
const NOON = '2026-06-10T12:00:00+01:00';
const daysIn = (text: string, lean: 'ahead' | 'back' = 'ahead') =>
  findDates(text, { recordedAt: NOON, region: 'GB', lean }).map(({ day }) => day);

test.each([
  ['fit it tomorrow night', '2026-06-11'],
  ['by Thursday', '2026-06-11'],
  ["that's tomorrow's job", '2026-06-11'],
  ["ordering it Monday's the plan", '2026-06-15'],
  ['by Wednesday', '2026-06-17'],
  ['first thing Monday morning', '2026-06-15'],
  ['next Friday', '2026-06-19'],
  ['Friday week', '2026-06-19'],
  ['a week on Tuesday', '2026-06-23'],
  ['a week today', '2026-06-17'],
  ['tomorrow week', '2026-06-18'],
  ['in a fortnight', '2026-06-24'],
  ['within ten days', '2026-06-20'],
  ['in two weeks', '2026-06-24'],
  ['the day after tomorrow', '2026-06-12'],
  ['this weekend', '2026-06-13'],
  ['by the end of the week', '2026-06-12'],
  ['the end of the month', '2026-06-30'],
  ['by the twenty first', '2026-06-21'],
  ['the twenty second at the latest', '2026-06-22'],
  ['coming the fourteenth', '2026-06-14'],
  ['on the 3rd', '2026-07-03'],
  ['Friday the 12th', '2026-06-12'],
  ['June the fifteenth', '2026-06-15'],
  ['the 15th of July 2026', '2026-07-15'],
  ['22/06/2026', '2026-06-22'],
  ['ring them in the morning', '2026-06-11'],
  ['by tonight', '2026-06-10'],
])('"%s" is %s', (said, day) => {
  expect(daysIn(said)).toEqual([day]);
});

test.each([
  ['it came Monday', '2026-06-08'],
  ['we poured it on Saturday', '2026-06-06'],
  ['yesterday morning', '2026-06-09'],
])('looking back, "%s" is %s', (said, day) => {
  expect(daysIn(said, 'back')).toEqual([day]);
});

test.each([
  'five eighths, that is 5/8 of an inch',
  'nine oh five, or 9:05 as it was written',
  'the second coat and the fourth tread',
  'the first dozen panes sat there',
  '12 may fit',
  'it is 10.06 metres',
  'the 3rd step is 190 high',
  'in a minute',
])('"%s" names no day', (said) => {
  expect(daysIn(said)).toEqual([]);
});

test('a lead time is counted from the recording', () => {
  expect(findLeadTime('windows are ordered, eight weeks', { recordedAt: NOON })?.day).toBe('2026-08-05');
  expect(findLeadTime('a week late', { recordedAt: NOON })).toBeUndefined();
});

test("the day is the one in the memo's own zone", () => {
  expect(findDates('tomorrow', { recordedAt: '2026-06-10T23:30:00-05:00' })[0]?.day).toBe('2026-06-11');
});

test('without a date of recording nothing is guessed', () => {
  expect(findDates('tomorrow', { recordedAt: 'no date' })).toEqual([]);
});

describe('published sentences', () => {
  const set = JSON.parse(readFileSync(new URL('../outside/spoken-days.json', import.meta.url), 'utf8')) as {
    readonly days: readonly { text: string; reference: string; days: readonly string[]; read: boolean }[];
    readonly measures: readonly string[];
  };
  // Source: Recognizers-Text DateTime specs, named in the file. Month-day order, hence the country.
  test.each(set.days.filter(({ read }) => read))('"$text" names its day', ({ text, reference, days }) => {
    const found = findDates(text, { recordedAt: reference, region: 'US' }).map(({ day }) => day);
    expect(found.some((day) => days.includes(day))).toBe(true);
  });

  // Source: Recognizers-Text dimension specs: every sentence holds a measurement.
  test('measurements are no days', () => {
    const taken = set.measures.filter(
      (text) => findDates(text, { recordedAt: NOON, region: 'US' }).length > 0,
    );
    expect(taken.filter((text) => !/today|tomorrow|yesterday|day|week|month/i.test(text))).toEqual([]);
  });
});

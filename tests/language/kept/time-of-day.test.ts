import { expect, test } from 'vitest';
import { timesSaid } from '../../../src/language/kept/time-of-day.ts';

/** A Tuesday afternoon, an hour ahead of UTC. */
const AT = '2026-03-03T14:20:00+01:00';
const times = (said: string, at = AT) => timesSaid(said, at).map((one) => one.at.slice(0, 16));

test.each([
  ['it went on at two', '2026-03-03T14:00'],
  ['it went on at nine', '2026-03-03T09:00'],
  ['it went on at three', '2026-03-03T03:00'],
  ['mixed at ten past nine', '2026-03-03T09:10'],
  ['mixed at quarter to one', '2026-03-03T12:45'],
  ['mixed at a quarter past eleven', '2026-03-03T11:15'],
  ['at twenty five to two', '2026-03-03T13:35'],
  ['at half seven this morning', '2026-03-03T07:30'],
  ['at half past one', '2026-03-03T13:30'],
  ["six o'clock", '2026-03-03T06:00'],
  ['8 am', '2026-03-03T08:00'],
  ['at 10:40', '2026-03-03T10:40'],
  ['at 13.05', '2026-03-03T13:05'],
  ['at nine oh five', '2026-03-03T09:05'],
  ['around one thirty', '2026-03-03T13:30'],
  ['at noon', '2026-03-03T12:00'],
  ['last night at ten', '2026-03-02T22:00'],
  ['yesterday at four', '2026-03-02T16:00'],
  ['yesterday morning at nine', '2026-03-02T09:00'],
  ['half an hour ago', '2026-03-03T13:50'],
  ['about an hour and a half ago', '2026-03-03T12:50'],
  ['twenty minutes ago', '2026-03-03T14:00'],
  ['two hours ago', '2026-03-03T12:20'],
  ['just now', '2026-03-03T14:20'],
  ["it's twenty to two", '2026-03-03T13:40'],
])('"%s" is %s', (said, at) => {
  expect(times(said)).toEqual([at]);
});

test.each([
  'the batten is at two metres',
  'cut it at nine hundred',
  'five to one by weight',
  'at twenty degrees',
  'two coats at eight hours apart',
  'half the sheet',
  'it is 10 past the bulkhead',
  'stop at four inches',
])('"%s" says no time', (said) => {
  expect(times(said)).toEqual([]);
});

test('an hour that has not come yet today was that of the evening before', () => {
  expect(times('it went on at eleven', '2026-03-03T07:10:00Z')).toEqual(['2026-03-02T23:00']);
  expect(times('it went on at ten past nine', '2026-03-03T09:05:00Z')).toEqual(['2026-03-03T09:10']);
});

test('every time is in the zone of its memo', () => {
  expect(timesSaid('at two', AT)[0]?.at).toBe('2026-03-03T14:00:00+01:00');
  expect(timesSaid('at two', '2026-03-03T14:20:00Z')[0]?.at).toBe('2026-03-03T14:00:00Z');
  expect(timesSaid('at two', 'some day')).toEqual([]);
});

import { afterAll, beforeAll, expect, test } from 'vitest';
import { trueTime } from '../src/device-clock.ts';

// A zone with summer time, so that wall time, UTC and this machine's zone differ.
const zone = process.env.TZ;
beforeAll(() => {
  process.env.TZ = 'America/New_York';
});
afterAll(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

const AN_HOUR_AND_12_SECONDS = 3612;

test.each([
  ['UTC comes out in this zone', '2026-07-04T05:06:07Z', {}, '2026-07-04T01:06:07-04:00'],
  ['a zone that is stated stays', '2026-07-04T05:06:07+02:00', {}, '2026-07-04T05:06:07+02:00'],
  ['wall time is in this zone', '2026-07-04T05:06:07', {}, '2026-07-04T05:06:07-04:00'],
  [
    'the offset is added',
    '2026-07-04T05:06:07Z',
    { offsetSeconds: AN_HOUR_AND_12_SECONDS },
    '2026-07-04T02:06:19-04:00',
  ],
  [
    'an offset may go back over midnight, and a stated zone stays',
    '2026-07-04T00:06:07+02:00',
    { offsetSeconds: -420 },
    '2026-07-03T23:59:07+02:00',
  ],
  [
    'what is told to be UTC was local',
    '2026-07-04T05:06:07Z',
    { counts: 'local' },
    '2026-07-04T05:06:07-04:00',
  ],
  ['winter has its own', '2026-01-04T05:06:07Z', { counts: 'local' }, '2026-01-04T05:06:07-05:00'],
  [
    'what is told as wall time was UTC',
    '2026-07-04T05:06:07',
    { counts: 'utc' },
    '2026-07-04T01:06:07-04:00',
  ],
  [
    'both at once',
    '2026-07-04T05:06:07Z',
    { counts: 'local', offsetSeconds: -7 },
    '2026-07-04T05:06:00-04:00',
  ],
] as const)('%s', (_, stated, clock, expected) => {
  expect(trueTime(stated, { offsetSeconds: 0, ...clock })).toBe(expected);
});

test('without a word on its clock a recorder is believed', () => {
  expect(trueTime('2026-07-04T05:06:07Z', undefined)).toBe('2026-07-04T01:06:07-04:00');
});

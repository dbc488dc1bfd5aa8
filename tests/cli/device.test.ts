/** Clocks of recorders through the built command: only the time of recording changes, never a place in the clip. */
import { copyFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Goose barge']);
});
afterAll(() => place.remove());

/** The fixtures state 2026-03-04T05:06:07Z as their time. */
function take(fixture: string, as: string, ...words: readonly string[]) {
  copyFileSync(resolve('tests/speech/fixtures', fixture), join(place.folder, as));
  const taken = place.call(['take', as, ...words]);
  expect(taken).toMatchObject({ err: '', code: 0 });
  return JSON.parse(place.call(['memos', '--json']).out).at(-1);
}

test('the offset of a device is added to the time of what is taken from then on', { timeout: 60_000 }, () => {
  expect(take('memo.mp4', 'plain.mp4').recordedAt).toBe('2026-03-04T05:06:07+00:00');
  const told = place.call(['device', 'camera', '--offset', '+01:00:12', '--files', 'GX*.mov']);
  expect(told).toEqual({ out: 'camera  +1:00:12 to its time    GX*.mov\n', err: '', code: 0 });
  const memo = take('memo.mov', 'GX0001.mov');
  expect(memo).toMatchObject({
    recordedAt: '2026-03-04T06:06:19+00:00',
    recordedAtFrom: 'container',
    putRight: { device: 'camera', stated: '2026-03-04T05:06:07Z', offsetSeconds: 3612 },
  });
  expect(JSON.parse(place.call(['memos', '--json']).out)[0].recordedAt).toBe('2026-03-04T05:06:07+00:00');
});

test('places in the clip stay where they are', () => {
  const [plain, put] = JSON.parse(place.call(['export', '--json']).out).memos;
  expect(put.utterances.length).toBe(plain.utterances.length);
  expect(put.figures[0].start).toBeCloseTo(plain.figures[0].start, 1);
});

test('a device may be named, and its clock may count in local time', () => {
  place.call(['device', 'recorder', '--clock', 'local', '--offset', '-00:07']);
  const memo = take('memo.m4a', 'voice.m4a', '--device', 'Recorder');
  expect(memo).toMatchObject({
    recordedAt: '2026-03-04T04:59:07+00:00',
    putRight: { device: 'recorder', offsetSeconds: -420, counts: 'local' },
  });
});

test('a time that is given is taken as it is', () => {
  const memo = take('memo.mkv', 'GX0002.mov', '--at', '2026-03-05T08:00:00+01:00');
  expect(memo).toMatchObject({ recordedAt: '2026-03-05T08:00:00+01:00', recordedAtFrom: 'given' });
  expect(memo.putRight).toBeUndefined();
});

test('a device is forgotten, and undo remembers it', () => {
  expect(place.call(['device', 'camera', '--forget']).out).not.toContain('camera');
  expect(place.call(['undo']).out).toBe('Undone: the clock of "camera".\n');
  expect(JSON.parse(place.call(['device', '--json']).out)).toMatchObject({
    devices: [{ name: 'camera', offsetSeconds: 3612, files: ['GX*.mov'] }, { name: 'recorder' }],
  });
  expect(place.call(['verify'])).toMatchObject({ code: 0 });
});

test.each([
  [['device', 'drone'], 'no device is called "drone"'],
  [['take', 'plain.mp4', '--device', 'drone'], 'no device is called "drone"'],
  [
    ['device', 'camera', '--offset', '1 hour'],
    '--offset: expected hours, minutes and seconds such as +01:00:12, got "1 hour"',
  ],
  [['device', 'camera', '--offset', '+01:75'], '--offset: expected'],
  [['device', 'camera', '--clock', 'gmt'], '--clock: expected utc, local, got "gmt"'],
  [['device', '--offset', '+01:00'], 'device: expected a name, got ""'],
])('%j is refused', (words, said) => {
  const refused = place.call(words);
  expect(refused).toMatchObject({ out: '', code: 2 });
  expect(refused.err).toContain(said);
});

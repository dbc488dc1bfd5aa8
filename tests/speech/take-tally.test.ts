import { expect, test } from 'vitest';
import { startTally } from '../../src/speech/take-tally.ts';
import type { TakeProgress } from '../../src/speech/transcript.ts';

test('progress tells the part heard, the time left and the latest words', () => {
  const told: TakeProgress[] = [];
  let now = 100;
  const tally = startTally(
    60,
    (progress) => told.push(progress),
    () => now,
  );
  tally.heardUntil(3);
  now = 102;
  tally.heardUntil(15, 'The bench is in.');
  now = 104;
  tally.heardUntil(30);
  tally.heardAll();
  expect(told).toEqual([
    { stage: 'decoding', fraction: 0 },
    { stage: 'listening', fraction: 0.05 },
    { stage: 'transcribing', fraction: 0.25, remainingSeconds: 6, words: 'The bench is in.' },
    { stage: 'transcribing', fraction: 0.5, remainingSeconds: 4, words: 'The bench is in.' },
    { stage: 'transcribing', fraction: 1, remainingSeconds: 0, words: 'The bench is in.' },
  ]);
});

test('a file that states no length has no fraction until the end', () => {
  const told: TakeProgress[] = [];
  const tally = startTally(0, (progress) => told.push(progress));
  tally.heardUntil(40);
  tally.heardAll();
  expect(told.map(({ fraction }) => fraction)).toEqual([0, 0, 1]);
});

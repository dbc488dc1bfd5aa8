import { expect, test } from 'vitest';
import { LONG_SILENCE_SECONDS, placeToCut } from '../../../src/speech/microphone/long-silence.ts';

test.each([
  ['while nobody has spoken', { partFrom: 0, heardUntil: 600, spokenUntil: undefined }, undefined],
  ['while somebody speaks', { partFrom: 0, heardUntil: 60, spokenUntil: 60 }, undefined],
  ['in a pause for thought', { partFrom: 0, heardUntil: 60, spokenUntil: 35 }, undefined],
  [
    'in a long silence, a second before the newest sound',
    { partFrom: 0, heardUntil: 91, spokenUntil: 60 },
    90,
  ],
  ['when the talk belongs to the part before', { partFrom: 90, heardUntil: 900, spokenUntil: 60 }, undefined],
  ['after six hours of talk', { partFrom: 100, heardUntil: 21_700, spokenUntil: 21_700 }, 21_699],
])('%s', (_, course, place) => {
  expect(placeToCut(course)).toBe(place);
});

test('a cut never lies in talk', () => {
  for (let spokenUntil = 1; spokenUntil < 100; spokenUntil++) {
    for (let heardUntil = spokenUntil; heardUntil < spokenUntil + 80; heardUntil += 0.5) {
      const place = placeToCut({ partFrom: 0, heardUntil, spokenUntil });
      if (place !== undefined) expect(place).toBeGreaterThanOrEqual(spokenUntil + LONG_SILENCE_SECONDS);
    }
  }
});

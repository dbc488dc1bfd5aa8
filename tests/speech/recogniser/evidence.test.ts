import { describe, expect, test } from 'vitest';
import {
  backgroundLevel,
  isLoop,
  isStuck,
  level,
  whyNoSpeech,
} from '../../../src/speech/recogniser/evidence.ts';
import { joined, whiteNoise } from '../../kit/sound.ts';

const talk = { text: 'The keel bolts are in and torqued.', seconds: 3, spokenSeconds: 2.4, rise: 20 };

describe('whether words were spoken', () => {
  test.each([
    ['plain talk', talk],
    ['one short word', { ...talk, text: 'Yes.', seconds: 0.8, spokenSeconds: 0.4 }],
    ['a count', { ...talk, text: 'One, two, three, four, five, six, seven, eight.' }],
    ['a word said three times', { ...talk, text: 'No, no, no, that is the wrong one.' }],
    ['talk in a loud room', { ...talk, rise: 4 }],
  ])('%s was', (_, evidence) => {
    expect(whyNoSpeech(evidence)).toBeUndefined();
  });

  test.each([
    ['marks without words', { ...talk, text: '...' }, 'no words in it'],
    ['a loop', { ...talk, text: 'and the '.repeat(20), seconds: 15 }, 'the same words over and over'],
    ['a rush', { ...talk, text: `${'various words '.repeat(3)}rushed by` }, undefined],
    [
      'twice that rush',
      { ...talk, text: 'this is far more than anybody could ever hope to say in the time that there was' },
      'more words than can be spoken in the time',
    ],
    [
      'a word for nine seconds of sound',
      { ...talk, text: 'You.', seconds: 9.4, spokenSeconds: 9 },
      'too few words for so long a sound',
    ],
    ['words no louder than the noise', { ...talk, rise: 0.5 }, 'no louder than the background'],
  ])('%s: %s', (_, evidence, why) => {
    expect(whyNoSpeech(evidence)).toBe(why);
  });

  test.each([
    ['the boat the boat the boat', false],
    ['six by six by six by six', false],
    ['thank you thank you thank you thank you thank you thank you thank you', true],
    ['we put the bench in and we put the bench in and we put the bench in and then we had tea', false],
  ])('"%s" loops: %s', (text, loops) => {
    expect(isLoop(text)).toBe(loops);
  });

  test.each([
    [`we hung the doors and then ${'door '.repeat(6)}`, true],
    ['the rails are soft the hinges are done the hinges are done the hinges are done', true],
    ['no no no no no that is the wrong one', false],
    ['left a bit left a bit and up a bit', false],
    ['the pin goes in and the pin goes in from below', false],
    ['', false],
  ])('"%s" is stuck somewhere: %s', (text, stuck) => {
    expect(isStuck(text)).toBe(stuck);
  });
});

test('levels are decibels below full scale, and the background is the quiet tenth', () => {
  expect(level(new Float32Array(1600).fill(1))).toBeCloseTo(0, 5);
  expect(level(new Float32Array(1600).fill(0.1))).toBeCloseTo(-20, 5);
  const sound = joined([whiteNoise(4, 16_000, 0.5), whiteNoise(1, 16_000, 0.005)]);
  expect(level(sound) - backgroundLevel(sound)).toBeGreaterThan(30);
});

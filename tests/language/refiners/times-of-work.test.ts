/** Times that a product or a test takes, and times of the calendar and of people that are no figure. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf, notesTold as notesOf } from '../../kit/told.ts';

describe('times', () => {
  test.each([
    ["The paint's been on 48 hours.", ['48 h']],
    ["Till the membrane's been on 48 hours.", ['48 h']],
    ['Not one drip in thirty minutes.', ['30 min']],
    ['48 hours, says the tube.', ['48 h']],
    ['Seven days at the very least.', ['7 d at-least']],
    ['It went off in forty minutes.', ['40 min']],
    ['The paint dries in two hours.', ['2 h']],
    ["It's eight weeks before the mould comes off.", ['56 d']],
    ['Two days before sanding.', ['2 d']],
    ['Ten minutes between coats.', ['10 min']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    'Till the lads have been on 48 hours.',
    'Not one joke in thirty minutes.',
    '48 hours, says the boss.',
    'It went home in forty minutes.',
    'I was there two hours.',
    'Windows are ordered, eight weeks.',
    'Two hours of sanding.',
    'Two days ago.',
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

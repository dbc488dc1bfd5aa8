/** Two numbers of one figure: a range, a change, a slip put right; and two figures. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf, notesTold as notesOf } from '../../kit/told.ts';

describe('ranges and changes', () => {
  test.each([
    ['Between 10 and 15 mil.', ['10 mm between']],
    ['10-15 mm.', ['10 mm between']],
    ['From the 70 to an 84.', ['84 mm']],
    ['The leg tapers from 60 to 35.', ['60 mm', '35 mm']],
    ['The leg goes from 60 to 75.', ['75 mm']],
    ['The leg went from 60 mil up to 75 mil.', ['75 mm']],
    ['Two or three mil.', ['2 mm between']],
    ['Two or four mil.', ['2 mm', '4 mm']],
    ['Thirty or forty mil.', ['30 mm between']],
    ['Thirty or fifty mil.', ['30 mm', '50 mm']],
    ['Twelve or thirteen mil.', ['12 mm', '13 mm']],
    ['Eleven or twelve mil.', ['11 mm between']],
    ['A hundred or a hundred and ten mil.', ['100 mm', '110 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each(['Four to ten hours.'])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

describe('slips', () => {
  test.each([
    ['880 wide between the stringers, no, 860.', ['860 mm']],
    ['880 wide between the stringers, no 860.', ['860 mm']],
    ['880 wide, no more than 860.', ['880 mm', '860 mm at-most']],
    ['880 wide, hang on, 860.', ['860 mm']],
    ['880 wide hang on 860.', ['880 mm', '860 mm']],
    ['880 wide, well, 860.', ['860 mm']],
    ["880 wide, no, it's 860.", ['860 mm']],
    ['880 wide, actually 860.', ['860 mm']],
    ['880 wide, I mean 860.', ['860 mm']],
    ['880 wide, no, make that 860.', ['860 mm']],
    ['1100 off the floor with the new floor in, no, hang on, 1060.', ['1060 mm']],
    ['It was 1100 off the floor, make it 1060.', ['1100 mm', '1060 mm']],
    ['An inch and a, hang on, an inch and a quarter.', ['1.25 in']],
    ['880 mil, no, 12 kilos.', ['880 mm', '12 kg']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('parts of a sum', () => {
  test.each([
    ["Deck, 690. Cabin, 410. Stove, 92. That's eleven ninety two.", ['690 mm', '410 mm', '92 mm', '1192 mm']],
    [
      "Deck, 690. Cabin, 410. Stove, 92. That's eleven ninety two. She weighs it all.",
      ['690 kg', '410 kg', '92 kg', '1192 kg'],
    ],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('wishes and suppositions', () => {
  test.each([
    ["I'd like it at 900.", ['900 mm']],
    ['Paul thinks the beam is two hundred mil.', ['200 mm']],
    ['I thought I should go to two hundred mil.', ['200 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    "I'd have it at 900 if there was room.",
    "I'd be at 1.8 if I'd gone deeper.",
    "Paul thinks I should've gone to two hundred mil.",
    'A fella told me to go 3600.',
    'Call it a 900 door.',
    'Say 900 for the sake of argument.',
    'It would be 900.',
    'It could have been 900.',
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

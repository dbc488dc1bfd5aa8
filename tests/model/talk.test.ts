/** Where in the talk a figure stands: its sentence, its clause, and what was said around it. */
import { describe, expect, test } from 'vitest';
import { LONGEST, nearWords, placeOf, sentenceAt, sentencesOf } from '../../src/model/talk.ts';

/** The place of what stands between stars. */
function place(talk: string) {
  const start = talk.indexOf('*');
  const end = talk.lastIndexOf('*') - 1;
  const text = talk.replaceAll('*', '');
  return placeOf(text, sentencesOf(text), { start, end });
}

describe('sentences', () => {
  test.each([
    ['One. Two! Three?', ['One.', 'Two!', 'Three?']],
    ['It is 2.5 wide. Good.', ['It is 2.5 wide.', 'Good.']],
    ['No stop at the end', ['No stop at the end']],
    ['Well... maybe. Yes.', ['Well...', 'maybe.', 'Yes.']],
    ['One.\n\nTwo.', ['One.', 'Two.']],
    ['', []],
    ['   ', []],
  ])('%j', (text, expected) => {
    expect(sentencesOf(text).map((piece) => piece.text)).toEqual(expected);
  });

  test('hold every character, each with its place', () => {
    expect(sentencesOf('One.  Two! ')).toEqual([
      { start: 0, end: 6, text: 'One.' },
      { start: 6, end: 11, text: 'Two!' },
    ]);
  });

  test.each([
    [0, 0],
    [4, 0],
    [5, 1],
    [9, 1],
    [10, 2],
    [13, 2],
    [14, 0],
    [99, 0],
  ])('character %d is in number %d', (at, index) => {
    expect(sentenceAt(sentencesOf('One. Two. Six.'), at)).toBe(index);
  });

  test('of no sentences it is in the first', () => {
    expect(sentenceAt([], 3)).toBe(0);
  });
});

describe('the place of a figure', () => {
  test('has its clause between the nearest commas, what is said up to it, and the sentences around', () => {
    expect(place('We had tea. Well, the shelf is *915* high, and dry. Then it rained.')).toEqual({
      clause: 'the shelf is 915 high',
      sentence: 'Well, the shelf is 915 high, and dry.',
      until: 'Well, the shelf is 915',
      before: 'We had tea.',
      after: 'Then it rained.',
      index: 1,
    });
  });

  test('alone has nothing around it', () => {
    expect(place('The shelf is *915* high')).toEqual({
      clause: 'The shelf is 915 high',
      sentence: 'The shelf is 915 high',
      until: 'The shelf is 915',
      before: '',
      after: '',
      index: 0,
    });
  });

  test.each([
    ['The rest: the shelf is *915* high; dry.', 'the shelf is 915 high'],
    ['The rest; the shelf is *915*: good.', 'the shelf is 915'],
    ['First, second; the shelf is *915* high', 'the shelf is 915 high'],
    ['First; second, the shelf is *915* high', 'the shelf is 915 high'],
    ['The shelf,the one, is 1,200 or *915* high', 'is 1,200 or 915 high'],
    ['Is the shelf *915*? Good.', 'Is the shelf 915'],
    ['The shelf is *915*.5 or so.', 'The shelf is 915.5 or so'],
  ])('clause of "%s"', (talk, clause) => {
    expect(place(talk).clause).toBe(clause);
  });

  test('a quote that goes past the end of a sentence takes what follows along', () => {
    expect(place('It is *915. High* it is.')).toMatchObject({
      sentence: 'It is 915. High',
      until: 'It is 915. High',
      before: '',
      index: 0,
    });
  });

  test('of a memo without text is nowhere', () => {
    expect(placeOf('', [], { start: 0, end: 0 })).toEqual({
      clause: '',
      sentence: '',
      until: '',
      before: '',
      after: '',
      index: 0,
    });
  });
});

describe('the words near a figure', () => {
  const words = (length: number, letter: string) => letter.repeat(length);

  test('are the whole sentence up to its longest', () => {
    const sentence = words(LONGEST, 'a');
    expect(nearWords({ sentence, until: sentence.slice(0, 3) })).toBe(sentence);
  });

  test('are half of that before it and a third behind it where it runs on', () => {
    const until = words(300, 'a');
    const sentence = `${until}${words(300, 'b')}`;
    expect(nearWords({ sentence, until })).toBe(`${words(LONGEST / 2, 'a')}${words(LONGEST / 3, 'b')}`);
  });

  test('are all there is before it, where that is less', () => {
    const until = words(10, 'a');
    expect(nearWords({ sentence: `${until}${words(300, 'b')}`, until })).toBe(
      `${until}${words(LONGEST / 3, 'b')}`,
    );
  });
});

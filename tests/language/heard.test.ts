import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findRepairs } from '../../src/language/heard/find-repairs.ts';
import { mendText } from '../../src/language/heard/mended-text.ts';
import type { ReadContext } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-03-02T18:00:00Z' };

/** The text as it is read. */
function mended(text: string, knownItems: readonly string[] = []): string {
  return mendText(text, findRepairs(text, { ...CONTEXT, knownItems })).text;
}

describe('a unit by its sound', () => {
  test.each([
    ['the gap is three meal all round', 'the gap is three mil all round'],
    ['they are one hundred twelve male', 'they are one hundred twelve mil'],
    ['the hall is four point eight matters long', 'the hall is four point eight metres long'],
    ['a tank of seventy litters', 'a tank of seventy litres'],
    ['a three kilo watt heater', 'a three kilowatt heater'],
  ])('"%s"', (said, meant) => expect(mended(said)).toBe(meant));

  test.each([
    'one meal a day',
    'the male end of the joint',
    'it matters',
    'two milk crates',
    'he has two mates',
  ])('"%s" is left alone', (said) => expect(mended(said)).toBe(said));
});

describe('a size by its sound', () => {
  test.each([
    ['the hatch is nine hundred mil white', 'the hatch is nine hundred mil wide'],
    ['the locker comes out 600 mm white by 450 mm hi', 'the locker comes out 600 mm wide by 450 mm high'],
    ['the vestibule is 920 white by 2040 hi', 'the vestibule is 920 wide by 2040 high'],
    ['nothing whiter than 740 gets through the door', 'nothing wider than 740 gets through the door'],
    ['the boards are 18 mil tick', 'the boards are 18 mil thick'],
    ['the slot is two inches deaf', 'the slot is two inches deep'],
    ['the with is about nine hundred mil', 'the width is about nine hundred mil'],
    ['the hide of the stall is 720 mm', 'the height of the stall is 720 mm'],
  ])('"%s"', (said, meant) => expect(mended(said)).toBe(meant));

  test.each([
    'two metres of white rope',
    'a 50 mm white pipe',
    '900 mil white boards',
    'it is 600 mil with the lid on',
    'hi, it is 40 mil out',
    'whiter than I wanted',
    'eighty feet, sick of ladders',
    'the hide is off the cow',
    'the death of the old saw cost me 40 pounds',
    'the boiler will tick at two inches',
  ])('"%s" is left alone', (said) => expect(mended(said)).toBe(said));
});

describe('a dialect spelt by ear', () => {
  test.each([
    ['It sits hunner mil aff the deck', 'It sits hundred mil off the deck'],
    ["I'll bring it doon tae a metre seventy", "I'll bring it down to a metre seventy"],
    ["That's two fifty ower, and there's nae mair larch", "That's two fifty over, and there's no more larch"],
    ['The paint cannae go on afore it is dry', "The paint can't go on before it is dry"],
  ])('"%s"', (said, meant) => expect(mended(said)).toBe(meant));

  // One such word alone may be a name or a slip of the keys.
  test.each(['Wan Li came by', 'the canny lad', 'Lang Street, aff you go', 'a hoose, said the boy'])(
    '"%s" is left alone',
    (said) => expect(mended(said)).toBe(said),
  );
});

describe('a lost apostrophe', () => {
  test.each([
    ['The kilns lit and the floors swept.', "The kiln's lit and the floor's swept."],
    ['so the drains out', "so the drain's out"],
    ['and the roofs got a leak', "and the roof's got a leak"],
    ['The west windows glazed.', "The west window's glazed."],
    ['that heights wrong, so up it goes', "that height's wrong, so up it goes"],
    ['the floors gone up in my estimation', "the floor's gone up in my estimation"],
  ])('"%s"', (said, meant) => expect(mended(said)).toBe(meant));

  test.each([
    'the drains are out',
    'I got the windows in',
    'the boards run across the width',
    'the lights in the kitchen',
    'she kicks in at thirty',
    'nail the shakes on, and wait',
    'the boards cut yesterday were warped',
    'Lintels now.',
    'the pipes passed the test',
    'the jacks lifted a corner',
  ])('"%s" is left alone', (said) => expect(mended(said)).toBe(said));
});

describe('a thing by its sound', () => {
  test.each([
    ['the pains are in, every pane of them', 'the panes are in, every pane of them'],
    ['two axels and a spring', 'two axles and a spring'],
    ['nine mil play for the ply box', 'nine mil ply for the ply box'],
  ])('"%s"', (said, meant) => expect(mended(said)).toBe(meant));

  test('a word is only read as a thing that the talk or the project knows', () => {
    expect(mended('the beach is ordered')).toBe('the beach is ordered');
    expect(mended('the beach is ordered', ['beech top'])).toBe('the beech is ordered');
  });

  test.each(['a pain in the neck', 'the play in the bearing', 'eleven hundred bucks'])(
    '"%s" is left alone',
    (said) => expect(mended(said)).toBe(said),
  );
});

test('notes quote the words as they stand, and name the thing that was meant', () => {
  const text = 'Right. The pains are 295 by 430, every pane. So the drains out, and it is 44 meal wide.';
  const { notes, trace } = readMemo(text, CONTEXT);
  for (const note of Object.values(notes).flat())
    expect(text.slice(note.span.start, note.span.end)).toBe(note.quote);
  expect(notes.figures.map(({ item, value, unit }) => [item, value, unit])).toContainEqual([
    'panes',
    295,
    'mm',
  ]);
  expect(notes.done.map(({ quote }) => quote)).toEqual(['the drains out']);
  expect(trace.filter(({ stage }) => stage === 'heard').map(({ rule }) => rule)).toEqual([
    'a thing by its sound',
    'a lost apostrophe',
    'a unit by its sound',
  ]);
});

test('whatever is repaired, a stretch of the mended text leads back to the words it stands for', () => {
  const word = fc.constantFrom(
    'the',
    'drains',
    'out',
    'pains',
    'pane',
    'three',
    'meal',
    'and',
    'so',
    'kilo',
    'watt',
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 30 }), (words) => {
      const text = words.join(' ');
      const repairs = findRepairs(text, CONTEXT);
      const { text: read, original } = mendText(text, repairs);
      expect(original({ start: 0, end: read.length })).toEqual({ start: 0, end: text.length });
      for (const repair of repairs) {
        const at = read.indexOf(repair.means);
        expect(at).toBeGreaterThanOrEqual(0);
      }
      for (const found of read.matchAll(/\S+/g)) {
        const { start, end } = original({ start: found.index, end: found.index + found[0].length });
        expect(text.slice(start, end)).toMatch(/^\S+(?: \S+)?$/);
      }
    }),
  );
});

/** The words around a figure that say why it differs, and how plainly they do. */
import { describe, expect, test } from 'vitest';
import { cueOf, isToldMade } from '../../src/model/cues.ts';
import { placeOf, sentencesOf } from '../../src/model/talk.ts';

/** The cue of the figure that stands between stars: "make it *915* then". */
function cue(talk: string, change?: 'decided' | 'remeasured' | 'corrected', isInDecision = false) {
  const start = talk.indexOf('*');
  const end = talk.lastIndexOf('*') - 1;
  const text = talk.replaceAll('*', '');
  const place = placeOf(text, sentencesOf(text), { start, end });
  return cueOf(change ? { change } : {}, place, isInDecision);
}

const none = { change: undefined, weight: 0, isNeeded: false, isRestated: false };
const decided = (weight: number) => ({ ...none, change: 'decided', weight });
const remeasured = (weight: number) => ({ ...none, change: 'remeasured', weight });

describe('a word of change weighs the more the nearer it stands', () => {
  test.each([
    ['The shelf is *915* high.', none],
    ['Change of plan so the shelf is *915* high.', decided(3)],
    ['Change of plan, the shelf is *915* high.', decided(2)],
    ['The shelf is *915* high, change of plan.', decided(1)],
    ['Change of plan. The shelf is *915* high.', decided(0.75)],
    ['The shelf is *915* high. Change of plan.', decided(0.25)],
    ['Change of plan. The shelf is *915* high. A new plan.', decided(1)],
    ['Change of plan. So I settled on *915* for the shelf.', decided(3.75)],
    ['Change of plan. Then we had tea. The shelf is *915* high.', none],
    ['I measured the shelf at *915* high.', remeasured(3)],
    ['I measured it, the shelf is *915* high.', remeasured(2)],
    ['The shelf is *915* high, in fact.', remeasured(1)],
    ['I measured it. The shelf is *915* high.', remeasured(0.75)],
    ['The shelf is *915* high. I measured it.', remeasured(0.25)],
  ])('"%s"', (talk, expected) => {
    expect(cue(talk)).toEqual(expected);
  });

  test.each([
    ['of both the plainer one counts', 'I measured it, and settled on *915* for the shelf.', decided(3)],
    ['and the other way round', 'Change of plan, I measured the shelf at *915* high.', remeasured(3)],
    ['of two as plain it was decided', 'I measured the shelf and settled on *915* for it.', decided(3)],
  ])('%s', (_what, talk, expected) => {
    expect(cue(talk)).toEqual(expected);
  });

  test('a decision of the same words counts for two more', () => {
    expect(cue('The shelf is *915* high.', undefined, true)).toEqual(decided(2));
    expect(cue('So I settled on *915* for the shelf.', undefined, true)).toEqual(decided(5));
    expect(cue('I measured the shelf at *915* high.', undefined, true)).toEqual(remeasured(3));
  });

  test("the reader's own word goes before all others", () => {
    expect(cue('The shelf is *915* high.', 'corrected')).toEqual({ ...none, change: 'corrected', weight: 6 });
    expect(cue('I measured the shelf at *915* high.', 'decided')).toEqual(decided(6));
    expect(cue('It has to be *915* high.', 'decided')).toEqual({ ...decided(6), isNeeded: true });
  });
});

test.each([
  'I measured the shelf again and it is *915* high.',
  'I remeasured the shelf and it is *915* high.',
  'I had measured it wrong and the shelf is *915* high.',
  'I misread it and the shelf is *915* high.',
])('"%s": plainly measured a second time', (talk) => {
  const { change, weight } = cue(talk);
  expect(change).toBe('remeasured');
  expect(weight).toBeGreaterThanOrEqual(3);
});

describe('what is said once more', () => {
  test.each([
    ['The shelf is still *915* high.', true],
    ['For the record the shelf is *915* high.', true],
    ['The shelf stays at *915* high.', true],
    ['For the lady who wrote in, the shelf is *915* high.', true],
    ['For those who missed it, the shelf is *915* high.', true],
    ['It still rains, the shelf is *915* high.', false],
    ['The shelf is *915* high.', false],
    ['I measured it again and the shelf is *915* high.', false],
    ['I measured it again. The shelf is still *915* high.', false],
  ])('"%s": %s', (talk, isRestated) => {
    expect(cue(talk).isRestated).toBe(isRestated);
  });
});

describe('what is needed', () => {
  test.each([
    ['The shelf has to be *915* high.', true],
    ['The shelf needs to be *915* high.', true],
    ['The shelf should have been *915* high.', true],
    ['I trim it to *915* tomorrow.', true],
    ['It has to come down to *915* by then.', true],
    ['The shelf is *915* high, it has to be.', false],
    ['The shelf needs paint at *915* high.', false],
    ['The shelf is *915* high.', false],
  ])('"%s": %s', (talk, isNeeded) => {
    expect(cue(talk).isNeeded).toBe(isNeeded);
  });
});

test.each([
  [{ sentence: "The brackets I'd bent are long.", before: '' }, true],
  [{ sentence: 'The shelf is 915 wide.', before: 'It was already cut.' }, true],
  [{ sentence: 'They were welded.', before: 'The shelf is here.' }, true],
  [{ sentence: 'I will cut the shelf.', before: 'The brackets are long.' }, false],
  [{ sentence: 'The cut is clean.', before: '' }, false],
])('%j is told as made: %s', (place, answer) => {
  expect(isToldMade(place)).toBe(answer);
});

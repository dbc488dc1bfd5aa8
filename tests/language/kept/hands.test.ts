/** Parts that are said to be handed, and hands and mirrors that are none. */
import { expect, test } from 'vitest';
import type { HandNote } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';
import { recordsIn } from '../../kit/records.ts';

const hands = (text: string) => recordsIn(text).filter((note): note is HandNote => note.kind === 'hand');
const shown = ({ part, sides }: HandNote) => `${part}: ${sides ? sides.join(' and ') : 'two hands'}`;

test.each([
  ['The port locker lid is the mirror of the starboard one.', 'locker lid: port and starboard'],
  ['The knees are handed, one of each.', 'knees: two hands'],
  ['Cut the knees as a handed pair, remember.', 'knees: two hands'],
  ['The left-hand door is a mirror image of the right.', 'door: left-hand and right-hand'],
  ['I need one port and one starboard bracket.', 'bracket: port and starboard'],
  ['The seat bases are mirror images of each other.', 'seat bases: two hands'],
  ['The starboard knee needs to be the opposite hand.', 'knee: port and starboard'],
  ['Got a pair of brackets, one of each hand.', 'brackets: two hands'],
  ['The cheeks need cutting as a mirrored pair.', 'cheeks: two hands'],
  ['The nearside step is a mirror of the offside step.', 'step: nearside and offside'],
  ['The shelf brackets come in pairs, left and right handed.', 'shelf brackets: left and right'],
  ["Left door's done, right one is its mirror image.", 'door: left and right'],
  ['The nearside locker mirrors the offside one.', 'locker: nearside and offside'],
])('"%s" tells of a pair of hands', (said, expected) => {
  expect(hands(said).map(shown)).toEqual([expected]);
});

test.each([
  'The bathroom mirror is 400 by 600.',
  'Handed the drill to Sam.',
  'She handed me the lid.',
  'On the other hand the lid could be oak.',
  'The brackets are the same both sides.',
  'Is the hinge handed?',
  'I used a left-handed bit.',
  "The doors aren't handed.",
  'The hinges might be handed.',
  'If the lids are handed I am in trouble.',
  'The lid is handed to the customer on Friday.',
  'I made two lefts again.',
  "I'm left handed so the vice is on the wrong side.",
  'The mirror of the van is broken.',
  'It is a second-hand stove.',
  'One left and one to go.',
  'Hung a mirror on the port side.',
])('"%s" tells of none', (said) => {
  expect(hands(said).map(shown)).toEqual([]);
});

test('that parts are handed is no work done', () => {
  const { done } = readMemo('The knees are handed one of each. The knees are cut.', {
    units: 'metric',
    recordedAt: '2026-03-02T18:00:00+00:00',
  }).notes;
  expect(done.map(({ quote }) => quote)).toEqual(['The knees are cut']);
});

import { describe, expect, test } from 'vitest';
import type { ReadContext } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-09T10:00:00+01:00' };
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;
const quotes = (text: string, kind: 'problems' | 'tasks' | 'decisions' | 'arrivals' | 'done') =>
  notesOf(text)[kind].map(({ quote }) => quote);

describe('what a thing did', () => {
  test.each([
    ['I got five of them done before the planer quit on me.', 'the planer quit on me'],
    ['The bow ring pulled right out.', 'The bow ring pulled right out'],
    ["The west gable's leaning.", "The west gable's leaning"],
    ["I've 28 mil over it and that's not enough to get the lid on.", "that's not enough to get the lid on"],
    ['They only sent two boxes.', 'They only sent two boxes'],
  ])('"%s"', (text, quote) => expect(quotes(text, 'problems')).toEqual([quote]));

  test.each([
    "The door's leaning against the bench.",
    'I quit at five and went home.',
    'There is enough to get the lid done.',
    'I only sent two photographs.',
  ])('"%s" tells of none', (text) => expect(quotes(text, 'problems')).toEqual([]));
});

describe('what a thing or the speaker is without', () => {
  test.each([
    ['I need a hundred and fifty coach screws.', 'I need a hundred and fifty coach screws'],
    ['The top panel needs 6 mil off the back edge.', 'The top panel needs 6 mil off the back edge'],
    ['The blower wants its own fused spur.', 'The blower wants its own fused spur'],
    ['The pump needs a guard over it.', 'The pump needs a guard over it'],
    ['I need a foot and a half of five eighths hose.', 'I need a foot and a half of five eighths hose'],
  ])('"%s"', (text, quote) => expect(quotes(text, 'tasks')).toEqual([quote]));

  test.each([
    'I need forty mil clear.',
    'I need 40 mil of clearance.',
    'The hearth needs 50 mil of air under it.',
    'The hinge needs a gap round it.',
    'You need two people for that.',
  ])('"%s" tells of no job', (text) => expect(quotes(text, 'tasks')).toEqual([]));
});

describe('jobs in one breath', () => {
  test.each([
    ["I've got to sand the lid and put the hinges on.", ["I've got to sand the lid", 'put the hinges on']],
    ["I'll cut the legs and fit the castors tomorrow.", ["I'll cut the legs", 'fit the castors tomorrow']],
    [
      "Before that I've got to lay the membrane and put the duct in.",
      ["I've got to lay the membrane", 'put the duct in'],
    ],
    [
      "Before the cap goes up I've to grease the rollers and fit the chain guide.",
      ["I've to grease the rollers", 'fit the chain guide'],
    ],
    ['Before I do any of that I have to get frame four replaced.', ['I have to get frame four replaced']],
  ])('"%s"', (text, jobs) => {
    expect(quotes(text, 'tasks')).toEqual(jobs);
    expect(quotes(text, 'done')).toEqual([]);
  });

  test('what has been done stays done', () => {
    const text = "I've sanded the lid and put the hinges on.";
    expect(quotes(text, 'tasks')).toEqual([]);
    expect(quotes(text, 'done')).toEqual(["I've sanded the lid", 'put the hinges on']);
  });
});

describe('a change of mind', () => {
  test.each([
    "Rafters I've changed my mind on, they're going to be 175 by 47.",
    "I've changed my mind about the cushion, it'll be leather.",
    "I could take 20 off the feet. Right, let's do that.",
  ])('"%s" is one decision', (text) => expect(quotes(text, 'decisions')).toHaveLength(1));

  test.each(["I haven't changed my mind about the cushion.", "Let's do that one day."])(
    '"%s" is none',
    (text) => expect(quotes(text, 'decisions')).toEqual([]),
  );
});

describe('goods', () => {
  const goods = (text: string) =>
    notesOf(text).arrivals.map(({ item, received, expected }) => [item, received, expected]);
  test.each([
    [
      "I've ordered two skins from the tannery and they said three weeks.",
      [['two skins', false, '2026-06-30']],
    ],
    ['The slates need to be here before the 12th.', [['slates', false, '2026-06-12']]],
    ["They've promised the other bag for Monday.", [['other bag', false, '2026-06-15']]],
    [
      'The wall plates are 100 by 75, treated, came yesterday with the rafters.',
      [['wall plates', true, undefined]],
    ],
    ["There's a bow in the post.", []],
    ['I got a heater core from the junkyard.', [['heater core', true, undefined]]],
    ['I got a good price from the yard.', []],
    ["The windshield gasket's on backorder till the 20th.", [['windshield gasket', false, '2026-06-20']]],
    [
      'The brass has to be new. The foundry quoted 640 and said five weeks.',
      [['brass', false, '2026-07-14']],
    ],
  ])('"%s"', (text, told) => expect(goods(text)).toEqual(told));
});

test.each([
  ["The lintel's in. the bearing is only 190 on the left.", "The lintel's in"],
  ["The pump's in. it runs at 6 in. of vacuum.", "The pump's in"],
])('"%s": a word that is no unit ends its sentence', (text, quote) => {
  expect(quotes(text, 'done')).toEqual([quote]);
});

/** Notes told in the turn of a sentence: behind "though", by a day alone, of things named before. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

/** A Wednesday. */
const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;

describe('a job behind "though"', () => {
  test('is told, and is not only supposed', () => {
    const { tasks } = notesOf('The mattress is on order though, so I gotta call them tomorrow.');
    expect(tasks.map(({ gist, due }) => [gist, due])).toEqual([['Call them', '2026-06-11']]);
  });
});

describe('when goods come', () => {
  test.each([
    [
      'Still waiting on the cast wheels, foundry says the 14th now, not the 7th.',
      'cast wheels',
      '2026-06-14',
    ],
  ])('a day alone is of what was spoken of: "%s"', (text, item, expected) => {
    expect(notesOf(text).arrivals.map((each) => [each.item, each.expected])).toEqual([[item, expected]]);
  });

  test.each([
    [
      'Spindles: 32 mil square. I ordered 40 of them from Tom on Saturday and he said three weeks.',
      '2026-06-27',
    ],
    ['The spindles are 32 mil square. I ordered 40 of those yesterday, two weeks.', '2026-06-23'],
    ['The spindles are 32 mil square. I ordered 40 of them for Saturday.', '2026-06-13'],
  ])('a lead time counts from the day of ordering: "%s"', (text, expected) => {
    expect(notesOf(text).arrivals.map((each) => [each.item, each.expected])).toEqual([
      ['spindles', expected],
    ]);
  });
});

describe('what is no work done', () => {
  test.each([
    "The galley run is on the driver's side.",
    'The sink is on the left.',
    "Floor to floor came out at 2655, that's finished to finished.",
  ])('"%s"', (text) => expect(notesOf(text).done).toEqual([]));
});

describe('work done, the thing first', () => {
  test.each([
    ['The door at the bottom I rehung, it swings lovely.', 'The door at the bottom I rehung'],
    ['The bottom rail I glued this morning.', 'The bottom rail I glued this morning'],
    ['The sink is on the wall now.', 'The sink is on the wall now'],
  ])('"%s"', (text, quote) => expect(notesOf(text).done.map((each) => each.quote)).toEqual([quote]));

  test('but not in a clause that says more of it', () => {
    expect(notesOf('The hole I drilled is too big.').done).toEqual([]);
  });
});

describe('what a note is called', () => {
  test('"do that" is the work named just before, and a promise begins with what was promised', () => {
    const { tasks, promises } = notesOf(
      "I said on the last film I'd show how the brake shoe works, need to do that before the cap goes on.",
    );
    expect(promises.map(({ gist }) => gist)).toEqual(['Show how the brake shoe works']);
    expect(tasks.map(({ gist }) => gist)).toEqual(['Show how the brake shoe works']);
  });

  test('"those" in a gate are the things spoken of', () => {
    const { tasks } = notesOf("The cast wheels are late. Can't hang the fantail till those are here.");
    expect(tasks.map(({ waitsFor }) => waitsFor)).toEqual([['cast wheels are here']]);
  });
});

describe('the going of a stair', () => {
  test.each(["Going's 225.", 'The going is 225.', 'I make the going 225 mil.'])('"%s"', (text) => {
    expect(notesOf(text).figures.map(({ item, attribute, value }) => [item, attribute, value])).toEqual([
      ['going', 'depth', 225],
    ]);
  });

  test('and a word of motion', () => {
    const [figure] = notesOf("The post is going 600 deep. Going up it's easy.").figures;
    expect(figure?.item).toBe('post');
  });
});

describe('goods without a name beside them', () => {
  test.each([
    ["The roller door, which I've ordered at 2.4 high, only has 50 mil over it.", 'roller door'],
    ['Pins. I need 230 of those, ordered 250 from the Germans.', 'pins'],
  ])('"%s" is of %s', (text, item) => {
    expect(notesOf(text).arrivals.map((each) => each.item)).toEqual([item]);
  });

  test('and how many were ordered is no distance', () => {
    const { figures } = notesOf('Pins. I need 230 of those, ordered 250 from the Germans.');
    expect(figures.filter(({ dimension }) => dimension === 'length')).toEqual([]);
  });
});

describe('goods that came from somebody', () => {
  test.each([
    ["The portal legs came from the galvaniser's.", ['portal legs']],
    ['The noise came from the pump.', []],
  ])('"%s"', (text, items) => {
    expect(notesOf(text).arrivals.map(({ item }) => item)).toEqual(items);
  });
});

test('a choice that is open is neither a job nor a snag', () => {
  const { tasks, problems } = notesOf(
    'So I either drop the back wall 150 or change the profile of the sheet.',
  );
  expect([tasks, problems]).toEqual([[], []]);
});

test('what was written down once is put right by what it is', () => {
  const { figures } = notesOf("The blow distance. I'd written 48 mil on the sheet in March, it's 46.");
  expect(figures.map(({ value, replaces }) => [value, replaces?.value])).toEqual([[46, 48]]);
});

test('nothing is millimetres high that is told with a decimal: nobody is asked', () => {
  const [figure] = notesOf('The roller door is 2.4 high.').figures;
  expect([figure?.value, figure?.unit, figure?.alternatives]).toEqual([2.4, 'm', undefined]);
});

describe('promises', () => {
  test('what was shown is promised no longer, and what comes behind it is', () => {
    const said =
      "I did show you how the old engine comes out, so that's one promise kept, and I'll show you the first cut.";
    expect(notesOf(said).promises.map(({ gist }) => gist)).toEqual(['Show you the first cut']);
  });

  test.each([
    ['I promised to show you how the lock works.', 'Show you how the lock works'],
    ["I told you I'd show you the lock.", 'Show you the lock'],
  ])('"%s" begins with what was promised: %s', (said, gist) => {
    expect(notesOf(said).promises.map((each) => each.gist)).toEqual([gist]);
  });
});

test.each([
  ['Hinges are ordered, yard says the 14th.', [['Hinges', '2026-06-14']]],
  [
    'Hinges are ordered, and the glass is coming Friday.',
    [
      ['Hinges', undefined],
      ['glass', '2026-06-12'],
    ],
  ],
])('"%s" is so many deliveries', (said, expected) => {
  expect(notesOf(said).arrivals.map((each) => [each.item, each.expected])).toEqual(expected);
});

test.each([
  ["Don't let me forget to seal that lid before it rains.", 'Seal that lid'],
  ['Remind me to ring the yard.', 'Ring the yard'],
])('"%s" is the job alone, and waits for nothing', (said, gist) => {
  expect(notesOf(said).tasks).toMatchObject([{ gist, waitsFor: [] }]);
});

test.each([
  ['Ordered the mattress Saturday to nineteen hundred by twelve twenty.', 'mattress'],
  ['Ordered the glass on Monday to 600 by 400.', 'glass'],
  ['Ordered the glass to 600 by 400.', 'glass'],
])('"%s" brings goods without their day and size', (said, item) => {
  expect(notesOf(said).arrivals).toMatchObject([{ item }]);
});

test.each([
  ["I'm packing it up with a ring of twelve mil ply.", 'ring ply'],
  ['I made a box of eighteen mil ply.', 'ply box'],
  ['The lid is a piece of nine mil ply.', 'lid ply'],
])('"%s" tells how thick the stuff of that thing is', (said, item) => {
  expect(notesOf(said).figures).toMatchObject([{ item, attribute: 'thickness' }]);
});

test.each([
  [
    "Hit a snag with the vent, the rib's in the way of the flange.",
    "Hit a snag with the vent, the rib's in the way of the flange",
  ],
  ["I've hit a snag today. The hinge pins are seized.", 'The hinge pins are seized'],
  [
    'Found a soft patch in the keel under the stern tube.',
    'Found a soft patch in the keel under the stern tube',
  ],
  ["There's a rib in the way.", "There's a rib in the way"],
  ["There's a beam right where the pipe goes.", "There's a beam right where the pipe goes"],
])('"%s" is a snag', (said, quote) => {
  expect(notesOf(said).problems.map((each) => each.quote)).toEqual([quote]);
});

test.each([
  ['Treads are 880 wide between the stringers, no, 860.', [['treads', 'width', 860, 'mm']]],
  ['It is 900 at the front, sorry, 915.', [['front', 'length', 915, 'mm']]],
  // No repair: another place, and words that only go on.
  [
    'The gap is 5 at the top, no more than 8 at the bottom.',
    [
      ['gap', 'gap', 5, 'mm'],
      ['gap', 'gap', 8, 'mm'],
    ],
  ],
  ['Handrail at 900 high, not 850, because 850 is the old rule.', [['handrail', 'height', 900, 'mm']]],
])('what is put right behind where it is: "%s"', (said, expected) => {
  const { figures } = notesOf(said);
  expect(figures.map(({ item, attribute, value, unit }) => [item, attribute, value, unit])).toEqual(expected);
});

test('a slip with its pause is put right behind where it is', () => {
  const { figures } = notesOf('The treads are 880 wide between the stringers, wait, no, 860.');
  expect(figures.map(({ value }) => value)).toEqual([860]);
  const other = notesOf('The shelf is 300 from the floor, wait till you see the 600 one.');
  expect(other.figures[0]?.value).toBe(300);
});

test.each([
  ['Balusters, I need thirty one.', 'balusters', 31],
  ['The long screws, we want forty.', 'long screws', 40],
  ["Order more M12 washers, I'm six short.", 'm12 washers', 6],
])('"%s" counts things', (said, item, value) => {
  expect(notesOf(said).figures).toMatchObject([{ item, attribute: 'count', value, unit: '1' }]);
});

test('a thing named first is no number of things', () => {
  expect(notesOf('The bench, I want 900.').figures).toMatchObject([
    { attribute: 'height', value: 900, unit: 'mm' },
  ]);
});

test.each([
  ["I'll check with the building inspector.", 'Check with the building inspector'],
  ["I'll ask the inspector about the going.", 'Ask the inspector about the going'],
])('"%s" is a job', (said, gist) => {
  expect(notesOf(said).tasks).toMatchObject([{ gist }]);
});

test('a crack in a thing is called by that thing', () => {
  const { problems } = notesOf('850 is the old rule. One of the treads has a shake in it.');
  expect(problems).toMatchObject([{ gist: 'One of the treads has a shake in it' }]);
});

test('what feels dry has its own name, and the going of a stair is a noun wherever it stands', () => {
  expect(notesOf('The floor feels dry at 12 percent.').figures).toMatchObject([
    { item: 'floor moisture', value: 12 },
  ]);
  expect(notesOf("The going I've set at 225.").figures).toMatchObject([{ item: 'going', value: 225 }]);
});

test('what was found and put right is work, and a superlative is no thing', () => {
  expect(notesOf('Found the leak and fixed it.').problems).toEqual([]);
  const { done } = notesOf('The garboard is 215 at the widest. Steamed it for fifty minutes.');
  expect(done[0]?.gist).not.toMatch(/widest/);
});

test.each([
  [
    "The stone sink turned up, it's 830 wide, so that won't go through the door.",
    "The stone sink won't go through the door",
  ],
  ["The lid is 20 short. That doesn't fit.", "The lid doesn't fit"],
])('"%s" names what does not', (said, gist) => {
  expect(notesOf(said).problems.map((each) => each.gist)).toContain(gist);
});

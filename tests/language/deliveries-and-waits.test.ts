/** Deliveries in passing, work that waits for something said before it, and talk that only sounds like either. */
import { describe, expect, test } from 'vitest';
import { notesTold as notesOf } from '../kit/told.ts';

/** A Wednesday. */
const arrivalsOf = (text: string) => notesOf(text).arrivals.map(({ item, expected }) => [item, expected]);
const tasksOf = (text: string) => notesOf(text).tasks.map(({ gist, waitsFor }) => [gist, waitsFor]);

describe('goods that come', () => {
  test.each([
    ["Bolts are at Howard's, collect Thursday.", 'Bolts', '2026-06-11'],
    ["They're doing me another tank, ready on the twenty second.", 'another tank', '2026-06-22'],
    ['I wait for the cement powder, the man says it comes on the Friday.', 'cement powder', '2026-06-12'],
    ["Rock's getting dropped off on the 24th.", 'Rock', '2026-06-24'],
    ["Bags hadn't come. They said this morning, now they're saying Friday.", 'Bags', '2026-06-12'],
    ['Vanity is 900 wide, turned up this arvo with a crack in the top.', 'Vanity', undefined],
  ])('"%s"', (text, item, expected) => expect(arrivalsOf(text)).toEqual([[item, expected]]));

  test('and no work or choice is told with them', () => {
    const { tasks, decisions } = notesOf("Plasterboard's getting dropped off on the 24th.");
    expect([tasks, decisions]).toEqual([[], []]);
  });

  test.each([
    "It's the forge hood today.",
    "Tiler reckons he'll be here Wednesday.",
    'Got a bloke coming about the stove on Monday.',
  ])('"%s" tells of none', (text) => expect(arrivalsOf(text)).toEqual([]));
});

describe('no choice', () => {
  test.each([
    'The loop goes up to 300 above the waterline.',
    "Shower's getting nine litres a minute.",
    'Firring strips run from sixty down to ten.',
  ])('"%s"', (text) => expect(notesOf(text).decisions).toEqual([]));

  test('but what is raised for a reason is one', () => {
    expect(notesOf("I'm going up to 960 on the bench because of my back.").decisions).toHaveLength(1);
  });
});

describe('work that waits', () => {
  test.each([
    [
      "They're doing me another tank. Until that's here I can't close up the berth.",
      [['Close up the berth', ['another tank here']]],
    ],
    ["Resin's got to go off before I hang anything.", [['Hang anything', ['Resin got to go off']]]],
  ])('"%s"', (text, tasks) => expect(tasksOf(text)).toEqual(tasks));
});

describe('no work', () => {
  test.each([
    'Glass guy wants a week.',
    "Next week it's the surveyor so I'm off.",
    'So call it the first of July.',
    'Clamps stay on till tomorrow.',
    "Ironmonger's holding two sets till the weekend.",
    'The lugs are coming out of Melbourne.',
    'The cut out is done and it has to sit 50 back from the front.',
  ])('"%s"', (text) => expect(tasksOf(text)).toEqual([]));

  test.each([
    ['The engine is coming out of the boat on Monday.', 'The engine is coming out of the boat on Monday'],
    ["Next week it's the ceiling.", "Next week it's the ceiling"],
    ['Call it in to the merchant on Monday.', 'Call it in to the merchant on Monday'],
  ])('"%s" is work', (text, gist) => expect(tasksOf(text).map(([told]) => told)).toEqual([gist]));
});

describe('no snag', () => {
  test.each([
    'I stuck the damp meter in the sole plate.',
    'Handrail at 900 above the pitch line.',
    "Cockpit drains I've opened up from an inch and a quarter to inch and a half.",
    'Boards are 86 wide with a four mil gap.',
    "So that's basically sixty kilos over the left wheel.",
    "Gas bottles are 580 tall so there's twenty over them with the lid down.",
  ])('"%s"', (text) => expect(notesOf(text).problems).toEqual([]));

  test('nor where it opens on a strut', () => {
    expect(notesOf('The bed lifts on gas struts.').problems).toEqual([]);
  });

  test.each([
    "There's a crack over the lounge door.",
    "That's sixty kilos over the limit.",
    'The van is stuck in the gate.',
  ])('"%s" is one', (text) => expect(notesOf(text).problems).toHaveLength(1));
});

describe('nothing finished', () => {
  test.each(['Beds were drawn at 400.', 'The holes are offset three so they draw up.'])('"%s"', (text) =>
    expect(notesOf(text).done).toEqual([]),
  );
});

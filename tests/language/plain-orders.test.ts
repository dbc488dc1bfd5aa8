/** Sentences that are an order to oneself and nothing else, and words that only begin like one. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' }).notes;

describe('a plain order is a task', () => {
  test.each([
    ['Fit the damper.', 'Fit the damper', undefined],
    ['Order 60 pegs.', 'Order 60 pegs', undefined],
    ['Cut the purlins before Friday.', 'Cut the purlins', '2026-06-12'],
    ['Cut the purlins tomorrow.', 'Cut the purlins', '2026-06-11'],
    ['Call Moira for a quote.', 'Call Moira for a quote', undefined],
    ['Ask the quarry about the kerb.', 'Ask the quarry about the kerb', undefined],
    ['Fit the damper on the 31st.', 'Fit the damper on the 31st', '2026-07-31'],
    ['Fit the damper in three weeks.', 'Fit the damper in three weeks', '2026-07-01'],
    ['Fit the damper on the 3rd of July.', 'Fit the damper on the 3rd of July', '2026-07-03'],
  ] as const)('%s', (text, gist, due) => {
    const notes = notesOf(text);
    expect(notes.tasks.map((each) => [each.gist, each.due])).toEqual([[gist, due]]);
    expect([...notes.arrivals, ...notes.done, ...notes.promises]).toEqual([]);
  });

  test.each([
    'Cut the purlins.',
    'Press the lever and it hums.',
    "Lift the flap and you'll see the pump.",
    'Number ten by three inch.',
    'Scratch that. The flap is 90 wide.',
    'Mind the step.',
  ])('no task in "%s"', (text) => expect(notesOf(text).tasks).toEqual([]));
});

describe('said in so many words, a choice', () => {
  test.each(['Scrap the third dormer.', 'The winner is the elm.', "I figured I'd use the elm."])(
    '%s',
    (text) => {
      expect(notesOf(text).decisions).toHaveLength(1);
      expect(notesOf(text).tasks).toEqual([]);
    },
  );

  test.each(['The answer is nobody knows.', "I figured I'd use the weekend.", "I thought I'd make a brew."])(
    'none in "%s"',
    (text) => expect(notesOf(text).decisions).toEqual([]),
  );
});

describe('"fit" is a past where talk is American, and nowhere else', () => {
  const tasksIn = (text: string, units: 'metric' | 'us', region?: string) =>
    readMemo(text, { units, ...(region ? { region } : {}), recordedAt: '2026-06-10T18:00:00+01:00' }).notes
      .tasks.length;

  test.each([
    ['metric', undefined, 1],
    ['metric', 'GB', 1],
    ['metric', 'CA', 0],
    ['us', undefined, 0],
    ['us', 'IE', 1],
  ] as const)('%s house, region %s: %d', (units, region, tasks) => {
    expect(tasksIn('Fit the damper on Friday.', units, region)).toBe(tasks);
  });
});

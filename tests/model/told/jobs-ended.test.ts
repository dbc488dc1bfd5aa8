/** Jobs that end without "it is done": said and finished in one memo, or by the figure that was to be measured. */
import { describe, expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const openAfter = (...memos: readonly string[]) =>
  new ToldStory('metric', 'GB')
    .hear(...memos)
    .tasksOn(28)
    .filter(({ status }) => status !== 'done')
    .map(({ gist }) => gist);

describe('said and finished in the same memo', () => {
  test.each([
    "I've got to oil the worktop. Later. OK so the worktop's oiled.",
    'I need to paint the bilge. Right, that is it, the bilge is painted.',
    'I have to order the glass. Back again, I ordered the glass.',
    'I need to bolt the bracket. The bracket is bolted on.',
  ])('%s', (text) => expect(openAfter(text)).toEqual([]));

  test.each([
    ['another thing', 'I need to oil the worktop. The doors are oiled.'],
    ['another way of doing', 'I need to varnish the hatch. The hatch is sanded.'],
    ['what was done before it was said', 'The legs are cut. I need to cut the legs again.'],
    ['a part of it', 'I need to glaze the six windows. Two of the six windows are glazed.'],
  ])('not by %s: %s', (_, text) => expect(openAfter(text)).toHaveLength(1));
});

describe('a task of measuring is ended by the figure', () => {
  test.each([
    ['I need to measure the gap behind the fridge. Right, the gap is 42 mil.'],
    ['I have to measure the doorway.', 'The doorway is 742 wide.'],
    ['Need to check how wide the hatch is.', "The hatch's 610 mil wide."],
    ['I have to find out what the tank weighs.', 'The tank weighs 48 kilos.'],
    ['I need to get a tape on the bulkhead.', 'The bulkhead is 1830 mil wide.'],
    ['I must weigh the batteries.', 'The batteries are 96 kilos.'],
  ])('%s', (...memos) => expect(openAfter(...memos)).toEqual([]));

  test.each([
    ['of another thing', 'I have to measure the doorway.', 'The window is 742 wide.'],
    ['of another size', 'I have to check the width of the doorway.', 'The doorway is 1980 mil high.'],
    ['that it shall have', 'I have to measure the doorway.', 'The doorway has to be 760 wide.'],
    ['that it must not pass', 'I have to weigh the tank.', 'The tank must stay under 60 kilos.'],
    ['of the other side', 'I have to measure the port locker.', 'The starboard locker is 420 mil deep.'],
    ['and other work is not', 'I have to paint the doorway.', 'The doorway is 742 wide.'],
  ])('not by a figure %s', (_, task, figure) => expect(openAfter(task, figure)).toHaveLength(1));
});

describe('work that is put off', () => {
  test('is the work that is open already', () => {
    const left = openAfter(
      "I can't connect the charger until the cable is here.",
      'The cable should be here on Tuesday, so the charger has to wait.',
    );
    expect(left).toEqual(['Connect the charger']);
  });
  test('of another thing is told by itself', () => {
    expect(
      openAfter('I need to fit the left door.', 'No hinges, so the right door has to wait.'),
    ).toHaveLength(2);
  });
});

describe('what is to go back', () => {
  const back = "The flashing kit is the wrong one, I'll send it back.";
  test.each(["The flashing kit's gone back.", 'Sent the flashing kit back.'])('%s', (deed) =>
    expect(openAfter(back, deed)).toEqual([]),
  );
  test('is not gone when another one is ordered', () =>
    expect(openAfter(back, "New flashing's ordered.")).toEqual(['Send the flashing kit back']));
});

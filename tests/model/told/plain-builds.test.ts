/** A few days of plain talk, as a builder would give it, and what must be found in it. */
import { describe, expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

describe('a kitchen in a hut', () => {
  const story = new ToldStory('metric', 'GB').hear(
    "The kitchen worktop is going to be nine hundred high, finished. I cut the cabinet legs to 860 today because the top's forty mil thick. The window opening by the sink came out at 1,140 wide and 600 high. Ordered the glass to those sizes, should be here on the fourteenth. I still need to line the wall before the window goes in, but I can't line it till the wiring's been signed off. Told the viewers I'd show how I scribe the end panel next week.",
    "I'm going up to nine twenty on the worktop, my back can't take nine hundred. Measured the window opening again and it's 1,104 wide, not sure what I was doing the first time. Electrician came and signed off the wiring.",
    "Lined the wall by the sink. Bought a stove, it's 95 kilos, needs 300 clear at the back. I've only got 250 behind it.",
  );

  test('legs that were cut to allow for the top go stale when the top goes up', () => {
    expect(story.formulas()).toContain(
      'cabinet legs length = kitchen worktop height - kitchen worktop thickness',
    );
    expect(story.found()).toContain('stale: cabinet legs length 860 mm -> 880 mm');
  });

  test('an opening measured again is no slip, and the glass ordered to the old size is named', () => {
    expect(story.found()).toContain('remeasured: window opening width 1140 mm -> 1104 mm');
    const opening = story.findings().find(({ item }) => item === 'window opening');
    expect(opening?.consequences).toMatchObject([{ act: 'ordered', what: expect.stringContaining('glass') }]);
  });

  test('room that is less than what was asked for in the same breath breaks a limit', () => {
    expect(story.found()).toContain('limit: stove clearance 300 mm -> 250 mm');
  });

  test('work told twice is one task, with what it waits for', () => {
    expect(story.tasks(3).filter((line) => line.includes('wall'))).toHaveLength(1);
    expect(story.tasks(3)[0]).toMatch(/^done Line the wall/);
    const first = new ToldStory('metric', 'GB').hear(
      "I still need to line the wall, but I can't line it till the wiring's been signed off.",
    );
    expect(first.waits('m1.t1', 1)).toEqual([expect.stringMatching(/^open .*wiring/)]);
  });
});

describe('a galley in inches', () => {
  const story = new ToldStory('us', 'US').hear(
    'The fridge box is twenty four and a quarter wide, twenty two deep. Cut the two uprights at thirty four and three quarters. The drain hose is cracked, that will need replacing.',
    "Well the fridge box, I had it wrong, it's twenty three and a quarter.",
    'So the uprights should have been thirty four and a half. Next up is the wiring but I need the fuse block first.',
  );

  test('a figure owned up to as wrong is no slip, though it is an inch off', () => {
    expect(story.found()).toContain('remeasured: fridge box width 24.25 in -> 23.25 in');
  });

  test('what a part should have been is held against what it was cut to', () => {
    expect(
      story.found().some((line) => /^(?:stale|decided): uprights length 34.75 in -> 34.5 in$/.test(line)),
    ).toBe(true);
  });

  test('work names what must come first, and the thing that "that" is', () => {
    expect(story.waits('m3.t1', 4)).toEqual([expect.stringContaining('fuse block')]);
    expect(story.tasks(3)[0]).toContain('The drain hose will need replacing');
  });
});

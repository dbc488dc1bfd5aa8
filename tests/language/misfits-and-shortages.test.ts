/** Sizes that came out otherwise than they should, shortages, and like sentences of no trouble. */
import { describe, expect, test } from 'vitest';
import { notesTold as notesOf } from '../kit/told.ts';

describe('a misfit', () => {
  test.each([
    ['Wrong size, the window came up short by two mil.', ['the window came up short by two mil']],
    ["There's 3 mil of play in the bearing.", ["There's 3 mil of play in the bearing"]],
    ['The frame I cut should be 900.', ['The frame I cut should be 900']],
    ['The frame I cut should be longer.', ['The frame I cut should be longer']],
    ['The window I bought is for a 900 opening.', ['The window I bought is for a 900 opening']],
    ['The doors are made to the old size.', ['The doors are made to the old size']],
    ['The tap is sold out.', ['The tap is sold out']],
    ['Two tiles have gone off the roof.', ['Two tiles have gone off the roof']],
    ['Under the sill is a crack.', ['Under the sill is a crack']],
    ['The screw misses the joist.', ['The screw misses the joist']],
    ['The post is down by 20 mil.', ['The post is down by 20 mil']],
    ['The floor slopes 20 mil over the length.', ['The floor slopes 20 mil over the length']],
    ['The board came up short.', ['The board came up short']],
    ["The cable isn't long enough.", ["The cable isn't long enough"]],
    ['Not enough room for the tank.', ['Not enough room for the tank']],
    ['That does not leave room for the pump.', ['That does not leave room for the pump']],
    ['That leaves only 40, the pump needs 60.', ['That leaves only 40']],
    ['The fuse is only good for ten amps.', ['The fuse is only good for ten amps']],
    ['The pump gives no pressure.', ['The pump gives no pressure']],
    ["The sill should be level but it's 4 out.", ["The sill should be level but it's 4 out"]],
    ["It's 40 amps on a cable that's only rated for 30.", ["that's only rated for 30"]],
  ])('"%s" is read', (text, read) => expect(notesOf(text).problems.map(({ quote }) => quote)).toEqual(read));

  test.each([
    "The flue's at 45 degrees as it should be. The treads are 225 deep.",
    "It's where it should be. The gap is only 40 mil.",
    'Leave 3 mil of play in the bearing.',
    'The frame I cut should be blue.',
    'The doors are copied from the old size.',
    "If the tap is sold out I'll wait.",
    'The price is down by 20 quid.',
    "I'm not sure enough.",
    'Not enough sleep.',
    'That leaves room for the pump.',
    'That leaves only 40, the pump needs oil.',
    'The pump gives pressure.',
    "It's 40 amps on a cable that's rated for 60.",
    "I've got a video coming, I promise.",
  ])('"%s" tells none', (text) => expect(notesOf(text).problems).toEqual([]));
});

describe('a promise', () => {
  test.each([
    ["I'll film the joint.", ["I'll film the joint"]],
    ["I'll show you the joint.", ["I'll show you the joint"]],
    ["I'll post the plans.", ["I'll post the plans"]],
    ["I'll share it with you.", ["I'll share it with you"]],
    ["I'll do a video on the stove.", ["I'll do a video on the stove"]],
    ["There'll be a video on the stove.", ["There'll be a video on the stove"]],
    ["I promise I'll sand the deck.", ["I promise I'll sand the deck"]],
    ["I'll sand the deck, I promise.", ["I'll sand the deck, I promise"]],
    ["I'll tell you how it went next week.", ["I'll tell you how it went next week"]],
    ["I'll answer your questions in the next one.", ["I'll answer your questions in the next one"]],
    ['I owe you a tour.', ['I owe you a tour']],
    ['Next video is the galley.', ['Next video is the galley']],
    ["We'll do the wiring next episode.", ["We'll do the wiring next episode"]],
  ])('"%s" is read', (text, read) => expect(notesOf(text).promises.map(({ quote }) => quote)).toEqual(read));

  test.each(["I'll post the parcel.", 'I never promised to sand the deck.'])('"%s" tells none', (text) =>
    expect(notesOf(text).promises).toEqual([]),
  );
});

describe('goods that ran out', () => {
  test.each(["Putty's run out.", 'The putty has run out.', 'Screws ran out.', 'The glue ran out halfway.'])(
    '"%s" is a shortage, and no work',
    (text) => {
      const { problems, done } = notesOf(text);
      expect([problems.length, done]).toEqual([1, []]);
    },
  );

  test.each(['Time ran out.', 'The hose is run out.'])('"%s" is none', (text) =>
    expect(notesOf(text).problems).toEqual([]),
  );
});

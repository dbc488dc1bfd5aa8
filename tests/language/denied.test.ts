/** Faults and jobs that are told of only to say that there is none, each beside one that there is. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const notesOf = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' }).notes;

describe('a fault denied', () => {
  test.each([
    ["There's no slop in the tiller head.", "There's slop in the tiller head."],
    ['There are no cracks in the headstock casting.', 'There are cracks in the headstock casting.'],
    ['There was no damp behind the wainscot.', 'There was damp behind the wainscot.'],
    ['No weeps at the rudder gland.', "There's a weep at the rudder gland."],
    ["I couldn't find any woodworm.", 'I found woodworm.'],
    ['The purlin is not too short.', 'The purlin is too short.'],
    ["The valve's not dripping.", "The valve's dripping."],
    ["The sole plate isn't out of level.", 'The sole plate is out of level.'],
    ['None of the trusses are cracked.', 'Two of the trusses are cracked.'],
    ['Nothing wrong with the governor.', "There's something wrong with the governor."],
  ])('%s', (silent, told) => {
    expect(notesOf(silent).problems).toEqual([]);
    expect(notesOf(told).problems).toHaveLength(1);
  });

  test.each([
    "It isn't just cracked, it's in two pieces.",
    "There's no play left in the linkage, it binds.",
    "There's no gap for the door.",
    'The glue is not sticking.',
    "There's no power at the pump.",
    "The frame isn't cracked but it's bent.",
  ])('a fault after all: %s', (text) => expect(notesOf(text).problems).toHaveLength(1));
});

describe('a job denied', () => {
  test.each([
    ["I don't need to plane the coaming.", 'I need to plane the coaming.'],
    ["We won't have to lift the engine.", "We'll have to lift the engine."],
    ["I haven't got to paint the transom.", "I've got to paint the transom."],
    ["The rudder stock doesn't need welding.", 'The rudder stock needs welding.'],
    ["There's no need to prime the brackets.", 'I need to prime the brackets.'],
    ['No point sanding the underside.', 'The underside needs sanding.'],
    ['No more pegs to turn.', 'Eight more pegs to turn.'],
    ['Nothing left to caulk.', 'Still two seams to caulk.'],
  ])('%s', (silent, told) => {
    expect(notesOf(silent).tasks).toEqual([]);
    expect(notesOf(told).tasks).toHaveLength(1);
  });

  test.each([
    "I don't need to start on the gutters till Monday.",
    "I need to glue the rail, there's no need to clamp it.",
    "The lid doesn't need painting but it needs oiling.",
  ])('a job after all: %s', (text) => expect(notesOf(text).tasks).toHaveLength(1));
});

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
    ["The governor isn't in back to front.", 'The governor is in back to front.'],
    ['The lacquer has not gone cloudy.', 'The lacquer has gone cloudy.'],
    ["The sump isn't full of sludge.", 'The sump is full of sludge.'],
    ['None of the pantiles have come off.', 'Two of the pantiles have come off.'],
    ["They didn't send the wrong gaskets.", 'They sent the wrong gaskets.'],
    ["The drawer isn't stuck.", "The foam hasn't stuck to the felt."],
    ["You can't push a knife into the stem.", 'I can push a knife into the stem.'],
    ['No nasty scraping noise.', "There's a nasty scraping noise."],
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
    ["I'm not going to grout the tray on Friday.", "I'm going to grout the tray on Friday."],
    ["The mast won't be stepped on Monday.", 'The mast will be stepped on Monday.'],
    ['The dampers should not be regreased.', 'The dampers should be regreased.'],
    ['I must not order the flue.', 'I must order the flue.'],
    ["Don't order the flue.", "Don't forget to order the flue."],
    ["The flue won't be here till Friday.", "The flue can't be fitted till Friday."],
    ["I can't shift the gudgeon.", "I can't shift the gudgeon till the drift comes."],
  ])('%s', (silent, told) => {
    expect(notesOf(silent).tasks).toEqual([]);
    expect(notesOf(told).tasks).toHaveLength(1);
  });

  test.each([
    "I don't need to start on the gutters till Monday.",
    "I need to glue the rail, there's no need to clamp it.",
    "The lid doesn't need painting but it needs oiling.",
    "I can't grout the tray yet.",
    "I haven't grouted the tray yet.",
    "Don't grout the tray until the sealer's dry.",
    "I can't cut the trunking while the resin's still tacky.",
  ])('a job after all: %s', (text) => expect(notesOf(text).tasks).toHaveLength(1));
});

describe('denied, or not quite', () => {
  test.each([
    ['done', "The ledger isn't bolted.", 'The ledger is bolted.'],
    ['done', 'The ledger is nearly bolted up.', 'The ledger is bolted up.'],
    [
      'arrivals',
      "The yard isn't bringing the pontoon on Friday.",
      'The yard is bringing the pontoon on Friday.',
    ],
    ['arrivals', 'No elm came.', 'The elm came.'],
    ['arrivals', "The pontoon won't land on Friday.", 'The pontoon will land on Friday.'],
    ['arrivals', 'No parcel today.', 'The parcel came today.'],
    ['promises', "You won't see the launch on Friday.", "You'll see the launch on Friday."],
    ['decisions', "I've not swapped the elm for larch.", "I've swapped the elm for larch."],
  ] as const)('no %s in "%s"', (kind, silent, told) => {
    expect(notesOf(silent)[kind]).toEqual([]);
    expect(notesOf(told)[kind]).toHaveLength(1);
  });

  test("what won't come till a day comes then", () => {
    expect(notesOf("The pontoon won't be here till Friday.").arrivals).toMatchObject([
      { item: 'pontoon', expected: '2026-06-12', received: false },
    ]);
  });
});

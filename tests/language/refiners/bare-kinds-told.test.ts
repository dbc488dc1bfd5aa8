/** Bare numbers that are told by their thing: pitches, breakers, dampness, loads, and those that are no figures. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const amountsOf = (text: string) =>
  readMemo(text, CONTEXT).notes.figures.map(({ value, unit, bound }) => `${value} ${unit} ${bound}`);

describe('in the unit that the thing is told in', () => {
  test.each([
    ['Roof pitch is 35 and the rafters are 4.2 metres.', ['35 deg exact', '4.2 m exact']],
    ['The stairs are cut. Pitch comes to 39 and a bit.', ['39 deg about']],
    ["Ring's on a thirty two.", ['32 A exact']],
    ["The cooker's on its own forty five and the sockets are on a thirty two.", ['45 A exact', '32 A exact']],
    ['The meter says 16 percent in the sole plate. The rafters were 19.', ['16 % exact', '19 % exact']],
    ["Coupling gap I want at four thou, it's at eleven.", ['4 thou exact', '11 thou exact']],
    ['Spreaders came out at 92 degrees to port and 90 to starboard.', ['92 deg exact', '90 deg exact']],
    [
      'I worked the trench out at five point eight cube. Lucky I ordered the six and a half.',
      ['5.8 m3 exact', '6.5 m3 exact'],
    ],
    ["The panel's 200 amp, since the heater's fifty by itself.", ['200 A exact', '50 A exact']],
    ['Cable is two and a half three core.', ['2.5 mm2 exact']],
    ["It's eleven metres to the water and another four to the bottom.", ['11 m exact', '4 m exact']],
    ["Flow's set at fifty five.", ['55 degC exact']],
    ["Room's sitting at nineteen.", ['19 degC exact']],
    ['Stops at thirty five degrees either way.', ['35 deg exact']],
    ['That gives one in fifty five, the book says one in forty.', ['55 1 exact', '40 1 exact']],
    ["Expansion vessel's set to three bar, relief's at six.", ['3 bar exact', '6 bar exact']],
    ['The D2 is not more than nine metres. I measured eleven.', ['9 m at-most', '11 m exact']],
    ['The tank in the loft holds 230 and it leaks.', ['230 L exact']],
    ['The roller door is 3.6 by 3.', ['3.6 m exact', '3 m exact']],
    ["The far corner's twelve low so I packed it.", ['12 mm exact']],
    ["The door's 63 percent of the height so that comes to 265.", ['63 % exact', '265 mm exact']],
    ["He can't start till the membrane's been on 48 hours.", ['48 h exact']],
    ['The boards only planed up to 23.', ['23 mm exact']],
  ])('"%s"', (text, read) => expect(amountsOf(text)).toEqual(read));
});

describe('is a length where nothing tells otherwise', () => {
  test.each([
    ['The prop is 13 inch with a pitch of 10.', ['13 in exact', '10 mm exact']],
    ['The rivets are at a pitch of 40 along the roof seam.', ['40 mm exact']],
    ['The door is 2.1 by 900.', ['2.1 m exact', '900 mm exact']],
    ['The shelf in the loft holds 230 mil boxes.', ['230 mm exact']],
    ['The rail is set at fifty five.', ['55 mm exact']],
    ['The cable is two and a half metres.', ['2.5 m exact']],
    ['The shelf is on a thirty mil batten.', ['30 mm exact']],
  ])('"%s"', (text, read) => expect(amountsOf(text)).toEqual(read));
});

describe('is no figure', () => {
  test.each([
    'Double glazed units, 4 16 4, ordered them this morning.',
    "I'm switching to a three and a half lime.",
    'Lockshields are between a half and one and a half turns.',
    "I've been on the roof three hours.",
    'The merchant says one in ten is split.',
    "They're second hand so one in ten's a dud.",
    'Bag and a half of concrete in each.',
  ])('"%s"', (text) => expect(amountsOf(text)).toEqual([]));
});

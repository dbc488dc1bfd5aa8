/** A plain size is a figure and nothing else, whatever it is of and however it is said. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const THINGS =
  `bench|hatch|galley shelf|engine bearer|north wall|stair tread|water tank|kitchen worktop|door opening|oak post
  |locker lid|roof rail|flue pipe|window sash|bulkhead|trailer`
    .split('|')
    .map((thing) => thing.trim());
const SIZES = [
  '900 mm high',
  '900 mm high at the window end',
  '1,210 mm wide',
  '40 mm thick',
  'two metres long',
  'eighteen and a half inches deep',
  'six foot four high',
  '300 wide by 450 deep',
  '85 by 120 centimetres',
  'nine hundred and five wide',
  'at least 30 mm clear',
  '20 mm above the floor',
  '150 off the wall',
  'under 700 wide',
  'between 40 and 50 mil thick',
  'half an inch thick',
  'rated at 16 amps',
];
const FRAMES = [
  (thing: string, size: string) => `The ${thing} is ${size}.`,
  (thing: string, size: string) => `I measured the ${thing} and it is ${size}.`,
  (thing: string, size: string) => `The ${thing} comes out at ${size}, give or take.`,
  (thing: string, size: string) => `The ${thing} will be ${size}.`,
];

test.each(SIZES)('"%s" is no statement', (size) => {
  const said = THINGS.flatMap((thing) => FRAMES.map((frame) => frame(thing, size)));
  const more = said.filter((text) => {
    const { figures, ...others } = readMemo(text, {
      units: 'metric',
      region: 'GB',
      recordedAt: '2026-06-10T18:00:00+01:00',
    }).notes;
    expect({ text, figures: figures.length }).not.toEqual({ text, figures: 0 });
    return Object.values(others).flat().length > 0;
  });
  expect(more).toEqual([]);
});

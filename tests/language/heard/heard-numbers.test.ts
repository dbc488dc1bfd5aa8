import { describe, expect, test } from 'vitest';
import { findRepairs } from '../../../src/language/heard/find-repairs.ts';
import type { ReadContext } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-03-02T18:00:00Z' };
const HEARD: ReadContext = { ...CONTEXT, isHeard: true };
const figuresOf = (text: string, context: ReadContext) =>
  readMemo(text, context)
    .notes.figures.map(({ value, unit }) => `${value} ${unit}`)
    .join('; ');

describe('a number as a recogniser writes it', () => {
  test.each([
    // Small words for numbers.
    ['The side wall is nine foot to on the tall side.', '110 in'],
    ['The trailer is seventeen foot for on deck.', '208 in'],
    ['The transom is fifty to and three quarters of an inch across.', '52.75 in'],
    ['The transom is fifty to end a half inches.', '52.5 in'],
    ['The fall is forty for mil.', '44 mm'],
    ['The sill is 20 to millimetres thick.', '22 mm'],
    ['The bed is 190 to long.', '192 mm'],
    ['The legs are nine hundred to to get the height.', '902 mm'],
    ['The nave is five point for eight metres.', '5.48 m'],
    ['The bench is to 40 long.', '240 mm'],
    ['The worktop is ate hundred mil deep.', '800 mm'],
    ['The rail is forteen inches off the floor.', '14 in'],
    ['The manifold sits too foot off the floor.', '2 ft'],
    ['The lining is for mil ply.', '4 mm'],
    ['The lining is for milply.', '4 mm'],
    ['The drawer runs within to mil of the frame.', '2 mm'],
    ['The plank is eleven sixties thick.', '0.6875 in'],
    ['The post is 30 for end of half inches.', '34.5 in'],
    ['The window is sebenhundered and ten wide.', '710 mm'],
    // Numbers in pieces.
    ['The plank is 700 and 42 millimetres long.', '742 mm'],
    ['The drawer is a 100 and 5 mil.', '105 mm'],
    ['The bench is 1000 50 long.', '1050 mm'],
    ['The frame is 1,000 200 and 40 wide.', '1240 mm'],
    ['The shelf is 100 20 deep.', '120 mm'],
    ['The lid is 2 100 and 50 mil long.', '250 mm'],
    ['The hatch is 600 and to mil wide.', '602 mm'],
    ['The opening is eight, eight, five.', '885 mm'],
    ['The opening is 31 and 1 4th inches tall.', '31.25 in'],
    // Units.
    ['The pipe holds fifty sighs.', '50 psi'],
    ['The tank is twenty gallants.', '20 gal'],
    ['The gap is 15 million.', '15 mm'],
    ['The floor gets eighteen milpligh on top.', '18 mm'],
    ['The top is 32 ml ply.', '32 mm'],
    ['The fridge is 595 white on the list.', '595 mm'],
    ['The step is 220 hi.', '220 mm'],
    ['The bolts are done to fifty Newton-members.', '50 N.m'],
    ['The pipes are fifteen milk.', '15 mm'],
    ['The battery is four hundred ampoules.', '400 Ah'],
    ['The new joists are one hundred ninety five sheep.', '195 mm'],
    ['The front beam is three hundred feet by one hundred fifty.', '300 mm; 150 mm'],
    ['The glue wants a two hour weight between coats.', '2 h'],
  ])('"%s" says %s', (text, figures) => {
    expect(figuresOf(text, HEARD)).toBe(figures);
  });

  test.each([
    'The gap is fifty to sixty mil.',
    'Convert 40 to inches before it is cut.',
    'It is nine foot to the plate.',
    'I got there at twenty to.',
    'What was the fifty for?',
    'Rather than for each side, cut it for both.',
    'It needs between 100 and 20 mil.',
    'The sheets are 600 and 20 mm boards go on top.',
    'The bays are one, two, four.',
    'Three, four, five, says yes.',
    'The roof costs 15 million pounds.',
    'The pot holds 32 ml of resin.',
    'There are ten millipedes in it.',
    'Bring 12 white screws.',
    'It is by the end a half day later.',
    'We ate lunch at the free table.',
    'There are eight feet of pipe.',
    'There were two hundred sheep in the field.',
    'The shelf holds two hundred books.',
    'That is too tall for metres of pipe.',
    'He was born in the sixties.',
    'The tent has a slobbery and ten poles.',
  ])('"%s" keeps its words', (text) => {
    expect(findRepairs(text, HEARD)).toEqual([]);
  });

  test.each([
    'The shelf is fifty to mil.',
    'The plank is 700 and 42 mm long.',
    'The tank is twenty gallants.',
  ])('"%s", typed, keeps its words', (text) => expect(findRepairs(text, CONTEXT)).toEqual([]));

  test('a number whose beginning was misheard is no figure', () => {
    const text = 'The window opening is well-tuntered and ten wide.';
    expect(figuresOf(text, HEARD)).toBe('');
    const { trace } = readMemo(text, HEARD);
    expect(trace.filter(({ outcome }) => outcome === 'dropped').map(({ rule }) => rule)).toEqual([
      'hundreds by their sound',
    ]);
    expect(figuresOf(text, CONTEXT)).toBe('10 mm');
  });

  test('six hundred books are dollars where those are paid', () => {
    const us: ReadContext = { ...HEARD, units: 'us', region: 'US' };
    expect(figuresOf('The mahogany is six hundred forty books.', us)).toBe('640 USD');
  });

  test.each([
    ['The lead comes for hundred and ten euros.', 410, 110],
    ['The gap is for 60 mil.', 60, 460],
    ['The lap is to hundred and five mil.', 205, 105],
  ])('"%s" may be two numbers: %d, or %d', (text, value, other) => {
    const [figure] = readMemo(text, HEARD).notes.figures;
    expect(figure?.value).toBe(value);
    expect(figure?.alternatives?.map((one) => one.value)).toContain(other);
    expect(readMemo(text, CONTEXT).notes.figures[0]?.alternatives).toBeUndefined();
  });

  test('is told with its reason, and keeps the words of the memo', () => {
    const [repair] = findRepairs('The sill is 20 to mil thick.', HEARD);
    expect(repair).toMatchObject({ start: 12, end: 17, means: '22', rule: 'a number by its sound' });
    expect(readMemo('The sill is 20 to mil thick.', HEARD).notes.figures[0]?.quote).toContain('20 to mil');
  });
});

test.each([
  ['the heater draws twelve-point eight amps', '12.8 A'],
  ['the table is 7 hundred and fifty millimetres long', '750 mm'],
])('"%s" says %s, typed too', (text, figures) => expect(figuresOf(text, CONTEXT)).toBe(figures));

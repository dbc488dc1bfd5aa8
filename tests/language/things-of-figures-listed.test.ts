/** Which thing a figure is said of, and what of it, where the verb or the size is left out or stands elsewhere. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const figuresOf = (text: string) =>
  readMemo(text, CONTEXT).notes.figures.map(
    ({ item, attribute, value, unit }) => `${item}: ${attribute} ${value} ${unit}`,
  );

describe('things that are listed with their numbers', () => {
  test.each([
    [
      'Posts are 200 square, tie beams 200 by 250, braces hundred by two hundred.',
      [
        'posts: size 200 mm',
        'tie beams: size 200 mm',
        'tie beams: size 250 mm',
        'braces: size 100 mm',
        'braces: size 200 mm',
      ],
    ],
    ['Sockets at 450 to the bottom, switches 1200.', ['sockets: height 450 mm', 'switches: height 1200 mm']],
    [
      'Treads are thirty two thick and the risers eighteen.',
      ['treads: thickness 32 mm', 'risers: thickness 18 mm'],
    ],
    ['Screws, two per joist, fifty mil.', ['screws: length 50 mm']],
    [
      "Floor joists. They're at 400 centres, 47 by 200, spanning 3.6. I've got fourteen up and there's four to go.",
      [
        'floor joists: other 400 mm',
        'floor joists: size 47 mm',
        'floor joists: size 200 mm',
        'floor joist: length 3.6 m',
        'floor joists: count 14 1',
        'floor joists: count 4 1',
      ],
    ],
    ['Pintles go in 120 from the top.', ['pintles from top: offset 120 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));

  test('what a thing does by so much is no other thing', () => {
    expect(figuresOf("The heater's connected, pulls 12.8 amps.")).toEqual(['heater: current 12.8 A']);
    expect(figuresOf('The beam is 140 deep, spans 3600.')).toEqual([
      'beam: depth 140 mm',
      'beam: length 3600 mm',
    ]);
  });
});

describe('what is spaced is named first', () => {
  test.each([
    ['Number fourteens through the cladding, every seventy five mil.', ['number fourteens: other 75 mm']],
    ['Points every six inches.', ['points: other 6 in']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('a verb that is a noun elsewhere', () => {
  test.each([
    [
      'Went with the 22 mil boards, the eighteens felt bouncy.',
      ['boards: thickness 22 mm', 'boards: thickness 18 mm'],
    ],
    ['The felt is 3 mil.', ['felt: thickness 3 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('what something runs off is no subject', () => {
  test('an aside between commas', () => {
    expect(figuresOf('Fridge is on at last, running off the bench supply, draws four amps.')).toEqual([
      'fridge: current 4 A',
    ]);
  });
});

describe('where a thing is', () => {
  test.each([
    [
      "Stopcock's moved, it's 300 off the floor now and 150 in from the door.",
      ['stopcock above floor: height 300 mm', 'stopcock from door: offset 150 mm'],
    ],
    ['The hood hangs 1700 from the ground.', ['hood above ground: height 1700 mm']],
    ['The valve is 200 from the floor joist.', ['valve from floor joist: offset 200 mm']],
    ['Outlets at eighteen inches.', ['outlets: height 18 in']],
    ['The joists are at sixteen inches.', ['joists: other 16 in']],
    ['Float switch cuts in at forty mil.', ['float switch: height 40 mm']],
    ["Frost line's thirty six inches.", ['frost line: depth 36 in']],
    ['Shower head wants to be 2100 up.', ['shower head: height 2100 mm']],
    ['Stumps are in the ground six hundred.', ['stumps: depth 600 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('how much a size changes by', () => {
  test.each([
    ["The lid'll overlap by fifteen all round.", ['lid overhang all round: offset 15 mm']],
    [
      'Width between the strings was 850 and it has to drop to 835.',
      ['strings: width 850 mm', 'strings: width 835 mm'],
    ],
    ['The wheelhouse comes down to 1700.', ['wheelhouse: height 1700 mm']],
    [
      "The waste wants a fall of one in forty so over two metres that's fifty.",
      ['waste fall: ratio 40 1', 'waste: length 2 m', 'waste: offset 50 mm'],
    ],
    ['The glass I cut four smaller.', ['glass: offset 4 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));

  test('how far one thing fouls another is no size of either', () => {
    const { figures } = readMemo('The tiller fouls the pushpit by about forty.', CONTEXT).notes;
    expect(figures.map(({ attribute, value }) => [attribute, value])).toEqual([['offset', 40]]);
  });
});

test('goods that are supposed to come are no job', () => {
  const { tasks } = readMemo('Ordered eight sheets of ply, supposed to turn up Friday.', CONTEXT).notes;
  expect(tasks).toEqual([]);
});

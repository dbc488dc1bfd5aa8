import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { figuresSaid } from '../../kit/figures-said.ts';
import { figuresTold } from '../../kit/told.ts';

test.each([
  ['not 905, 915 wide', '915 mm'],
  ["it ain't no sixteen foot wide, it's fifteen foot", '15 ft'],
  ['I quit on the nine inch spacing', 'none'],
  ['I figured on forty gallons but there is no room', 'none'],
  ['had them down as twelve hundred of lift, it is 1160 high', '1160 mm'],
  ["I'm not stretching it to two foot", 'none'],
  ["nine kilowatts won't carry this place", 'none'],
  ["three eighths won't hold a screw", 'none'],
  ["quarter inch ply's what I'd sketched", 'none'],
  ['twenty-five of foam was stingy', 'none'],
  ['780 wide is too much', 'none'],
  ['18 mil instead of 12 mil', '18 mm'],
])('"%s": what was turned down is no figure: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["the shelf is 900 wide and won't move", '900 mm'],
  ['the gap was twelve mil all the way', '12 mm'],
  ["I'm bringing it to 900", '900 mm'],
  ['it is 18 mil and the paint was rubbish', '18 mm'],
  ["780 wide is too much. It's three kilos of lid", '3 kg'],
])('"%s" stands: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

const CONTEXT = { units: 'us', region: 'US', recordedAt: '2026-03-02T17:00:00Z' } as const;
test.each([
  ['the jib is rated for 1,500 pounds, not two thousand', 1500, 'lb', 2000, 'lb'],
  ['the reed is 915 mil, not 905 mil', 915, 'mm', 905, 'mm'],
  ['three tons instead of two tons on the ram', 6000, 'lb', 4000, 'lb'],
  ['not six pints, eight pints of oil', 4, 'qt', 3, 'qt'],
  ['it takes 24 inches, not two feet', 24, 'in', 2, 'ft'],
  ["the nave ain't no sixteen foot wide. It's fifteen foot ten", 190, 'in', 16, 'ft'],
  ["thirty inches is wrong, it's for children, I'm going 34 inches", 34, 'in', 30, 'in'],
  ["three eighths won't hold a peg, so final answer half an inch", 0.5, 'in', 0.375, 'in'],
  ["I'm making it 60 millimetres, 75 millimetres is too open", 60, 'mm', 75, 'mm'],
  // Only the part of the inch is told of the old one: it is of the same whole.
  ['the sash is 21 and 3/8 inches, not five eighths', 21.375, 'in', 21.625, 'in'],
  ['the sash is 21 and 3/8 inches, not 20 and 5/8', 21.375, 'in', 20.625, 'in'],
  ['the gap is five eighths of an inch, not a half', 0.625, 'in', 0.5, 'in'],
] as const)('"%s": what is replaced is in a unit of its own as well', (said, value, unit, was, wasUnit) => {
  const [figure] = readMemo(said, CONTEXT).notes.figures;
  expect(figure).toMatchObject({ value, unit, replaces: { value: was, unit: wasUnit } });
});

test.each([
  ['The sashes are 732 wide, not 740, the 740 was to the outside of the bead.', '732 mm'],
  ["The berth is 1900 long, not 1850. The 1850 was to the trim, and I'd missed it.", '1900 mm'],
  ['910 high is too low, so it is 940 high. I cut the legs for the 910, all four.', '940 mm'],
  ['The rail is 320 wide, not 300. A step of 300 high stays.', '320 mm; 300 mm'],
  ['The lid is 500 wide, not 480 wide. The 480 long batten is fine.', '500 mm; 480 mm'],
])('"%s": a value given up is no new one when it is named again: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["Nine hundred is too low with the sink being one eighty deep, so it's nine thirty.", 930, 900],
  ['Six hundred is wrong for a door with a step behind it, so I want six fifty.', 650, 600],
])('"%s": what the sentence comes to is in the place of what was wrong', (said, value, was) => {
  const { figures } = readMemo(`The shelf is at ${was} high. ${said}`, {
    ...CONTEXT,
    units: 'metric',
    region: 'GB',
  }).notes;
  expect(figures.find((figure) => figure.value === value)).toMatchObject({
    unit: 'mm',
    replaces: { value: was, unit: 'mm' },
    item: 'shelf',
  });
});

test.each([
  ["I told you eighteen foot to the eave, it's seventeen foot ten.", 214, 'in', 18, 'ft'],
  ["I said 900 mm for the worktop but it's really 910 mm.", 910, 'mm', 900, 'mm'],
  ["I'd told everybody 40 kilos, they're 46 kilos.", 46, 'kg', 40, 'kg'],
  ['The bulkhead was going to be at 1800 mm from the doors, make it 1830 mm.', 1830, 'mm', 1800, 'mm'],
] as const)('"%s": what was told before is put right', (said, value, unit, was, wasUnit) => {
  const { figures } = readMemo(said, CONTEXT).notes;
  expect(figures).toHaveLength(1);
  expect(figures[0]).toMatchObject({ value, unit, replaces: { value: was, unit: wasUnit } });
});

test.each([
  ['I told you the door is 900 mm wide, and the shelf is 300 mm deep.', '900 mm; 300 mm'],
  ["I said 18 ft of rope, it's heavy.", '18 ft'],
])('"%s": nothing is put right: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test('what is put right is of the thing that had the value, whatever it is called now', () => {
  const { figures } = readMemo("I told you eighteen foot to the eave, it's seventeen foot ten.", {
    ...CONTEXT,
    knownItems: ['wall'],
    knownFigures: [{ item: 'wall', attribute: 'height', value: 18, unit: 'ft' }],
  }).notes;
  expect(figures.map(({ item }) => item)).toEqual(['wall']);
});

test('of a list the size is replaced that was mistaken', () => {
  const said = 'The tray is 810 by 900, not 800.';
  const { figures } = readMemo(said, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T18:00:00+01:00',
  }).notes;
  expect(figures.map(({ value, replaces }) => [value, replaces?.value])).toEqual([
    [810, 800],
    [900, undefined],
  ]);
});

test.each([
  ["It weighs 640 kilos, a good bit more than the 500 I'd told him.", [[640, 500]]],
  ['The shelf is 412 mm deep, more than the 400 we planned.', [[412, 400]]],
  ['The pin has to be longer than the 60 mm we have.', [[60, undefined]]],
])('"%s": what was told before is what it is compared with', (said, expected) => {
  const { figures } = readMemo(said, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T18:00:00+01:00',
  }).notes;
  expect(figures.map(({ value, replaces }) => [value, replaces?.value])).toEqual(expected);
});

test.each([
  ["The tank isn't 900 litres, it's 600.", '600 L'],
  ["The tank's 600, not 900 litres.", '600 L'],
  ["I said three metres forty, it's three fifty.", '3.5 m'],
  ["Nine hundred litres is too much, so I'm going six hundred.", '600 L'],
  ["I told you nine hundred litres last week, that was wrong, it's six hundred.", '600 L'],
])('"%s": measured as the one that was given up', (said, figure) => {
  expect(figuresTold(said)).toEqual([figure]);
});

test.each([
  ["The rail isn't two metres, it's 18 thick.", '18 mm'],
  ["It's not 905, it's 915.", '915 mm'],
  ["The tank isn't 900 litres, it's 40 mil wide.", '40 mm'],
])('"%s": measured in its own way', (said, figure) => {
  expect(figuresTold(said)).toEqual([figure]);
});

test.each([
  ["I said the battens were twelve mil. They're fourteen.", '14 mm'],
  ["In last week's video I said the lining was twelve mil. It's nine. Sorry.", '9 mm'],
  ["I told you the beam was two metres. It's 2.4.", '2.4 m'],
])('"%s": the next sentence puts right what was told before: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["I said the opening was 900 wide. It's 40 deep.", '900 mm; 40 mm'],
  ['I said the shelf was 900 wide. It was 860 before that.', '900 mm; 860 mm'],
  ['I said the shelf was 900 wide. The door is 760 wide.', '900 mm; 760 mm'],
])('"%s": another size, time or thing puts nothing right: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["It's no sixteen foot. It's fifteen ten.", ['unnamed 190 in for 16 ft']],
  ["It's no ten foot. It's nine four.", ['unnamed 112 in for 10 ft']],
  [
    'The bunk was going to be nineteen hundred by seven hundred, but Jo is six foot two, so it is two metres ten.',
    ['jo 74 in', 'bunk 2.1 m for 1900 mm'],
  ],
  ["I was going to make the shelf 700, but Mia is tall, so it's 760.", ['shelf 760 mm for 700 mm']],
  ['I was going to make the shelf 700, but the board is 300 wide.', ['board 300 mm']],
  ["There's no sixteen foot board.", ['board 16 ft']],
])('what holds in its place: %s', (text, read) => {
  const { figures } = readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes;
  const told = figures.map(
    ({ item, value, unit, replaces }) =>
      `${item} ${value} ${unit}${replaces ? ` for ${replaces.value} ${replaces.unit}` : ''}`,
  );
  expect(told).toEqual(read);
});

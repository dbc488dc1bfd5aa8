/** What was ordered and what came of it, and arrivals that tell neither number nor size. */
import { expect, test } from 'vitest';
import type { DeliveryNote } from '../../../src/language/notes.ts';
import { recordsIn } from '../../kit/records.ts';

const deliveries = (text: string) =>
  recordsIn(text).filter((note): note is DeliveryNote => note.kind === 'delivery');
const shown = ({ act, item, count, outOf, short, sizes, instead }: DeliveryNote) =>
  [
    `${act} ${item}`,
    ...(count === undefined ? [] : [`count ${count}${outOf === undefined ? '' : ` of ${outOf}`}`]),
    ...(short === undefined ? [] : [`${short} short`]),
    ...sizes.map(
      ({ attribute, value, unit, shouldBe }) =>
        `${attribute} ${value} ${unit}${shouldBe === undefined ? '' : ` for ${shouldBe}`}`,
    ),
    ...(instead ? [`${instead.came} for ${instead.ordered}`] : []),
  ].join(', ');

test.each([
  ['I ordered eight larch boards at 21 millimetres.', 'ordered larch boards, count 8, thickness 21 mm'],
  ["The boards have come and they're 18 not 21.", 'received boards, thickness 18 mm for 21'],
  ['The boards came today. Only six of the eight turned up.', 'received boards, count 6 of 8'],
  [
    'The larch boards arrived today. They are 18 millimetres thick and there are only six of them.',
    'received larch boards, count 6, thickness 18 mm',
  ],
  ['The ply came, two sheets short.', 'received ply, 2 short'],
  ['The hinges arrived, all twelve.', 'received hinges, count 12'],
  ['Five of the hinges came this morning.', 'received hinges, count 5'],
  ['The six boards came this morning.', 'received boards, count 6'],
  ["The glass turned up and it's six mil, I ordered four.", 'received glass, thickness 6 mm for 4'],
  ["The timber's here, nineteen lengths instead of twenty.", 'received timber, count 19 of 20'],
  ["The paint came but they've sent gloss instead of satin.", 'received paint, gloss for satin'],
  ['Twenty one of the twenty four slates turned up.', 'received slates, count 21 of 24'],
  ['Sixteen rafters came this morning, should have been eighteen.', 'received rafters, count 16 of 18'],
  ['The bed slats came Monday, fourteen of them, forty wide.', 'received bed slats, count 14, width 40 mm'],
  ['The panels arrived, birch instead of poplar.', 'received panels, birch for poplar'],
  ['The parcel came, four hinges and two latches.', 'received hinges, count 4'],
  ['The radiator came, it is 600 by 1000.', 'received radiator, size 600 mm, size 1000 mm'],
  [
    'the ply came this morning but it is eighteen mil not twenty one and theres only fourteen sheets',
    'received ply, count 14, thickness 18 mm',
  ],
])('"%s" tells of a delivery', (said, expected) => {
  expect(deliveries(said).map(shown)).toContain(expected);
});

test.each([
  'The boards have come.',
  'Windows are ordered, eight weeks.',
  "The oil turned up at nine, and it's in, three litres to the line on the glass.",
  'The steel came at night, and before breakfast the lintels were in their boxes, all three.',
  'Only six of the eight screws are in.',
  'The lid is 18 not 21.',
  'The windows arrived today, one of the four is cracked.',
  'The boards came today. Three of the eight are split.',
  'The cushions have come, they are ten centimetres too short.',
  'Did the six boards come?',
  'The glue came through the joint, two of the three.',
  'I ordered the timber by the metre last year, forty metres.',
  'My brother came, six foot four, and drank two beers.',
  'The paint came off, all of it.',
  'Two of the panes turned up broken.',
  'The lads came at eight and we cut twelve rafters.',
])('"%s" tells of none', (said) => {
  expect(deliveries(said).map(shown)).toEqual([]);
});

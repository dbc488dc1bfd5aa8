/** Goods that came or were ordered, with their count and sizes; and sizes of other things told beside them. */
import { expect, test } from 'vitest';
import { recordsIn } from '../../kit/records.ts';

const deliveries = (text: string) =>
  recordsIn(text).flatMap((note) =>
    note.kind === 'delivery'
      ? [
          [
            note.act,
            note.count,
            note.item,
            ...note.sizes.map(
              (size) => `${size.attribute} ${size.value} ${size.unit}/${size.shouldBe ?? '-'}`,
            ),
          ],
        ]
      : [],
  );

test.each([
  ['The slats came Monday, fourteen of them, forty wide.', [['received', 14, 'slats', 'width 40 mm/-']]],
  ['The slats came Monday, fourteen of them, and the shed is forty wide.', [['received', 14, 'slats']]],
  ["The boards came. They're 18 thick.", [['received', undefined, 'boards', 'thickness 18 mm/-']]],
  ['The boards came. Its 18 thick.', [['received', undefined, 'boards', 'thickness 18 mm/-']]],
  ['Eight boards came this morning.', [['received', 8, 'boards']]],
  ['The eight boards came this morning.', [['received', 8, 'boards']]],
  [
    'Six sheets of ply turned up, 600 by 1000.',
    [['received', 6, 'ply sheets', 'size 600 mm/-', 'size 1000 mm/-']],
  ],
  [
    "The windows came, they're 910 wide, I ordered 900.",
    [['received', undefined, 'windows', 'width 910 mm/900']],
  ],
  [
    'The boards came, a load of the good stuff, forty wide.',
    [['received', undefined, 'boards', 'width 40 mm/-']],
  ],
  ['The boards came, all 18 thick.', [['received', undefined, 'boards', 'thickness 18 mm/-']]],
  ['The boards came, those are 18 thick.', [['received', undefined, 'boards', 'thickness 18 mm/-']]],
])('"%s"', (text, told) => expect(deliveries(text)).toEqual(told));

test.each([
  'The boards came. We cut 18 off.',
  "The boards came. The shed's 18 thick.",
  "The oil's in, three litres to the line.",
  'About eight boards came this morning.',
  'One board came this morning.',
  'The boards came, a big heavy load of the good dark red stuff from the mill, forty wide.',
  'The boards came, and after that we went down to the yard with the trailer and had tea, forty wide.',
  'The boards came, and now 18 thick.',
])('"%s" tells no count and no size of goods', (text) => expect(deliveries(text)).toEqual([]));

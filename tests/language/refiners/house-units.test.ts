import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['The table is 85 centimetres high. The bench beside it is 45 high.', '85 cm; 45 cm'],
  ['The table is 85 centimetres high. The top is 28 thick.', '85 cm; 28 mm'],
  ['The table is 85 centimetres high. The wall is 2168 long and the rail 640.', '85 cm; 2168 mm; 640 mm'],
  ['The table is 850 high. The bench beside it is 45 high.', '850 mm; 45 mm'],
])('"%s" says %s', (said, figures) => {
  expect(figuresSaid(said, 'metric', 'NL')).toBe(figures);
});

test.each([
  ['the beams are sixty on eighty', '60 mm; 80 mm'],
  ['a window of 120 times 80', '120 mm; 80 mm'],
  ['it measures 2,10 by 1,20 metre', '2.1 m; 1.2 m'],
  ['the beams lie heart to heart 450', '450 mm'],
  ['the board is thick 18', '18 mm'],
  ['it is two metre fourteen in the length', '2.14 m'],
  ['plus minus 40 kilo', '40 kg about'],
  ['a pipe of three quarter zoll', '0.75 in'],
  ['the cable lies on 40 volt', '40 V'],
])('on the mainland "%s" says %s', (said, figures) => {
  expect(figuresSaid(said, 'metric', 'NL')).toBe(figures);
});

test.each([
  ['two times 450', '450 mm'],
  ['sixty on forty boards', 'none'],
])('on the islands "%s" is no section: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["the tank holds 180 litres and I've put 80 in", '180 L; 80 L'],
  ['put 12 in already', 'none'],
  ['the shelf is 80 in', '80 in'],
])('"in" behind what is put into something is no inch: "%s"', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

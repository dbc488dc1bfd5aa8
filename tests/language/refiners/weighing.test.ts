import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ["We hung the bell off the hoist's own scale. 430.", '430 kg'],
  ['Took her across the weighbridge this morning, stripped, at 4.86.', '4.86 t'],
  ['The saw table went on the bathroom scales. 96.', '96 kg'],
  ['Weighed the shaft with a load cell. On its own it is 172. The bench is 900 high.', '172 kg; 900 mm'],
  ['212 on the bathroom scale', '212 kg'],
  ["The anvil came up on the crane scale, 158, so the stand's all right", '158 kg'],
  ["I borrowed the farm scales and the label's a liar. It's 345.", '345 kg'],
  ['Then the weighbridge. Front is fine. 2,680 on the back.', '2680 kg'],
  ["It's not 21 kilos, is it, it's bigger. 31.", '31 kg'],
])('"%s" gives what a weighing gave: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  ["The model's to scale. It's 430.", '430 mm'],
  ['I scaled it off the drawing. 430.', '430 mm'],
  ['Over the weighbridge Friday, then I cut the shelf. 430.', '430 mm'],
  ['It came off the scales at 92 kilos. Door: planed, 688.', '92 kg; 688 mm'],
  ['The half scale drawing is up. Centre height is 165.', '165 mm'],
])('"%s" leaves a size a size: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  [
    "Sums. She was 530 bare. Floor's 58, bed and lockers 96, the kitchen 74. Add that up. 758.",
    '530 kg about; 58 kg; 96 kg; 74 kg; 758 kg',
  ],
  [
    "The loom's 228, the bench is 141. That's 369 on a floor that's rated for less.",
    '228 kg; 141 kg; 369 kg',
  ],
  ["The legs are 700, the top's 20, so that's 720", '700 mm; 20 mm; 720 mm'],
])('"%s" adds up in one unit: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

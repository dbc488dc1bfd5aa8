/** Numbers that count things, and numbers in like words that measure. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf, notesTold as notesOf } from '../../kit/told.ts';

describe('counted or measured', () => {
  test.each([
    ['Two long sill logs.', ['2 1']],
    ['Three deep drawers.', ['3 1']],
    ['Three deep.', ['3 mm']],
    ['Thirteen deep drawers.', ['13 1']],
    ['Thirty deep drawers.', ['30 mm']],
    ['The drawers are thirteen deep.', ['13 mm']],
    ["There's eighteen to be bent in.", ['18 1']],
    ["I've 64 bolts and I want seventy.", ['64 1', '70 1']],
    ["I've 64 bolts and I want seventy mil.", ['64 1', '70 mm']],
    ['She needs another fifteen off.', ['15 mm']],
    ['A 22 feeding cylinders.', ['22 mm']],
    ["There's forty left above the door.", ['40 mm']],
    ["There's four left above the door.", ['4 1']],
    ['Nine left to go.', ['9 1']],
    ['Nine left to do.', ['9 1']],
    ['Nine hundred odd joists.', ['900 1 about']],
    ['Joists, nine hundred odd.', ['900 1 about']],
    ['Five fence posts.', ['5 1']],
    ['225 off any ply.', ['225 mm']],
    ['Twelve off.', ['12 1']],
    ['Twenty more.', ['20 mm']],
    ['Twenty more than the bed.', ['20 mm']],
    ["I counted the panes, it's 61.", ['61 1']],
    ['I counted the tiles. A hundred and four.', ['104 1']],
    ['I cut the tiles. A hundred and four.', ['104 mm']],
    ['Two 200 amp hour batteries.', ['2 1', '200 Ah']],
    ['Six 90 mm screws.', ['6 1', '90 mm']],
    ['One 90 mm screw.', ['90 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    'So many of them, six of them.',
    'Six of the boards.',
    'She needs fifteen of them off.',
    'Twenty five fence posts.',
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

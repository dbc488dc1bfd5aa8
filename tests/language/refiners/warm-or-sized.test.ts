/** Bare numbers of how warm it is, and sizes told in like words. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf } from '../../kit/told.ts';

describe('warm or sized', () => {
  test.each([
    ["The room's sitting at nineteen.", ['19 degC']],
    ["The room's sitting at thirty five.", ['35 degC']],
    ["The room's sitting at thirty six.", ['36 mm']],
    ["The room's sitting at nineteen boards.", ['19 1']],
    ["The rail's sitting at nineteen.", ['19 mm']],
    ["The flow's set at fifty five.", ['55 degC']],
    ["The flow's set at twenty nine.", ['29 mm']],
    ["The flow's set at ninety.", ['90 degC']],
    ["The flow's set at ninety one.", ['91 mm']],
    ['No hotter than fifty.', ['50 degC at-most']],
    ['No longer than fifty.', ['50 mm at-most']],
    ['I heated them to two hundred.', ['200 degC']],
    ['I warmed it up to ninety in oil.', ['90 degC']],
    ['I moved it up to ninety.', ['90 mm']],
    ['Warmer in here already, fourteen with no stove.', ['14 degC']],
    ["The gap's cold, four at the top.", ['4 mm']],
    ['Held the thermometer under it. Sixty one.', ['61 degC']],
    ['Held the hammer under it. Sixty one.', ['61 mm']],
    ['Held the thermometer under it. Sixty one boards.', ['61 1']],
    ["It's been seven outside.", ['7 degC']],
    ['It got to thirty Saturday.', ['30 degC']],
    ["It's 22 in here and minus two out.", ['22 degC', '-2 degC']],
    ["The second coat goes on if it's above ten.", ['10 degC at-least']],
    ['Flow is 60 and return is 40.', ['60 degC', '40 degC']],
    ['Flow is 60 and the pipe is 40.', ['60 mm', '40 mm']],
    ['How warm is it, it was seventy one in here.', ['71 degC']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

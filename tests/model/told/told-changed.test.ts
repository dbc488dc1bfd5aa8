/** A change that is told beside something else, and what is told beside a thing and is no change of it. */
import { describe, expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

const found = (...memos: readonly string[]) => new ToldStory('metric', 'GB').hear(...memos).found();

describe('a clash', () => {
  test.each([
    [
      'beside the end of another job',
      [
        'The bench wants to be 920 high. I need to fit the fronts.',
        "The fronts are fitted, and I've dropped the bench to 915.",
      ],
      'decided: bench height 920 mm -> 915 mm',
    ],
    [
      'told as not so, whatever job is done',
      [
        'The walls are 2150 high. I need to lift the stove.',
        "The stove is lifted. The walls aren't 2150 high, they're 2115.",
      ],
      'remeasured: walls height 2150 mm -> 2115 mm',
    ],
    [
      'in parts of a millimetre',
      ['The cylinder bore is 76.2 mm in diameter.', "I measured the cylinder bore again, it's 76.8 mm."],
      'remeasured: cylinder bore diameter 76.2 mm -> 76.8 mm',
    ],
    [
      'in thousandths of an inch',
      ['The end play is two thou.', 'I measured the end play again, it is four thou.'],
      'remeasured: end play clearance 2 thou -> 4 thou',
    ],
    [
      'of an old plan that is told with the new size',
      ['I had drawn the coupling flange at 120 diameter. It fouls the pump. Reduced to 112 diameter.'],
      'decided: coupling flange diameter 120 mm -> 112 mm',
    ],
    [
      'of the other one of two',
      [
        'The water pump kicks in at 30 psi and quits at 50 psi.',
        'The water pump came on at 30 psi and cut out at 15 psi.',
      ],
      'slip: water pump pressure 50 psi -> 15 psi',
    ],
    [
      'told again to somebody who asked',
      ['The shed is 31 metres long.', 'For the lady drawing us up, the shed is 13 metres long.'],
      'slip: shed length 31 m -> 13 m',
    ],
    [
      'of many for one, changed on purpose',
      ['The battery is 110 amp hours.', "I've gone for a bigger battery, 440 amp hours."],
      'decided: battery other 110 Ah -> 440 Ah',
    ],
    [
      'of a limit, by what hangs on it altogether',
      [
        'The crane takes 250 kilos at most. The lathe is 190 kilos.',
        "I totted up what goes on the crane, lathe, vice, the lot, it's 268 kilos.",
      ],
      'limit: lathe weight 250 kg -> 268 kg',
    ],
  ] as const)('%s', (_name, memos, clash) => expect(found(...memos)).toEqual([clash]));
});

describe('no clash', () => {
  test.each([
    ['thousandths said again', ['The end play is 2 thou.', 'The end play is 2 thou, measured.']],
    ['whole millimetres stay a millimetre', ['The plate is 9 mm thick.', 'The plate is 9.4 mm thick.']],
    [
      'a thing and what it goes into',
      ['The fridge is 595 wide.', "The fridge cavity's framed, 605 wide, so five a side."],
    ],
    [
      'both of two said again',
      [
        'The water pump kicks in at 30 psi and quits at 50 psi.',
        'The water pump came on at 30 psi and cut out at 50 psi.',
      ],
    ],
  ] as const)('%s', (_name, memos) => expect(found(...memos)).toEqual([]));
});

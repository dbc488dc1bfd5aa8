/** Values that are told only to be turned down, and values that stand. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf, notesTold as notesOf } from '../../kit/told.ts';

describe('turned down or not', () => {
  test.each([
    ["900's wrong, I'm going 930.", ['930 mm']],
    ["900's wrong, the door is 930.", ['930 mm']],
    ['Nine kilowatts will carry this place.', ['9 kW']],
    ["Nine kilowatts won't surprise anyone.", ['9 kW']],
    ["Quarter inch ply's what I have.", ['0.25 in']],
    ['Because 850 is the new rule.', ['850 mm']],
    ["I told you it's nine metres. That was right.", ['9 m']],
    ["I told you it's nine metres. That was the wrong way.", ['9 m']],
    ["It's nine metres. It's wrong to say so.", ['9 m']],
    ["It's not 905, it's 915.", ['915 mm']],
    ["It's 915, not 905.", ['915 mm']],
    ["It's 905 instead of 18.", ['905 mm']],
    ["I'm making it sixty, seventy-five is too open.", ['60 mm']],
    ["Nine hundred's too low with the sink that deep, so it's nine thirty.", ['930 mm']],
    ["Nine hundred's too low with the sink that deep, and the door's nine thirty.", ['930 mm']],
    ["I'm going to give her forty horsepower, and it's dear.", ['40 hp']],
    ['I was thinking 100 gallon.', ['100 gal']],
    ["I'm not going for 900, it's 880.", ['880 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    '780 is too high.',
    '905 was wrong.',
    '780 felt a bit mean.',
    '780 is no good.',
    "780 isn't enough.",
    "Nine kilowatts won't carry this place.",
    "Quarter inch ply's what I'd sketched.",
    'Forty was the plan.',
    'Forty mil was the plan.',
    'Because 850 is the old rule.',
    "I told you it's nine metres. That was wrong.",
    "I was going to give her forty horsepower, but it's dear.",
    "I was thinking 100 gallon but it won't fit.",
    "I'm not going to 900.",
    "A good bit more than the 500 I'd told him.",
    "More than the 500 he'd told me.",
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

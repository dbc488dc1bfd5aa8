import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  [
    'the same thing by another word before it',
    [
      'The bench legs are 720 millimetres long.',
      'Change of plan, the ash legs go up from 720 to 750 millimetres long.',
    ],
    ['decided: bench legs length 720 mm -> 750 mm'],
  ],
  [
    'a part named by its short name, the old size said beside the new one',
    [
      'The side hatch opening is 640 millimetres wide. The roof hatch is 500 millimetres wide.',
      'I measured the side hatch again, it is not 640, it is 652 millimetres wide.',
    ],
    ['remeasured: side hatch opening width 640 mm -> 652 mm'],
  ],
  [
    'a name that nobody used before, with the old value denied',
    [
      'The choir stalls are 2310 millimetres wide.',
      "I ran the laser across by the font, it's 2296 millimetres, not 2310 millimetres.",
    ],
    ['remeasured: choir stalls width 2310 mm -> 2296 mm'],
  ],
  [
    'a thing of another measure, with the old value denied in the sentence before',
    [
      'The loom frame is 85 inches tall. The loom bench is 21 inches tall.',
      "I taped the left post. It isn't 85 inches. It's 83 and a half inches, I'd hooked the tape on the bolt.",
    ],
    ['remeasured: loom frame height 85 in -> 83.5 in'],
  ],
  [
    'a size found wrong, and what was chosen in its place',
    [
      'The anvil stand is 700 millimetres high.',
      "I stood at it for an hour and seven hundred's wrong, it's for a dwarf, I'm going 760 millimetres.",
    ],
    ['decided: anvil stand height 700 mm -> 760 mm'],
  ],
])('%s', (_name, talk, found) => {
  expect(new ToldStory().hear(...talk).found()).toEqual(found);
});

test.each([
  [
    'another thing of its kind',
    'The bench legs are 720 millimetres long.',
    'I measured the stool legs, they are 450 millimetres long.',
  ],
  [
    'the other side',
    'The port bunk is 1900 millimetres long.',
    'I measured the starboard bunk, it is 1880 millimetres long.',
  ],
  [
    'the same value by another name',
    'The bench legs are 720 millimetres long.',
    'I measured the ash legs, they are 720 millimetres long.',
  ],
  [
    'another measure',
    'The bench top is 900 millimetres high.',
    'I decided that the bench top is 600 millimetres deep.',
  ],
  [
    'an old value that two things share',
    'The pew ends are 900 millimetres high. The hymn board is 900 millimetres wide.',
    "I measured by the door, it's 880 millimetres, not 900 millimetres.",
  ],
  ['the same in inches', 'The shelf is 12 inches deep.', 'I measured the shelf, it is 305 millimetres deep.'],
])('%s is no clash', (_name, first, second) => {
  expect(new ToldStory().hear(first, second).found()).toEqual([]);
});

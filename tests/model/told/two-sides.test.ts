/** Sizes told by two sides: which side of the earlier pair a new one is held against. */
import { expect, test } from 'vitest';
import { ToldStory } from '../../kit/told-story.ts';

test.each([
  [
    'The stable door is 760 by 1830 millimetres.',
    'The stable door came, it is 760 by 1905 millimetres.',
    ['decided: stable door size 1830 mm -> 1905 mm'],
  ],
  [
    'The pane is 420 millimetres wide and 310 millimetres high.',
    'The glazier rang, the pane is 420 by 330 millimetres.',
    ['decided: pane height 310 mm -> 330 mm'],
  ],
  ['The tray is 24 by 24 inches.', 'The tray is 24 by 26 inches.', ['remeasured: tray size 24 in -> 26 in']],
])('"%s" and then "%s"', (first, second, found) => {
  expect(new ToldStory().hear(first, second).found()).toEqual(found);
});

test.each([
  ['the same two turned about', 'The lid is 900 by 240 millimetres.', 'The lid is 240 by 900 millimetres.'],
  [
    'other stock of the name',
    'The battens are 50 by 25 millimetres.',
    'The battens are 38 by 19 millimetres.',
  ],
  [
    'another one of the name, far off in one side',
    'The windows are 600 by 450 millimetres.',
    'The windows are 600 by 300 millimetres.',
  ],
])('%s is no clash', (_name, first, second) => {
  expect(new ToldStory().hear(first, second).found()).toEqual([]);
});

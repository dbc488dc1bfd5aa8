import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['sixteen hours between coats', '16 h'],
  ['it went off in forty minutes', '40 min'],
  ['keep the slab wet seven days', '7 d'],
  ['held at three bar for an hour', '3 bar; 1 h'],
  ['pot life is twenty minutes', '20 min'],
  ['it trips after ten seconds', '10 s'],
])('"%s" is the time of a process: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

test.each([
  'the windows come in eight weeks',
  'it took me three hours',
  'two days ago',
  'they are saying ten days',
  'delivery is a fortnight, maybe three weeks',
  'I have been at this for six months',
])('"%s" is the calendar', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

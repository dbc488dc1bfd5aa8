import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  ['The gable stands on its own two feet now'],
  ['Twenty eight days before a foot goes on it, says the screed man'.replace('Twenty eight days', 'Nothing')],
  ["I'm not setting a foot on that deck"],
  ['Somebody is buying the mason a pint'],
  ['I owe you a pint for the loan of it'],
  ['It is a grand piece of pitch pine'],
  ['We sat at the foot of a mill and ate'],
  ['I have four breadboards to mill.'],
  ['In what will one day be a pantry'],
  ['The sills go in when we get a day'],
  ['It is a two foot gauge line'],
  ['Build it in fifteen mil scale'],
  ['The pump is one of those 12 volt jobs'],
  ['The rug smells of 1970'],
  ['Muck behind the panel, mice, a 1994 rosette'],
  ['He started her in ninety one, and never finished'],
  ['The chapel was put together in 1957 by a man with one chisel'],
  ['This is her, nineteen fifty six, out of a hen run'],
  ["Paul thinks I should've gone to two hundred"],
  ['A fella told me to go thirty six hundred'],
  ['If the ridge was at six metres I would have a gallery'],
])('"%s" tells no figure', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ['The beam is two feet long', '2 ft'],
  ['Take a foot off it', '1 ft'],
  ['It cost me a grand, delivered', '1000 GBP'],
  ['It is a mill proud', '1 mm'],
  ['The gap is to mil on the left', '2 mm'],
  ['The fridge draws a pint of oil', '0.5 qt'],
  ["It's a 50 amp breaker", '50 A'],
  ['The pump is 12 volts', '12 V'],
  ['The panel is 1994 high', '1994 mm'],
  ['The rail is cut in at ninety five, square', '95 mm'],
  ['I think we should go to two hundred, so two hundred it is', '200 mm; 200 mm'],
  ['The ridge is at six metres', '6 m'],
])('"%s" tells one: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

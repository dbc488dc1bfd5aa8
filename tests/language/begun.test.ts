import { expect, test } from 'vitest';
import { readBegun } from '../../src/language/statements/begun.ts';

const begun = (said: string) => readBegun(said).map(({ quote }) => quote);

test.each([
  "We've started planking the port side.",
  'I just started on the kitchen floor this morning.',
  'I began to strip the varnish off the doors.',
  'Made a good start on the wall lining.',
  'We got stuck into the wiring behind the panel.',
  "I'm halfway through the caulking.",
  "I'm in the middle of fairing the keel.",
  'The insulation is half done.',
  "The bunk's nearly finished.",
  "I didn't get the ramp finished.",
  "We haven't finished the roof felt yet.",
  "I couldn't get it all done before dark.",
  'Four of the seven posts are in.',
  'That leaves two more to go.',
  "I've left the frame in clamps.",
  'We left the two deck boards soaking.',
  'The second rib is still in the steamer.',
  "The top coat's still drying.",
  'We got as far as the third joist.',
  'We ran out of daylight on the north wall.',
  'I had to stop before the last row of tiles.',
  'I’ve started the gable window.',
])('"%s" tells of work begun', (said) => {
  expect(begun(`Morning all. ${said} That is it.`)).toEqual([said]);
});

test.each([
  'We started at seven thirty.',
  'I started the generator and it ran well.',
  'It started to rain.',
  'I started to worry about the seam.',
  "I haven't started the deck yet.",
  "When we've started the deck I will show you.",
  'If I got as far as the roof I would be glad.',
  "We're halfway through the week.",
  'Have you started on the fence?',
  "I'll start on the fence tomorrow.",
  'The fence is finished.',
  'Last year we got as far as the gate.',
  'The bench is 40 mm wide.',
  'I left the keys in the van.',
  'I left it to the roofer.',
  'Once it is half done we film it.',
  'Half of the budget is spent.',
  'We started from scratch with the drawing.',
])('"%s" tells of none', (said) => {
  expect(begun(said)).toEqual([]);
});

test('a text without a stop is looked through quickly', () => {
  const started = performance.now();
  expect(begun('I have left the started '.repeat(8000))).toEqual([]);
  expect(begun('we got half of the two '.repeat(25).concat('. ').repeat(400))).toEqual([]);
  expect(performance.now() - started).toBeLessThan(3000);
});

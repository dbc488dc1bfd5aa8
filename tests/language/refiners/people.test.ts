import { expect, test } from 'vitest';
import { figuresSaid } from '../../kit/figures-said.ts';

test.each([
  "I'm six foot two",
  'my aunt is eighty',
  "I'm forty-seven",
  "he's about five eleven",
  "when I'm 64",
  'it is low, me being six foot two',
])('"%s" is a person and no figure', (said) => {
  expect(figuresSaid(said)).toBe('none');
});

test.each([
  ["she's eleven point two metres from bumper to bumper", '11.2 m'],
  ["she's 1,180 kilos on the crane", '1180 kg'],
  ["I'm 40 mil short at the back", '40 mm'],
  ["we're 15 mil out", '15 mm'],
])('"%s" is the build: %s', (said, figures) => {
  expect(figuresSaid(said)).toBe(figures);
});

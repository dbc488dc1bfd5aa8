import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    "I've got to get three cables eight mil across down a 20 mil conduit.",
    'cable=8 mm; cable=8 mm; cable=8 mm; bore=20 mm',
  ],
  [
    'Three half inch cables need to go through a two inch conduit.',
    'cable=0.5 in; cable=0.5 in; cable=0.5 in; bore=2 in',
  ],
  ["There's four 6 mil cables to go in the 20 mil conduit.", 'bore=20 mm'],
  ['The 20 mil conduit has to take two 8 mil cables.', 'bore=20 mm'],
  ["I'm running two cables of 8 mil through a 20 mil bore conduit.", 'cable=8 mm; cable=8 mm; bore=20 mm'],
  [
    "The conduit's 20 mil inside and I've got two cables to pull down it, 8 mil each.",
    'cable=8 mm; cable=8 mm; bore=20 mm',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`conduit fill: ${inputs}`]);
});

test.each([
  'The cable has to go through the pipe.',
  'Three cables went down the 20 mil conduit.',
  'The conduit is 20 mil.',
  'The cable has to go through a 20 mil conduit.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('a conduit has a bore, also where its size stands beside cables', () => {
  expect(checksIn('Two cables 9 mil across have to go down a 25 mil conduit.')).toEqual([
    'conduit fill: cable=9 mm; cable=9 mm; bore=25 mm',
  ]);
});

import { expect, test } from 'vitest';
import { kinship } from '../../src/model/names.ts';

test.each([
  ['the bench top', 'top of the bench'],
  ['stair treads, as they should be', 'stair treads, as cut'],
  ['brackets as bent', 'the brackets'],
  ['treads thursday', 'treads'],
  ['window', 'window opening'],
  ['both side panels', 'side panel'],
])('"%s" and "%s" are one thing', (said, known) => {
  expect(kinship(said, known)).toBe('same');
});

test.each([
  ['hatch', 'side hatch', 'shorter'],
  ['oak bench top', 'bench top', 'longer'],
  ['left side panel', 'side panel', 'sort'],
  ['port bunk', 'starboard bunk', 'rival'],
  ['ash legs', 'bench legs', 'rival'],
  ['window sill board', 'window', 'apart'],
  ['washer', 'washer niche', 'apart'],
] as const)('"%s" beside "%s" is %s', (said, known, kin) => {
  expect(kinship(said, known)).toBe(kin);
});

/** Inputs that take every figure of some things. */
import { expect, test } from 'vitest';
import { groupWords, isInGroup } from '../../../src/model/checks/group-words.ts';

test.each([
  ['every weight', { attribute: 'weight' }],
  ['every battery weight', { attribute: 'weight', name: 'battery' }],
  ['every weight in aft locker', { attribute: 'weight', place: 'aft locker' }],
  ['every kiln shelf weight on trolley', { attribute: 'weight', name: 'kiln shelf', place: 'trolley' }],
  ['All shelf thickness', { attribute: 'thickness', name: 'shelf' }],
])('"%s" is a group', (words, group) => {
  expect(groupWords(words)).toEqual(group);
});

test.each(['battery weight', 'every', 'every battery', '40 kg', 'everything weight'])(
  '"%s" is none',
  (words) => {
    expect(groupWords(words)).toBeUndefined();
  },
);

test.each([
  ['every battery weight', 'starter battery', undefined, true],
  ['every battery weight', 'batteries', undefined, true],
  ['every battery weight', 'battery box', undefined, false],
  ['every starter battery weight', 'leisure battery', undefined, false],
  ['every weight in roof', 'solar panels', 'roof', true],
  ['every weight in roof', 'roof box', undefined, true],
  ['every weight in roof', 'solar panels', 'barn floor', false],
  ['every weight in roof', 'roof', undefined, false],
  ['every weight in aft locker', 'chain', 'bow locker', false],
  ['every weight in locker', 'chain', 'bow locker', true],
  ['every shelf weight in kiln', 'top shelf', 'kiln', true],
  ['every shelf weight in kiln', 'top shelf', undefined, false],
])('"%s" of %s, said to be in %s: %s', (words, name, place, isIn) => {
  const group = groupWords(words);
  if (!group) throw new Error(`"${words}" is no group`);
  expect(isInGroup(group, { name, ...(place === undefined ? {} : { place }) })).toBe(isIn);
});

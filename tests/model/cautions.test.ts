import { expect, test } from 'vitest';
import { CAUTIONS, cautionsFor } from '../../src/model/cautions.ts';

const idsFor = (...texts: string[]) => cautionsFor(texts).map(({ id }) => id);

test.each([
  ['Mixed the epoxy at noon.', 'epoxy'],
  ['EPOXY everywhere', 'epoxy'],
  ['the shore-power inlet', 'mains-ac'],
  ['a two  part\nresin', 'epoxy'],
  ['LiFePO4 cells came', 'lithium'],
])('"%s" touches on %s', (text, id) => {
  expect(idsFor(text)).toContain(id);
});

test.each([
  'it remains dry',
  'voided the warranty',
  'the welded-looking lead time',
  'a torch and a mould',
  'sanded nothing at all',
])('"%s" touches on nothing', (text) => {
  expect(idsFor(text)).toEqual([]);
});

test('a hazard is named once however often it is spoken of', () => {
  expect(idsFor('epoxy, epoxy and hardener', 'more epoxy')).toEqual(['epoxy']);
});

test('every caution fires on each of its own triggers and names who decides and its source', () => {
  expect(CAUTIONS).toHaveLength(45);
  expect(new Set(CAUTIONS.map(({ id }) => id)).size).toBe(CAUTIONS.length);
  for (const { id, triggers, caution, defer, source } of CAUTIONS) {
    for (const trigger of triggers) expect(idsFor(`the ${trigger}, today`)).toContain(id);
    for (const words of [caution, defer, source]) expect(words.length).toBeGreaterThan(10);
  }
});

import { expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import { singular } from '../../src/language/lexicon/trade-nouns.ts';
import { bracketed } from '../kit/bracketed.ts';
import { LEARNED, UNSEEN } from '../kit/said-of.ts';

/** Heads of the things named, in the order of the figures. */
const heads = (items: readonly string[]) => items.map((item) => singular(item.split(' ').at(-1) ?? ''));

const read = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  return readItems(text, quantities, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' });
};

test.each([...LEARNED, ...UNSEEN])('"%s" is of %s', (said, items) => {
  const { figures, trace } = read(said);
  expect(heads(figures.map(({ item }) => item)), trace.map(({ why }) => why).join('; ')).toEqual(
    heads(items.split(', ')),
  );
});

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

const THINGS =
  'bunk locker seat bench rail shelf hatch table door floor wall lid pipe cable motor stove beam keel'.split(
    ' ',
  );

test.each(THINGS)(
  'what is said of the %s in a sentence of its own is not of another thing before it',
  (thing) => {
    for (const other of THINGS.filter((one) => one !== thing)) {
      for (const said of [
        `The ${other} is [50] thick. The ${thing} is [15] thick.`,
        `I fitted the ${other} today, it is fine. The ${thing} is [640] long.`,
      ])
        expect(heads([read(said).figures.at(-1)?.item ?? '']), said).toEqual([thing]);
    }
  },
);

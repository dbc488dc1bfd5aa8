/** What speaks for the size of each annotated length of a story, with the right one marked: what size weights are fitted on. */
import { readItems } from '../src/language/items/assign-items.ts';
import type { SizeWeights } from '../src/language/items/size-choice.ts';
import type { Evidence } from '../src/language/items/size-evidence.ts';
import { isSize, type Size } from '../src/language/items/sizes.ts';
import { bracketed } from '../tests/kit/bracketed.ts';
import { sameItem } from '../tests/kit/score-story.ts';
import { SIZES_LEARNED } from '../tests/kit/sizes-said.ts';
import type { Story } from '../tests/kit/story.ts';
import { readFiguresOf } from './figures-of-story.ts';

export interface SizeCase {
  /** Memo, sentence and annotated item, to print. */
  readonly told: string;
  readonly evidence: Evidence;
  readonly right: Size;
  /** How much the case counts in fitting. */
  readonly weight: number;
  readonly story: string;
  /** Whether the thing that the size is of was found. */
  readonly isItemRight: boolean;
}

/** The lengths of a story, read with these weights. */
export function casesOf(story: Story, weights: SizeWeights, weight: number): SizeCase[] {
  const cases: SizeCase[] = [];
  readFiguresOf(story, ({ memo, goldOf, quantityAt }) => ({
    sizeWeights: weights,
    observeSize: (_, k, evidence, name) => {
      const gold = goldOf(k);
      if (!gold || !isSize(gold.attribute)) return;
      const { start, end } = quantityAt(k).span;
      const flat = (from: number, to: number) => memo.text.slice(Math.max(0, from), to).replace(/\s+/g, ' ');
      cases.push({
        told: `${story.story} ${memo.id} "${flat(start - 110, start)}[${flat(start, end)}]${flat(end, end + 50)}" OF ${gold.item} | ${name.join(' ')}`,
        evidence,
        right: gold.attribute,
        weight,
        story: story.story,
        isItemRight: sameItem(gold.item, name.join(' ')),
      });
    },
  }));
  return cases;
}

/** Our own sentences, each with the sizes that it tells. */
export function exampleCases(weights: SizeWeights, weight: number): SizeCase[] {
  const cases: SizeCase[] = [];
  for (const [marked, sizes] of SIZES_LEARNED) {
    const { text, quantities } = bracketed(marked);
    const wanted = sizes.split(', ');
    readItems(
      text,
      quantities,
      { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' },
      {
        sizeWeights: weights,
        observeSize: (_, k, evidence) =>
          cases.push({
            told: marked,
            evidence,
            right: wanted[k] as Size,
            weight,
            story: `example ${marked}`,
            isItemRight: true,
          }),
      },
    );
  }
  return cases;
}

/** Evidence that was written while looking at the worked stories, and looks better there than it is. */
const TUNED = /^(?:rule|first|said|frame|likely|usual|no rule)\b/;

/** The case as it would be had none of the rules been written for it. */
export const untuned = (one: SizeCase): SizeCase => ({
  ...one,
  evidence: {
    votes: one.evidence.votes.filter(([source]) => !TUNED.test(source)),
    signs: one.evidence.signs.filter((sign) => !TUNED.test(sign)),
  },
});

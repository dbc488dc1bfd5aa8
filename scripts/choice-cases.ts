/** What is weighed for each figure of an annotated story, with the right things marked: what the weights are fitted on. */
import { readItems } from '../src/language/items/assign-items.ts';
import type { Chosen, Weights } from '../src/language/items/choice.ts';
import { completedName } from '../src/language/items/completed-names.ts';
import { FRAMES } from '../src/language/items/frames/index.ts';
import type { Site } from '../src/language/items/site.ts';
import { singular } from '../src/language/lexicon/trade-nouns.ts';
import { bracketed } from '../tests/kit/bracketed.ts';
import { LEARNED } from '../tests/kit/said-of.ts';
import { sameItem } from '../tests/kit/score-story.ts';
import type { Story } from '../tests/kit/story.ts';
import { readFiguresOf } from './figures-of-story.ts';

export interface Case {
  /** Memo, sentence and annotated item, to print. */
  readonly told: string;
  readonly candidates: readonly {
    readonly key: string;
    readonly features: readonly (readonly [string, number])[];
    readonly isRight: boolean;
    readonly isBest: boolean;
  }[];
}

const wordsOf = (name: string) =>
  new Set(
    name
      .toLowerCase()
      .split(/[\s,-]+/)
      .filter((word) => !/^(?:|the|a|an|of|its|as|they|should|be)$/.test(word))
      .map(singular),
  );

/** How alike two names are: twice the shared words by all words. */
function likeness(a: string, b: string): number {
  const x = wordsOf(a);
  const y = wordsOf(b);
  const shared = [...x].filter((word) => y.has(word)).length;
  return (2 * shared) / Math.max(1, x.size + y.size);
}

/** What was weighed for one quantity, with the right ones marked; the best are those most like the annotated name. */
function caseOf(site: Site, chosen: Chosen | undefined, item: string, where: string): Case {
  const { text } = site.parse;
  const { start, end } = site.parse.words[site.at]?.span ?? { start: 0, end: 0 };
  const flat = (from: number, to: number) => text.slice(Math.max(0, from), to).replace(/\s+/g, ' ');
  const found = (chosen?.weighed ?? []).map(({ candidate, features }) => {
    const name = completedName(site, candidate.name).join(' ');
    return { key: candidate.key, features, isRight: sameItem(item, name), alike: likeness(item, name) };
  });
  const most = Math.max(0, ...found.filter((c) => c.isRight).map((c) => c.alike));
  return {
    told: `${where} "${flat(start - 160, start)}[${flat(start, end)}]${flat(end, end + 60)}" GOLD ${item}`,
    candidates: found.map(({ key, features, isRight, alike }) => ({
      key,
      features,
      isRight,
      isBest: isRight && alike > most - 0.12,
    })),
  };
}

const EXAMPLES_COUNT = 9;

/** The frames' own examples and some sentences more, each with the item that it stands for. */
export function exampleCases(weights: Weights): Case[] {
  const cases: Case[] = [];
  for (const [marked, items] of [...FRAMES.flatMap((frame) => frame.examples), ...LEARNED]) {
    const { text, quantities } = bracketed(marked);
    const wanted = items.split(', ');
    readItems(
      text,
      quantities,
      { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' },
      {
        weights,
        observe: (site, k, chosen) => cases.push(caseOf(site, chosen, wanted[k] ?? '', 'example')),
      },
    );
  }
  // Few sentences, each for a way of speaking: they count as much as a handful of figures in a story.
  return Array.from({ length: EXAMPLES_COUNT }, () => cases).flat();
}

export function casesOf(story: Story, weights: Weights): Case[] {
  const cases: Case[] = [];
  readFiguresOf(story, ({ memo, goldOf }) => ({
    weights,
    observe: (site, k, chosen) => {
      const gold = goldOf(k);
      if (gold) cases.push(caseOf(site, chosen, gold.item, `${story.story} ${memo.id}`));
    },
  }));
  return cases;
}

/** What is weighed for each figure of an annotated story, with the right things marked: what the weights are fitted on. */
import { readItems } from '../src/language/items/assign-items.ts';
import type { Chosen, Weights } from '../src/language/items/choice.ts';
import { completedName } from '../src/language/items/completed-names.ts';
import { FRAMES } from '../src/language/items/frames/index.ts';
import type { Site } from '../src/language/items/site.ts';
import { singular } from '../src/language/lexicon/trade-nouns.ts';
import type { KnownFigure } from '../src/language/notes.ts';
import { readQuantities } from '../src/language/quantities.ts';
import { tokenise } from '../src/language/tokens.ts';
import { bracketed } from '../tests/kit/bracketed.ts';
import { LEARNED } from '../tests/kit/said-of.ts';
import { sameItem, sameQuantity } from '../tests/kit/score-story.ts';
import type { GoldFigure, GoldMemo, Story } from '../tests/kit/story.ts';

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

/** The annotated figure that a read quantity is, as the scorer would match them. */
function goldOf(
  memo: GoldMemo,
  quantity: { span: { start: number; end: number }; value: number; unit: string; high?: number },
  used: Set<GoldFigure>,
) {
  const overlap = (figure: GoldFigure) => {
    const start = memo.text.indexOf(figure.quote);
    return Math.min(start + figure.quote.length, quantity.span.end) - Math.max(start, quantity.span.start);
  };
  const [best] = (memo.figures ?? [])
    .filter((figure) => figure.dimension !== 'count' && !used.has(figure) && sameQuantity(figure, quantity))
    .sort((a, b) => overlap(b) - overlap(a));
  if (best) used.add(best);
  return best;
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
  const known: KnownFigure[] = [];
  for (const memo of story.memos) {
    const context = {
      units: story.units,
      ...(story.region ? { region: story.region } : {}),
      recordedAt: memo.recordedAt,
      knownItems: [...new Set(known.map((figure) => figure.item))],
      knownFigures: [...known],
    };
    const { quantities } = readQuantities(memo.text, tokenise(memo.text), context);
    const used = new Set<GoldFigure>();
    const { figures } = readItems(memo.text, quantities, context, {
      weights,
      observe: (site, k, chosen) => {
        const quantity = quantities[k];
        if (!quantity || quantity.dimension === 'count') return;
        const gold = goldOf(memo, quantity, used);
        if (!gold) return;
        cases.push(caseOf(site, chosen, gold.item, `${story.story} ${memo.id}`));
      },
    });
    for (const { item, attribute, value, unit, limit } of figures)
      if (!limit?.about) known.push({ item, attribute, value, unit });
  }
  return cases;
}

/** The same story with few stops and no commas, as a recogniser may write it; quotes follow. */
export function unpunctuated(story: Story): Story {
  const strip = (text: string) => text.replace(/,(?!\d)/g, '').replace(/[.!?](?= [A-Za-z])/g, '');
  return {
    ...story,
    story: `${story.story} bare`,
    memos: story.memos.map((memo) => ({
      ...memo,
      text: strip(memo.text),
      figures: (memo.figures ?? []).map((figure) => ({ ...figure, quote: strip(figure.quote).trim() })),
    })),
  };
}

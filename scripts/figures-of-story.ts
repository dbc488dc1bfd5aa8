/** Reads a story's figures as a project would, with an eye on what is weighed for each: what weights are fitted on. */
import { type Choice, type ItemQuantity, readItems } from '../src/language/items/assign-items.ts';
import type { KnownFigure } from '../src/language/notes.ts';
import { readQuantities } from '../src/language/quantities.ts';
import { tokenise } from '../src/language/tokens.ts';
import { goldFigureAt } from '../tests/kit/figure-at.ts';
import type { GoldFigure, GoldMemo, Story } from '../tests/kit/story.ts';

/** One memo, with the annotated figure that each of its quantities is. */
export interface Watched {
  readonly memo: GoldMemo;
  /** The annotated figure of a quantity; each is given once. Counts have none. */
  readonly goldOf: (quantity: number) => GoldFigure | undefined;
  readonly quantityAt: (quantity: number) => ItemQuantity;
}

/** Reads memo by memo, each knowing the figures of those before it, with what `choiceOf` gives for each memo. */
export function readFiguresOf(story: Story, choiceOf: (watched: Watched) => Choice): void {
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
    const quantityAt = (k: number) => quantities[k] as ItemQuantity;
    const goldOf = (k: number) =>
      quantityAt(k).dimension === 'count' ? undefined : goldFigureAt(memo, quantityAt(k), used);
    const { figures } = readItems(memo.text, quantities, context, choiceOf({ memo, goldOf, quantityAt }));
    for (const { item, attribute, value, unit, limit } of figures)
      if (!limit?.about) known.push({ item, attribute, value, unit });
  }
}

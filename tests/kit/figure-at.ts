/** Finds the annotated figure that a read quantity is, and makes talk without stops of a story. */
import type { Span } from '../../src/language/notes.ts';
import { sameQuantity } from './score-story.ts';
import type { GoldFigure, GoldMemo, Story } from './story.ts';

/** The gold figure with this value that overlaps most and is in none of `used`, as the scorer would match them. */
export function goldFigureAt(
  memo: GoldMemo,
  quantity: { readonly span: Span; readonly value: number; readonly unit: string; readonly high?: number },
  used: Set<GoldFigure>,
): GoldFigure | undefined {
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

/** The same story with few stops and no commas, as a recogniser may write it; quotes follow. */
export function withoutStops(story: Story): Story {
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

/** A size told with what it differs by from the one before it: "it's 200, that's 13 up from what I had" was 187. */
import type { FigureNote } from './notes.ts';
import { tidy } from './rules/rule.ts';

const LEADS =
  /^[\s,;.:–-]*(?:(?:so|and|which is|which makes it|that's|that is|it's|i\.e\.|about|a good|only|just|a full|all of) ?)*$/i;
const MORE = 'up|more|over|bigger|larger|longer|wider|higher|taller|deeper|thicker|heavier|above|further';
const LESS = 'down|less|under|smaller|shorter|narrower|lower|shallower|thinner|lighter|below|short';
const COMPARED = new RegExp(
  `^.{1,30}?\\b(?:(${MORE})|(?:${LESS}))(?: on| from| than| of)? (?:what (?:i|we|it|was)\\b|(?:i|we) (?:had|said|thought|planned|drew|measured|wrote|told|reckoned)\\b|(?:it|they|that) (?:was|were|used)\\b|before\\b|last (?:time|week|month)\\b|the (?:drawing|plan|sketch|old)\\b|planned\\b)`,
  'i',
);
const LONGEST = 80;

/**
 * Figures of a memo in the order of speech. A difference told behind a figure of the same unit is no figure of its own:
 * the figure gets the value that it had before, in that unit, as `replaces`. Pure, in one pass.
 */
export function withToldDifferences(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  const out: FigureNote[] = [];
  for (const figure of figures) {
    const last = out.at(-1);
    const old = last && oldValueOf(text, last, figure);
    if (last && old !== undefined)
      out[out.length - 1] = { ...last, replaces: { value: old, unit: last.unit } };
    else out.push(figure);
  }
  return out;
}

function oldValueOf(text: string, figure: FigureNote, by: FigureNote): number | undefined {
  if (figure.replaces || figure.unit !== by.unit || by.value >= figure.value) return undefined;
  if (!LEADS.test(text.slice(figure.span.end, by.span.start))) return undefined;
  const compared = COMPARED.exec(text.slice(by.span.start, by.span.start + LONGEST));
  if (!compared) return undefined;
  return tidy(compared[1] ? figure.value - by.value : figure.value + by.value);
}

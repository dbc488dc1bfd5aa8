/**
 * "The water is 250": how much there is of what has no size, without its unit. Litres, kilos or gallons: nobody knows, and
 * it is no millimetres. Kept as a bare number, so that a sum that needs it can say so.
 */
import type { FigureNote } from './notes.ts';

const FLUID = /(?:^|\b)(?:water|diesel|fuel|petrol|gasoline|kerosene|paraffin|coolant)$/i;
const BARE = /^(?:about |around |nearly |roughly )?(?:[\d,.]+|[a-z]+(?:[ -][a-z]+){0,4})$/i;
const UNIT_OR_SIZE =
  /\b(?:mm|mils?|milli\w+|cm|centi\w+|m|met(?:re|er)s?|inch(?:es)?|foot|feet|ft|in|deep|high|wide|long|thick|across|down|up|below|above|over|under|off)\b/i;
/** "… is 250", "… comes to 250", at the end of what is said of it. */
const AMOUNTS =
  /(?:\b(?:is|are|at|be)|['’]s|\bcomes? to|\badds|\bmakes)(?: (?:another|about|around|only|just))?\s*$/i;
const ENDS = /^\s*(?:[.,;!?]|and\b|so\b|but\b|plus\b|then\b|$)/i;

/** Figures of a memo, bare amounts of fluids without the unit that the house would give a size. Pure, in one pass. */
export function withBareAmounts(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  return figures.map((figure, k) => {
    if (figure.dimension !== 'length' || figure.limit || !FLUID.test(figure.item)) return figure;
    if (isDeep(figures[k - 1], figure)) return figure;
    const { quote, span } = figure;
    if (!BARE.test(quote) || UNIT_OR_SIZE.test(quote)) return figure;
    if (!AMOUNTS.test(text.slice(Math.max(0, span.start - 30), span.start))) return figure;
    if (!ENDS.test(text.slice(span.end, span.end + 12))) return figure;
    return { ...figure, attribute: 'other', dimension: 'count', unit: '1' };
  });
}

/** "She needs 1.2 metres of water and there's only 0.9": how deep it is was told in a unit of length just before. */
const isDeep = (before: FigureNote | undefined, figure: FigureNote): boolean =>
  before?.item === figure.item && before.dimension === 'length' && !before.assumed?.includes('unit');

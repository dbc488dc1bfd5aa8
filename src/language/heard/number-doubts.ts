import type { FigureNote, MemoNotes, Quantity } from '../notes.ts';

/** "Fifteen" and "fifty": the stress that tells them apart goes from a teen before a noun. Common knowledge, no source. */
const TEENS = ['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'];
const TENS = ['thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** The other number that sounds so: 15 and 50, 115 and 150. Undefined for a number with no such other. */
export function soundsLikeNumber(value: number): number | undefined {
  if (!Number.isInteger(value) || value < 0) return undefined;
  const rest = value % 100;
  if (rest >= 13 && rest <= 19) return value - rest + (rest % 10) * 10;
  if (rest >= 30 && rest <= 90 && rest % 10 === 0) return value - rest + 10 + rest / 10;
  return undefined;
}

/** Whether the words of a figure hold such a number at the end of it: in words, or in the digits of its value. */
function holdsIt({ quote, value }: FigureNote): boolean {
  const rest = value % 100;
  const word = rest < 20 ? TEENS[rest - 13] : TENS[rest / 10 - 3];
  const words = quote.toLowerCase().split(/[^\p{L}\d.]+/u);
  return (
    words.some((one) => one === word || one.replaceAll(',', '') === String(value)) ||
    quote.replaceAll(',', '').includes(String(value))
  );
}

/**
 * Heard numbers are never changed. A figure of one that sounds like another gets that one as an alternative, behind
 * those that it has.
 */
export function withNumberDoubts(notes: MemoNotes): MemoNotes {
  return { ...notes, figures: notes.figures.map(doubted) };
}

function doubted(figure: FigureNote): FigureNote {
  const other = soundsLikeNumber(figure.value);
  if (other === undefined || !holdsIt(figure)) return figure;
  const known: readonly Quantity[] = figure.alternatives ?? [];
  if (known.some(({ value, unit }) => value === other && unit === figure.unit)) return figure;
  return { ...figure, alternatives: [...known, { value: other, unit: figure.unit }] };
}

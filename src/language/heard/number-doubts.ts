import type { FigureNote, Quantity, Reading, TraceStep } from '../notes.ts';
import { isEndOfNumber } from './hundreds-by-sound.ts';
import { SMALL_DIGITS } from './number-places.ts';

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
 * those that it has; one of which only the end was heard is left out, and the trace says so. `text` is the memo's own.
 */
export function withNumberDoubts(text: string, reading: Reading): Reading {
  const { notes, trace, repairs = [] } = reading;
  // Words that are read as others are no such words.
  const isMended = (start: number) =>
    repairs.some(({ end }) => end <= start && end + ' and '.length >= start);
  const isCut = ({ span: { start } }: FigureNote) => isEndOfNumber(text, start) && !isMended(start);
  const cut = notes.figures.filter(isCut);
  const figures = notes.figures.filter((figure) => !isCut(figure)).map((figure) => doubted(text, figure));
  return { ...reading, notes: { ...notes, figures }, trace: [...trace, ...cut.map(leftOut)] };
}

const leftOut = ({ span }: FigureNote): TraceStep => ({
  stage: 'heard',
  rule: 'hundreds by their sound',
  span,
  outcome: 'dropped',
  why: 'only the end of a number was heard: before it stand no words that sound like hundreds',
});

function doubted(text: string, figure: FigureNote): FigureNote {
  const others = [ofTeens(figure), ofArticle(figure), ofSmallWord(text, figure)];
  const known: readonly Quantity[] = figure.alternatives ?? [];
  const fresh = others.filter(
    (other): other is number =>
      other !== undefined && !known.some(({ value, unit }) => value === other && unit === figure.unit),
  );
  if (fresh.length === 0) return figure;
  return { ...figure, alternatives: [...known, ...fresh.map((value) => ({ value, unit: figure.unit }))] };
}

function ofTeens(figure: FigureNote): number | undefined {
  const other = soundsLikeNumber(figure.value);
  return other !== undefined && holdsIt(figure) ? other : undefined;
}

/** "For hundred and ten" is read as 410; it may have been "for a hundred and ten". */
function ofArticle({ quote, value }: FigureNote): number | undefined {
  const found = /^(to|too|fore?) (hundred|thousand)\b/i.exec(quote);
  const digit = SMALL_DIGITS.get(found?.[1]?.toLowerCase() ?? '');
  if (digit === undefined) return undefined;
  const scale = found?.[2]?.toLowerCase() === 'hundred' ? 100 : 1000;
  return value >= digit * scale ? value - (digit - 1) * scale : undefined;
}

/** "The gap is for 50 mil": fifty, or four fifty. Only behind a form of "be", where "for" would be odd. */
function ofSmallWord(text: string, { span, value }: FigureNote): number | undefined {
  if (!Number.isInteger(value) || value < 10 || value > 99) return undefined;
  const before = text.slice(Math.max(0, span.start - 12), span.start);
  const small = /(?:\b(?:is|was|are|were)|['’]s) (to|too|fore?) $/i.exec(before)?.[1];
  const digit = SMALL_DIGITS.get(small?.toLowerCase() ?? '');
  return digit === undefined ? undefined : digit * 100 + value;
}

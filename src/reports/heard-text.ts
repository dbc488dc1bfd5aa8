/** What was heard and what it was read as, for the terminal. */
import type { WordCorrection } from '../language/notes.ts';
import type { MemoView } from '../model/views.ts';
import { textTable } from './text-table.ts';
import { oneLine } from './words.ts';

type Repaired = Pick<MemoView, 'text' | 'repairs'>;

/** The memo's own words with what they were read as beside them: "eighteen mil [play them: ply]". */
export function markedTalk({ text, repairs = [] }: Repaired): string {
  let marked = '';
  let last = 0;
  for (const { start, end, means } of repairs) {
    marked += `${text.slice(last, start)}[${text.slice(start, end)}: ${means}]`;
    last = end;
  }
  return `${oneLine(marked + text.slice(last))}\n`;
}

/** A line for each stretch that was read as other words; nothing when there is none. */
export function repairsText({ repairs = [] }: Repaired): string {
  if (repairs.length === 0) return '';
  return textTable(
    repairs.map(({ id, quote, means, why }) => [
      id,
      `"${oneLine(quote)}"`,
      `read as "${oneLine(means)}"`,
      oneLine(why),
    ]),
  );
}

/** What the person said of heard words. */
export function correctionsText(corrections: readonly WordCorrection[]): string {
  const held = new Map(corrections.map(({ heard, means }) => [heard, means]));
  if (held.size === 0) return 'Nothing was said yet of words that were heard wrong.\n';
  return textTable(
    [...held].map(([heard, means]) => [
      `"${oneLine(heard)}"`,
      heard === means ? 'stays as it is heard' : `is "${oneLine(means)}"`,
    ]),
  );
}

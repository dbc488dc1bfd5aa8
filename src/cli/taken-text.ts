import type { Taken } from '../project-api.ts';
import { findingText } from '../reports/finding-text.ts';
import { memoLine } from '../reports/memo-list.ts';
import { memoName } from '../reports/source-text.ts';
import { oneLine } from '../reports/words.ts';

/** What one taking gave, in words: the memo, what was read from it, what clashes. */
export function takenText({ already, memo, findings }: Taken, file: string): string {
  if (already) return `${memoName(memo.id)}  ${oneLine(file)} was taken already: nothing was added`;
  return [memoLine(memo), ...findings.map((finding) => `\n${findingText(finding)}`)].join('\n');
}

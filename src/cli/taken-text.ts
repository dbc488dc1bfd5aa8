import type { Taken } from '../project-api.ts';
import { findingLine, findingText } from '../reports/finding-text.ts';
import { behindWorkText } from '../reports/kept-text.ts';
import { memoLine } from '../reports/memo-list.ts';
import { memoName } from '../reports/source-text.ts';
import { oneLine } from '../reports/words.ts';

/** What one taking gave: the memo, what was read from it, a line for what is settled, a block for what is not. */
export function takenText(
  { already, originalBack, memo, findings, behindWork, overtaken = [] }: Taken,
  file: string,
): string {
  if (originalBack)
    return `${memoName(memo.id)}  ${oneLine(file)} was taken already: its original was missing and is kept again`;
  if (already) return `${memoName(memo.id)}  ${oneLine(file)} was taken already: nothing was added`;
  const settled = findings.filter((finding) => finding.status === 'settled');
  const open = findings.filter((finding) => finding.status === 'open');
  return [
    memoLine(memo),
    ...settled.map((finding) => `  ${findingLine(finding)}`),
    ...overtaken.map(
      ({ id, gist, before }) =>
        `  still open, and was to be done before ${oneLine(before)}: ${oneLine(gist)} [${oneLine(id)}]`,
    ),
    ...open.map((finding) => `\n${findingText(finding)}`),
    ...(behindWork && behindWork.length > 0 ? [`\n${behindWorkText(behindWork).trimEnd()}`] : []),
  ].join('\n');
}

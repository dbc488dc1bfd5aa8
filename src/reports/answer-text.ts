/** An answer for the terminal: the figures that hold, the clashes about them, the words that were said. */
import type { CheckView } from '../model/checks/check-views.ts';
import type { Answer } from '../model/views.ts';
import { stateText } from './check-words.ts';
import { inOrder } from './checks-text.ts';
import { figuresOfItem } from './figure-table.ts';
import { consequenceText, findingLine } from './finding-text.ts';
import { keptAnswerParts } from './kept-text.ts';
import { dayOf, placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

/** What a check comes to, in a line: `checks` tells the rest. */
const checkLine = ({ subject, state, why, id }: CheckView): string =>
  `  ${oneLine(subject)}: ${stateText(state)}; ${oneLine(why)}  [${oneLine(id)}]\n`;

/** The answer in its parts, each left out when it is empty. Figures in both systems, whatever the project's own is. */
export function answerText(answer: Answer): string {
  const parts: string[] = [];
  if (answer.isUnknown) parts.push(`No figure is on record for "${oneLine(answer.question)}".\n`);
  if (answer.figures.length > 0) parts.push(figuresOfItem(answer.figures, 'mixed'));
  const onIt = answer.onIt ?? [];
  if (onIt.length > 0) parts.push(`On it\n${onIt.map((one) => `  ${consequenceText(one)}\n`).join('')}`);
  parts.push(...keptAnswerParts(answer.kept));
  const open = answer.findings.filter((finding) => finding.status === 'open');
  if (open.length > 0)
    parts.push(`In doubt\n${open.map((finding) => `  ${findingLine(finding)}\n`).join('')}`);
  const checks = answer.checks ?? [];
  if (checks.length > 0) parts.push(`Checks\n${inOrder(checks).map(checkLine).join('')}`);
  if (answer.said.length > 0) {
    const lines = answer.said.map(
      (said) => `  ${dayOf(said.recordedAt)}  ${placeOf(said)}  "${oneLine(said.quote)}"\n`,
    );
    parts.push(`Said\n${lines.join('')}`);
  }
  return parts.length > 0
    ? parts.join('\n')
    : `Nothing in the memos matches "${oneLine(answer.question)}".\n`;
}

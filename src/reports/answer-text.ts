/** An answer for the terminal: the figures that hold, the clashes about them, the words that were said. */
import type { HouseUnits } from '../language/notes.ts';
import type { Answer } from '../model/views.ts';
import { figuresOfItem } from './figure-table.ts';
import { findingLine } from './finding-text.ts';
import { keptAnswerParts } from './kept-text.ts';
import { dayOf, placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

/** The answer in three parts, each left out when it is empty. */
export function answerText(answer: Answer, units: HouseUnits): string {
  const parts: string[] = [];
  if (answer.figures.length > 0) parts.push(figuresOfItem(answer.figures, units));
  parts.push(...keptAnswerParts(answer.kept));
  const open = answer.findings.filter((finding) => finding.status === 'open');
  if (open.length > 0)
    parts.push(`In doubt\n${open.map((finding) => `  ${findingLine(finding)}\n`).join('')}`);
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

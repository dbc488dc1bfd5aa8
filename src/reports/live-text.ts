/** What is heard while somebody speaks, in lines. */
import type { MemoView } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { type KeptNote, otherReadings } from './note-doubts.ts';
import { wordsOfNote } from './note-words.ts';
import { boundedText, counterpartText } from './quantity-text.ts';
import { clipTime } from './source-text.ts';
import { oneLine } from './words.ts';

type Figure = MemoView['notes']['figures'][number];

/** The value as it was said, and in the other system where it has one: `915 mm` and `≈ 36 in`. */
export function bothSystems(figure: Figure): readonly [said: string, other: string | undefined] {
  const low = counterpartText(figure);
  const high =
    figure.high === undefined ? undefined : counterpartText({ value: figure.high, unit: figure.unit });
  return [boundedText(figure), low !== undefined && high !== undefined ? `${low} to ${high}` : low];
}

/** One line: `00:12  bench top height: 915 mm (≈ 36 in)   "nine fifteen high"`. */
export function figureHeardLine(figure: Figure): string {
  const [said, other] = bothSystems(figure);
  const both = other === undefined ? said : `${said} (${other})`;
  const value = [both, otherReadings(figure)].filter(Boolean).join(', ');
  return `${atOf(figure)}${subjectOf(figure)}: ${value}   "${oneLine(figure.quote)}"`;
}

/** One line for any other note: `00:12  to do: Order more screws   "I need to order more screws"`. */
export function noteHeardLine(note: KeptNote): string {
  const [kind, what] = wordsOfNote(note);
  return `${atOf(note)}${kind}: ${oneLine(what)}   "${oneLine(note.quote)}"`;
}

const atOf = ({ startSeconds }: Pick<KeptNote, 'startSeconds'>) =>
  startSeconds === undefined ? '' : `${clipTime(startSeconds)}  `;

/** What "scratch that" took back: `taken back: "I need to order more screws."`. */
export const takenBackLine = (words: string) => `taken back: "${oneLine(words)}"`;

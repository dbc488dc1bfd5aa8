/**
 * Which sizes were told of the inside of a thing and which of its outside: "600 by 400 by 380 inside and 620 by 420 by 400
 * outside", "outside it's 620 long, 420 wide and 400 high".
 */
import type { FigureNote } from '../notes.ts';

export type Face = 'inside' | 'outside';

const WORDS: Readonly<Record<Face, RegExp>> = {
  inside: /\b(?:inside|internal|internally|interior|within)\b/gi,
  outside: /\b(?:outside|external|externally|exterior|overall|over all)\b/gi,
};
/** Behind it begins what goes with the next size. */
const BREAK = /[,;:.!?]|\band\b|\bbut\b/i;

/** A word of a face between two sizes: where it stands, and whether it goes with the size before it. */
interface Mark {
  readonly face: Face;
  readonly isBehind: boolean;
}

/** The face of each length, for those that a word tells of; `figures` in order of speech, all of one thing. */
export function facesOf(text: string, figures: readonly FigureNote[]): ReadonlyMap<FigureNote, Face> {
  const inOrder = [...figures].sort((left, right) => left.span.start - right.span.start);
  const gaps = [...inOrder, undefined].map((figure, index) => {
    const from = inOrder[index - 1]?.span.end ?? sentenceStart(text, figure?.span.start ?? 0);
    return marksIn(text.slice(from, figure?.span.start ?? sentenceEnd(text, from)), index === 0);
  });
  const faces = new Map<FigureNote, Face>();
  let ahead: Face | undefined;
  inOrder.forEach((figure, index) => {
    const before = gaps[index]?.findLast(({ isBehind }) => !isBehind)?.face;
    if (before) ahead = before;
    else if (isAnew(text, inOrder[index - 1], figure)) ahead = undefined;
    const face = ahead ?? behind(gaps, index);
    if (face) faces.set(figure, face);
  });
  return faces;
}

/** The face that is told behind a list of sizes is that of them all. */
function behind(gaps: readonly (readonly Mark[])[], index: number): Face | undefined {
  for (let k = index + 1; k < gaps.length; k++) {
    const marks = gaps[k] ?? [];
    const own = marks.find(({ isBehind }) => isBehind);
    if (own) return own.face;
    if (marks.length > 0) return undefined;
  }
  return undefined;
}

function marksIn(gap: string, isFirst: boolean): readonly Mark[] {
  return (['inside', 'outside'] as const)
    .flatMap((face) => [...gap.matchAll(WORDS[face])].map((found) => ({ face, at: found.index })))
    .sort((left, right) => left.at - right.at)
    .map(({ face, at }) => ({ face, isBehind: !isFirst && !BREAK.test(gap.slice(0, at)) }));
}

/** Another sentence tells of the same face no longer. */
const isAnew = (text: string, last: FigureNote | undefined, next: FigureNote): boolean =>
  last !== undefined && /[.!?]\s/.test(text.slice(last.span.end, next.span.start));

const sentenceStart = (text: string, at: number): number => {
  const before = text.slice(0, at);
  return Math.max(0, ...['. ', '! ', '? '].map((stop) => before.lastIndexOf(stop) + 1));
};

const sentenceEnd = (text: string, from: number): number => {
  const end = text.slice(from).search(/[.!?](?:\s|$)/);
  return end < 0 ? text.length : from + end;
};

/** "Tank inside", "inside of the tank", "tank external dimensions": the thing that they are of. */
export const withoutFace = (item: string): string =>
  item
    .toLowerCase()
    .replace(/^(?:inside|outside|interior|exterior)(?: of)?(?: the)? /, '')
    .replace(/ (?:(?:inside|outside|internal|external|overall) )?(?:dimensions?|sizes?|measurements?)$/, '')
    .replace(/ (?:inside|outside|interior|exterior)$/, '');

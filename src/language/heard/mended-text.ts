/** A text with what was misheard put right, and the way back from it to the words as they stand. */
import type { Span } from '../notes.ts';
import type { Repair } from './repair.ts';

export interface MendedText {
  readonly text: string;
  /** The stretch of the original that a stretch of the mended text stands for; whole words where they were mended. */
  original(span: Span): Span;
}

interface Piece {
  /** Where the mended words stand in the mended text. */
  readonly mended: Span;
  readonly original: Span;
}

/** Puts repairs into a text. They are in order and apart from each other. */
export function mendText(
  text: string,
  repairs: readonly Pick<Repair, 'start' | 'end' | 'means'>[],
): MendedText {
  const pieces: Piece[] = [];
  let mended = '';
  let last = 0;
  for (const { start, end, means } of repairs) {
    mended += text.slice(last, start);
    pieces.push({
      mended: { start: mended.length, end: mended.length + means.length },
      original: { start, end },
    });
    mended += means;
    last = end;
  }
  mended += text.slice(last);
  return {
    text: mended,
    original: ({ start, end }) => ({
      start: placeOf(pieces, start, 'start'),
      end: placeOf(pieces, end, 'end'),
    }),
  };
}

/** Where an offset of the mended text stands in the original; inside mended words, their start or their end. */
function placeOf(pieces: readonly Piece[], offset: number, edge: 'start' | 'end'): number {
  const piece = lastBefore(pieces, offset, edge);
  if (!piece) return offset;
  const { mended, original } = piece;
  if (offset >= mended.end) return original.end + (offset - mended.end);
  return edge === 'start' ? original.start : original.end;
}

/** The last piece that begins at or before the offset; one that only begins there does not end anything. */
function lastBefore(pieces: readonly Piece[], offset: number, edge: 'start' | 'end'): Piece | undefined {
  let low = 0;
  let high = pieces.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const { start } = (pieces[middle] as Piece).mended;
    if (start < offset || (start === offset && edge === 'start')) low = middle + 1;
    else high = middle;
  }
  return pieces[low - 1];
}

/**
 * Pieces of a recording that were heard before its hearing was cut off. They lie in a file, a line for each, written as
 * soon as it is heard: after a kill the recording is looked through again, but no piece is heard twice.
 */
import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import type { Heard } from './listener.ts';
import type { RecogniserSetup } from './messages.ts';
import type { Piece } from './stretches.ts';

interface Line {
  readonly piece: string;
  readonly heard: Heard;
}

export interface HeardBefore {
  find(piece: Piece): Heard | undefined;
  keep(piece: Piece, heard: Heard): void;
}

/** Without a file nothing is kept. A file of another model, or one that cannot be written, is as good as none. */
export function openHeardBefore(setup: RecogniserSetup): HeardBefore {
  const file = setup.heardFile;
  if (file === undefined) return { find: () => undefined, keep: () => {} };
  const mark = markOf(setup);
  const pieces = readPieces(file, mark);
  if (pieces.size === 0) tryTo(() => writeFileSync(file, `${mark}\n`, { mode: 0o600 }));
  // A kill may have cut the last line off: what comes now stands on a line of its own.
  else tryTo(() => appendFileSync(file, '\n'));
  return {
    find: (piece) => pieces.get(keyOf(piece)),
    keep: (piece, heard) =>
      tryTo(() => appendFileSync(file, `${JSON.stringify({ piece: keyOf(piece), heard } satisfies Line)}\n`)),
  };
}

/** What must be the same for a piece to come out the same. */
function markOf({ recogniser, longestPieceSeconds }: RecogniserSetup): string {
  const { kind } = recogniser;
  const model = kind === 'moonshine' ? recogniser.decoder : recogniser.model;
  return JSON.stringify({ heard: 1, kind, model, longestPieceSeconds });
}

function readPieces(file: string, mark: string): ReadonlyMap<string, Heard> {
  const pieces = new Map<string, Heard>();
  let lines: readonly string[] = [];
  try {
    lines = readFileSync(file, 'utf8').split('\n');
  } catch {
    return pieces;
  }
  if (lines[0] !== mark) return pieces;
  for (const line of lines.slice(1)) {
    try {
      const { piece, heard } = JSON.parse(line) as Line;
      if (typeof piece === 'string' && Array.isArray(heard?.utterances)) pieces.set(piece, heard);
    } catch {
      // An empty line, or one that was cut off: its piece is heard again.
    }
  }
  return pieces;
}

const keyOf = (piece: Piece): string => `${piece[0]?.start ?? 0}-${piece.at(-1)?.end ?? 0}`;

/** Keeping pieces only saves time: hearing goes on without. */
function tryTo(work: () => void): void {
  try {
    work();
  } catch {
    // A full disk, a folder that is gone.
  }
}

/** Stretches of speech, as voice activity finds them, joined to pieces that the recogniser hears best. */

/** Half-open, in samples from the beginning of the recording. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Neighbouring stretches that are heard at once, in order. */
export type Piece = readonly Stretch[];

export interface JoiningRule {
  /** A longer pause always ends a piece. */
  readonly longestGap: number;
  /** A piece is no longer than this, unless it is a single stretch. */
  readonly longestPiece: number;
}

/**
 * Joins stretches as they come. Single stretches cost words, because voice activity cuts tight, and long pieces
 * make the recogniser loop: so neighbours are joined up to the longest piece, then parted at the widest pause.
 */
export class StretchJoiner {
  readonly #rule: JoiningRule;
  #open: Stretch[] = [];

  constructor(rule: JoiningRule) {
    this.#rule = rule;
  }

  /** Where the open piece begins: sound from there on is still needed. */
  get openFrom(): number | undefined {
    return this.#open[0]?.start;
  }

  /** Takes the next stretch and returns the pieces that it completes. */
  add(stretch: Stretch): Piece[] {
    const done = this.silentUntil(stretch.start);
    this.#open.push(stretch);
    while (this.#open.length > 1 && span(this.#open) > this.#rule.longestPiece) {
      done.push(this.#open.splice(0, placeToPart(this.#open)));
    }
    return done;
  }

  /** Says that no speech lies between the last stretch and `position`. */
  silentUntil(position: number): Piece[] {
    const last = this.#open.at(-1);
    if (!last || position - last.end < this.#rule.longestGap) return [];
    return this.finish();
  }

  finish(): Piece[] {
    const piece = this.#open;
    this.#open = [];
    return piece.length > 0 ? [piece] : [];
  }
}

/** From the first sample to the last, pauses included. */
export function span(piece: Piece): number {
  return (piece.at(-1)?.end ?? 0) - (piece[0]?.start ?? 0);
}

/** Samples of speech alone. */
export function spoken(piece: Piece): number {
  return piece.reduce((sum, { start, end }) => sum + end - start, 0);
}

/** How many stretches go: up to the widest pause of the later half, where a sentence most likely ends. */
function placeToPart(open: readonly Stretch[]): number {
  let best = open.length - 1;
  let widest = -1;
  for (let place = 1; place < open.length; place++) {
    const before = open[place - 1];
    const after = open[place];
    if (!before || !after || before.end - (open[0]?.start ?? 0) < span(open) / 2) continue;
    if (after.start - before.end >= widest) {
      widest = after.start - before.end;
      best = place;
    }
  }
  return best;
}

/** The parts of a piece's stretches that lie between two positions. */
export function within(piece: Piece, start: number, end: number): Piece {
  return piece
    .map((stretch) => ({ start: Math.max(start, stretch.start), end: Math.min(end, stretch.end) }))
    .filter((stretch) => stretch.end > stretch.start);
}

/**
 * Text as the pieces that the model writes. The vocabulary is that of a byte-pair encoding (Sennrich, Haddow and Birch
 * 2016, as SentencePiece builds it) whose pieces are numbered in the order in which they were joined: of all joins that
 * give a piece the one with the lowest number comes first.
 */
const SPACE = '▁';
const ONE_BYTE = /^<0x([0-9A-F]{2})>$/;

export class WordPieces {
  readonly #pieces: readonly string[];
  readonly #ids = new Map<string, number>();

  /** `file` is the tokens file of the model: a line for each piece, in base64, a tab and its number. */
  constructor(file: string) {
    const pieces: string[] = [];
    for (const line of file.split('\n')) {
      const [coded = '', id] = line.split('\t');
      if (id !== undefined) pieces[Number(id)] = Buffer.from(coded, 'base64').toString('utf8');
    }
    this.#pieces = pieces;
    pieces.forEach((piece, id) => {
      if (!this.#ids.has(piece)) this.#ids.set(piece, id);
    });
  }

  get size(): number {
    return this.#pieces.length;
  }

  /** What a piece adds to the text. */
  textOf(id: number): string {
    const piece = this.#pieces[id] ?? '';
    const byte = ONE_BYTE.exec(piece)?.[1];
    if (byte !== undefined) {
      const code = Number.parseInt(byte, 16);
      return code < 0x80 ? String.fromCharCode(code) : '';
    }
    return piece.replaceAll(SPACE, ' ');
  }

  /** The pieces of words that a blank stands before; undefined where a letter is in no piece. */
  idsOf(words: string): readonly number[] | undefined {
    const parts = [...`${SPACE}${words.replaceAll(' ', SPACE)}`];
    for (;;) {
      let [best, at] = [Number.POSITIVE_INFINITY, -1];
      for (let k = 0; k + 1 < parts.length; k++) {
        const id = this.#ids.get(`${parts[k]}${parts[k + 1]}`);
        if (id !== undefined && id < best) [best, at] = [id, k];
      }
      if (at < 0) break;
      parts.splice(at, 2, `${parts[at]}${parts[at + 1]}`);
    }
    const ids = parts.map((part) => this.#ids.get(part));
    return ids.includes(undefined) ? undefined : (ids as number[]);
  }
}

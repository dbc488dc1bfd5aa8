/** What stands on a terminal after what was written to it: enough of one for what the screen sends. */
import stringWidth from 'string-width';

const graphemes = new Intl.Segmenter();

/** Cells of a terminal that knows going to a place, clearing, taking away the rest of a row, and styles. */
export class TerminalCells {
  #rows: string[][] = [];
  #row = 0;
  #column = 0;
  #style = '';

  write(text: string): void {
    for (const [piece] of text.matchAll(/\p{Cc}\[[?\d;]*[A-Za-z]|\p{Cc}|\P{Cc}+/gu)) {
      if (/^\p{Cc}\[/u.test(piece)) this.#order(piece.slice(2));
      else if (piece === '\r') this.#column = 0;
      else if (piece === '\n') this.#row++;
      else for (const { segment } of graphemes.segment(piece)) this.#put(segment);
    }
  }

  #order(order: string): void {
    const place = /^(\d*);?(\d*)H$/.exec(order);
    if (place) [this.#row, this.#column] = [Number(place[1] || 1) - 1, Number(place[2] || 1) - 1];
    else if (order === '2J') this.#rows = [];
    else if (order === 'K') this.#cells().length = Math.min(this.#cells().length, this.#column);
    // Styles are closed one by one: those of weight and of colour are all there are.
    else if (order.endsWith('m')) this.#style = /^(?:0|2\d|39)m$/.test(order) ? '' : this.#style + order;
  }

  #cells(): string[] {
    this.#rows[this.#row] ??= [];
    return this.#rows[this.#row] as string[];
  }

  #put(segment: string): void {
    const cells = this.#cells();
    cells[this.#column++] = this.#style === '' ? segment : `<${this.#style}>${segment}`;
    if (stringWidth(segment) === 2) cells[this.#column++] = '';
  }

  /** The rows with the style of each character before it, without what is empty at their ends. */
  styled(): readonly string[] {
    const rows = Array.from(this.#rows, (cells = []) => Array.from(cells, (cell) => cell ?? ' ').join(''));
    while (rows.at(-1) === '') rows.pop();
    return rows;
  }

  /** The rows as they are read. */
  rows(): readonly string[] {
    return this.styled().map((row) => row.replace(/<[\d;]+m(?:[\d;]+m)*>/g, ''));
  }
}

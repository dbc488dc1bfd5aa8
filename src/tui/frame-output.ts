/** Stands between Ink and the terminal: takes whole frames, and writes only what differs from the one before. */
import { EventEmitter } from 'node:events';
import { changesBetween } from './frame-changes.ts';

/** Cleared, the cursor at its top and out of sight. */
const CLEARED = '\u001b[2J\u001b[H\u001b[?25l';
/** What lies between is shown at once, where the terminal knows how. */
const [BEGIN, END] = ['\u001b[?2026h', '\u001b[?2026l'];
/** The eye needs no more frames than these allow, and a slow line takes no more. */
const FRAME_MS = 33;
/** Until a changed size has gone through the layout: frames of the old size are not shown. */
const SETTLE_MS = 50;

/** Orders for the colour of text and ground. */
const COLOURS = /\p{Cc}\[(?:3\d|4\d|9\d|10\d)(?:;\d+)*m/gu;

/** What of a terminal is needed. */
export interface TerminalOutput {
  readonly columns?: number;
  readonly rows?: number;
  write(text: string): unknown;
  on(event: 'resize', listener: () => void): unknown;
  off(event: 'resize', listener: () => void): unknown;
}

/**
 * The output that Ink is given, in its debug mode: there each write is a whole frame, rows parted by line feeds. Several
 * in quick succession give one, the last. `close` lets go of the terminal; what is written later goes nowhere.
 */
export class FrameOutput extends EventEmitter {
  readonly isTTY = true;
  readonly #terminal: TerminalOutput;
  #shown: readonly string[] | undefined;
  #frame: string | undefined;
  #timer: NodeJS.Timeout | undefined;
  #earliest = 0;
  #isClosed = false;

  readonly #hasColours: boolean;

  /** Without colours weight and lines stay: everything is told by words as well. */
  constructor(terminal: TerminalOutput, { hasColours = true } = {}) {
    super();
    this.#terminal = terminal;
    this.#hasColours = hasColours;
    terminal.on('resize', this.#onResize);
  }

  get columns(): number {
    return this.#terminal.columns ?? 80;
  }

  get rows(): number {
    return this.#terminal.rows ?? 24;
  }

  write(text: string, done?: () => void): boolean {
    // Orders to the cursor are no frames: it stays out of sight until the terminal is given back.
    if (text !== '' && !text.startsWith('\u001b[?')) {
      this.#frame = this.#hasColours ? text : text.replace(COLOURS, '');
      this.#soon();
    }
    if (done) setImmediate(done);
    return true;
  }

  /** Draws all anew: something else was written to the terminal. */
  redraw(): void {
    this.#shown = undefined;
    this.#soon();
  }

  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#timer);
    this.#terminal.off('resize', this.#onResize);
  }

  readonly #onResize = () => {
    this.#shown = undefined;
    this.#earliest = performance.now() + SETTLE_MS;
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.emit('resize');
    this.#soon();
  };

  #soon(): void {
    if (this.#timer !== undefined || this.#isClosed) return;
    const wait = this.#earliest - performance.now();
    if (wait <= 0) this.#draw();
    else
      this.#timer = setTimeout(() => {
        this.#timer = undefined;
        this.#draw();
      }, wait);
  }

  #draw(): void {
    if (this.#frame === undefined || this.#isClosed) return;
    // One row more than there are would make the terminal scroll.
    const rows = this.#frame.split('\n').slice(0, this.rows);
    const changes = changesBetween(this.#shown ?? [], rows);
    const start = this.#shown === undefined ? CLEARED : '';
    this.#shown = rows;
    if (start + changes === '') return;
    this.#earliest = performance.now() + FRAME_MS;
    this.#terminal.write(BEGIN + start + changes + END);
  }
}

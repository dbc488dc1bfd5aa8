/** A terminal for Ink in tests: any size, real key bytes in, the last frame out. */
import { EventEmitter } from 'node:events';
import { render } from 'ink';
import type { ReactElement } from 'react';

/** A terminal's output that keeps the last frame. */
export class FakeOutput extends EventEmitter {
  readonly isTTY = true;
  frame = '';
  constructor(
    public columns: number,
    public rows: number,
  ) {
    super();
  }
  write(text: string): boolean {
    this.frame = text;
    return true;
  }
}

/** A terminal's input that gives what is typed into it. */
export class FakeInput extends EventEmitter {
  readonly isTTY = true;
  #waiting: string[] = [];
  setRawMode(): void {}
  setEncoding(): void {}
  ref(): void {}
  unref(): void {}
  resume(): void {}
  pause(): void {}
  read(): string | null {
    return this.#waiting.shift() ?? null;
  }
  type(bytes: string): void {
    this.#waiting.push(bytes);
    this.emit('readable');
    this.emit('data', bytes);
  }
}

export const KEY_BYTES = {
  up: '\u001b[A',
  down: '\u001b[B',
  left: '\u001b[D',
  right: '\u001b[C',
  pageDown: '\u001b[6~',
  enter: '\r',
  escape: '\u001b',
  erase: '\u007f',
  interrupt: '\u0003',
};

/** Renders at the given size. `press` waits until Ink has drawn again. */
export function openTerminal(element: ReactElement, columns: number, rows: number) {
  const stdout = new FakeOutput(columns, rows);
  const stdin = new FakeInput();
  const app = render(element, {
    stdout: stdout as unknown as NodeJS.WriteStream,
    stdin: stdin as unknown as NodeJS.ReadStream,
    debug: true,
    exitOnCtrlC: false,
    patchConsole: false,
  });
  // A lone Escape is told from the start of a sequence by waiting a moment.
  const settle = () => new Promise((resolve) => setTimeout(resolve, 60));
  return {
    frame: () => stdout.frame,
    settle,
    async press(...keys: string[]) {
      for (const key of keys) {
        stdin.type(key);
        await settle();
      }
    },
    async resize(newColumns: number, newRows: number) {
      stdout.columns = newColumns;
      stdout.rows = newRows;
      stdout.emit('resize');
      await settle();
    },
    close: () => app.unmount(),
    gone: app.waitUntilExit(),
  };
}

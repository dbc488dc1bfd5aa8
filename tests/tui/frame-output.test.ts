/** What is sent to the terminal from frame to frame: little, and enough. */
import { EventEmitter } from 'node:events';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { changesBetween } from '../../src/tui/frame-changes.ts';
import { FrameOutput } from '../../src/tui/frame-output.ts';
import { TerminalCells } from '../kit/terminal-cells.ts';

const piece = fc.constantFrom(
  'beam',
  ' ',
  '820',
  '栈板',
  'e\u0301',
  'é',
  '👩‍🔧',
  '≈',
  '\u001b[1mx\u001b[22m',
  '\u001b[31mCLASH\u001b[39m',
);
const frame = fc.array(
  fc.array(piece, { maxLength: 6 }).map((parts) => parts.join('')),
  { maxLength: 5 },
);

test('what is written on top of one frame shows the next as if it stood on an empty terminal', () => {
  fc.assert(
    fc.property(frame, frame, (before, after) => {
      const [changed, anew] = [new TerminalCells(), new TerminalCells()];
      changed.write(changesBetween([], before));
      changed.write(changesBetween(before, after));
      anew.write(changesBetween([], after));
      expect(changed.styled()).toEqual(anew.styled());
    }),
    { numRuns: 500 },
  );
});

test('a row that stays is not written again, and of one that changes only what differs', () => {
  expect(changesBetween(['a', 'beam 820 mm'], ['a', 'beam 820 mm'])).toBe('');
  expect(changesBetween(['a', 'beam 820 mm'], ['a', 'beam 280 mm'])).toBe('\u001b[2;6H\u001b[K280 mm');
  expect(changesBetween(['\u001b[1mlevel ##\u001b[22m'], ['\u001b[1mlevel #####\u001b[22m'])).toBe(
    '\u001b[1;9H\u001b[K\u001b[1m###\u001b[22m',
  );
});

class Terminal extends EventEmitter {
  columns = 80;
  rows = 3;
  written = '';
  write(text: string) {
    this.written += text;
  }
  /** What was written since the last time. */
  taken(): string {
    const { written } = this;
    this.written = '';
    return written;
  }
}

let [terminal, output] = [new Terminal(), new FrameOutput(new Terminal())];
beforeEach(() => {
  vi.useFakeTimers();
  terminal = new Terminal();
  output = new FrameOutput(terminal);
});
afterEach(() => {
  output.close();
  vi.useRealTimers();
});

test('the first frame comes at once on a cleared screen; of several in a row the last one alone', () => {
  output.write('a\nb');
  expect(terminal.taken()).toBe(
    '\u001b[?2026h\u001b[2J\u001b[H\u001b[?25l\u001b[1;1Ha\u001b[2;1Hb\u001b[?2026l',
  );
  output.write('a\nc');
  output.write('a\nd');
  expect(terminal.taken()).toBe('');
  vi.advanceTimersByTime(40);
  expect(terminal.taken()).toBe('\u001b[?2026h\u001b[2;1H\u001b[Kd\u001b[?2026l');
});

test('after a change of size, and after others wrote to the terminal, all is drawn anew and no row too many', () => {
  output.write('a\nb');
  terminal.taken();
  terminal.rows = 1;
  terminal.emit('resize');
  output.write('c\nd');
  expect(terminal.taken()).toBe('');
  vi.advanceTimersByTime(60);
  expect(terminal.taken()).toBe('\u001b[?2026h\u001b[2J\u001b[H\u001b[?25l\u001b[1;1Hc\u001b[?2026l');
  vi.advanceTimersByTime(60);
  output.redraw();
  expect(terminal.taken()).toContain('\u001b[2J\u001b[H');
});

test('once closed nothing reaches the terminal any more', () => {
  output.close();
  output.write('a');
  vi.advanceTimersByTime(60);
  expect(terminal.taken()).toBe('');
});

test('without colours weight stays', () => {
  const plain = new FrameOutput(terminal, { hasColours: false });
  plain.write('\u001b[31m\u001b[1mCLASH\u001b[22m\u001b[39m');
  plain.close();
  expect(terminal.taken()).toContain('\u001b[1;1H\u001b[1mCLASH\u001b[22m\u001b[?2026l');
});

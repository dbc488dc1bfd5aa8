/** One line on standard error that is drawn over and over. Where that is no terminal nothing is printed. */

export interface TerminalLine {
  /** How wide the line may be. */
  readonly columns: number;
  draw(line: string): void;
  clear(): void;
}

const NOWHERE: TerminalLine = { columns: 0, draw: () => {}, clear: () => {} };

export function terminalLine(): TerminalLine {
  const { stderr } = process;
  if (!stderr.isTTY || process.env.TERM === 'dumb') return NOWHERE;
  const clear = () => void stderr.write('\r\u001b[K');
  return {
    get columns() {
      return (stderr.columns ?? 80) - 1;
    },
    draw(line) {
      clear();
      stderr.write(line);
    },
    clear,
  };
}

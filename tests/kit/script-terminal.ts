/** The built command on a terminal of script(1): real keys in, everything it writes out. Needs no other program. */
import { spawn, spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { TerminalCells } from './terminal-cells.ts';

const CLI = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist', 'cli.js');

/** Why there is no such terminal here; undefined where there is one. */
export const NO_SCRIPT: string | undefined =
  spawnSync('script', ['--version']).status === 0
    ? undefined
    : "Debian's script(1) is not installed: no terminal to drive the command on";

const LONGEST_MS = 20_000;

export interface ScriptTerminal {
  /** Types bytes as a keyboard sends them. */
  type(bytes: string): void;
  /** Waits until the screen holds this, and gives it. */
  until(words: string): Promise<string>;
  /** All bytes that were written. */
  raw(): string;
  /** Resolves with the exit code once the command has ended. */
  readonly ended: Promise<number | null>;
  close(): void;
}

/** Runs the command without words, in a folder, on a terminal of so many columns and rows. */
export function openScriptTerminal(folder: string, columns: number, rows: number): ScriptTerminal {
  const call = `stty cols ${columns} rows ${rows}; exec "${process.execPath}" "${CLI}"`;
  const child = spawn('script', ['-qefc', call, '/dev/null'], {
    cwd: folder,
    env: { PATH: process.env.PATH ?? '', HOME: folder, TZ: 'UTC', TERM: 'xterm', LANG: 'C.UTF-8' },
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  let written = '';
  const cells = new TerminalCells();
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    written += text;
    cells.write(text);
  });
  return {
    type(bytes) {
      child.stdin.write(bytes);
    },
    async until(words) {
      const end = performance.now() + LONGEST_MS;
      for (;;) {
        const seen = cells.rows().join('\n');
        if (seen.includes(words)) return seen;
        if (performance.now() > end) throw new Error(`never saw ${words}:\n${seen}`);
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    },
    raw: () => written,
    ended: new Promise((resolve) => child.on('close', resolve)),
    close: () => void child.kill(),
  };
}

/** A real terminal for tests: a shell in tmux, with a size, real keys, and the screen as a person would see it. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CLI = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'dist', 'cli.js');

/** Why no terminal can be opened here; undefined where one can. */
export const NO_TERMINAL: string | undefined =
  spawnSync('tmux', ['-V']).status === 0
    ? undefined
    : 'tmux is not installed: no terminal to drive the command in';

/** What the shell shows when it waits for a call. */
const PROMPT = 'ready> ';
const LONGEST_MS = 20_000;
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

export interface PseudoTerminal {
  /** The folder that the shell is in: its own. */
  readonly folder: string;
  /** Types text as it stands. */
  type(text: string): void;
  /** Presses keys by tmux's names: `Enter`, `Left`, `C-c`. */
  press(...names: readonly string[]): void;
  /** Types a call of the built command into the shell. */
  call(words: string): void;
  /** Likewise, waits until it has ended, clears the screen and gives the exit code. */
  run(words: string): Promise<number>;
  /** Likewise without waiting, and gives the id of its process. */
  callWithId(words: string): Promise<number>;
  resize(columns: number, rows: number): void;
  /** The rows as they are seen, without blanks at their ends. */
  rows(): readonly string[];
  /** Waits until the screen holds this, and gives its rows; throws with the screen where it never does. */
  until(wanted: string | RegExp): Promise<readonly string[]>;
  /** Waits until the shell is ready again. */
  untilReady(): Promise<readonly string[]>;
  /** What the shell's own terminal is set to, by stty. */
  modes(): Promise<string>;
  /** tmux's word for something of the pane: `alternate_on`, `cursor_flag`. */
  ask(format: string): string;
  close(): void;
}

/** Opens a shell of so many columns and rows, in a new folder and a server of its own. */
export async function openPseudoTerminal(columns: number, rows: number): Promise<PseudoTerminal> {
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-'));
  const home = mkdtempSync(join(tmpdir(), 'hearwright-'));
  const socket = join(home, 'tmux');
  const env = { PATH: process.env.PATH ?? '', HOME: home, TZ: 'UTC', LANG: 'C.UTF-8', PS1: PROMPT };
  const tmux = (...words: readonly string[]) => {
    const done = spawnSync('tmux', ['-u', '-S', socket, '-f', '/dev/null', ...words], {
      cwd: folder,
      encoding: 'utf8',
      env,
    });
    if (done.status !== 0) throw new Error(`tmux ${words[0]}: ${done.stderr}`);
    return done.stdout;
  };
  const size = ['-x', String(columns), '-y', String(rows)];
  tmux('new-session', '-d', ...size, 'sh', '-i', ';', 'set', '-g', 'status', 'off');
  tmux('resize-window', ...size);

  let files = 0;
  /** What the shell writes into the file that it is given; the screen may look the same before and after. */
  async function written(ask: (file: string) => void): Promise<string> {
    const file = join(home, `written-${files++}`);
    ask(file);
    const end = performance.now() + LONGEST_MS;
    while (!existsSync(file) || !readFileSync(file, 'utf8').endsWith('\n')) {
      if (performance.now() > end) throw new Error(`the shell wrote nothing:\n${terminal.rows().join('\n')}`);
      await pause(20);
    }
    return readFileSync(file, 'utf8').trim();
  }

  const terminal: PseudoTerminal = {
    folder,
    type: (text) => void tmux('send-keys', '-l', '--', text),
    press: (...names) => void tmux('send-keys', ...names),
    call(words) {
      terminal.type(`'${process.execPath}' '${CLI}' ${words}`);
      terminal.press('Enter');
    },
    async callWithId(words) {
      const id = await written((file) => {
        terminal.type(`sh -c 'echo $$ > "${file}"; exec "${process.execPath}" "${CLI}" ${words}'`);
        terminal.press('Enter');
      });
      return Number(id);
    },
    async run(words) {
      const code = await written((file) => {
        terminal.type(`'${process.execPath}' '${CLI}' ${words}; echo $? > '${file}'; clear`);
        terminal.press('Enter');
      });
      await terminal.until(/^ready>\n*$/);
      return Number(code);
    },
    resize: (newColumns, newRows) =>
      void tmux('resize-window', '-x', String(newColumns), '-y', String(newRows)),
    rows: () =>
      tmux('capture-pane', '-p')
        .split('\n')
        .map((row) => row.trimEnd()),
    async until(wanted) {
      const end = performance.now() + LONGEST_MS;
      const isWanted = (text: string) =>
        typeof wanted === 'string' ? text.includes(wanted) : wanted.test(text);
      // A busy machine may be caught in the middle of a paint: the same is seen twice, as far as it ever rests.
      for (let before = ''; ; ) {
        const seen = terminal.rows();
        const text = seen.join('\n');
        if (isWanted(text) && (text === before || performance.now() > end)) return seen;
        before = text;
        if (performance.now() > end) throw new Error(`never saw ${wanted}:\n${text}`);
        await pause(50);
      }
    },
    untilReady: () => terminal.until(/ready>\n*$/),
    async modes() {
      const modes = await written((file) => {
        terminal.type(`stty -g > '${file}'; clear`);
        terminal.press('Enter');
      });
      await terminal.until(/^ready>\n*$/);
      return modes;
    },
    ask: (format) => tmux('display-message', '-p', `#{${format}}`).trim(),
    close() {
      tmux('kill-server');
      for (const one of [folder, home]) rmSync(one, { recursive: true, force: true });
    },
  };
  await terminal.untilReady();
  return terminal;
}

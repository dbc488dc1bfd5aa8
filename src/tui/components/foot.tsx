/** The bottom lines: what just happened, what is being typed, and the keys of this view. */
import { Box } from 'ink';
import { plainText } from '../../plain-text.ts';
import { cutLine, cutStart, widthOf } from '../../reports/columns.ts';
import { type Intent, type KeyBinding, keysOf } from '../keys.ts';
import { isRunning } from '../state/bench.ts';
import type { ScreenState, Typing, View } from '../state/screen-state.ts';
import { settleWords } from '../state/settle-words.ts';
import { aroundCursor } from '../state/typed-line.ts';
import { Line } from './line.tsx';

/** The key that leads to where one is already says nothing. */
const HERE: Partial<Record<View, Intent>> = {
  memos: 'see-memos',
  clashes: 'see-clashes',
  figures: 'see-figures',
  rules: 'see-rules',
  tasks: 'see-tasks',
  day: 'see-day',
  next: 'see-next',
  where: 'see-where',
  bench: 'see-bench',
};

const ASKED: Readonly<Record<Typing['what'], readonly [question: string, keys: string]>> = {
  file: ['file to take in', 'Enter takes it, Esc leaves it'],
  find: ['find', 'Enter opens the marked one, Esc shows all'],
  task: ['to do', 'Enter adds it, Esc leaves it'],
  wait: ['it waits for', 'Enter notes it, Esc leaves it'],
  amend: ['the note is', 'Enter puts it right, Esc leaves it'],
  kind: ['it is: to do, done, decided, snag, coming, here, promise, put right', 'Enter sets it'],
  reword: ['it was said', 'Enter reads it again, Esc leaves it'],
  join: ['it means', 'Enter joins them, Esc leaves it'],
  set: ['the figure is', 'Enter sets it, Esc leaves it'],
  'right-size': ['the size is', 'Enter settles it, Esc leaves it'],
  due: ['by when, YYYY-MM-DD or none', 'Enter sets it, Esc leaves it'],
};

/** What is asked and typed so far, the cursor in it, and which keys end it where there is room for that. */
export function typingLine(typing: Typing, columns: number): string {
  const [question, keys] = ASKED[typing.what];
  const [before, behind] = aroundCursor(typing).map(plainText) as [string, string];
  const line = `${question}: ${before}_${behind}`;
  const whole = `${line}  (${keys})`;
  if (widthOf(whole) <= columns) return whole;
  if (widthOf(line) <= columns) return line;
  // What stands before the cursor matters most; of what stands behind it a little is shown.
  const end = cutLine(behind, Math.floor(columns / 4));
  return cutStart(`${question}: ${before}_`, columns - widthOf(end)) + end;
}

/** From so many rows on, keys of the view and ways to others have a line each. */
const TALL = 20;

/** Below this width the keys of a view have two lines, so that all of one choice are in sight. */
const NARROW = 60;

/** How many lines the keys take. */
export const keyRows = (state: ScreenState, columns: number, rows: number) =>
  keyLines(state, columns, rows).length;

/**
 * The keys that fit the width: those of this view, then those that lead elsewhere; on a tall terminal in two lines. The
 * way to the whole list stands first, so that it is in sight on the narrowest.
 */
export function keyLines(state: ScreenState, columns: number, rows: number): readonly string[] {
  const shown = keysOf(state.view).filter(
    (binding) =>
      !binding.isQuiet &&
      binding.key !== '?' &&
      !(binding.intent === 'read-back' && state.view !== 'bench') &&
      binding.intent !== HERE[state.view] &&
      !(binding.intent === 'cancel' && state.jobs.length === 0 && state.watched === undefined) &&
      !(binding.intent === 'see-bench' && !isRunning(state.bench)),
  );
  const now = wordsNow(state);
  const words = ({ intent, shown: key, brief, words: long }: KeyBinding) =>
    `${key} ${now[intent] ?? brief ?? long}`;
  const own = shown.filter(({ views, intent }) => views !== 'all' && intent !== 'back').map(words);
  const ways = shown.filter(({ views, intent }) => views === 'all' || intent === 'back').map(words);
  if (rows < TALL || own.length === 0) return [inLine(fitting(['? keys', ...own, ...ways], columns))];
  const first = fitting(own, columns);
  const second = columns < NARROW ? fitting(own.slice(first.length), columns) : [];
  return [first, second, fitting(['? keys', ...ways], columns)]
    .filter(({ length }) => length > 0)
    .map(inLine);
}

/** Words of keys that depend on what is going on, or on what is marked. */
function wordsNow(state: ScreenState): Partial<Readonly<Record<Intent, string>>> {
  return {
    ...(isRunning(state.bench) ? { record: 'stop' } : {}),
    ...(state.view === 'clashes' ? settleWords(state) : {}),
  };
}

/** As many as fit into a line, whole; at least one. */
function fitting(keys: readonly string[], columns: number): readonly string[] {
  let count = Math.min(1, keys.length);
  while (count < keys.length && widthOf(inLine(keys.slice(0, count + 1))) <= columns) count++;
  return keys.slice(0, count);
}

const inLine = (keys: readonly string[]) => keys.join('  ');

/** Red alone is dark on some grounds; heavy, it is bright on those. */
const BAD = { color: 'red', bold: true } as const;

interface FootProps {
  readonly state: ScreenState;
  readonly columns: number;
  readonly rows: number;
}

export function Foot({ state, columns, rows }: FootProps) {
  return (
    <Box flexDirection="column">
      {state.message?.lines.map((line) => (
        <Line key={line} text={plainText(line)} {...(state.message?.tone === 'bad' ? BAD : {})} />
      ))}
      {state.typing === undefined ? (
        keyLines(state, columns, rows).map((line) => <Line key={line} text={line} />)
      ) : (
        <Line text={typingLine(state.typing, columns)} />
      )}
    </Box>
  );
}

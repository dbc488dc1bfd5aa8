/** The bottom lines: what just happened, what is being typed, and the keys of this view. */
import { Box } from 'ink';
import { plainText } from '../../plain-text.ts';
import { cutStart, widthOf } from '../../reports/columns.ts';
import { type Intent, keysOf } from '../keys.ts';
import { isRunning } from '../state/bench.ts';
import type { ScreenState, Typing, View } from '../state/screen-state.ts';
import { Line } from './line.tsx';

/** Moving about is left out of the footer; `?` lists every key. */
const COMMON = new Set(['up', 'down', 'page-up', 'page-down', 'interrupt']);

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
  due: ['by when, YYYY-MM-DD or none', 'Enter sets it, Esc leaves it'],
};

/** What is asked and typed so far, and which keys end it where there is room for that. */
export function typingLine({ what, text }: Typing, columns: number): string {
  const [question, keys] = ASKED[what];
  const line = `${question}: ${plainText(text)}_`;
  const whole = `${line}  (${keys})`;
  return widthOf(whole) <= columns ? whole : cutStart(line, columns);
}

/** The keys that fit the width, in their order, ending with the way to the whole list. */
export function keyLine(state: ScreenState, columns: number): string {
  const shown = keysOf(state.view).filter(
    (binding) =>
      !COMMON.has(binding.key) &&
      binding.key !== '?' &&
      binding.intent !== HERE[state.view] &&
      !(binding.intent === 'cancel' && state.jobs.length === 0) &&
      !(binding.intent === 'see-bench' && !isRunning(state.bench)),
  );
  const tail = '? keys';
  let line = '';
  for (const binding of shown) {
    const stops = binding.intent === 'record' && isRunning(state.bench);
    const next = `${line}${binding.shown} ${stops ? 'stop' : (binding.brief ?? binding.words)}  `;
    if (next.length + tail.length > columns) break;
    line = next;
  }
  return line + tail;
}

export function Foot({ state, columns }: { readonly state: ScreenState; readonly columns: number }) {
  return (
    <Box flexDirection="column">
      {state.message?.lines.map((line) => (
        <Line
          key={line}
          text={plainText(line)}
          {...(state.message?.tone === 'bad' ? { color: 'red' } : {})}
        />
      ))}
      {state.typing === undefined ? (
        <Line dimColor text={keyLine(state, columns)} />
      ) : (
        <Line text={typingLine(state.typing, columns)} />
      )}
    </Box>
  );
}

/** Joins keys and reducer with the one who does the work. */
import { useApp, useInput, useStdout } from 'ink';
import { useCallback, useEffect, useRef, useState } from 'react';
import { hasToWait } from './key-order.ts';
import { pressesOf } from './key-presses.ts';
import { Screen } from './screen.tsx';
import { reduce } from './state/reduce.ts';
import {
  type Effect,
  type KeyPress,
  openingState,
  type ScreenEvent,
  type ScreenOpening,
} from './state/screen-state.ts';

/** Does what the screen asks for, somewhere else, and tells what came of it. */
export interface ScreenWork {
  perform(effect: Effect): void;
  /** From now on events come here; gives back how to end that. */
  listen(onEvent: (event: ScreenEvent) => void): () => void;
}

interface AppProps {
  readonly opening: ScreenOpening;
  readonly work: ScreenWork;
  /** Ctrl-Z: gives the terminal back until the shell goes on with the program, and calls `back` then. */
  readonly suspend?: (back: () => void) => void;
}

export function App({ opening, work, suspend = () => {} }: AppProps) {
  const [state, setState] = useState(() => openingState(opening.data, opening.where));
  const current = useRef(state);
  const isLeaving = useRef(false);
  const { exit } = useApp();
  const size = useSize();

  const waiting = useRef<KeyPress[]>([]);
  const send = useCallback(
    (event: ScreenEvent) => {
      if (event.kind === 'gone') {
        exit();
        return;
      }
      const step = reduce(current.current, event);
      current.current = step.state;
      setState(step.state);
      for (const effect of step.effects) {
        // A second time nothing is waited for: what was recorded is found again by the next call.
        if (effect.do === 'leave' && isLeaving.current) {
          exit();
          return;
        }
        if (effect.do === 'leave') isLeaving.current = true;
        work.perform(effect);
      }
      // Keys that came ahead of what they are meant for.
      while (event.kind === 'performed') {
        const [key] = waiting.current;
        if (!key || hasToWait(current.current, key, current.current.underWay)) break;
        waiting.current.shift();
        send({ kind: 'key', key });
      }
    },
    [exit, work],
  );
  useEffect(() => {
    const stop = work.listen(send);
    // The newest and dearest were there at once; the rest follows.
    work.perform({ do: 'read-data' });
    return stop;
  }, [send, work]);

  // Others may have written into the project meanwhile.
  const comeBack = () => work.perform({ do: 'read-data' });
  /** A key that has to wait, or one behind such a key. */
  const isAhead = (press: KeyPress) =>
    press.name !== 'interrupt' &&
    (waiting.current.length > 0 || hasToWait(current.current, press, current.current.underWay));
  useInput((input, key) => {
    for (const press of pressesOf(input, key, current.current.typing !== undefined)) {
      if (press.name === 'suspend') suspend(comeBack);
      else if (isAhead(press)) waiting.current.push(press);
      else send({ kind: 'key', key: press });
    }
  });
  return <Screen state={state} columns={size.columns} rows={size.rows} />;
}

function useSize() {
  const { stdout } = useStdout();
  const read = useCallback(() => ({ columns: stdout.columns ?? 80, rows: stdout.rows ?? 24 }), [stdout]);
  const [size, setSize] = useState(read);
  useEffect(() => {
    const onResize = () => setSize(read());
    stdout.on('resize', onResize);
    return () => {
      stdout.off('resize', onResize);
    };
  }, [stdout, read]);
  return size;
}

/** Joins keys, reducer and project. */
import { basename, dirname } from 'node:path';
import { useApp, useInput, useStdout } from 'ink';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Problem } from '../problem.ts';
import type { HandChange, ListenEvent, ProjectApi, Taken } from '../project-api.ts';
import { daysBetween } from '../reports/source-text.ts';
import { dayPages } from './day-pages.ts';
import { pressesOf } from './key-presses.ts';
import { screenListening } from './listen-on-screen.ts';
import { Screen } from './screen.tsx';
import { reduce } from './state/reduce.ts';
import {
  type DayPage,
  type Effect,
  type FigureBook,
  openingState,
  type ScreenData,
  type ScreenEvent,
  type ScreenState,
} from './state/screen-state.ts';

/** Writes a page into the project's folder and says where it went. Throws a Problem when it cannot. */
export type SavePage = (file: string, text: string) => { readonly file: string; readonly beside: boolean };

interface AppProps {
  readonly project: ProjectApi;
  readonly save: SavePage;
  /** ISO 8601, asked anew whenever the data is read. */
  readonly now: () => string;
  /** Ctrl-Z: gives the terminal back until the shell goes on with the program; then `redraw` draws all anew. */
  readonly suspend?: (redraw: () => void) => void;
}

/** What the screens of figures show. */
export function readBook(project: ProjectApi): FigureBook {
  return { figures: project.figures(), limits: project.limits(), checks: project.checks() };
}

/** What the screen shows of a project at a moment. */
export function readData(project: ProjectApi, now: string): ScreenData {
  return {
    projectName: project.info.name,
    memos: [...project.memos()].reverse(),
    findings: [...project.findings({ status: 'open' })].sort((a, b) => b.cost - a.cost),
    next: project.next(now),
  };
}

/** What to say where a task could not be put before another: what it needs comes first all the same. */
function placeKept(project: ProjectApi, change: HandChange, now: string): string | undefined {
  if (change.kind !== 'task-placed') return undefined;
  const ids = project.tasks(now).map(({ id }) => id);
  if (ids.indexOf(change.taskId) < ids.indexOf(change.before)) return undefined;
  return 'the order stays: what has to come first is stronger';
}

/** Longer than this without talk, and the screen opens with where one was. */
const GAP_DAYS = 7;

/** The first state: after a gap where one was, else the memos. `now` is ISO 8601. */
export function openScreenOn(project: ProjectApi, now: string): ScreenState {
  const last = project.days().at(-1);
  const isBack = last !== undefined && daysBetween(last, now) > GAP_DAYS;
  return openingState(readData(project, now), isBack ? project.where(now) : undefined);
}

const problemLines = (problem: Problem) =>
  [problem.message, problem.kept && `kept  ${problem.kept}`, problem.next && `next  ${problem.next}`].filter(
    (line): line is string => Boolean(line),
  );

const takenLines = ({ memoId, already, findings }: Taken) => {
  if (already) return [`${memoId} holds these same bytes: nothing was added`];
  const clash = findings.length === 0 ? 'nothing clashes' : `${findings.length} to settle: press c`;
  return [`${memoId} is taken in, ${clash}`];
};

/** What an event of the recording has to say beside what the bench shows. */
function benchLines(event: ListenEvent): { readonly lines?: readonly string[] } {
  if (event.kind === 'taken') return { lines: takenLines(event.taken) };
  if (event.kind === 'failed') return { lines: problemLines(event.problem) };
  return event.kind === 'not-heard'
    ? { lines: [`words are heard only after the recording: ${event.reason}`] }
    : {};
}

/** Names first, the folder last: on a narrow screen its end is cut off. */
function writtenLines(written: readonly (readonly [DayPage, ReturnType<SavePage>])[]): readonly string[] {
  const lines = written.map(([page, { file, beside }]) =>
    beside
      ? `written: ${basename(file)}, because ${page.file} was changed since`
      : `written: ${basename(file)}`,
  );
  const [first] = written;
  return first ? [...lines, `in ${dirname(first[1].file)}`] : lines;
}

const troubleLines = (error: unknown) =>
  error instanceof Problem ? problemLines(error) : [error instanceof Error ? error.message : String(error)];

const SETTLED = {
  'keep-old': 'the old figure holds',
  'take-new': 'the new figure holds',
  'both-right': 'both are right',
  correct: 'the figure is put right',
} as const;

export function App({ project, now, save, suspend = () => {} }: AppProps) {
  const [state, setState] = useState(() => openScreenOn(project, now()));
  const current = useRef(state);
  const abort = useRef<AbortController>(undefined);
  const { exit } = useApp();
  const { write } = useStdout();
  const size = useSize();

  const leaving = useRef(false);
  const later = useRef<(event: ScreenEvent) => void>(() => {});
  const recording = useMemo(
    () =>
      screenListening(project, {
        onEvent: (event) => later.current({ kind: 'bench', event, ...benchLines(event) }),
        onRead: () => later.current({ kind: 'data', data: readData(project, now()) }),
        onOver: (trouble) =>
          later.current({ kind: 'bench-over', ...(trouble ? { lines: troubleLines(trouble) } : {}) }),
      }),
    [now, project],
  );
  const send = useCallback(
    (event: ScreenEvent) => {
      const step = reduce(current.current, event);
      current.current = step.state;
      setState(step.state);
      for (const effect of step.effects) {
        try {
          run(effect);
        } catch (error) {
          // Another program may hold the project, or the disk be full: the screen stays, and says so.
          send({ kind: 'refused', lines: troubleLines(error) });
        }
      }

      function run(effect: Effect): void {
        switch (effect.do) {
          case 'open-memo': {
            const memo = project.memo(effect.id);
            if (memo) send({ kind: 'memo', memo });
            return;
          }
          case 'settle':
            project.settle(effect.id, effect.choice);
            send({ kind: 'settled', lines: [`settled: ${SETTLED[effect.choice]}`] });
            send({ kind: 'data', data: readData(project, now()) });
            return;
          case 'take':
            void take(effect.file);
            return;
          case 'cancel':
            abort.current?.abort();
            return;
          case 'read-book':
            send({ kind: 'book', book: readBook(project) });
            return;
          case 'read-tasks':
            send({ kind: 'tasks', tasks: project.tasks(now()) });
            return;
          case 'read-pages':
            send({ kind: 'pages', pages: dayPages(project, now(), effect.day), days: project.days() });
            return;
          case 'read-where':
            send({ kind: 'where', where: project.where(now()) });
            return;
          case 'withdraw': {
            const out = project.withdraw(effect.id);
            send({ kind: 'settled', lines: [out === undefined ? 'it is not there any more' : effect.line] });
            send({ kind: 'data', data: readData(project, now()) });
            return;
          }
          case 'undo': {
            const undone = project.undo();
            const line =
              undone === undefined ? 'nothing was set by hand: nothing to undo' : `undone: ${undone}`;
            send({ kind: 'settled', lines: [line] });
            send({ kind: 'data', data: readData(project, now()) });
            return;
          }
          case 'by-hand':
            project.setByHand(effect.change);
            send({ kind: 'settled', lines: [placeKept(project, effect.change, now()) ?? effect.line] });
            send({ kind: 'data', data: readData(project, now()) });
            return;
          case 'write':
            writePages(effect.pages);
            return;
          case 'record':
            void recording.start();
            return;
          case 'stop-recording':
            recording.stop();
            return;
          case 'leave':
            abort.current?.abort();
            // A second time it does not wait: what was recorded is found again by the next call.
            if (leaving.current) exit();
            leaving.current = true;
            void recording.settle().then(() => exit());
        }
      }

      function writePages(pages: readonly DayPage[]): void {
        try {
          const written = pages.map((page) => [page, save(page.file, page.text)] as const);
          send({ kind: 'settled', lines: writtenLines(written) });
        } catch (error) {
          send({ kind: 'refused', lines: troubleLines(error) });
        }
      }

      async function take(file: string): Promise<void> {
        abort.current = new AbortController();
        try {
          const result = await project.take(file, {
            onProgress: (progress) => send({ kind: 'progress', progress }),
            signal: abort.current.signal,
          });
          send(
            result.ok
              ? { kind: 'taken', lines: takenLines(result.value) }
              : { kind: 'failed', lines: problemLines(result.problem) },
          );
        } catch (error) {
          send({ kind: 'failed', lines: troubleLines(error) });
        }
        send({ kind: 'data', data: readData(project, now()) });
      }
    },
    [exit, now, project, recording, save],
  );
  later.current = send;

  const comeBack = () => {
    write('');
    // Others may have written into the project meanwhile.
    send({ kind: 'data', data: readData(project, now()) });
  };
  useInput((input, key) => {
    for (const press of pressesOf(input, key, current.current.typing !== undefined)) {
      if (press.name === 'suspend') suspend(comeBack);
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

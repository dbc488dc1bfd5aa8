/** Joins keys, reducer and project. */
import { basename, dirname } from 'node:path';
import { useApp, useInput, useStdout } from 'ink';
import { useCallback, useEffect, useRef, useState } from 'react';
import { Problem } from '../problem.ts';
import type { ProjectApi, Taken } from '../project-api.ts';
import { dayPages } from './day-pages.ts';
import { Screen } from './screen.tsx';
import { reduce } from './state/reduce.ts';
import {
  type DayPage,
  type Effect,
  type FigureBook,
  type KeyPress,
  openingState,
  type ScreenData,
  type ScreenEvent,
} from './state/screen-state.ts';

/** Writes a page into the project's folder and says where it went. Throws a Problem when it cannot. */
export type SavePage = (file: string, text: string) => { readonly file: string; readonly beside: boolean };

interface AppProps {
  readonly project: ProjectApi;
  readonly save: SavePage;
  /** ISO 8601, asked anew whenever the data is read. */
  readonly now: () => string;
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

const problemLines = (problem: Problem) =>
  [problem.message, problem.kept && `kept  ${problem.kept}`, problem.next && `next  ${problem.next}`].filter(
    (line): line is string => Boolean(line),
  );

const takenLines = ({ memoId, already, findings }: Taken) => {
  if (already) return [`${memoId} holds these same bytes: nothing was added`];
  const clash = findings.length === 0 ? 'nothing clashes' : `${findings.length} to settle: press c`;
  return [`${memoId} is taken in, ${clash}`];
};

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

export function App({ project, now, save }: AppProps) {
  const [state, setState] = useState(() => openingState(readData(project, now())));
  const current = useRef(state);
  const abort = useRef<AbortController>(undefined);
  const { exit } = useApp();
  const size = useSize();

  const send = useCallback(
    (event: ScreenEvent) => {
      const step = reduce(current.current, event);
      current.current = step.state;
      setState(step.state);
      for (const effect of step.effects) run(effect);

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
            send({ kind: 'pages', pages: dayPages(project, now()) });
            return;
          case 'by-hand':
            project.setByHand(effect.change);
            send({ kind: 'settled', lines: [effect.line] });
            send({ kind: 'data', data: readData(project, now()) });
            return;
          case 'write':
            write(effect.pages);
            return;
          case 'leave':
            abort.current?.abort();
            exit();
        }
      }

      function write(pages: readonly DayPage[]): void {
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
    [exit, now, project, save],
  );

  useInput((input, key) => send({ kind: 'key', key: pressed(input, key) }));
  return <Screen state={state} columns={size.columns} rows={size.rows} />;
}

type InkKey = Parameters<Parameters<typeof useInput>[0]>[1];

/** Ink's key as one of ours. */
function pressed(input: string, key: InkKey): KeyPress {
  const named = (
    [
      [key.upArrow, 'up'],
      [key.downArrow, 'down'],
      [key.pageUp, 'page-up'],
      [key.pageDown, 'page-down'],
      [key.return, 'enter'],
      [key.escape, 'back'],
      [key.backspace || key.delete, 'erase'],
      [key.ctrl && input === 'c', 'interrupt'],
    ] as const
  ).find(([is]) => is);
  if (named) return { text: '', name: named[1] };
  return { text: key.ctrl || key.meta ? '' : input };
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

import { Command } from 'commander';
import { EXIT } from '../../problem.ts';
import type { ListenEvent, Listened, OpenListening, ProjectApi } from '../../project-api.ts';
import { interruptSignal } from '../interrupt.ts';
import { print, printJson, printJsonLine, tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { printProblem } from '../report-problem.ts';
import { type TerminalLine, terminalLine } from '../terminal-line.ts';
import { secondsValue } from '../values.ts';
import { finishKeptFirst } from './resume.ts';

interface Options {
  readonly device?: string;
  readonly list?: boolean;
  readonly for?: number;
  readonly json?: boolean;
  readonly aloud?: boolean;
}

/** `listen`: records from a microphone, shows what is heard as it is said, and takes it in. */
export function listenCommand(): Command {
  return new Command('listen')
    .description('record from a microphone, show each figure and clash as it is said, and take it in')
    .option('--device <name>', 'the microphone, as --list names it; without it the default one')
    .option('--list', 'list the microphones')
    .option('--for <seconds>', 'stop after so many seconds', (value) => secondsValue('--for', value))
    .option('--aloud', 'read each figure back by voice, and what it clashes with')
    .option('--json', 'print JSON, an object a line as things happen')
    .action((options: Options, command: Command) => {
      if (options.list) return listMicrophones(options.json ?? false);
      return withProject(command, (project) => listen(project, options), { finishesKept: true });
    });
}

async function listMicrophones(json: boolean): Promise<void> {
  const { microphones } = await import('../../speech/microphone/open-microphone.ts');
  const known = await microphones();
  if (json) return printJson(known);
  if (known.length === 0)
    return print('No microphone is known here. Plug one in, or record with a phone and take the file.');
  const { textTable } = await import('../../reports/text-table.ts');
  print(textTable(known.map(({ name, about, source }) => [name, source, about ?? ''])));
}

async function listen(project: ProjectApi, options: Options): Promise<void> {
  // Memos are worked into the model in the order in which they were taken: older ones are finished first.
  await finishKeptFirst(project);
  const line = terminalLine();
  const show = options.json ? jsonEvents() : await textEvents(line);
  const opened = await project.listen({
    ...(options.device === undefined ? {} : { device: options.device }),
    ...(options.for === undefined ? {} : { seconds: options.for }),
    ...(options.aloud ? { readBack: true } : {}),
    onEvent: show,
  });
  if (!opened.ok) throw opened.problem;
  const release = stopOnEnterOrInterrupt(opened.value);
  const listened = await opened.value.finished;
  release();
  line.clear();
  tellSilence(listened);
  if (options.json) {
    const { seconds, taken, silentRest } = listened;
    printJsonLine({ kind: 'ended', seconds, memos: taken.map(({ memoId }) => memoId), silentRest });
  }
  if (listened.problems.length > 0) process.exitCode = EXIT.partly;
}

/** Enter on the terminal, or a line on standard input; the end of that input stops nothing. */
function stopOnEnterOrInterrupt(listening: OpenListening): () => void {
  const stop = () => listening.stop();
  const onInput = (text: Buffer) => {
    if (text.includes('\n')) stop();
  };
  const signal = interruptSignal();
  // It may have come while the microphone was being opened.
  if (signal.aborted) stop();
  signal.addEventListener('abort', stop);
  process.stdin.on('data', onInput);
  return () => {
    process.stdin.off('data', onInput);
    process.stdin.pause();
  };
}

/** Everything but the level, which is for the eye. */
function jsonEvents(): (event: ListenEvent) => void {
  return (event) => {
    switch (event.kind) {
      case 'level':
      case 'progress':
        return;
      case 'not-read-back':
      case 'failed': {
        const { code, message, kept, next } = event.problem;
        printProblem(event.problem);
        return printJsonLine({ kind: event.kind, problem: { code, message, kept, next } });
      }
      default:
        return printJsonLine(event);
    }
  };
}

async function textEvents(line: TerminalLine): Promise<(event: ListenEvent) => void> {
  const [
    { figureHeardLine, noteHeardLine, takenBackLine },
    { findingLine, findingText },
    { recordingLine },
    { progressLine },
    { takenText },
  ] = await Promise.all([
    import('../../reports/live-text.ts'),
    import('../../reports/finding-text.ts'),
    import('../../speech/microphone/recording-line.ts'),
    import('../progress.ts'),
    import('../taken-text.ts'),
  ]);
  let words = '';
  return (event) => {
    if (event.kind === 'level') return line.draw(recordingLine(event, words, line.columns));
    if (event.kind === 'progress') return line.draw(progressLine(event.name, event.progress, line.columns));
    line.clear();
    switch (event.kind) {
      case 'started':
        return tell(`Recording from ${event.microphone}. Enter or Control-C stops.`);
      case 'heard':
        words = event.words;
        for (const said of event.takenBack) print(takenBackLine(said));
        for (const figure of event.figures) print(figureHeardLine(figure));
        for (const note of event.notes) print(noteHeardLine(note));
        for (const clash of event.clashes) {
          const said = { ...clash, id: 'just said' };
          print(clash.status === 'open' ? `\n${findingText(said)}\n` : `  ${findingLine(said)}`);
        }
        return;
      case 'read-back':
        return;
      case 'not-read-back':
        return printProblem(event.problem);
      case 'not-heard':
        return tell(`Words are heard only after the recording: ${event.reason}.`);
      case 'stopped':
        return tell('Stopped. The last words are being heard.');
      case 'taken':
        return print(takenText(event.taken, event.taken.memo.source.name));
      case 'failed':
        return printProblem(event.problem);
    }
  };
}

function tellSilence({ silentRest, seconds }: Listened): void {
  if (seconds === 0) tell('Nothing was recorded.');
  if (silentRest)
    tell(`The last ${Math.round(silentRest.seconds)} s held no talk and are no memo: ${silentRest.file}`);
}

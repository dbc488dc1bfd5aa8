/** The commands, their shared options and the way they fail. */
import { Command } from 'commander';
import { VERSION } from '../version.ts';
import { askCommand } from './commands/ask.ts';
import { backupCommand } from './commands/backup.ts';
import { batchesCommand } from './commands/batches.ts';
import { beforeCommand } from './commands/before.ts';
import { behindCommand } from './commands/behind.ts';
import { calendarCommand } from './commands/calendar.ts';
import { checksCommand } from './commands/checks.ts';
import { closeCommand } from './commands/close.ts';
import { deviceCommand } from './commands/device.ts';
import { dueCommand } from './commands/due.ts';
import { enginesCommand } from './commands/engines.ts';
import { episodeCommand } from './commands/episode.ts';
import { exportCommand } from './commands/export.ts';
import { figuresCommand } from './commands/figures.ts';
import { findingsCommand } from './commands/findings.ts';
import { handsCommand } from './commands/hands.ts';
import { hearCommand } from './commands/hear.ts';
import { heardCommand } from './commands/heard.ts';
import { importCommand } from './commands/import.ts';
import { initCommand } from './commands/init.ts';
import { journalCommand } from './commands/journal.ts';
import { limitsCommand } from './commands/limits.ts';
import { listenCommand } from './commands/listen.ts';
import { markersCommand } from './commands/markers.ts';
import { memosCommand } from './commands/memos.ts';
import { mergeCommand } from './commands/merge.ts';
import { nextCommand } from './commands/next.ts';
import { noteCommand } from './commands/note.ts';
import { ordersCommand } from './commands/orders.ts';
import { pagesCommand } from './commands/pages.ts';
import { playCommand } from './commands/play.ts';
import { readCommand } from './commands/read.ts';
import { redoCommand } from './commands/redo.ts';
import { reopenCommand } from './commands/reopen.ts';
import { restoreCommand } from './commands/restore.ts';
import { resumeCommand } from './commands/resume.ts';
import { screenCommand } from './commands/screen.ts';
import { setCommand } from './commands/set.ts';
import { settleCommand } from './commands/settle.ts';
import { sheetCommand } from './commands/sheet.ts';
import { splitCommand } from './commands/split.ts';
import { subtitlesCommand } from './commands/subtitles.ts';
import { tableCommand } from './commands/table.ts';
import { takeCommand } from './commands/take.ts';
import { tasksCommand } from './commands/tasks.ts';
import { todoCommand } from './commands/todo.ts';
import { toleranceCommand } from './commands/tolerance.ts';
import { transcriptsCommand } from './commands/transcripts.ts';
import { undoCommand } from './commands/undo.ts';
import { verifyCommand } from './commands/verify.ts';
import { waitCommand } from './commands/wait.ts';
import { watchCommand } from './commands/watch.ts';
import { whereCommand } from './commands/where.ts';
import { withdrawCommand } from './commands/withdraw.ts';
import { wordsCommand } from './commands/words.ts';
import { workCommand } from './commands/work.ts';
import { UsageFailure } from './usage-failure.ts';

/** In the order of a project's life: this is the order of the help page. */
const COMMANDS = [
  initCommand,
  takeCommand,
  listenCommand,
  watchCommand,
  resumeCommand,
  readCommand,
  memosCommand,
  hearCommand,
  transcriptsCommand,
  enginesCommand,
  deviceCommand,
  journalCommand,
  nextCommand,
  whereCommand,
  calendarCommand,
  episodeCommand,
  subtitlesCommand,
  markersCommand,
  pagesCommand,
  findingsCommand,
  settleCommand,
  noteCommand,
  playCommand,
  wordsCommand,
  heardCommand,
  setCommand,
  toleranceCommand,
  mergeCommand,
  splitCommand,
  todoCommand,
  closeCommand,
  reopenCommand,
  dueCommand,
  waitCommand,
  beforeCommand,
  withdrawCommand,
  undoCommand,
  redoCommand,
  figuresCommand,
  sheetCommand,
  limitsCommand,
  checksCommand,
  workCommand,
  tasksCommand,
  batchesCommand,
  behindCommand,
  handsCommand,
  ordersCommand,
  askCommand,
  tableCommand,
  exportCommand,
  importCommand,
  verifyCommand,
  backupCommand,
  restoreCommand,
  screenCommand,
] as const;

/** Lets failures come out as exceptions, so that one place prints them all. Help and version are none. */
function quiet(command: Command): Command {
  return command
    .exitOverride((error) => {
      throw error.exitCode === 0 ? error : new UsageFailure(error, command);
    })
    .configureOutput({ writeErr: () => {} });
}

/** Builds the command line anew; nothing is read or opened yet. */
export function buildProgram(): Command {
  const program = quiet(new Command('hearwright'))
    .description(
      'Turns talk from a build into figures, decisions and tasks, finds where they clash, and writes the journal.',
    )
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .option('--project <dir>', 'the project folder; without it the nearest one upward')
    .option('--verbose', 'print the stack of an unexpected failure')
    .addHelpText('after', '\nWithout a command the screen opens.');
  for (const make of COMMANDS) {
    const command = make();
    for (const one of [command, ...command.commands]) quiet(one).helpOption('-h, --help', 'print this help');
    program.addCommand(command.helpCommand(false));
  }
  return program;
}

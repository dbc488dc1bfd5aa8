import { Command } from 'commander';
import type { Result } from '../../problem.ts';
import { interruptSignal } from '../interrupt.ts';
import { print, printJson, tell } from '../print.ts';
import { wantsJson } from '../project-of.ts';
import { oneOf } from '../values.ts';

/** `engines`: what can hear recordings, and how more is added. */
export function enginesCommand(): Command {
  return new Command('engines')
    .description('list what can hear recordings; add models of your own')
    .option('--json', 'print JSON')
    .addCommand(addCommand())
    .addCommand(removeCommand())
    .addCommand(defaultCommand())
    .addCommand(setUpCommand())
    .action((_options: object, command: Command) => list(wantsJson(command)));
}

/** Throws the problem with an engine that was named, before anything is begun with it. */
export async function checkEngine(name: string | undefined): Promise<void> {
  if (name === undefined) return;
  const { engineSource } = await import('../../speech/engines/known-engines.ts');
  orThrow(await engineSource(name));
}

function orThrow<T>(result: Result<T>): T {
  if (!result.ok) throw result.problem;
  return result.value;
}

async function list(json: boolean): Promise<void> {
  const { knownEngines } = await import('../../speech/engines/known-engines.ts');
  const { readEngineSettings } = await import('../../speech/engines/engine-settings.ts');
  const { findWhisperProgram } = await import('../../speech/engines/whisper-program.ts');
  const engines = await knownEngines();
  const whisperProgram = await findWhisperProgram(await readEngineSettings());
  if (json) return printJson({ engines, ...(whisperProgram ? { whisperProgram } : {}) });
  const { engineTable } = await import('../engine-table.ts');
  print(engineTable(engines, whisperProgram));
}

function addCommand(): Command {
  return new Command('add')
    .description('add a model: the folder of a sherpa-onnx model, or a Whisper file in ggml form')
    .argument('<path>', 'the folder or the file; it stays where it is')
    .option('--name <name>', 'what the engine is called; without it the name of the folder or file')
    .action(async (path: string, { name }: { name?: string }, command: Command) => {
      const { addEngine } = await import('../../speech/engines/known-engines.ts');
      const engine = orThrow(await addEngine(path, name));
      if (wantsJson(command)) return printJson(engine);
      const { engineTable } = await import('../engine-table.ts');
      print(engineTable([engine]));
    });
}

function removeCommand(): Command {
  return new Command('remove')
    .description('take an engine off the list; its files stay')
    .argument('<name>', 'as engines lists it')
    .action(async (name: string, _options: object, command: Command) => {
      const { removeEngine } = await import('../../speech/engines/known-engines.ts');
      orThrow(await removeEngine(name));
      await list(wantsJson(command));
    });
}

function defaultCommand(): Command {
  return new Command('use')
    .description('choose the engine that hears when none is named')
    .argument('<name>', 'as engines lists it')
    .action(async (name: string, _options: object, command: Command) => {
      const { chooseEngine } = await import('../../speech/engines/known-engines.ts');
      orThrow(await chooseEngine(name));
      await list(wantsJson(command));
    });
}

function setUpCommand(): Command {
  return new Command('set-up')
    .description('build the program for Whisper files, or say where one is')
    .argument('<runtime>', 'whisper')
    .option('--program <path>', 'a whisper.cpp program that is there already; "none" forgets it')
    .action(async (runtime: string, { program }: { program?: string }, command: Command) => {
      oneOf('engines set-up', ['whisper'], runtime);
      if (program === undefined) await build();
      else await nameProgram(program);
      await list(wantsJson(command));
    });
}

async function build(): Promise<void> {
  const { setUpWhisper } = await import('../../speech/engines/set-up-whisper.ts');
  const { terminalLine } = await import('../terminal-line.ts');
  const { shortLine } = await import('../../reports/columns.ts');
  const line = terminalLine();
  tell('Building the Whisper program from the source that came with this package. It takes a minute or two.');
  const built = await setUpWhisper({
    signal: interruptSignal(),
    onLine: (text) => line.draw(shortLine(text, line.columns)),
  });
  line.clear();
  orThrow(built);
}

async function nameProgram(path: string): Promise<void> {
  const { setWhisperProgram } = await import('../../speech/engines/known-engines.ts');
  orThrow(await setWhisperProgram(path === 'none' ? undefined : path));
}

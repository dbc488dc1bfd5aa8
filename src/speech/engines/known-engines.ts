/** The engines that are there: the bundled one, and the models that a person pointed to. */
import { stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { basename, isAbsolute, resolve, sep } from 'node:path';
import { plainText } from '../../plain-text.ts';
import { EXIT, Problem, type Result } from '../../problem.ts';
import type { EngineSource } from '../engine.ts';
import { checkedModelFiles, ENGINE_NAME } from '../model-folder.ts';
import { bundledSource } from '../moonshine-engine.ts';
import { type EngineSettings, readEngineSettings, writeEngineSettings } from './engine-settings.ts';
import { ggmlVerdict } from './ggml-file.ts';
import { familyOf, isFault } from './model-family.ts';
import { promptOf } from './prompt.ts';
import { findWhisperProgram, writesJson } from './whisper-program.ts';

/** One engine, as `engines` lists it. */
export interface KnownEngine {
  readonly name: string;
  readonly runtime: 'bundled' | 'sherpa-onnx' | 'whisper.cpp';
  /** "Moonshine", "Whisper", "NeMo transducer"; absent where the files do not tell. */
  readonly family?: string;
  readonly path?: string;
  readonly wordTimes: boolean;
  /** Hears when no engine is named. */
  readonly isDefault: boolean;
  /** Why it cannot hear now. */
  readonly fault?: string;
}

/** What a path turned out to be. */
interface Looked {
  readonly runtime: KnownEngine['runtime'];
  readonly family: string;
  readonly wordTimes: boolean;
  readonly source: EngineSource;
}

/** Every engine, the bundled one first. */
export async function knownEngines(): Promise<readonly KnownEngine[]> {
  const settings = await readEngineSettings();
  const bundled = await checkedModelFiles();
  const isDefault = (name: string) => (settings.default ?? ENGINE_NAME) === name;
  const engines: KnownEngine[] = [
    {
      name: ENGINE_NAME,
      runtime: 'bundled',
      family: 'Moonshine',
      wordTimes: false,
      isDefault: isDefault(ENGINE_NAME),
      ...(bundled.ok ? {} : { fault: bundled.problem.message }),
    },
  ];
  for (const { name, path } of settings.engines) {
    const looked = await look(name, path, settings);
    const shared = { name, path, isDefault: isDefault(name) };
    if (!looked.ok) {
      const runtime = /\.bin$/i.test(path) ? 'whisper.cpp' : 'sherpa-onnx';
      engines.push({ ...shared, runtime, wordTimes: false, fault: looked.problem.message });
      continue;
    }
    const { runtime, family, wordTimes } = looked.value;
    const lacks = runtime === 'whisper.cpp' && !(await findWhisperProgram(settings));
    engines.push({ ...shared, runtime, family, wordTimes, ...(lacks ? { fault: NO_PROGRAM } : {}) });
  }
  return engines;
}

/**
 * The engine of this name, of this path, or without one the default. What is wrong with its files shows when it is to
 * hear.
 */
export async function engineSource(wanted?: string): Promise<Result<EngineSource>> {
  const settings = await readEngineSettings();
  const name = wanted ?? settings.default ?? ENGINE_NAME;
  if (name === ENGINE_NAME || name === 'bundled') return { ok: true, value: bundledSource };
  const added = settings.engines.find((engine) => engine.name === name);
  if (!added && !isPath(name)) return { ok: false, problem: unknownEngine(name, settings) };
  const path = added?.path ?? resolve(name);
  const looked = await look(added?.name ?? nameFor(path), path, settings);
  return looked.ok ? { ok: true, value: looked.value.source } : looked;
}

/** Adds a model by its path. Gives the engine as it is listed from now on. */
export async function addEngine(path: string, wantedName?: string): Promise<Result<KnownEngine>> {
  const settings = await readEngineSettings();
  const name = plainText(wantedName ?? nameFor(resolve(path))).trim();
  if (name === '' || name === 'bundled' || name === ENGINE_NAME || isPath(name))
    return { ok: false, problem: nameProblem(`an engine cannot be called "${name}"`) };
  if (settings.engines.some((engine) => engine.name === name))
    return { ok: false, problem: nameProblem(`an engine is called "${name}" already`) };
  const looked = await look(name, resolve(path), settings);
  if (!looked.ok) return looked;
  await writeEngineSettings({ ...settings, engines: [...settings.engines, { name, path: resolve(path) }] });
  const engine = (await knownEngines()).find((one) => one.name === name);
  return { ok: true, value: engine as KnownEngine };
}

/** Takes an engine off the list; its files stay where they are. */
export async function removeEngine(name: string): Promise<Result<string>> {
  const settings = await readEngineSettings();
  if (!settings.engines.some((engine) => engine.name === name))
    return { ok: false, problem: unknownEngine(name, settings) };
  const { default: kept, ...others } = settings;
  const engines = settings.engines.filter((engine) => engine.name !== name);
  await writeEngineSettings({ ...others, ...(kept && kept !== name ? { default: kept } : {}), engines });
  return { ok: true, value: name };
}

/** Makes an engine the one that hears when none is named. */
export async function chooseEngine(name: string): Promise<Result<string>> {
  const settings = await readEngineSettings();
  const { default: _before, ...others } = settings;
  if (name === 'bundled' || name === ENGINE_NAME) {
    await writeEngineSettings(others);
    return { ok: true, value: ENGINE_NAME };
  }
  if (!settings.engines.some((engine) => engine.name === name))
    return { ok: false, problem: unknownEngine(name, settings) };
  await writeEngineSettings({ ...others, default: name });
  return { ok: true, value: name };
}

/** A path is told from a name by its separator, or a dot in front. */
const isPath = (name: string): boolean =>
  isAbsolute(name) || name.includes('/') || name.includes(sep) || name.startsWith('.');

function nameFor(path: string): string {
  return basename(path)
    .replace(/\.bin$/i, '')
    .replace(/^sherpa-onnx-/, '');
}

async function look(name: string, path: string, settings: EngineSettings): Promise<Result<Looked>> {
  try {
    const facts = await stat(path);
    return facts.isDirectory() ? await lookAtFolder(name, path) : await lookAtFile(name, path, settings);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return faulty(name, 'model-missing', `${path} is not there`);
    if (code === 'EACCES' || code === 'EPERM')
      return faulty(name, 'model-missing', `${path} may not be read`);
    return faulty(name, 'model-missing', `${path}: ${message}`);
  }
}

async function lookAtFolder(name: string, folder: string): Promise<Result<Looked>> {
  const found = await familyOf(folder);
  if (isFault(found)) return faulty(name, found.code, `${folder}: ${found.reason}`);
  const { family, model, givesWordTimes, longestPieceSeconds } = found;
  const source: EngineSource = {
    name,
    async prepare() {
      // The voices are found with a file of the bundled models, whatever hears the words.
      const bundled = await checkedModelFiles();
      if (!bundled.ok) return bundled;
      const { voiceActivity } = bundled.value;
      const recogniser = { kind: 'sherpa', model } as const;
      return { ok: true, value: { voiceActivity, recogniser, threads: threads(), longestPieceSeconds } };
    },
  };
  return { ok: true, value: { runtime: 'sherpa-onnx', family, wordTimes: givesWordTimes, source } };
}

const WHISPER_WINDOW_SECONDS = 28;
const NO_PROGRAM = 'the Whisper program is missing; build it with: hearwright engines set-up whisper';

async function lookAtFile(name: string, path: string, settings: EngineSettings): Promise<Result<Looked>> {
  const verdict = await ggmlVerdict(path);
  if (verdict === 'gguf')
    return faulty(name, 'model-unknown', `${path} is a GGUF file; a Whisper model in ggml form is needed`);
  if (verdict === 'damaged') return faulty(name, 'model-damaged', `${path} is damaged or was cut off`);
  if (verdict === 'other') {
    const isPart = /\.(?:onnx|ort)$/i.test(path);
    const reason = isPart ? 'is part of a model; name its folder' : 'is no model that is known here';
    return faulty(name, 'model-unknown', `${path} ${reason}`);
  }
  const source: EngineSource = {
    name,
    async prepare({ words = [] }) {
      const bundled = await checkedModelFiles();
      if (!bundled.ok) return bundled;
      const program = await findWhisperProgram(settings);
      if (!program) return { ok: false, problem: programMissing(name, settings) };
      const prompt = promptOf(words);
      return {
        ok: true,
        value: {
          voiceActivity: bundled.value.voiceActivity,
          recogniser: {
            kind: 'whisper-program',
            program: program.path,
            model: path,
            ...(prompt ? { prompt } : {}),
          },
          threads: threads(),
          longestPieceSeconds: WHISPER_WINDOW_SECONDS,
        },
      };
    },
  };
  return { ok: true, value: { runtime: 'whisper.cpp', family: 'Whisper', wordTimes: true, source } };
}

/** Half the cores: threads of these runtimes wait for each other busily, and somebody may be working beside. */
const threads = (): number => Math.max(1, Math.floor(availableParallelism() / 2));

type Fault = { readonly ok: false; readonly problem: Problem };

function faulty(name: string, code: string, reason: string): Fault {
  const problem = new Problem(`cannot use the engine ${name}: ${reason}`, {
    code,
    exitCode: EXIT.partly,
    kept: 'nothing was changed; the bundled engine hears as before',
    next: 'put the files right, or choose another engine: hearwright engines',
  });
  return { ok: false, problem };
}

function programMissing(name: string, { whisperProgram }: EngineSettings): Problem {
  const reason =
    whisperProgram === undefined
      ? 'no whisper.cpp program is installed'
      : `${whisperProgram} is no whisper.cpp program that writes JSON`;
  return new Problem(`cannot use the engine ${name}: ${reason}`, {
    code: 'whisper-missing',
    exitCode: EXIT.partly,
    kept: 'nothing was changed; the bundled engine hears as before',
    next: 'build one with: hearwright engines set-up whisper',
  });
}

function unknownEngine(name: string, { engines }: EngineSettings): Problem {
  const names = [ENGINE_NAME, ...engines.map((engine) => engine.name)];
  return new Problem(`no engine is called "${plainText(name)}"`, {
    code: 'engine-unknown',
    exitCode: EXIT.usage,
    next: `there are: ${names.join(', ')}; more with: hearwright engines add PATH`,
  });
}

function nameProblem(message: string): Problem {
  return new Problem(message, {
    code: 'engine-name',
    exitCode: EXIT.usage,
    next: 'give it another name with --name',
  });
}

/** Sets the whisper.cpp program that is to be used, or forgets it. A program that does not fit is refused. */
export async function setWhisperProgram(path: string | undefined): Promise<Result<string | undefined>> {
  const { whisperProgram: _before, ...others } = await readEngineSettings();
  const program = path === undefined ? undefined : resolve(path);
  if (program !== undefined && !(await writesJson(program))) {
    const problem = new Problem(`cannot use ${program}: it is no whisper.cpp program that writes JSON`, {
      code: 'whisper-unfit',
      exitCode: EXIT.usage,
      kept: 'the setting is as it was',
      next: 'name the program that whisper.cpp calls whisper-cli, or main in older versions',
    });
    return { ok: false, problem };
  }
  await writeEngineSettings({ ...others, ...(program === undefined ? {} : { whisperProgram: program }) });
  return { ok: true, value: program };
}

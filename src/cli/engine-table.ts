/** Engines for the terminal. */

import { textTable } from '../reports/text-table.ts';
import { oneLine } from '../reports/words.ts';
import type { KnownEngine } from '../speech/engines/known-engines.ts';
import type { WhisperProgram } from '../speech/engines/whisper-program.ts';

const FROM: Readonly<Record<WhisperProgram['from'], string>> = {
  setting: 'your setting',
  path: 'found on the search path',
  built: 'built here',
};

/** A row for each: mark of the default, name, family, whether words have times, where it is, what it lacks. */
export function engineTable(engines: readonly KnownEngine[], program?: WhisperProgram): string {
  const rows = engines.map((engine) => [
    engine.isDefault ? '*' : '',
    engine.name,
    engine.family ?? 'unknown',
    engine.runtime,
    engine.wordTimes ? 'word times' : 'sentence times',
    engine.path ?? '',
    engine.fault ?? 'ready',
  ]);
  const hears = engines.some((engine) => engine.isDefault) ? '\n* hears when no engine is named\n' : '';
  const whisper = program ? `Whisper program: ${oneLine(program.path)} (${FROM[program.from]})\n` : '';
  return `${textTable(rows)}${hears}${whisper}`;
}

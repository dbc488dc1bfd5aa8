/** Programs of the system that play sound or speak. Each is called with its words apart: no shell reads them. */
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

export interface SoundProgram {
  readonly program: string;
  /** Words of the call for one file or one text. */
  readonly words: (what: string) => readonly string[];
}

/** Players of WAV files, those of sound servers first: they mix with what else sounds. */
export const PLAYERS: readonly SoundProgram[] = [
  { program: 'pw-play', words: (file) => [file] },
  { program: 'paplay', words: (file) => [file] },
  { program: 'aplay', words: (file) => ['-q', file] },
  { program: 'afplay', words: (file) => [file] },
  { program: 'ffplay', words: (file) => ['-nodisp', '-autoexit', '-loglevel', 'error', file] },
];

/** Programs that speak by themselves, where no player is found. */
export const SPEAKERS: readonly SoundProgram[] = [
  { program: 'spd-say', words: (text) => ['--wait', '--', text] },
  { program: 'espeak-ng', words: (text) => ['--', text] },
  { program: 'say', words: (text) => ['--', text] },
];

/** Whether a program is on the path and may be run. */
export function isInstalled(program: string, path = process.env.PATH ?? ''): boolean {
  return path
    .split(delimiter)
    .filter((folder) => folder !== '')
    .some((folder) => {
      try {
        const file = join(folder, program);
        accessSync(file, constants.X_OK);
        return statSync(file).isFile();
      } catch {
        return false;
      }
    });
}

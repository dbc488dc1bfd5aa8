/**
 * Debian's free voices, as programs that speak a text file into a sound file. `learned` voices are those that confusions
 * are learned from; the others are kept aside and only measured.
 */
import { execFileSync, spawnSync } from 'node:child_process';

export interface Voice {
  readonly name: string;
  /** What kind of English it speaks. */
  readonly accent: string;
  readonly program: string;
  readonly args: (textFile: string, soundFile: string) => readonly string[];
  readonly learned: boolean;
}

const flite = (voice: string, accent: string, learned: boolean): Voice => ({
  name: `flite ${voice}`,
  accent,
  program: 'flite',
  args: (text, sound) => ['-voice', voice, '-f', text, '-o', sound],
  learned,
});

const festival = (name: string, voice: string, accent: string, learned: boolean): Voice => ({
  name: `festival ${name}`,
  accent,
  program: 'text2wave',
  args: (text, sound) => ['-eval', `(voice_${voice})`, text, '-o', sound],
  learned,
});

const espeak = (voice: string, accent: string, learned: boolean): Voice => ({
  name: `espeak-ng ${voice}`,
  accent,
  program: 'espeak-ng',
  args: (text, sound) => ['-v', voice, '-s', '150', '-f', text, '-w', sound],
  learned,
});

export const VOICES: readonly Voice[] = [
  flite('rms', 'US', true),
  flite('slt', 'US', true),
  flite('kal16', 'US', true),
  espeak('en-us', 'US', true),
  espeak('en-gb', 'southern British', true),
  espeak('en-gb-x-rp', 'received pronunciation', true),
  festival('slt-hts', 'cmu_us_slt_arctic_hts', 'US', false),
  flite('awb', 'Scottish', false),
  festival('ked', 'ked_diphone', 'US', false),
  espeak('en-gb-scotland', 'Scottish', false),
  espeak('en-029', 'Caribbean', false),
];

/** Why a voice cannot speak here; undefined when it can. */
export function whyNoVoice(voice: Voice): string | undefined {
  return spawnSync('which', [voice.program]).status === 0 ? undefined : `no ${voice.program}`;
}

/**
 * A text as a person says it: these voices read 8'4" as eighty-four, and 6" as six. Other signs they read as people do.
 */
export const asSaid = (text: string): string =>
  text
    .replace(/(\d)\s?['′](?=\s?\d)/g, '$1 foot ')
    .replace(/(\d)\s?['′](?![\p{L}\d])/gu, '$1 foot')
    .replace(/(\d)\s?(?:["″]|'')/g, '$1 inches')
    .replace(/(?<=foot\s+\d+(?: \d+\/\d+)?) inches/g, '');

/** Speaks the text into a sound file. Throws what the program says. */
export function speak(voice: Voice, textFile: string, soundFile: string): void {
  execFileSync(voice.program, voice.args(textFile, soundFile), { stdio: 'ignore' });
}

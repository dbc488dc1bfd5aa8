/** Subtitles of one recording. Source of the format: W3C WebVTT, https://www.w3.org/TR/webvtt1/ */
import type { Utterance } from '../model/views.ts';
import { oneLine } from './words.ts';

/** Reading comfort: two lines of about 42 characters. Common practice, no source. */
const LINE_LENGTH = 42;
const LINES = 2;

/** `00:02:17.500`: hours always, three decimals, a full stop. */
function stamp(seconds: number): string {
  const milliseconds = Math.round(Math.max(0, seconds) * 1000);
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const rest = String(milliseconds % 1000).padStart(3, '0');
  const whole = Math.floor(milliseconds / 1000);
  return `${two(whole / 3600)}:${two((whole / 60) % 60)}:${two(whole % 60)}.${rest}`;
}

/** `&` and `<` would start something, and `-->` must not stand in a cue. */
function cueText(line: string): string {
  return line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Fills lines with words; a word longer than a line stands alone. */
function linesOf(text: string): readonly string[] {
  const lines: string[] = [];
  for (const word of oneLine(text).split(' ').filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= LINE_LENGTH)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

interface Cue {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly lines: readonly string[];
}

/**
 * An utterance as cues of at most two lines. The recogniser gives times for whole utterances only: within one, time
 * is shared out by the number of characters.
 */
function cuesOf({ startSeconds, endSeconds, text }: Utterance): readonly Cue[] {
  const lines = linesOf(text);
  const total = lines.reduce((sum, line) => sum + line.length, 0);
  const cues: Cue[] = [];
  let done = 0;
  for (let index = 0; index < lines.length; index += LINES) {
    const part = lines.slice(index, index + LINES);
    const at = (share: number) => startSeconds + ((endSeconds - startSeconds) * share) / total;
    const start = at(done);
    done += part.reduce((sum, line) => sum + line.length, 0);
    cues.push({ startSeconds: start, endSeconds: at(done), lines: part });
  }
  return cues;
}

/** Returns the subtitles of a recording as WebVTT, in the time of its own clip. */
export function subtitlesOf(utterances: readonly Utterance[]): string {
  const cues = utterances
    .flatMap(cuesOf)
    .filter((cue) => stamp(cue.endSeconds) > stamp(cue.startSeconds))
    .map(
      (cue) =>
        `${stamp(cue.startSeconds)} --> ${stamp(cue.endSeconds)}\n${cue.lines.map(cueText).join('\n')}\n`,
    );
  return ['WEBVTT\n', ...cues].join('\n');
}

/** Cues as WebVTT. Source of the format: W3C WebVTT, https://www.w3.org/TR/webvtt1/ */
import { oneLine } from '../words.ts';
import type { Cue } from './cues.ts';

/** `00:02:17.500`: hours always, three decimals behind `mark`. */
export function stamp(ms: number, mark: '.' | ','): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const seconds = Math.floor(ms / 1000);
  const rest = String(ms % 1000).padStart(3, '0');
  return `${two(seconds / 3600)}:${two((seconds / 60) % 60)}:${two(seconds % 60)}${mark}${rest}`;
}

/** `&` and `<` would start something, and `-->` must not stand in a cue. */
export function vttText(line: string): string {
  return oneLine(line).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Returns cues as a WebVTT file. */
export function webVttOf(cues: readonly Cue[]): string {
  const blocks = cues.map(
    ({ startMs, endMs, lines }) =>
      `${stamp(startMs, '.')} --> ${stamp(endMs, '.')}\n${lines.map(vttText).join('\n')}\n`,
  );
  return ['WEBVTT\n', ...blocks].join('\n');
}

export interface Chapter {
  readonly startMs: number;
  readonly endMs: number;
  readonly title: string;
}

/** Returns chapters as a WebVTT chapter file: plain titles on one line, none over another (sections 4.2.2 and 4.5). */
export function vttChaptersOf(chapters: readonly Chapter[]): string {
  return webVttOf(chapters.map(({ startMs, endMs, title }) => ({ startMs, endMs, lines: [title] })));
}

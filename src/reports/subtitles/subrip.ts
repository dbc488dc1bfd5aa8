/**
 * Cues as SubRip: a counter, `hh:mm:ss,mmm --> hh:mm:ss,mmm`, lines, a blank line. It has no standard and no way to
 * escape: what players take for a tag is broken up by a word joiner (U+2060), which is not seen.
 */
import { oneLine } from '../words.ts';
import type { Cue } from './cues.ts';
import { stamp } from './webvtt.ts';

const JOINER = '\u2060';

/** Tags (`<i>`), placings (`{\an8}`), breaks (`\N`), entities and the arrow lose their meaning, not their look. */
export function subRipText(line: string): string {
  return oneLine(line)
    .replace(/[<{\\]|&(?=#|[a-z])/gi, (mark) => `${mark}${JOINER}`)
    .replaceAll('-->', `--${JOINER}>`);
}

/** Returns cues as a SubRip file. */
export function subRipOf(cues: readonly Cue[]): string {
  return cues
    .map(
      ({ startMs, endMs, lines }, index) =>
        `${index + 1}\n${stamp(startMs, ',')} --> ${stamp(endMs, ',')}\n${lines.map(subRipText).join('\n')}\n`,
    )
    .join('\n');
}

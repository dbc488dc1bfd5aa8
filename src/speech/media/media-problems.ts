/** What can be wrong with a recording, in words a person can act on. */
import { basename } from 'node:path';
import { EXIT, Problem } from '../../problem.ts';

const CONVERT = 'convert it to WAV, FLAC, MP3, M4A or Opus, or install ffmpeg, then take it again';
const COPY_AGAIN = 'copy it again from the recorder, then take it again';

/** Every fault of a file, by its stable code: the reason, and what to do next. */
const FAULTS = {
  'file-missing': ['there is no such file', 'check the name and the folder'],
  'file-folder': ['it is a folder', 'name the files in it'],
  'file-special': ['it is not an ordinary file', 'copy the sound into a file first'],
  'file-unreadable': ['it may not be read', 'check its permissions'],
  'file-empty': ['the file is empty', COPY_AGAIN],
  'file-text': ['it is text, not sound', 'give it a name that ends in .txt, then take it again'],
  'file-cut-off': ['the file ends before its index', COPY_AGAIN],
  'not-media': ['it is no sound or video file of a known kind', 'text memos end in .txt or .md'],
  'no-audio': ['the video has no sound track', 'take the recording that holds the talk'],
  'sound-empty': ['its sound track holds no samples', COPY_AGAIN],
  'sound-damaged': ['its sound cannot be decoded', COPY_AGAIN],
} as const;

export type MediaFault = keyof typeof FAULTS;

/** The problem of `file` under its stable code. Nothing was changed when one of these comes up. */
export function mediaProblem(file: string, fault: MediaFault, cause?: unknown): Problem {
  const [reason, next] = FAULTS[fault];
  return problem(file, fault, reason, next, cause);
}

/** The format is known by name, but nothing on this machine decodes it. */
export function formatProblem(file: string, formatName: string, cause?: unknown): Problem {
  return problem(
    file,
    'codec-unknown',
    `its sound is ${formatName}, which cannot be decoded here`,
    CONVERT,
    cause,
  );
}

function problem(file: string, code: string, reason: string, next: string, cause: unknown): Problem {
  return new Problem(`cannot take ${basename(file)}: ${reason}`, {
    code,
    exitCode: EXIT.partly,
    kept: 'the file was left as it was',
    next,
    ...(cause === undefined ? {} : { cause }),
  });
}

/** What can go wrong with a microphone, in words a person can act on. */
import { EXIT, Problem } from '../../problem.ts';
import { whyUnwritten } from '../../unwritten.ts';

/** `reasons` holds what each source said, in the order in which they were tried. */
export function noMicrophone(
  device: string | undefined,
  reasons: readonly (readonly [source: string, reason: string])[],
): Problem {
  const said = reasons.map(([source, reason]) => `${source}: ${reason}`).join('; ');
  return new Problem(
    device === undefined
      ? `cannot record: no microphone answers (${said})`
      : `cannot record from "${device}": no such microphone answers (${said})`,
    {
      code: device === undefined ? 'microphone-missing' : 'microphone-unknown',
      exitCode: EXIT.partly,
      kept: 'nothing was recorded',
      next:
        device === undefined
          ? 'plug one in and see it with: hearwright listen --list; or record with a phone, then: hearwright take FILE'
          : 'see the names with: hearwright listen --list',
    },
  );
}

/** The microphone stopped by itself. `kept` says what became of the sound until then. */
export function microphoneLost(name: string, reason: string, kept: string): Problem {
  return new Problem(`the microphone is gone: ${name} stopped giving sound (${reason})`, {
    code: 'microphone-lost',
    exitCode: EXIT.partly,
    kept,
    next: 'plug it in again, then go on: hearwright listen',
  });
}

/** The recording cannot be written on. */
export function recordingUnwritten(error: unknown, kept: string): Problem {
  return new Problem(`cannot go on recording: ${whyUnwritten(error, 'the project folder')}`, {
    code: 'recording-unwritten',
    exitCode: EXIT.partly,
    kept,
    next: 'see the room on the disk and the rights of the folder, then go on: hearwright listen',
    cause: error,
  });
}

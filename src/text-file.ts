/** Text files as memos: UTF-8, not empty, nothing binary. */
import { EXIT, Problem } from './problem.ts';

/** Longer texts are no memo: an hour of talk has about 10,000 words, 60,000 bytes. */
const MOST_BYTES = 4_000_000;

/** What was to be done with the file. */
type Verb = 'take' | 'read' | 'import';

function refused(verb: Verb, name: string, reason: string, code: string, next: string): Problem {
  return new Problem(`cannot ${verb} ${name}: ${reason}`, {
    code,
    exitCode: EXIT.partly,
    kept: 'the file was left as it was',
    next,
  });
}

/** Throws a Problem for a text that is too long, which need not be read for that. */
export function refuseLongText(bytes: number, name: string, verb: Verb = 'take'): void {
  if (bytes > MOST_BYTES)
    throw refused(verb, name, `${bytes} bytes are too many for a memo`, 'text-too-long', 'cut it into parts');
}

/**
 * Returns the text of a memo without its byte order mark. Throws a Problem when the bytes are empty, too many, not
 * UTF-8, or hold control characters that no text has.
 */
export function decodeText(bytes: Uint8Array, name: string, verb: Verb = 'take'): string {
  refuseLongText(bytes.length, name, verb);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refused(
      verb,
      name,
      'it is not UTF-8 text',
      'text-not-utf8',
      `save it as UTF-8, then: hearwright ${verb} ${name}`,
    );
  }
  if (text.includes('\0'))
    throw refused(verb, name, 'it holds binary data', 'text-binary', 'give a recording its own file ending');
  if (text.trim() === '')
    throw refused(verb, name, 'it is empty', 'file-empty', 'write or record something first');
  return text;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
  EPERM: 'it may not be read',
  ENOTDIR: 'there is no such file',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links go round in a circle',
};

const CODES: Readonly<Record<string, string>> = {
  ENOENT: 'file-missing',
  ENOTDIR: 'file-missing',
  EISDIR: 'file-folder',
};

/** What Node shows for bytes of a name that are no UTF-8: a file is not to be found by it. */
const UNREADABLE = '\ufffd';

function namedBeyondUtf8(name: string, verb: Verb, cause: unknown): Problem {
  return new Problem(`cannot ${verb} ${name}: its name holds bytes that are no UTF-8`, {
    code: 'file-missing',
    exitCode: EXIT.partly,
    next: 'give the file another name, then name that',
    cause,
  });
}

/** Why a file could not be read, as a Problem. */
export function readProblem(error: unknown, name: string, verb: Verb = 'take'): Problem {
  const code = (error as NodeJS.ErrnoException).code ?? '';
  if (code === 'ENOENT' && name.includes(UNREADABLE)) return namedBeyondUtf8(name, verb, error);
  return new Problem(`cannot ${verb} ${name}: ${REASONS[code] ?? String((error as Error).message)}`, {
    code: CODES[code] ?? 'file-unreadable',
    exitCode: EXIT.partly,
    next: code === 'EISDIR' ? 'name the files in it' : 'see the name and the rights of the file',
    cause: error,
  });
}

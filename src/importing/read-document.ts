/** Reads the document that `export --json` prints, and holds its log against what a log can be. Pure. */
import { array, looseObject, number, unknown } from 'zod/mini';
import type { NotesRead, ProjectEvent, RecordingKept, TranscriptMade } from '../model/events.ts';
import { EXPORT_FORMAT } from '../model/export.ts';
import { anyEvent, shapeOf } from './event-shapes.ts';

/** The document cannot be taken in; the message says which part, as a clause. */
export class DocumentFault extends Error {
  /** A later version wrote it. */
  readonly isNewer: boolean;
  constructor(message: string, isNewer = false) {
    super(message);
    this.isNewer = isNewer;
  }
}

/** Deeper than any document of ours, and far from what a reader's stack can take. */
const MOST_DEPTH = 64;

export interface ReadDocument {
  readonly log: readonly ProjectEvent[];
  /** The whole document, as it was parsed. */
  readonly document: Readonly<Record<string, unknown>>;
}

const documentShape = looseObject({ format: number(), log: array(unknown()) });

/** Throws a DocumentFault for anything but a whole export of this version or an older one. */
export function readDocument(text: string): ReadDocument {
  const document = parsed(text);
  if (document.format === undefined) throw new DocumentFault('it is no export of this program');
  if (typeof document.format === 'number' && document.format > EXPORT_FORMAT)
    throw new DocumentFault(
      `it has format ${document.format}, and this program reads up to ${EXPORT_FORMAT}`,
      true,
    );
  if (document.log === undefined)
    throw new DocumentFault('it holds no log: an older version exported it, or it is a part only');
  if (!documentShape.safeParse(document).success) throw new DocumentFault('it is no export of this program');
  return { log: readLog(document.log as readonly unknown[]), document };
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new DocumentFault('it is not JSON, or is cut off');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new DocumentFault('it is no export of this program');
  refuseAbsurd(value, 0);
  return value as Readonly<Record<string, unknown>>;
}

/** JSON writes no infinite number, and reads one from too many digits. */
function refuseAbsurd(value: unknown, depth: number): void {
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new DocumentFault('it holds a number that is none');
  if (typeof value !== 'object' || value === null) return;
  if (depth >= MOST_DEPTH) throw new DocumentFault('its parts lie too deep in each other');
  for (const part of Object.values(value)) refuseAbsurd(part, depth + 1);
}

function readLog(lines: readonly unknown[]): readonly ProjectEvent[] {
  const memos = new MemosSoFar();
  const log = lines.map((line, index) => {
    const event = readEvent(line, index + 1);
    memos.follow(event);
    return event;
  });
  if (log[0]?.kind !== 'project-made') throw new DocumentFault('its log does not begin with a project');
  return log;
}

function readEvent(line: unknown, seq: number): ProjectEvent {
  const known = anyEvent.safeParse(line);
  if (!known.success) throw new DocumentFault(`event ${seq} is none${placeOf(known.error)}`);
  const { kind } = known.data;
  if (known.data.seq !== seq) throw new DocumentFault(`event ${seq} is numbered ${known.data.seq}`);
  const shape = shapeOf(kind);
  if (!shape) throw new DocumentFault(`event ${seq} is of a kind that this program does not know`, true);
  const read = shape.safeParse(line);
  if (!read.success)
    throw new DocumentFault(`event ${seq} (${kind}) is not as such an event is${placeOf(read.error)}`);
  if (kind === 'project-made' && seq > 1) throw new DocumentFault(`event ${seq} makes the project again`);
  return line as ProjectEvent;
}

function placeOf({ issues }: { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] }) {
  const path = issues[0]?.path.map(String).join('.');
  return path ? `: ${path}` : '';
}

/** Memos in the order of the log: each is kept once, then has its words, then its notes. */
class MemosSoFar {
  readonly #hashes = new Set<string>();
  readonly #texts = new Map<string, string | undefined>();
  readonly #read = new Set<string>();

  follow(event: ProjectEvent): void {
    if (event.kind === 'recording-kept') this.#keep(event);
    if (event.kind === 'transcript-made') this.#hear(event);
    if (event.kind === 'notes-read') this.#readNotes(event);
    if (event.kind === 'undone' && event.undoes >= event.seq)
      throw new DocumentFault(`event ${event.seq} takes back what comes later`);
  }

  #keep({ seq, memoId, source, file }: RecordingKept): void {
    if (memoId !== `m${this.#texts.size + 1}`)
      throw new DocumentFault(`event ${seq} gives a memo the number of another`);
    if (this.#hashes.has(source.sha256))
      throw new DocumentFault(`event ${seq} takes the same bytes a second time`);
    // The path decides what is read and written: none but the name that the program itself would give.
    if (!new RegExp(`^originals/${source.sha256}(?:\\.[a-z0-9]{1,5})?$`).test(file))
      throw new DocumentFault(`event ${seq} names an original outside of the project`);
    this.#hashes.add(source.sha256);
    this.#texts.set(memoId, undefined);
  }

  #hear({ seq, memoId, transcript }: TranscriptMade): void {
    if (!this.#texts.has(memoId)) throw new DocumentFault(`event ${seq} is about no memo`);
    this.#texts.set(memoId, transcript.text);
  }

  #readNotes({ seq, memoId, notes }: NotesRead): void {
    const text = this.#texts.get(memoId);
    if (text === undefined) throw new DocumentFault(`event ${seq} reads a memo that has no words yet`);
    if (this.#read.has(memoId)) throw new DocumentFault(`event ${seq} reads a memo a second time`);
    this.#read.add(memoId);
    const lists: readonly (readonly { readonly quote: string }[])[] = Object.values(notes);
    for (const { quote } of lists.flat())
      if (!text.includes(quote)) throw new DocumentFault(`event ${seq} quotes what was not said`);
  }
}

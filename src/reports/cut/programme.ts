/**
 * The finished film as its cut list makes it. Here alone clip time becomes programme time: a moment of a clip is in the
 * film where a stretch that holds it was cut in, and nowhere else.
 */
import type { MemoView } from '../../model/views.ts';
import { clipTime } from '../source-text.ts';
import { oneLine } from '../words.ts';
import type { Cut } from './cut-list.ts';

/** One stretch of the film. */
export interface Stretch {
  readonly cut: Cut;
  /** The recording it is taken from; absent where the clip is none of the project's. */
  readonly memo?: MemoView;
  /** Programme time at which it starts, in milliseconds. */
  readonly startMs: number;
}

export interface Programme {
  readonly stretches: readonly Stretch[];
  /** Length of the film. */
  readonly lengthMs: number;
  /** Names of clips that are none of the project's. */
  readonly unknown: readonly string[];
}

export type ReadProgramme =
  | { readonly ok: true; readonly programme: Programme }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Editors give the end of the last frame, and a container rounds its length: so much more than it is let pass. */
const LENGTH_SLACK_MS = 100;

/** Recordings that a name means: by the id of the memo, else by the file's name, whatever its case. */
function meant<Memo extends Pick<MemoView, 'id' | 'source'>>(
  clip: string,
  memos: readonly Memo[],
): readonly Memo[] {
  const key = clip.toLowerCase();
  const byId = memos.filter(({ id }) => id === key || `memo ${id.slice(1)}` === key);
  return byId.length > 0 ? byId : memos.filter(({ source }) => oneLine(source.name).toLowerCase() === key);
}

/** Those of the memos that a cut list names. */
export function meantBy<Memo extends Pick<MemoView, 'id' | 'source'>>(
  cuts: readonly Cut[],
  memos: readonly Memo[],
): readonly Memo[] {
  const found = new Set([...new Set(cuts.map(({ clip }) => clip))].flatMap((clip) => meant(clip, memos)));
  return memos.filter((memo) => found.has(memo));
}

function faultsOf(cut: Cut, found: readonly MemoView[]): readonly string[] {
  const [memo] = found;
  if (found.length > 1)
    return [
      `line ${cut.line}: ${cut.clip} is the name of ${found.map(({ id }) => id).join(' and ')}: write one of these`,
    ];
  if (memo?.source.kind === 'text') return [`line ${cut.line}: ${cut.clip} was written, it is no clip`];
  const seconds = memo?.source.durationSeconds;
  return seconds !== undefined && cut.outMs > seconds * 1000 + LENGTH_SLACK_MS
    ? [`line ${cut.line}: ${cut.clip} ends at ${clipTime(seconds)}, before the out point`]
    : [];
}

/** Lays the cuts of a film one behind another and finds the recording of each. */
export function programmeOf(cuts: readonly Cut[], memos: readonly MemoView[]): ReadProgramme {
  const faults: string[] = [];
  const unknown = new Set<string>();
  const stretches: Stretch[] = [];
  let startMs = 0;
  for (const cut of cuts) {
    const found = meant(cut.clip, memos);
    faults.push(...faultsOf(cut, found));
    if (found.length === 0) unknown.add(cut.clip);
    const [memo] = found;
    stretches.push({ cut, startMs, ...(memo ? { memo } : {}) });
    startMs += cut.outMs - cut.inMs;
  }
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, programme: { stretches, lengthMs: startMs, unknown: [...unknown] } };
}

interface Timed {
  readonly startSeconds?: number;
  readonly endSeconds?: number;
}

/** Whether something said in a clip is heard in a stretch of it, whole or in part. */
export function isHeardIn({ cut }: Stretch, { startSeconds, endSeconds = startSeconds }: Timed): boolean {
  if (startSeconds === undefined || endSeconds === undefined) return false;
  return startSeconds * 1000 < cut.outMs && Math.max(endSeconds * 1000, startSeconds * 1000 + 1) > cut.inMs;
}

/** Programme time at which something said in a clip begins to be heard in a stretch of it. */
export function heardAtMs({ cut, startMs }: Stretch, { startSeconds = 0 }: Timed): number {
  return startMs + Math.max(0, Math.round(startSeconds * 1000) - cut.inMs);
}

/** A film that is out, by the name of its cut list. */
export interface PublishedFilm {
  readonly name: string;
  readonly programme: Programme;
}

/** Where something that was said in a memo is heard in films: "harbour-week at 0:28, 4:02". None where it was cut away. */
export function heardInFilms(
  films: readonly PublishedFilm[],
  { memoId, startSeconds }: { readonly memoId: string; readonly startSeconds?: number },
): readonly string[] {
  if (startSeconds === undefined) return [];
  return films.flatMap(({ name, programme }) => {
    const times = programme.stretches
      .filter((stretch) => stretch.memo?.id === memoId && isHeardIn(stretch, { startSeconds }))
      .map((stretch) => programmeTime(heardAtMs(stretch, { startSeconds })));
    return times.length === 0 ? [] : [`${oneLine(name)} at ${times.join(', ')}`];
  });
}

/** Programme time as viewers jump to it: `m:ss` below an hour, `h:mm:ss` from then on. */
export function programmeTime(ms: number): string {
  const seconds = Math.floor(ms / 1000);
  const two = (value: number) => String(value).padStart(2, '0');
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}

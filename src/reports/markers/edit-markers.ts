/**
 * Recordings with a marker at every note, for the cutting room. Source of the format: OpenTimelineIO, "Serialized Data
 * (Fields Only)" and "File Format Specification" in its documentation; the names of schemas carry their versions.
 */
import type { MemoView } from '../../model/views.ts';
import { subjectOf } from '../finding-text.ts';
import { boundedText } from '../quantity-text.ts';
import { oneLine, sentence } from '../words.ts';
import { type FrameRate, frameAt, rateOf } from './frame-rates.ts';

/** A recording as the editor will find it. */
export interface ClipToMark {
  readonly memo: MemoView;
  /** Of its picture; of a recording without one, the rate of the edit. */
  readonly rate: FrameRate;
  readonly hasPicture: boolean;
}

/** Colours that the format names, by kind of note. */
const COLOURS: Readonly<Record<string, string>> = {
  figure: 'CYAN',
  decision: 'GREEN',
  task: 'YELLOW',
  done: 'BLUE',
  problem: 'RED',
  promise: 'PURPLE',
  arrival: 'ORANGE',
  correction: 'MAGENTA',
};

interface Marked {
  readonly id: string;
  readonly kind: string;
  readonly words: string;
  readonly quote: string;
  readonly startSeconds: number;
  readonly endSeconds: number;
}

/** Notes of a recording with what an editor reads beside the marker, in the order of speech. */
function markedIn({ notes }: MemoView): readonly Marked[] {
  const { figures, decisions, tasks, done, problems, promises, arrivals, corrections } = notes;
  const all = [
    ...figures.map((note) => ({ note, words: `${subjectOf(note)}: ${boundedText(note)}` })),
    ...[...decisions, ...tasks, ...done, ...problems, ...promises, ...corrections].map((note) => ({
      note,
      words: note.gist,
    })),
    ...arrivals.map((note) => ({ note, words: note.item })),
  ];
  return all
    .flatMap(({ note, words }): readonly Marked[] => {
      const { id, kind, quote, startSeconds, endSeconds = startSeconds, review } = note;
      if (review === 'rejected' || startSeconds === undefined || endSeconds === undefined) return [];
      return [{ id, kind, words: sentence(oneLine(words)), quote: oneLine(quote), startSeconds, endSeconds }];
    })
    .sort((a, b) => a.startSeconds - b.startSeconds);
}

const time = (frames: number, rate: FrameRate) => ({
  OTIO_SCHEMA: 'RationalTime.1',
  rate: rateOf(rate),
  value: frames,
});
const range = (start: number, frames: number, rate: FrameRate) => ({
  OTIO_SCHEMA: 'TimeRange.1',
  duration: time(frames, rate),
  start_time: time(start, rate),
});

/** A marker over the words that it is about; at least one frame, and inside the clip. */
function markerOf(marked: Marked, memo: MemoView, rate: FrameRate, frames: number) {
  const start = Math.min(frameAt(marked.startSeconds, rate), Math.max(0, frames - 1));
  const end = Math.min(Math.max(frameAt(marked.endSeconds, rate), start + 1), frames);
  return {
    OTIO_SCHEMA: 'Marker.2',
    color: COLOURS[marked.kind] ?? 'WHITE',
    comment: marked.quote,
    marked_range: range(start, Math.max(1, end - start), rate),
    metadata: { hearwright: { id: marked.id, kind: marked.kind, memo: memo.id } },
    name: `${marked.kind}: ${marked.words}`,
  };
}

/** Where the editor looks for a clip: its name as a relative address, so that no name leads out of the folder. */
function addressOf({ id, source }: MemoView): string {
  const name = oneLine(source.name);
  return `./${encodeURIComponent(/^\.*$/.test(name) ? id : name)}`;
}

/** Length in whole frames; that of the last word where the container tells none. */
function framesOf({ memo, rate }: ClipToMark): number {
  const lastWord = memo.utterances?.at(-1)?.endSeconds ?? 0;
  return Math.max(1, frameAt(memo.source.durationSeconds ?? lastWord, rate));
}

function clipOf(clip: ClipToMark) {
  const { memo, rate } = clip;
  const frames = framesOf(clip);
  return {
    OTIO_SCHEMA: 'Clip.2',
    active_media_reference_key: 'DEFAULT_MEDIA',
    effects: [],
    enabled: true,
    markers: markedIn(memo).map((marked) => markerOf(marked, memo, rate, frames)),
    media_references: {
      DEFAULT_MEDIA: {
        OTIO_SCHEMA: 'ExternalReference.1',
        available_image_bounds: null,
        available_range: range(0, frames, rate),
        metadata: {},
        name: oneLine(memo.source.name),
        target_url: addressOf(memo),
      },
    },
    metadata: { hearwright: { memo: memo.id, recordedAt: memo.recordedAt, sha256: memo.source.sha256 } },
    name: oneLine(memo.source.name),
    source_range: range(0, frames, rate),
  };
}

function trackOf(kind: 'Video' | 'Audio', clips: readonly ClipToMark[]) {
  return {
    OTIO_SCHEMA: 'Track.1',
    children: clips.map(clipOf),
    effects: [],
    enabled: true,
    kind,
    markers: [],
    metadata: {},
    name: kind === 'Video' ? 'Recordings with a picture' : 'Recordings of sound alone',
    source_range: null,
  };
}

/** Numbers of a time are floating-point in the format: a whole one is written with its point. */
function withPoints(json: string): string {
  return json.replace(/^(\s*"(?:rate|value)": \d+)(,?)$/gm, '$1.0$2');
}

/**
 * Returns an OpenTimelineIO file: the recordings one behind another as they were recorded, each whole and at its own
 * rate, those with a picture on one track and those of sound alone on another. The two are not in step with each other.
 */
export function editMarkersOf(name: string, clips: readonly ClipToMark[]): string {
  const [seen, heard] = [clips.filter((one) => one.hasPicture), clips.filter((one) => !one.hasPicture)];
  const timeline = {
    OTIO_SCHEMA: 'Timeline.1',
    global_start_time: null,
    metadata: {},
    name: oneLine(name),
    tracks: {
      OTIO_SCHEMA: 'Stack.1',
      children: [
        ...(seen.length > 0 ? [trackOf('Video', seen)] : []),
        ...(heard.length > 0 ? [trackOf('Audio', heard)] : []),
      ],
      effects: [],
      enabled: true,
      markers: [],
      metadata: {},
      name: 'tracks',
      source_range: null,
    },
  };
  return `${withPoints(JSON.stringify(timeline, null, 2))}\n`;
}

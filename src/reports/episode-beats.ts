/** The beats of an episode: what each memo tells, its best line, and where the clip is. */

import { splitSentences } from '../language/sentences.ts';
import type { Kept, MemoView } from '../model/views.ts';
import { escapeMarkdown } from './markdown.ts';
import { clipTime } from './source-text.ts';
import { oneLine } from './words.ts';

/** A stretch of a recording, or the written memo where there is none. */
export interface Clip {
  readonly file: string;
  readonly startSeconds?: number;
  readonly endSeconds?: number;
}

/** "deck.m4a at 02:17 to 02:31"; nothing where the words were written and there is no clip. */
export function clipText(clip: Clip): string | undefined {
  const file = oneLine(clip.file);
  if (clip.startSeconds === undefined) return undefined;
  const end = clip.endSeconds === undefined ? '' : ` to ${clipTime(clip.endSeconds)}`;
  return `${file} at ${clipTime(clip.startSeconds)}${end}`;
}

/** The clip in brackets, escaped, after a space; empty where there is none. */
export function clipMark(clip: Clip): string {
  const text = clipText(clip);
  return text === undefined ? '' : ` [${escapeMarkdown(text)}]`;
}

/** Sound alone, by the name: a voice memo tells of the work and shows none of it. */
const SOUND_ONLY = /\.(?:m4a|m4b|mp3|wav|flac|ogg|oga|opus|aac|wma|aiff?|caf|amr)$/i;

/** How a memo can be seen: a clip with a picture, a voice, or written words. Told by the name of the file. */
export function shownBy({ source }: Pick<MemoView, 'source'>): 'picture' | 'sound' | 'text' {
  if (source.kind === 'text') return 'text';
  return SOUND_ONLY.test(source.name) ? 'sound' : 'picture';
}

interface NoteFields {
  readonly quote: string;
  readonly span: { readonly start: number };
  readonly startSeconds?: number;
  readonly endSeconds?: number;
  readonly review?: string;
}

/** Where a note of a memo is to be found. */
export function clipOf(memo: MemoView, note: Pick<NoteFields, 'startSeconds' | 'endSeconds'>): Clip {
  return {
    file: memo.source.name,
    ...(note.startSeconds === undefined ? {} : { startSeconds: note.startSeconds }),
    ...(note.endSeconds === undefined ? {} : { endSeconds: note.endSeconds }),
  };
}

export type HappeningKind = 'done' | 'problem' | 'decision' | 'arrival';

export interface Happening {
  readonly kind: HappeningKind;
  readonly gist: string;
  readonly quote: string;
  readonly clip: Clip;
  /** Why it was decided, or what caused it, as far as that was said. */
  readonly because?: string;
}

/** What a memo tells of, in the order of speech. */
function happeningsOf(memo: MemoView): readonly Happening[] {
  const { done, problems, decisions, arrivals } = memo.notes;
  const all: (NoteFields & {
    readonly kind: HappeningKind;
    readonly gist: string;
    readonly because?: string;
  })[] = [
    ...done,
    ...problems.map(({ cause, ...note }) => ({ ...note, ...(cause ? { because: cause } : {}) })),
    ...decisions.map(({ reason, ...note }) => ({ ...note, ...(reason ? { because: reason } : {}) })),
    ...arrivals.filter((note) => note.received).map((note) => ({ ...note, gist: `${note.item} arrived` })),
  ];
  return all
    .filter((note) => note.review !== 'rejected')
    .sort((a, b) => a.span.start - b.span.start)
    .map(({ kind, gist, quote, because, ...note }) => ({
      kind,
      gist,
      quote,
      clip: clipOf(memo, note),
      ...(because === undefined ? {} : { because }),
    }));
}

export interface Line {
  readonly text: string;
  readonly clip: Clip;
  /** Higher is better to hear. */
  readonly worth: number;
}

/** Words of hesitation. A line full of them is not one to quote. */
const HESITATION = /\b(?:u[hm]+|er+m?|you know|i mean|sort of|kind of|so yeah|right so)\b/giu;
const FEELING =
  /\b(?:love|hate|proud|happy|gutted|finally|can't believe|never again|lesson|best|worst|mistake|beautiful|ugly|laughed|swore|scared|relief|relieved|chuffed|delighted|annoyed|stupid|perfect)\b/iu;

/** Higher is better to hear: of a speakable length, near what happened, with some feeling, without hesitation. */
function lineWorth(
  text: string,
  told: readonly { readonly quote: string; readonly weight: number }[],
): number {
  const words = text.split(/\s+/).filter(Boolean).length;
  const length = words < 5 ? -4 : words <= 28 ? 2 : words <= 45 ? 0 : -3;
  const tells = told.reduce((sum, { quote, weight }) => sum + (text.includes(quote) ? weight : 0), 0);
  const hesitations = text.match(HESITATION)?.length ?? 0;
  return length + tells + (FEELING.test(text) ? 3 : 0) - hesitations;
}

const WEIGHTS: Readonly<Record<HappeningKind, number>> = { problem: 3, decision: 2, done: 2, arrival: 1 };

/** Sentences of a memo with the stretch of recording that holds them. */
function sentencesOf(memo: MemoView): readonly Omit<Line, 'worth'>[] {
  if (memo.utterances) {
    return memo.utterances.flatMap((utterance) =>
      splitSentences(utterance.text).map(({ start, end }) => ({
        text: utterance.text.slice(start, end).trim(),
        clip: clipOf(memo, utterance),
      })),
    );
  }
  return splitSentences(memo.text).map(({ start, end }) => ({
    text: memo.text.slice(start, end).trim(),
    clip: clipOf(memo, {}),
  }));
}

/** The sentence of a memo that is best to hear, verbatim; the earlier one on a tie. */
function bestLine(memo: MemoView, happenings: readonly Happening[]): Line | undefined {
  const told = [
    ...happenings.map(({ quote, kind }) => ({ quote, weight: WEIGHTS[kind] })),
    ...memo.notes.promises.map(({ quote }) => ({ quote, weight: 2 })),
  ];
  let best: Line | undefined;
  let most = Number.NEGATIVE_INFINITY;
  for (const line of sentencesOf(memo)) {
    const worth = lineWorth(line.text, told);
    if (worth > most) [best, most] = [{ ...line, worth }, worth];
  }
  return best;
}

export type BeatFigure = Kept<MemoView['notes']['figures'][number]>;

export interface Beat {
  readonly memo: MemoView;
  readonly title: string;
  readonly happenings: readonly Happening[];
  readonly line?: Line;
  readonly figures: readonly BeatFigure[];
}

/** "I decided to leave the trim off, because it gives room": who decided and why are no part of a title. */
const DECIDING =
  /^(?:so |right,? |well,? )*(?:(?:i|we)(?:'ve| have)? )?(?:just )?(?:decided|chosen|agreed|made up (?:my|our) minds?) (?:to |that |on |we(?:'ll| will) |i(?:'ll| will) )?(?=\S)/iu;
const REASON = /[,;]?\s+(?:because|since|so that|as it|cos|which)\b.*$/iu;

/** When it was, at the end of what was told, is no part of a title. */
const WHEN =
  /,?\s+(?:(?:first thing |early |late )?(?:today|tonight|yesterday|this (?:morning|afternoon|evening))|at (?:about )?(?:half past|quarter (?:past|to)|\d{1,2}[:.]\d\d|\w+ o'clock)\b.*)$/iu;

/** The words of something that was told, short enough for a heading. */
export function titleWords(gist: string): string {
  const plain = oneLine(gist);
  const told = plain
    .replace(DECIDING, '')
    .replace(REASON, '')
    .replace(WHEN, '')
    .replace(/[.,;:]+$/u, '');
  return told.length > 2 ? told : plain;
}

/** Errands that a viewer sees nothing of. */
const ERRAND =
  /^(?:rang|called|phoned|emailed|messaged|asked|told|spoke|bought|ordered|booked|paid|had|went|got)\b/iu;

const TITLE_KINDS: Readonly<Record<HappeningKind, number>> = {
  done: 3,
  problem: 2.5,
  decision: 2,
  arrival: 1,
};

/** Higher is better as a title: work that can be shown, told in a few words. */
function titleWorth({ kind, gist }: Happening): number {
  const words = titleWords(gist).split(' ').length;
  const length = words < 2 ? -2 : words < 3 ? -0.4 : words <= 9 ? 0 : -1;
  return TITLE_KINDS[kind] + length - (ERRAND.test(gist) ? 1.5 : 0);
}

/** What a beat is called after: what is best to show of what happened, of equals the first; else what was measured. */
function titleOf(happenings: readonly Happening[], figures: readonly BeatFigure[]): string | undefined {
  const [best] = [...happenings].sort((a, b) => titleWorth(b) - titleWorth(a));
  if (best) return titleWords(best.gist);
  return figures[0] && `Measuring the ${oneLine(figures[0].item)}`;
}

/** One beat for each memo that has something to show, in the order of the talk. */
export function beatsOf(memos: readonly MemoView[]): readonly Beat[] {
  return memos.flatMap((memo) => {
    const happenings = happeningsOf(memo);
    const figures = memo.notes.figures.filter((note) => note.review !== 'rejected');
    const title = titleOf(happenings, figures);
    if (title === undefined) return [];
    const line = bestLine(memo, happenings);
    return [{ memo, title, happenings, figures, ...(line ? { line } : {}) }];
  });
}

/** What the part of a recording between two clip times is called after; the whole recording's name where it tells nothing. */
export function titleBetween(memo: MemoView, fromSeconds: number, toSeconds: number): string | undefined {
  const isInside = ({ startSeconds, endSeconds = startSeconds }: Omit<Clip, 'file'>) =>
    startSeconds !== undefined && startSeconds < toSeconds && (endSeconds ?? startSeconds) > fromSeconds;
  const happenings = happeningsOf(memo).filter(({ clip }) => isInside(clip));
  const figures = memo.notes.figures.filter((note) => note.review !== 'rejected' && isInside(note));
  return titleOf(happenings, figures) ?? beatsOf([memo])[0]?.title;
}

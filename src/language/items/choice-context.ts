/** What is the same for all the things that one quantity may belong to: its clause, its topic, its size. */
import { type Anchor, anchorOf, clauseSubject, sentenceSubject } from './anchor.ts';
import type { FramesSay } from './candidates.ts';
import type { Said } from './discourse.ts';
import { inMillimetres } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import { isSpeaker, lastPhraseBefore, type Parse, tagAt, wordAt } from './parse.ts';
import type { Site } from './site.ts';

/** What stands in the subject's place of the figure's clause. */
export type Context = 'noun' | 'one' | 'it' | 'that' | 'they' | 'speaker' | 'none' | 'direct';

export interface Around {
  readonly anchor: Anchor;
  readonly context: Context;
  readonly plural: boolean | undefined;
  readonly clause: Phrase | undefined;
  readonly sentence: Phrase | undefined;
  readonly equal: ReadonlySet<string>;
  readonly said: FramesSay;
  readonly topic: Said | undefined;
  readonly topicKey: string | undefined;
  readonly lastKey: string | undefined;
  /** What stands between the last figure and this one. */
  readonly chain: string;
  /** The quantity as a length, 0 when it is none; and its size in rough steps. */
  readonly millimetres: number;
  readonly magnitude: string;
  /** Nothing of the sentence stands before the quantity: "Six foot eight and a quarter." */
  readonly opens: boolean;
  /** Things near by that are a whole sentence of their own, which says what the talk turns to: "The oak." */
  readonly announced: ReadonlySet<Phrase>;
  readonly latest: Phrase | undefined;
  /** The verb of the clause, as said. */
  readonly verb: string | undefined;
}

const SKIPPED_BEFORE: ReadonlySet<string | undefined> = new Set([
  'adverb',
  'filler',
  'conjunction',
  'comma',
  'determiner',
  'possessive',
  'adjective',
]);

/** Whether only light words stand between the start of the sentence and a word. */
function opensAt(parse: Parse, at: number): boolean {
  const sentence = parse.sentenceOf[at];
  for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'stop') return true;
    if (!SKIPPED_BEFORE.has(tag)) return false;
  }
  return true;
}

const isAlone = (parse: Parse, phrase: Phrase): boolean => {
  const after = tagAt(parse, phrase.last + 1);
  return (after === 'stop' || after === undefined) && opensAt(parse, phrase.first);
};

const SENTENCES_BACK = 6;

function announcedBefore(site: Site): Phrase[] {
  const { parse, at } = site;
  const found: Phrase[] = [];
  const sentence = parse.sentenceOf[at] as number;
  for (let index = lastPhraseBefore(parse, at); index >= 0; index--) {
    const phrase = parse.phrases[index] as Phrase;
    if (sentence - (parse.sentenceOf[phrase.first] as number) > SENTENCES_BACK) break;
    if (!phrase.pronoun && phrase.name.length > 0 && !isSpeaker(phrase) && isAlone(parse, phrase))
      found.push(phrase);
  }
  return found;
}

function contextOf(anchor: Anchor): Context {
  const phrase = anchor.subject ?? anchor.direct;
  if (!phrase) return 'none';
  if (isSpeaker(phrase)) return 'speaker';
  const pronoun = phrase.pronoun;
  if (!pronoun) return anchor.subject ? 'noun' : 'direct';
  if (pronoun === 'one' || pronoun === 'ones') return 'one';
  if (/^(?:it|she)$/.test(pronoun)) return 'it';
  if (/^(?:they|them|those|these|'em)$/.test(pronoun)) return 'they';
  return 'that';
}

const FAR = 5;

/** The words from the last figure to this one when they are few: "and", "by"; small words as they are. */
function chainOf(site: Site): string {
  const { parse, at, discourse } = site;
  const { last } = discourse;
  if (!last) return 'none';
  if (at - last.word > FAR) return parse.sentenceOf[at] === last.sentence ? 'same sentence' : 'far';
  let path = '';
  for (let k = last.word + 1; k < at; k++) {
    const tag = tagAt(parse, k);
    if (tag === 'adverb' || tag === 'filler' || tag === 'dimension') continue;
    const isSmall = tag === 'preposition' || tag === 'conjunction' || tag === 'modal' || tag === 'auxiliary';
    path += ` ${isSmall ? wordAt(parse, k) : tag}`;
  }
  return path;
}

/** Sizes in steps of about three times, as words. */
const MAGNITUDES = Array.from({ length: 16 }, (_, k) => String(k - 4));
function magnitudeOf(millimetres: number): string {
  if (!(millimetres > 0)) return 'none';
  const step = Math.floor(Math.log10(millimetres) * 2) + 4;
  return MAGNITUDES[Math.max(0, Math.min(MAGNITUDES.length - 1, step))] as string;
}

export function aroundOf(site: Site, said: FramesSay): Around {
  const anchor = anchorOf(site);
  const context = contextOf(anchor);
  const topic = site.discourse.topicAt(site.at);
  const announced = announcedBefore(site);
  const { value, unit } = site.quantity;
  const length = site.dimension === 'length' ? inMillimetres(value, unit) : 0;
  const millimetres = Math.max(length || 0, 0);
  return {
    anchor,
    context,
    plural: context === 'they' ? true : context === 'it' ? false : undefined,
    clause: anchor.direct ? clauseSubject(site, anchor.direct) : undefined,
    sentence: sentenceSubject(site),
    equal: site.discourse.known.withValue(site.dimension, value, unit, site.said),
    said,
    topic,
    topicKey: topic?.name.join(' '),
    lastKey: site.discourse.last?.name.join(' '),
    chain: chainOf(site),
    millimetres,
    magnitude: magnitudeOf(millimetres),
    opens: opensAt(site.parse, site.at),
    announced: new Set(announced),
    latest: announced[0],
    verb: anchor.verb === undefined ? undefined : wordAt(site.parse, anchor.verb),
  };
}

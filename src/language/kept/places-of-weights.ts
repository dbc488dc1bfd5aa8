/**
 * Reads where a thing is that a weight is said of: "the panels on the roof are 24 kilos", "60 kilos of chain up in the
 * bow locker". A limit on what is there needs to know. Where it was weighed is no such place.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { tagAt, wordAt } from '../items/parse.ts';
import type { NounKind } from '../lexicon/trade-nouns.ts';
import type { FigureNote } from '../notes.ts';
import { clauseEnd, clauseStart, type Line, lineAt, phrasesOf, type RecordScene } from './scene.ts';

const THERE = /^(?:in|inside|on|onto|into|under|underneath|aboard)$/;
/** What nothing is stowed in: people, times, "in total", and what things are weighed on. */
const NO_PLACE: ReadonlySet<NounKind> = new Set(['person', 'time', 'abstract', 'measure', 'tool', 'air']);
const SCALES =
  /^(?:scales?|weighbridge|hook|hoist|crane|balance|sheet|label|ticket|invoice|plate|order|list)$/;

/** Whether a phrase is a place where things are. */
export const isPlace = (phrase: Phrase): boolean =>
  phrase.name.length > 0 &&
  phrase.pronoun === undefined &&
  !SCALES.test(phrase.head) &&
  [...phrase.kinds].every((kind) => !NO_PLACE.has(kind));

/** The word that puts things where a phrase says: "in" of "in the overhead lockers"; undefined where none does. */
export function wordOfPlace({ parse }: RecordScene, phrase: Phrase): number | undefined {
  if (!isPlace(phrase)) return undefined;
  for (let at = phrase.first - 1; at >= phrase.first - WORDS_BETWEEN; at--) {
    if (THERE.test(wordAt(parse, at))) return at;
    // "Overhead" and other words that tell which one are of no phrase.
    if (!/^(?:determiner|possessive|adjective|adverb)$/.test(tagAt(parse, at) ?? '')) return undefined;
  }
  return undefined;
}
/** "In" and what it is in have so many words between them at most. */
const WORDS_BETWEEN = 4;

/** Weights of a memo with where their things are. Pure; costs by the phrases of the sentences that hold a weight. */
export function withPlaces(scene: RecordScene, figures: readonly FigureNote[]): readonly FigureNote[] {
  return figures.map((figure) => {
    if (figure.dimension !== 'mass' || figure.attribute !== 'weight' || figure.limit) return figure;
    const place = placeOf(scene, figure);
    return place === undefined ? figure : { ...figure, place };
  });
}

function placeOf(scene: RecordScene, { span, item }: FigureNote): string | undefined {
  const line = lineAt(scene, span.start);
  const at = line && wordStarting(scene, line, span.start);
  if (!line || at === undefined) return undefined;
  const [from, to] = [clauseStart(scene, line, at), clauseEnd(scene, line, at)];
  const places = phrasesOf(scene, line).filter(
    (phrase) => phrase.first >= from && phrase.last < to && wordOfPlace(scene, phrase) !== undefined,
  );
  const place = places.findLast(({ last }) => last < at) ?? places.find(({ first }) => first > at);
  const name = place?.name.join(' ');
  return name === item.toLowerCase() ? undefined : name;
}

function wordStarting({ parse }: RecordScene, line: Line, offset: number): number | undefined {
  for (let k = line.first; k < line.endWord; k++) if ((parse.words[k]?.span.end ?? 0) > offset) return k;
  return undefined;
}

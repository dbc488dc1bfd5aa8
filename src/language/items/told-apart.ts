/** Things of one name that are told apart by where they stand: "the trough by the pigsty", "the window over the bath". */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import { isNoThing } from './fitness.ts';
import type { Phrase } from './noun-phrases.ts';
import { isSpeaker, type Parse, phraseFrom, wordAt } from './parse.ts';

/** Words that say beside what a thing stands. */
const BESIDE = /^(?:by|beside|near|opposite)$/;
const AROUND = /^(?:over|above|under|below|beneath|behind|outside|in|at|on)$/;

/** What a thing is said to stand at, right behind its name. */
export function placeOf(parse: Parse, phrase: Phrase): Phrase | undefined {
  const link = wordAt(parse, phrase.last + 1);
  const isNext = link === 'next' && wordAt(parse, phrase.last + 2) === 'to';
  if (!isNext && !BESIDE.test(link) && !AROUND.test(link)) return undefined;
  const place = phraseFrom(parse, phrase.last + (isNext ? 3 : 2));
  if (!place || place.pronoun || isSpeaker(place) || isNoThing(place.kinds) || place.name.length === 0)
    return undefined;
  if (!/^(?:the|my|our|a|an)$/.test(place.determiner ?? '')) return undefined;
  return singular(place.head) === singular(phrase.head) ? undefined : place;
}

/** Whether the words say beside what it stands, and not on or in what: those tell where it is just now. */
export const standsBeside = (parse: Parse, phrase: Phrase): boolean =>
  BESIDE.test(wordAt(parse, phrase.last + 1)) || wordAt(parse, phrase.last + 1) === 'next';

/** Names that the memo tells at two places and more: "the tap in the yard", "the tap in the dairy". */
export function placedApart(parse: Parse): ReadonlySet<string> {
  const places = new Map<string, Set<string>>();
  for (const phrase of parse.phrases) {
    if (phrase.pronoun || isSpeaker(phrase) || phrase.name.length === 0) continue;
    const place = placeOf(parse, phrase);
    if (!place || kindsOf([phrase.head]).has('measure')) continue;
    const name = phrase.name.map(singular).join(' ');
    places.set(name, (places.get(name) ?? new Set()).add(singular(place.head)));
  }
  return new Set([...places].filter(([, heads]) => heads.size > 1).map(([name]) => name));
}

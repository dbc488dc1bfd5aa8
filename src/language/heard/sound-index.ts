/** Words that can be found by their sound. */
import DoubleMetaphone from 'natural/lib/natural/phonetics/double_metaphone.js';
import { thingWords } from '../lexicon/trade-words.ts';
import { soundDistance, soundsOf } from './sounds.ts';

const metaphone = new DoubleMetaphone();

export interface SoundsLike {
  /** One word, or two parted by a blank. */
  readonly word: string;
  /** As in `soundDistance`: 0 sounds the same. */
  readonly distance: number;
}

interface Entry {
  readonly word: string;
  readonly sounds: string;
}

/** Beyond this two words do not sound alike. */
const FARTHEST = 0.36;
/** So many words of like sound are weighed, the nearest first. */
const MOST = 16;
/** A key of fewer sounds is too common to be found by its parts. */
const SHORTEST_CUT = 3;

/** Sounds of the key that are made in one way, and taken for each other. */
const KINDS: ReadonlyMap<string, string> = new Map(
  ['MN', 'PB', 'TD', 'KGJ', 'FVH0', 'SXZ', 'LRW'].flatMap((kind) =>
    [...kind].map((sound) => [sound, kind[0] as string] as const),
  ),
);

/** A word whose letters are run together: "bunk tops" sounds as "bunktops". */
const joined = (word: string) => word.replace(/[^a-z]/g, '');

export class SoundIndex {
  readonly #byKey = new Map<string, Entry[]>();
  readonly #known = new Set<string>();

  constructor(words: Iterable<string>) {
    for (const word of words) this.add(word);
  }

  /** Takes a word of one or two parts; longer ones and those with few letters are left out. */
  add(word: string): void {
    if (this.#known.has(word) || !/^[a-z]+(?:[ '][a-z]+)?$/.test(word) || joined(word).length < 3) return;
    this.#known.add(word);
    const entry = { word, sounds: soundsOf(joined(word)) };
    for (const key of keysOf(joined(word))) {
      const list = this.#byKey.get(key);
      if (list) list.push(entry);
      else this.#byKey.set(key, [entry]);
    }
  }

  /** Words that sound like this one, the nearest first; itself is left out. */
  like(heard: string): readonly SoundsLike[] {
    const letters = joined(heard);
    const sounds = soundsOf(letters);
    if (sounds.length < 2) return [];
    const found = new Map<string, number>();
    for (const key of keysOf(letters))
      for (const { word, sounds: theirs } of this.#byKey.get(key) ?? []) {
        if (word === heard || found.has(word) || Math.abs(theirs.length - sounds.length) > 3) continue;
        const distance = soundDistance(sounds, theirs);
        if (distance <= FARTHEST) found.set(word, distance);
      }
    return [...found]
      .map(([word, distance]) => ({ word, distance }))
      .sort((a, b) => a.distance - b.distance || (a.word < b.word ? -1 : 1))
      .slice(0, MOST);
  }
}

/**
 * The keys that a word is found under: its own, and each with one sound left out, so that one may differ. Of a short key
 * too little would be left: there one sound may be another of its kind, "nut" for "mutt".
 */
function keysOf(letters: string): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const key of metaphone.process(letters)) {
    keys.add(key);
    if (key.length < SHORTEST_CUT) {
      keys.add(`~${[...key].map((sound) => KINDS.get(sound) ?? sound).join('')}`);
      continue;
    }
    for (let cut = 0; cut < key.length; cut++) keys.add(key.slice(0, cut) + key.slice(cut + 1));
  }
  return keys;
}

let ofTrade: SoundIndex | undefined;

/** The things of the trade by their sound. Built when it is first asked for, in about a tenth of a second. */
export function tradeBySound(): SoundIndex {
  ofTrade ??= new SoundIndex(thingWords());
  return ofTrade;
}

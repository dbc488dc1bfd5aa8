/**
 * Work that counts as done because it was to be done. "I measured the ladder" or "the cable's ordered" reports nothing
 * by itself; with "measure the ladder" among the open tasks it is the end of that task.
 */
import { workBase, workParticiple, workPast } from '../lexicon/work-verbs.ts';
import { draft, firstWord, isReason, isSubordinate, type Scene, type StatementRule } from './draft.ts';
import type { Said, Word } from './words.ts';

/** What an open task asks for: its verbs in base form and the words of its things. */
export interface OpenWork {
  readonly verbs: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
}

/** Errands that one verb opens and another ends: what was to be bought may be ordered. */
const ERRANDS: readonly ReadonlySet<string>[] = [
  new Set(['order', 'buy', 'get', 'source']),
  new Set(['fetch', 'collect', 'get']),
  new Set(['ring', 'call', 'phone', 'speak', 'ask']),
  new Set(['measure', 'check', 'gauge']),
];

const STOP = new Set(
  'the and for that this with all some more out off from them they new old one two three four now again still just into onto over under round down your our his her its own'.split(
    ' ',
  ),
);

/** One form for singular and plural. */
const thingKey = (word: string) => word.replace(/['’]s$/, '').replace(/(?:([sxz]|[cs]h)es|s)$/, '$1');
const isContent = (word: string) => word.length > 2 && !STOP.has(word) && /^[a-z]/.test(word);

/** Reads an open task's gist for what would end it. */
export function openWork(gist: string): OpenWork {
  const words = gist.toLowerCase().match(/[a-z]+/g) ?? [];
  const verbs = new Set<string>();
  const things = new Set<string>();
  words.forEach((word, index) => {
    const base = index < 4 ? workBase(word) : undefined;
    // The first verb is the work; a word after an article is a thing even where it could be a verb.
    if (base && verbs.size === 0) verbs.add(base);
    else if (isContent(word)) things.add(thingKey(word));
  });
  return { verbs, things };
}

const sameErrand = (done: string, open: ReadonlySet<string>) =>
  open.has(done) || ERRANDS.some((set) => set.has(done) && [...open].some((verb) => set.has(verb)));

const HELPERS = /^(?:'s|is|are|'re|was|were|been|'ve|have|has|had|got|i|we|all)$/;

/** Base of the deed that a word reports, with its helper or subject before it. */
function deedAt(words: readonly Word[], at: number): string | undefined {
  const word = words[at] as Word;
  const past = workPast(word.lower);
  const participle = workParticiple(word.lower);
  if (!past && !participle) return undefined;
  let before = at - 1;
  while (before >= 0 && /[AL]/.test(words[before]?.classes ?? '')) before--;
  const lead = words[before]?.lower;
  if (lead === undefined) return at <= 2 ? participle : undefined;
  return HELPERS.test(lead) ? (participle ?? past) : undefined;
}

function finishes(said: Said, open: readonly OpenWork[]): boolean {
  const { words } = said;
  const things = new Set(
    words
      .map(({ lower }) => lower)
      .filter(isContent)
      .map(thingKey),
  );
  for (let at = 0; at < words.length; at++) {
    const deed = deedAt(words, at);
    if (!deed) continue;
    if (words.slice(0, at).some(({ classes }) => /[NKM]/.test(classes))) return false;
    if (
      open.some((work) => sameErrand(deed, work.verbs) && [...work.things].some((thing) => things.has(thing)))
    )
      return true;
  }
  return false;
}

export const FINISHED_RULES: readonly StatementRule[] = [
  {
    name: 'an open task is done',
    read: (said: Said, scene: Scene) => {
      if (scene.open.length === 0 || said.asks || scene.unreal.has(said.index)) return undefined;
      if (scene.listed.has(said.index) || isSubordinate(said) || isReason(said)) return undefined;
      if (!finishes(said, scene.open)) return undefined;
      return draft('done', said, { finishes: true }, firstWord(said));
    },
  },
];
